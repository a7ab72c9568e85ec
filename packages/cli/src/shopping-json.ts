import { kindOfHardware } from '@fettle/drawings';
import {
  type BuyingPlan,
  cutSequence,
  type Evaluation,
  type Length,
  laidOut,
  type NumberedCut,
  type Price,
  pieceWeight,
  reservesFor,
  type ShoppingRow,
  shoppingList,
  standingOfBoards,
  standingOfSheets,
  standingWords,
  stockAfter,
  type Units,
} from '@fettle/engine';
import { type LengthJson, lengthJson } from './length-json.ts';

/**
 * What `fettle make` writes as `NAME-shopping-list.json`: what to buy, and the cuts in their order. A field that is not
 * known is absent, never zero. Lengths are exact; amounts are exact fractions in the shop's own currency.
 */
export interface ShoppingJson {
  readonly format: 'fettle-shopping-list';
  /** Rises when a field changes its meaning or goes away; not when one is added. */
  readonly version: 1;
  readonly piece: string;
  readonly buy: readonly BuyJson[];
  /** Of what has a price. */
  readonly cost?: string;
  /** Whether everything has a price. */
  readonly costIsWhole: boolean;
  /** One more of each of these, and any single part that is spoiled can be made again. */
  readonly spares: readonly {
    readonly stock: string;
    readonly length: LengthJson;
    readonly width: LengthJson;
    readonly thickness?: LengthJson;
  }[];
  /** What is left over and worth keeping. */
  readonly leftOver: readonly {
    readonly stock: string;
    readonly quantity: number;
    readonly length: LengthJson;
    readonly width: LengthJson;
    readonly thickness?: LengthJson;
  }[];
  /** Parts that are in no plan. */
  readonly notPlanned: readonly { readonly part: string; readonly mark: string; readonly why: string }[];
  /** About, without hardware. */
  readonly kilograms: number;
  readonly kerf: LengthJson;
  readonly plans: readonly { readonly stock: string; readonly thickness?: LengthJson; readonly standing: string }[];
  readonly cuts: readonly CutJson[];
}

export interface BuyJson {
  readonly kind: 'sheet' | 'board' | 'edging' | 'hardware';
  readonly name: string;
  /** Pieces; of slides pairs; of edging strips, of which `length` is all together. */
  readonly quantity: number;
  /** It is there already, and is not bought. */
  readonly onHand?: true;
  readonly length?: LengthJson;
  readonly width?: LengthJson;
  readonly thickness?: LengthJson;
  readonly boardFeet?: { readonly exact: string; readonly tallied: string };
  readonly price?: { readonly amount: string; readonly per: 'each' | 'board-foot' };
  readonly cost?: string;
  /** Share of the area bought that does not become parts, 0 to 1. */
  readonly waste?: number;
  readonly parts: readonly string[];
}

export interface CutJson {
  readonly number: number;
  /** Of the sheet or board, as on the plans. */
  readonly from: number;
  /** What goes to the saw: that number, the code of a piece that came off before (1b), or the mark of a part. */
  readonly of: string;
  readonly stock: string;
  readonly direction: 'rip' | 'crosscut';
  readonly fence: LengthJson;
  readonly gives?: string;
  readonly withoutWayBack: boolean;
}

export function shoppingJson(evaluation: Evaluation, plan: BuyingPlan): ShoppingJson {
  const { design, parts } = evaluation;
  const { units } = design;
  const list = shoppingList(evaluation, plan);
  return {
    format: 'fettle-shopping-list',
    version: 1,
    piece: design.name,
    buy: list.rows.map((row) => buyJson(row, units)),
    ...(list.cost === undefined ? {} : { cost: list.cost.toString() }),
    costIsWhole: list.isWholeCost,
    spares: reservesFor(plan).flatMap(({ stock, buy }) =>
      buy === undefined
        ? []
        : [
            {
              stock: stock.name,
              length: lengthJson(buy.length, units),
              width: lengthJson(buy.width, units),
              ...(buy.thickness === undefined ? {} : { thickness: lengthJson(buy.thickness, units) }),
            },
          ],
    ),
    leftOver: stockAfter(laidOut(plan), units.unit).flatMap(({ stock, kept }) =>
      kept.map(({ count, ...sizes }) => ({ stock: stock.name, quantity: count, ...sizesJson(sizes, units) })),
    ),
    notPlanned: list.unplanned.map(({ piece, why }) => ({ part: piece.part.id, mark: piece.mark, why })),
    kilograms: Math.round(pieceWeight(parts).kilograms.toNumber() * 10) / 10,
    kerf: lengthJson(plan.request.kerf.length, units),
    plans: [
      ...plan.sheets.map((each) => ({
        stock: each.order.stock.name,
        standing: standingWords(standingOfSheets(each)),
      })),
      ...plan.boards.map((each) => ({
        stock: each.order.stock.name,
        thickness: lengthJson(each.order.prepared.thickness, units),
        standing: standingWords(standingOfBoards(each)),
      })),
    ],
    cuts: cutSequence(plan).map((each) => cutJson(each, units)),
  };
}

function buyJson(row: ShoppingRow, units: Units): BuyJson {
  const cost = row.cost === undefined ? {} : { cost: row.cost.toString() };
  switch (row.kind) {
    case 'hardware': {
      const { kind, entry, what, quantity, size, parts } = row;
      const long = size === undefined ? {} : { length: lengthJson(size.length, units) };
      return { kind, name: entry ?? kindOfHardware(what), quantity, ...long, ...priceJson(row.price), ...cost, parts };
    }
    case 'edging': {
      const { kind, stock, strips, parts } = row;
      return { kind, name: stock.name, quantity: strips, ...sizesJson(row, units), ...cost, parts };
    }
    case 'sheet':
    case 'board': {
      const { kind, stock, quantity, boardFeet, isOnHand, parts } = row;
      return {
        ...{ kind, name: stock.name, quantity },
        ...(isOnHand ? { onHand: true as const } : {}),
        ...sizesJson(row, units),
        ...(boardFeet === undefined
          ? {}
          : { boardFeet: { exact: boardFeet.exact.toString(), tallied: boardFeet.tallied.toString() } }),
        ...priceJson(row.price),
        ...cost,
        waste: Math.round(row.waste.toNumber() * 1000) / 1000,
        parts,
      };
    }
    default:
      return row satisfies never;
  }
}

function sizesJson({ length, width, thickness }: Sizes, units: Units): SizesJson {
  return {
    length: lengthJson(length, units),
    width: lengthJson(width, units),
    ...(thickness === undefined ? {} : { thickness: lengthJson(thickness, units) }),
  };
}

interface SizesJson {
  readonly length: LengthJson;
  readonly width: LengthJson;
  readonly thickness?: LengthJson;
}

interface Sizes {
  readonly length: Length;
  readonly width: Length;
  readonly thickness?: Length;
}

function priceJson(price: Price | undefined): Pick<BuyJson, 'price'> {
  return price === undefined ? {} : { price: { amount: price.amount.toString(), per: price.per } };
}

function cutJson({ number, from, cut, isWithoutWayBack }: NumberedCut, units: Units): CutJson {
  return {
    number,
    from: from.number,
    of: cut.of,
    stock: from.stock.name,
    direction: cut.direction,
    fence: lengthJson(cut.setting, units),
    ...(cut.gives === undefined ? {} : { gives: cut.gives }),
    withoutWayBack: isWithoutWayBack,
  };
}
