import type { Stock } from '../../design/shop.ts';
import { Length } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { talliedBoardFeet } from '../board-feet.ts';
import { type BoardOrder, lengthOf } from './buying-request.ts';
import { laidOut } from './cut-sequence.ts';
import type { LaidPiece, LaidStock } from './laid-stock.ts';
import type { PieceToCut } from './pieces-to-cut.ts';
import type { BuyingPlan } from './plan-buying.ts';
import { neededAgain, sparesOf } from './spares.ts';

/** One more of some stock, from which any single one of these pieces could be cut again. */
export interface Reserve {
  readonly stock: Stock;
  readonly covers: readonly PieceToCut[];
  /** Absent where nothing that is sold is large enough: the piece comes from what was on hand. */
  readonly buy?: {
    readonly length: Length;
    readonly width: Length;
    readonly thickness?: Length;
    readonly cost?: Rational;
  };
}

/**
 * The smallest further purchase after which any one mistake can be made good: of each stock of which some piece could not be
 * cut again, the smallest that is sold and holds each of them. Boards of one stock may cover thinner ones too.
 */
export function reservesFor(plan: BuyingPlan): readonly Reserve[] {
  const laid = laidOut(plan);
  const ids = new Set(sparesOf(laid).flatMap((each) => (each.spare === undefined ? [each.piece.blank.id] : [])));
  const lacking = (isOf: (from: LaidStock) => boolean): readonly LaidPiece[] =>
    laid.filter(isOf).flatMap(({ pieces }) => pieces.filter(({ piece }) => ids.has(piece.blank.id)));
  const sheets = plan.sheets.flatMap(({ order: { stock } }) =>
    sheetReserve(
      stock,
      lacking((from) => from.kind === 'sheet' && from.stock === stock),
    ),
  );
  const stocks = [...new Set(plan.boards.map(({ order }) => order.stock))];
  const boards = stocks.flatMap((stock) => {
    const wanted = plan.boards
      .filter(({ order }) => order.stock === stock)
      .map(({ order }) => ({
        order,
        pieces: lacking((from) => from.stock === stock && from.thickness?.equals(order.prepared.thickness) === true),
      }))
      .filter(({ pieces }) => pieces.length > 0)
      .sort((a, b) => b.order.prepared.thickness.compare(a.order.prepared.thickness));
    return cheapest(wanted).map(({ reserve }) => reserve);
  });
  return [...sheets, ...boards];
}

function sheetReserve(stock: Stock, pieces: readonly LaidPiece[]): readonly Reserve[] {
  if (pieces.length === 0) return [];
  const covers = pieces.map(({ piece }) => piece);
  const { length, width, price } = stock;
  const trim = stock.trim?.length.max(Length.zero) ?? Length.zero;
  const isHeld =
    length !== undefined &&
    width !== undefined &&
    pieces.every((piece) => {
      const needed = neededAgain(piece);
      const [along, across] = [length.length.minus(trim.times(2)), width.length.minus(trim.times(2))];
      const holds = (one: Length, other: Length) => one.compare(along) <= 0 && other.compare(across) <= 0;
      return holds(needed.length, needed.width) || (needed.mayTurn && holds(needed.width, needed.length));
    });
  if (!isHeld) return [{ stock, covers }];
  const thickness = (stock.actual ?? stock.nominal)?.length;
  return [
    {
      stock,
      covers,
      buy: {
        length: length.length,
        width: width.length,
        ...(thickness === undefined ? {} : { thickness }),
        ...(price?.per === 'each' && price.amount.sign() >= 0 ? { cost: price.amount } : {}),
      },
    },
  ];
}

interface Wanted {
  readonly order: BoardOrder;
  readonly pieces: readonly LaidPiece[];
}

interface Bought {
  readonly reserve: Reserve;
  /** In exact board feet. */
  readonly feet: Rational;
}

/** Of all ways to let thicker boards cover thinner ones the one that takes least wood; the thickest come first. */
function cheapest(wanted: readonly Wanted[]): readonly Bought[] {
  const [thickest] = wanted;
  if (thickest === undefined) return [];
  let best: readonly Bought[] | undefined;
  for (let count = 1; count <= wanted.length; count += 1) {
    const pieces = wanted.slice(0, count).flatMap((each) => each.pieces);
    const all = [boardFor(thickest.order, pieces), ...cheapest(wanted.slice(count))];
    if (best === undefined || isLess(all, best)) best = all;
  }
  return best ?? [];
}

/** What covers every piece comes before what covers fewer. */
function isLess(one: readonly Bought[], other: readonly Bought[]): boolean {
  const missing = (all: readonly Bought[]) => all.filter(({ reserve }) => reserve.buy === undefined).length;
  const feet = (all: readonly Bought[]) => all.reduce((sum, each) => sum.plus(each.feet), Rational.zero);
  return missing(one) - missing(other) < 0 || (missing(one) === missing(other) && feet(one).compare(feet(other)) < 0);
}

/** What is as long as the longest and as wide as the widest holds each of them. */
function boardFor({ stock, prepared, offers }: BoardOrder, pieces: readonly LaidPiece[]): Bought {
  const { problem, scale, thickness, costUnit } = prepared;
  const covers = pieces.map(({ piece }) => piece);
  const needed = pieces.map(neededAgain);
  const length = needed.reduce((most, each) => most.max(each.length), Length.zero);
  const width = needed.reduce((most, each) => most.max(each.width), Length.zero);
  const [smallest] = problem.boards
    .filter(({ id }) => offers.get(id)?.offcut === undefined)
    .filter((board) => length.compare(lengthOf(Math.max(0, board.length - 2 * problem.endTrim), scale)) <= 0)
    .filter((board) => width.compare(lengthOf(Math.max(0, board.width - 2 * problem.edgeTrim), scale)) <= 0)
    .sort((a, b) => a.cost - b.cost);
  if (smallest === undefined) return { reserve: { stock, covers }, feet: Rational.zero };
  const sizes = { thickness, length: lengthOf(smallest.length, scale), width: lengthOf(smallest.width, scale) };
  const { price } = stock;
  const isPriced = price !== undefined && price.amount.sign() >= 0;
  const cost = isPriced ? price.amount.times(price.per === 'each' ? 1 : talliedBoardFeet(sizes)) : undefined;
  return {
    reserve: { stock, covers, buy: { ...sizes, ...(cost === undefined ? {} : { cost }) } },
    feet: costUnit.times(smallest.cost),
  };
}
