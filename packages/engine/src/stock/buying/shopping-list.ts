import type { Price, Stock } from '../../design/shop.ts';
import type { Length } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { sizeOfBlank } from '../blank.ts';
import { exactBoardFeet, talliedBoardFeet } from '../board-feet.ts';
import { type BoardOrder, lengthOf, type UnplannedPiece } from './buying-request.ts';
import type { EdgingToCut } from './edging-to-cut.ts';
import { type Equipped, type HardwareToBuy, hardwareToBuy } from './hardware-to-buy.ts';
import { layOutSheets } from './lay-out-sheets.ts';
import type { PieceToCut } from './pieces-to-cut.ts';
import type { BuyingPlan, PlannedBoards, PlannedSheets } from './plan-buying.ts';

/** What to buy for a piece, and what it costs. */
export interface ShoppingList {
  readonly rows: readonly ShoppingRow[];
  /** Of the rows that have a price; absent where none has. */
  readonly cost?: Rational;
  /** Whether some row has no price, so that the cost is not the whole. */
  readonly isWholeCost: boolean;
  readonly unplanned: readonly UnplannedPiece[];
}

export type ShoppingRow = WoodRow | EdgingRow | HardwareRow;

/** Sheets of one kind, or boards of one size. */
export interface WoodRow {
  readonly kind: 'sheet' | 'board';
  readonly stock: Stock;
  readonly quantity: number;
  readonly thickness?: Length;
  readonly width: Length;
  readonly length: Length;
  /** It is there already: nothing is bought, and it costs nothing. */
  readonly isOnHand: boolean;
  /** Only of boards, all of the row together. */
  readonly boardFeet?: { readonly exact: Rational; readonly tallied: Rational };
  readonly price?: Price;
  readonly cost?: Rational;
  /** Of the area bought, what does not become parts. */
  readonly waste: Rational;
  /** Ids of the parts cut from it. */
  readonly parts: readonly string[];
}

export interface HardwareRow extends Omit<HardwareToBuy, 'price'> {
  readonly kind: 'hardware';
  readonly price?: Price;
  readonly cost?: Rational;
}

/** What goes on edges, by its length. Strips that are ripped from boards are paid with the boards. */
export interface EdgingRow extends EdgingToCut {
  readonly kind: 'edging';
  readonly cost?: Rational;
}

export function shoppingList(evaluation: Equipped, plan: BuyingPlan): ShoppingList {
  const rows: readonly ShoppingRow[] = [
    ...plan.sheets.flatMap(sheetRows),
    ...plan.boards.flatMap(boardRows),
    ...edgingRows(plan),
    ...hardwareRows(evaluation),
  ];
  const costs = rows.flatMap(({ cost }) => (cost === undefined ? [] : [cost]));
  return {
    rows,
    ...(costs.length === 0 ? {} : { cost: costs.reduce((sum, cost) => sum.plus(cost)) }),
    isWholeCost: costs.length === rows.length,
    unplanned: plan.unplanned,
  };
}

function sheetRows(planned: PlannedSheets): readonly WoodRow[] {
  const { order, plan } = planned;
  const { stock } = order;
  const laid = layOutSheets(planned, 1);
  return order.problem.sheets.flatMap((kind): readonly WoodRow[] => {
    const used = laid.filter((_, at) => plan.sheets[at]?.sheet === kind.id);
    const [first] = used;
    if (first === undefined) return [];
    const { length, width, thickness } = first;
    const isOnHand = first.offcut !== undefined;
    const price = isOnHand ? undefined : usablePrice(stock.price);
    const cut = used.flatMap(({ pieces }) => pieces.map(({ piece }) => piece));
    return [
      {
        kind: 'sheet',
        stock,
        quantity: used.length,
        ...(thickness === undefined ? {} : { thickness }),
        ...{ width, length, isOnHand },
        ...(price === undefined ? {} : { price }),
        ...costOf(isOnHand, price?.per === 'each' ? price.amount.times(used.length) : undefined),
        waste: wasteOf(cut, areaOf(width, length).times(used.length)),
        parts: cut.flatMap(partsOf),
      },
    ];
  });
}

