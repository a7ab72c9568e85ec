import type { MachineEntry, Stock } from '../../design/shop.ts';
import { Length } from '../../length/length.ts';
import { sizeOfBlank } from '../blank.ts';
import { type IntegerScale, scaleToIntegers } from '../scale-to-integers.ts';
import type { CuttingLimits, EdgeTrim, SheetKind } from '../sheets/sheet-problem.ts';
import type { SheetOrder, StockOffer } from './buying-request.ts';
import type { BlankToCut } from './ordered-blanks.ts';

/** What the search for plans of one sheet stock is asked: whole sheets, what is on hand, and what the machines can do. */
export function sheetOrder(
  stock: Stock,
  blanks: readonly BlankToCut[],
  kerf: Length,
  machines: readonly MachineEntry[],
): SheetOrder {
  const offers = sheetOffers(stock);
  const trim = stock.trim?.length.max(Length.zero) ?? Length.zero;
  const sizes = blanks.map(({ blank }) => ({ blank, size: sizeOfBlank(blank) }));
  const limits = limitsOf(machines);
  const scale = scaleToIntegers([
    ...[...offers.values()].flatMap(({ length, width }) => [length, width]),
    ...sizes.flatMap(({ size }) => [size.width, size.length]),
    kerf,
    trim,
  ]);
  return {
    stock,
    pieces: blanks.flatMap(({ pieces }) => pieces),
    blanks: new Map(blanks.map((each) => [each.blank.id, each])),
    offers,
    scale,
    problem: {
      sheets: [...offers].map(([id, offer]) => sheetKind(id, offer, trim, scale)),
      blanks: sizes.map(({ blank, size }) => ({
        id: blank.id,
        width: scale.up(size.width),
        length: scale.up(size.length),
        count: 1,
        mayTurn: blank.mayTurn,
      })),
      kerf: scale.up(kerf),
      limits: scaled(limits, scale),
    },
  };
}

/** The whole sheet first; offcuts by their place in the entry. */
function sheetOffers(stock: Stock): ReadonlyMap<string, StockOffer> {
  const { length, width, offcuts = [] } = stock;
  const offers = new Map<string, StockOffer>();
  if (length !== undefined && width !== undefined) {
    offers.set('whole', { length: length.length, width: width.length });
  }
  offcuts.forEach((offcut, at) => {
    offers.set(`offcut ${at}`, { length: offcut.length.length, width: offcut.width.length, offcut });
  });
  return offers;
}

/** What is on hand costs nothing and was trimmed when it was cut. */
function sheetKind(id: string, offer: StockOffer, trim: Length, scale: IntegerScale): SheetKind {
  const size = { id, width: scale.down(offer.width), length: scale.down(offer.length) };
  if (offer.offcut !== undefined) return { ...size, cost: 0, available: offer.offcut.count };
  const edge = scale.up(trim);
  const trims: EdgeTrim = { left: edge, right: edge, near: edge, far: edge };
  return { ...size, cost: 1, ...(edge > 0 ? { trim: trims } : {}) };
}

type Limits = Readonly<Record<'longestRip' | 'longestCrosscut' | 'narrowestStrip', Length | undefined>>;

/** Of several machines the one that takes most counts; a limit that none gives is none. */
function limitsOf(machines: readonly MachineEntry[]): Limits {
  const all = (name: 'ripLength' | 'crosscutWidth' | 'leastWidth') =>
    machines.flatMap((machine) => (machine[name]?.length.isPositive() ? [machine[name].length] : []));
  const most = (lengths: readonly Length[]) => lengths.reduce<Length | undefined>((a, b) => a?.max(b) ?? b, undefined);
  const least = (lengths: readonly Length[]) => lengths.reduce<Length | undefined>((a, b) => a?.min(b) ?? b, undefined);
  return {
    longestRip: most(all('ripLength')),
    longestCrosscut: most(all('crosscutWidth')),
    narrowestStrip: least(all('leastWidth')),
  };
}

function scaled({ longestRip, longestCrosscut, narrowestStrip }: Limits, scale: IntegerScale): CuttingLimits {
  return {
    ...(longestRip === undefined ? {} : { longestRip: scale.down(longestRip) }),
    ...(longestCrosscut === undefined ? {} : { longestCrosscut: scale.down(longestCrosscut) }),
    ...(narrowestStrip === undefined ? {} : { narrowestStrip: scale.up(narrowestStrip) }),
  };
}
