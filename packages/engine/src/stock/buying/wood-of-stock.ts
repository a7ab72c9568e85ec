import type { Stock } from '../../design/shop.ts';
import type { Rational } from '../../length/rational.ts';
import type { PanelDensity } from '../../tables/densities.ts';
import type { LumberKind } from '../rough-thickness.ts';
import { densityOfPanel, densityOfWood } from '../weights.ts';

/** What a stock is made of, guessed from what its entry calls it: whoever shows a figure of it says what it was taken for. */
export interface WoodOfStock {
  /** 'white ash', 'plywood'. */
  readonly takenFor: string;
  /** In kg/m³; an average. */
  readonly density: Rational;
}

/** Words of a name and the wood of the tables that is meant by them; the first that occurs counts. */
const WOODS: readonly (readonly [words: RegExp, species: string])[] = [
  [/\bred alder\b|\balder\b/, 'red alder'],
  [/\bash\b/, 'white ash'],
  [/\bbasswood\b/, 'American basswood'],
  [/\bbeech\b/, 'American beech'],
  [/\bpaper birch\b/, 'paper birch'],
  [/\bbirch\b/, 'yellow birch'],
  [/\bcherry\b/, 'black cherry'],
  [/\bhickory\b/, 'shagbark hickory'],
  [/\b(?:red|soft) maple\b/, 'red maple'],
  [/\bsilver maple\b/, 'silver maple'],
  [/\bmaple\b/, 'sugar maple'],
  [/\bwhite oak\b/, 'white oak'],
  [/\boak\b/, 'northern red oak'],
  [/\bwalnut\b/, 'black walnut'],
  [/\bpoplar\b/, 'yellow-poplar'],
  [/\bteak\b/, 'teak'],
  [/\bafrican mahogany\b|\bkhaya\b/, 'African mahogany'],
  [/\bmahogany\b/, 'mahogany'],
  [/\bspanish[- ]cedar\b/, 'Spanish-cedar'],
];

const SOFTWOODS: readonly (readonly [words: RegExp, species: string])[] = [
  [/\bdouglas[- ]fir\b|\bfir\b/, 'Douglas-fir'],
  [/\bponderosa\b/, 'ponderosa pine'],
  [/\bsugar pine\b/, 'sugar pine'],
  [/\bwestern white pine\b/, 'western white pine'],
  [/\bpine\b/, 'eastern white pine'],
  [/\bredcedar\b|\bred cedar\b/, 'eastern redcedar'],
  [/\bcedar\b/, 'western redcedar'],
  [/\bredwood\b/, 'redwood'],
];

const PANELS: readonly (readonly [words: RegExp, panel: PanelDensity['panel']])[] = [
  [/\bmdf\b/, 'MDF'],
  [/\bparticle ?board\b|\bchipboard\b/, 'particleboard'],
  [/\bhard ?board\b/, 'hardboard'],
  [/\bosb\b/, 'OSB'],
  [/\bply(?:wood)?\b/, 'plywood'],
];

/** Many parts are of one stock, and its name is held against many words. */
const known = new WeakMap<Stock, { readonly wood: WoodOfStock | undefined }>();

/** A sheet whose name says nothing is taken for plywood; a board of unknown wood has no weight. */
export function woodOfStock(stock: Stock): WoodOfStock | undefined {
  const kept = known.get(stock);
  if (kept !== undefined) return kept.wood;
  const wood = guessed(stock);
  known.set(stock, { wood });
  return wood;
}

function guessed({ name, species, form }: Stock): WoodOfStock | undefined {
  const words = `${species ?? ''} ${name}`.toLowerCase();
  if (form === 'sheet') {
    const panel = firstOf(PANELS, words) ?? 'plywood';
    return { takenFor: panel, density: densityOfPanel(panel) };
  }
  const takenFor = firstOf(SOFTWOODS, words) ?? firstOf(WOODS, words);
  const density = takenFor === undefined ? undefined : densityOfWood(takenFor);
  return takenFor === undefined || density === undefined ? undefined : { takenFor, density };
}

/** A wood that no table names is taken for a hardwood, of which more is lost in planing. */
export function lumberOf({ name, species }: Stock): LumberKind {
  return firstOf(SOFTWOODS, `${species ?? ''} ${name}`.toLowerCase()) === undefined ? 'hardwood' : 'softwood';
}

function firstOf<Meant>(list: readonly (readonly [RegExp, Meant])[], words: string): Meant | undefined {
  return list.find(([pattern]) => pattern.test(words))?.[1];
}
