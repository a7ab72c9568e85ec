import { assumed } from '../../design/derive.ts';
import type { Units } from '../../design/design.ts';
import type { Figure } from '../../design/figure.ts';
import type { MachineEntry, OffcutEntry, Stock } from '../../design/shop.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import type { Part } from '../../parts/part.ts';
import { isMetric } from '../../tables/trade-limits.ts';
import { sizeOfBlank } from '../blank.ts';
import type { PreparedBoards } from '../boards/prepare-boards.ts';
import type { IntegerScale } from '../scale-to-integers.ts';
import type { SheetProblem } from '../sheets/sheet-problem.ts';
import { boardOrders } from './board-orders.ts';
import { type EdgingToCut, edgingToCut, isBoughtByLength } from './edging-to-cut.ts';
import { type BlankToCut, blanksToCut } from './ordered-blanks.ts';
import { type PieceToCut, piecesToCut } from './pieces-to-cut.ts';
import { sheetOrder } from './sheet-order.ts';

/** What is to be cut from which stock: the questions that the searches for cutting plans answer. */
export interface BuyingRequest {
  /** What a cut turns to dust. */
  readonly kerf: Figure;
  readonly sheets: readonly SheetOrder[];
  readonly boards: readonly BoardOrder[];
  /** Strips on edges, of boards as well as of what is bought by the length. */
  readonly edging: readonly EdgingToCut[];
  /** What is in no plan, each with its reason: nothing is left out in silence. */
  readonly unplanned: readonly UnplannedPiece[];
}

export interface SheetOrder {
  readonly stock: Stock;
  readonly pieces: readonly PieceToCut[];
  /** What they are cut in, by the id of each blank of the problem. */
  readonly blanks: ReadonlyMap<string, BlankToCut>;
  readonly problem: SheetProblem;
  readonly scale: IntegerScale;
  /** By the id of each kind of sheet in the problem. */
  readonly offers: ReadonlyMap<string, StockOffer>;
}

/** Boards of one stock and one thickness. */
export interface BoardOrder {
  readonly stock: Stock;
  readonly pieces: readonly PieceToCut[];
  /** What they are cut in, by the id of each blank of the problem. */
  readonly blanks: ReadonlyMap<string, BlankToCut>;
  readonly prepared: PreparedBoards;
  /** By the id of each kind of board in the problem. */
  readonly offers: ReadonlyMap<string, StockOffer>;
}

/** What can be cut from: as it is sold, or an offcut that is there already. */
export interface StockOffer {
  readonly length: Length;
  readonly width: Length;
  /** Its entry in the shop file; absent for what is bought. */
  readonly offcut?: OffcutEntry;
}

export interface UnplannedPiece {
  readonly piece: PieceToCut;
  readonly why: WhyUnplanned;
  /** What the piece needs and the most there is, where it is a matter of size. */
  readonly needs?: Length;
  readonly most?: Length;
}

export type WhyUnplanned =
  | 'its material is not chosen'
  | 'its size is not more than nothing'
  | 'its stock has no size'
  | 'thicker than any lumber'
  | 'no board of that thickness'
  | 'wider than any board'
  | 'longer than any board'
  | 'larger than every sheet'
  | 'larger than every sheet unless turned'
  | 'with those it follows, larger than any of its stock'
  | 'too many pieces'
  | 'no cuts make it';

/** Common practice, no source: most saw blades cut about an eighth of an inch. */
const USUAL_KERF = { inches: Length.inches(1, 8), metric: Length.millimetres(32, 10) } as const;

export function buyingRequest(
  parts: readonly Part[],
  machines: readonly MachineEntry[],
  { unit, ruler }: Units,
): BuyingRequest {
  const mark = Length.of(ruler, unit);
  const kerf = kerfOf(machines, unit);
  const unplanned: UnplannedPiece[] = [];
  const sheets = new Map<string, { stock: Stock; pieces: PieceToCut[] }>();
  const boards = new Map<string, { stock: Stock; pieces: PieceToCut[] }>();
  const all = piecesToCut(parts);
  for (const piece of all.filter((each) => !isBoughtByLength(each))) {
    const { stock } = piece;
    const why = whyNot(piece);
    if (stock === undefined || why !== undefined) {
      unplanned.push({ piece, why: why ?? 'its material is not chosen' });
      continue;
    }
    const orders = stock.form === 'sheet' ? sheets : boards;
    const key = JSON.stringify([stock.name, stock.origin]);
    const order = orders.get(key) ?? { stock, pieces: [] };
    order.pieces.push(piece);
    orders.set(key, order);
  }
  return {
    kerf,
    sheets: [...sheets.values()].map(({ stock, pieces }) =>
      sheetOrder(stock, blanksToCut(pieces, kerf.length, unit, mark), kerf.length, machines),
    ),
    boards: [...boards.values()].flatMap(({ stock, pieces }) =>
      boardOrders(stock, blanksToCut(pieces, kerf.length, unit, mark), kerf.length, { unit, ruler }, unplanned),
    ),
    edging: edgingToCut(all),
    unplanned,
  };
}

function whyNot({ stock, blank, thickness }: PieceToCut): WhyUnplanned | undefined {
  const { width, length } = sizeOfBlank(blank);
  if (stock === undefined) return 'its material is not chosen';
  if (![width, length, thickness].every((size) => size.isPositive())) return 'its size is not more than nothing';
  const isSized = stock.width?.length.isPositive() === true && stock.length?.length.isPositive() === true;
  return isSized ? undefined : 'its stock has no size';
}

/** The widest of the shop's machines, so that a plan holds at whichever saw a cut is made. */
export function kerfOf(machines: readonly MachineEntry[], unit: LengthUnit): Figure {
  const known = machines.flatMap(({ kerf }) => (kerf?.length.isPositive() ? [kerf] : []));
  const usual = isMetric(unit) ? USUAL_KERF.metric : USUAL_KERF.inches;
  return (
    known.reduce<Figure | undefined>(
      (widest, kerf) => (widest === undefined || kerf.length.compare(widest.length) > 0 ? kerf : widest),
      undefined,
    ) ?? assumed(usual, 'no machine of the shop says its kerf')
  );
}

/** A whole number of the scale's units as a length, exact. */
export function lengthOf(units: number, scale: Pick<IntegerScale, 'perInch'>): Length {
  return Length.of(Rational.of(BigInt(units), scale.perInch), 'in');
}
