import type { OffcutEntry } from '../../design/shop.ts';
import type { Length } from '../../length/length.ts';
import type { LaidArea, LaidPiece, LaidStock } from './laid-stock.ts';
import type { PieceToCut } from './pieces-to-cut.ts';

/** Whether each piece could be cut again from what there is of its own stock, should it be spoiled. */
export interface Spare {
  readonly piece: PieceToCut;
  readonly from: LaidStock;
  /** The smallest that would do of what is left over, or lies unused in the shop; absent where nothing would. */
  readonly spare?: Remainder;
}

export type Remainder =
  | { readonly kind: 'left over'; readonly from: LaidStock; readonly area: RemainderSize }
  | { readonly kind: 'on hand'; readonly offcut: OffcutEntry; readonly area: RemainderSize };

type RemainderSize = Pick<LaidArea, 'length' | 'width'>;

export function sparesOf(laid: readonly LaidStock[]): readonly Spare[] {
  const remainders = new Map<LaidStock, readonly Remainder[]>();
  const known: { readonly like: LaidStock; readonly remainders: readonly Remainder[] }[] = [];
  for (const from of laid) {
    const kind = known.find(({ like }) => isAlike(like, from)) ?? { like: from, remainders: remaindersFor(from, laid) };
    if (!known.includes(kind)) known.push(kind);
    remainders.set(from, kind.remainders);
  }
  return laid.flatMap((from) =>
    from.pieces.map((piece): Spare => {
      const spare = remainders.get(from)?.find(({ area }) => holds(area, piece));
      return { piece: piece.piece, from, ...(spare === undefined ? {} : { spare }) };
    }),
  );
}

/** The smallest first: what is large is kept for something larger. */
function remaindersFor(like: LaidStock, laid: readonly LaidStock[]): readonly Remainder[] {
  const leftOver = laid
    .filter((from) => serves(from, like))
    .flatMap((from) => from.offcuts.map((area): Remainder => ({ kind: 'left over', from, area })));
  return [...leftOver, ...unusedOnHand(like, laid)].sort((a, b) => areaOf(a.area) - areaOf(b.area));
}

/** A thicker board is planed down to a thinner one; sheets are as thick as they are. */
function serves(from: LaidStock, like: LaidStock): boolean {
  if (isAlike(from, like)) return true;
  const isThicker =
    from.thickness !== undefined && like.thickness !== undefined && from.thickness.compare(like.thickness) > 0;
  return from.kind === 'board' && like.kind === 'board' && from.stock.name === like.stock.name && isThicker;
}

/** Offcuts of earlier work that no plan takes. */
function unusedOnHand(like: LaidStock, laid: readonly LaidStock[]): readonly Remainder[] {
  const usual = like.stock.nominal?.length ?? like.stock.actual?.length;
  return (like.stock.offcuts ?? []).flatMap((offcut): readonly Remainder[] => {
    const used = laid.filter((each) => each.offcut === offcut).length;
    const thickness = offcut.thickness?.length ?? usual;
    const isThick =
      like.kind === 'sheet' ||
      (thickness !== undefined && like.thickness !== undefined && thickness.compare(like.thickness) >= 0);
    if (used >= offcut.count || !isThick) return [];
    const { ends, edges } = like.lost;
    const area =
      like.kind === 'sheet'
        ? { length: offcut.length.length, width: offcut.width.length }
        : { length: offcut.length.length.minus(ends.times(2)), width: offcut.width.length.minus(edges.times(2)) };
    return [{ kind: 'on hand', offcut, area }];
  });
}

/** What has to be there to make a piece again: with those it follows, for the grain is to run on. */
export function neededAgain({ length, width, piece, run }: LaidPiece): RemainderSize & { readonly mayTurn: boolean } {
  return run === undefined
    ? { length, width, mayTurn: piece.blank.mayTurn }
    : { length: run.length, width: run.width, mayTurn: run.mayTurn };
}

function holds(area: RemainderSize, piece: LaidPiece): boolean {
  const { length, width, mayTurn } = neededAgain(piece);
  return fits(area, length, width) || (mayTurn && fits(area, width, length));
}

function fits(area: RemainderSize, length: Length, width: Length): boolean {
  return length.compare(area.length) <= 0 && width.compare(area.width) <= 0;
}

export function isAlike(a: LaidStock, b: LaidStock): boolean {
  const same = a.thickness === undefined ? b.thickness === undefined : b.thickness?.equals(a.thickness) === true;
  return same && a.kind === b.kind && a.stock.name === b.stock.name;
}

function areaOf({ length, width }: RemainderSize): number {
  return length.approximateInches * width.approximateInches;
}
