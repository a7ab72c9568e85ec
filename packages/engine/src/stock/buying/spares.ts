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
  return laid.flatMap((from) =>
    from.pieces.map((piece): Spare => {
      const fitting = laid
        .filter((other) => isAlike(other, from))
        .flatMap((other) => other.offcuts.map((offcut) => ({ from: other, offcut })))
        .filter(({ offcut }) => holds(offcut, piece, piece.piece.blank.mayTurn))
        .sort((a, b) => areaOf(a.offcut) - areaOf(b.offcut));
      const [spare] = fitting;
      return { piece: piece.piece, from, ...(spare === undefined ? {} : { spare }) };
    }),
  );
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
  for (const { from } of lacking) {
    const kind = kinds.find(([first]) => first !== undefined && isAlike(first, from));
    if (kind === undefined) kinds.push([from]);
    else kind.push(from);
  }
  return kinds.flatMap((kind): readonly Reserve[] => {
    const own = lacking.filter(({ from }) => kind.includes(from));
    const placed = own.map(({ piece, from }) => ({ piece, area: from.pieces.find((each) => each.piece === piece) }));
    const [like] = laid
      .filter((stock) => kind[0] !== undefined && isAlike(stock, kind[0]))
      // An offcut of earlier work cannot be bought once more.
      .flatMap((stock) => (stock.offcut === undefined ? [stock] : asSold(stock)))
      .filter((stock) => placed.every(({ area }) => area === undefined || fitsInto(stock, area)))
      .sort((a, b) => areaOf(a) - areaOf(b));
    return like === undefined ? [] : [{ like, covers: own.map(({ piece }) => piece) }];
  });
}

function asSold(laid: LaidStock): readonly LaidStock[] {
  const { length, width } = laid.stock;
  return length === undefined || width === undefined ? [] : [{ ...laid, length: length.length, width: width.length }];
}

function fitsInto(stock: LaidStock, area: LaidArea): boolean {
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
