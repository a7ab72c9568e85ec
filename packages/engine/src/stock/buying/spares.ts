import { Length } from '../../length/length.ts';
import type { LaidArea, LaidStock } from './laid-stock.ts';
import type { PieceToCut } from './pieces-to-cut.ts';

/** Whether each piece could be cut again from what is left over of its own stock, should it be spoiled. */
export interface Spare {
  readonly piece: PieceToCut;
  readonly from: LaidStock;
  /** The smallest offcut that would do; absent where none would. */
  readonly spare?: { readonly from: LaidStock; readonly offcut: LaidArea };
}

export function sparesOf(laid: readonly LaidStock[]): readonly Spare[] {
  const kinds: { readonly like: LaidStock; readonly offcuts: { from: LaidStock; offcut: LaidArea }[] }[] = [];
  const kindOf = (stock: LaidStock) => kinds.find(({ like }) => isAlike(like, stock));
  for (const from of laid) {
    const offcuts = from.offcuts.map((offcut) => ({ from, offcut }));
    const kind = kindOf(from);
    if (kind === undefined) kinds.push({ like: from, offcuts });
    else kind.offcuts.push(...offcuts);
  }
  // The smallest first: what is large is kept for something larger.
  for (const { offcuts } of kinds) offcuts.sort((a, b) => areaOf(a.offcut) - areaOf(b.offcut));
  return laid.flatMap((from) => {
    const offcuts = kindOf(from)?.offcuts ?? [];
    return from.pieces.map((piece): Spare => {
      const spare = offcuts.find(({ offcut }) => holds(offcut, piece, piece.piece.blank.mayTurn));
      return { piece: piece.piece, from, ...(spare === undefined ? {} : { spare }) };
    });
  });
}

/** One more of some stock, that any single piece without a spare could be cut from. */
export interface Reserve {
  readonly like: LaidStock;
  readonly covers: readonly PieceToCut[];
}

/**
 * The smallest further purchase after which any one mistake can be made good: of each kind of stock that lacks a spare
 * the smallest in the plan that holds each of the pieces without one. What the plan cuts a piece from holds it.
 */
export function reservesFor(laid: readonly LaidStock[]): readonly Reserve[] {
  const lacking = sparesOf(laid).filter(({ spare }) => spare === undefined);
  const kinds: LaidStock[][] = [];
  for (const from of new Set(lacking.map((each) => each.from))) {
    const kind = kinds.find(([first]) => first !== undefined && isAlike(first, from));
    if (kind === undefined) kinds.push([from]);
    else kind.push(from);
  }
  return kinds.flatMap((kind): readonly Reserve[] => {
    const [first] = kind;
    if (first === undefined) return [];
    const stocks = new Set(kind);
    const own = lacking.filter(({ from }) => stocks.has(from));
    const ids = new Set(own.map(({ piece }) => piece.blank.id));
    const areas = kind.flatMap(({ pieces }) => pieces.filter(({ piece }) => ids.has(piece.blank.id)));
    // What is as long as the longest and as wide as the widest holds each of them.
    const length = areas.reduce((most, area) => most.max(area.length), Length.zero);
    const width = areas.reduce((most, area) => most.max(area.width), Length.zero);
    const [like] = laid
      .filter((stock) => isAlike(stock, first))
      // An offcut of earlier work cannot be bought once more.
      .flatMap((stock) => (stock.offcut === undefined ? [stock] : asSold(stock)))
      .filter((stock) => fitsInto(stock, { length, width }))
      .sort((x, y) => areaOf(x) - areaOf(y));
    return like === undefined ? [] : [{ like, covers: own.map(({ piece }) => piece) }];
  });
}

function asSold(laid: LaidStock): readonly LaidStock[] {
  const { length, width } = laid.stock;
  return length === undefined || width === undefined ? [] : [{ ...laid, length: length.length, width: width.length }];
}

function fitsInto(stock: LaidStock, area: Pick<LaidArea, 'length' | 'width'>): boolean {
  // What is trimmed off a board's ends and edges is no room: what comes before the first piece is trimmed off both ends.
  const along = stock.pieces.reduce((least, piece) => least.min(piece.along), stock.length);
  const across = stock.pieces.reduce((least, piece) => least.min(piece.across), stock.width);
  return (
    area.length.plus(along.times(2)).compare(stock.length) <= 0 &&
    area.width.plus(across.times(2)).compare(stock.width) <= 0
  );
}

function holds(offcut: LaidArea, { length, width }: LaidArea, mayTurn: boolean): boolean {
  const straight = length.compare(offcut.length) <= 0 && width.compare(offcut.width) <= 0;
  return straight || (mayTurn && width.compare(offcut.length) <= 0 && length.compare(offcut.width) <= 0);
}

function isAlike(a: LaidStock, b: LaidStock): boolean {
  const same = a.thickness === undefined ? b.thickness === undefined : b.thickness?.equals(a.thickness) === true;
  return same && a.kind === b.kind && a.stock.name === b.stock.name;
}

function areaOf({ length, width }: Pick<LaidArea, 'length' | 'width'>): number {
  return length.approximateInches * width.approximateInches;
}