function boardRows({ order, plan }: PlannedBoards): readonly WoodRow[] {
  const { stock, prepared, offers } = order;
  const { thickness, scale, problem } = prepared;
  return problem.boards.flatMap((kind): readonly WoodRow[] => {
    const used = plan.boards.filter(({ board }) => board === kind.id);
    if (used.length === 0) return [];
    const isOnHand = offers.get(kind.id)?.offcut !== undefined;
    const price = isOnHand ? undefined : usablePrice(stock.price);
    const [width, length] = [lengthOf(kind.width, scale), lengthOf(kind.length, scale)];
    const board = { thickness, width, length };
    const exact = exactBoardFeet(board).times(used.length);
    const tallied = talliedBoardFeet(board).times(used.length);
    const blanks = used.flatMap(({ bands }) => bands.flatMap((band) => band.blanks.map(({ blank }) => blank)));
    return [
      {
        kind: 'board',
        stock,
        quantity: used.length,
        ...board,
        isOnHand,
        boardFeet: { exact, tallied },
        ...(price === undefined ? {} : { price }),
        ...costOf(isOnHand, price?.amount.times(price.per === 'each' ? used.length : tallied)),
        waste: wasteOfStaves(blanks, order.blanks, prepared.glueUps, areaOf(width, length).times(used.length)),
        parts: [...new Set(blanks.flatMap((id) => order.blanks.get(id)?.pieces.flatMap(partsOf) ?? []))],
      },
    ];
  });
}

function partsOf({ part, otherLeaf }: PieceToCut): readonly string[] {
  return otherLeaf === undefined ? [part.id] : [part.id, otherLeaf.id];
}

/** What is on hand costs nothing, whatever its stock costs; absent where the price is not known. */
function costOf(isOnHand: boolean, cost: Rational | undefined): { readonly cost?: Rational } {
  if (isOnHand) return { cost: Rational.zero };
  return cost === undefined ? {} : { cost };
}

function hardwareRows(evaluation: Equipped): readonly HardwareRow[] {
  return hardwareToBuy(evaluation).map(({ price: said, ...each }): HardwareRow => {
    const price = usablePrice(said);
    return {
      kind: 'hardware',
      ...each,
      ...(price === undefined ? {} : { price, cost: price.amount.times(each.quantity) }),
    };
  });
}

function edgingRows({ request }: BuyingPlan): readonly EdgingRow[] {
  return request.edging.map((each) => ({
    kind: 'edging',
    ...each,
    ...(each.isFromBoards ? { cost: Rational.zero } : {}),
  }));
}

/** Nobody is paid for taking wood: what says so is a slip, and counts as no price. */
function usablePrice(price: Price | undefined): Price | undefined {
  return price === undefined || price.amount.sign() < 0 ? undefined : price;
}

function areaOf(width: Length, length: Length): Rational {
  return width.in('in').times(length.in('in'));
}

function wasteOf(cut: readonly PieceToCut[], bought: Rational): Rational {
  const used = cut.reduce((sum, { blank }) => {
    const { width, length } = sizeOfBlank(blank);
    return sum.plus(areaOf(width, length));
  }, Rational.zero);
  return Rational.one.minus(used.dividedBy(bought));
}

/** Each stave of a glued-up part is its share of it. */
function wasteOfStaves(
  ids: readonly string[],
  blanks: BoardOrder['blanks'],
  glueUps: ReadonlyMap<string, { readonly staves: number }>,
  bought: Rational,
): Rational {
  const used = ids.reduce((sum, id) => {
    const staves = glueUps.get(id)?.staves ?? 1;
    const pieces = blanks.get(id)?.pieces ?? [];
    return pieces.reduce((all, { blank }) => {
      const { width, length } = sizeOfBlank(blank);
      return all.plus(areaOf(width, length).dividedBy(staves));
    }, sum);
  }, Rational.zero);
  return Rational.one.minus(used.dividedBy(bought));
}
