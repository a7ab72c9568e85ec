import type { Stock } from '../../design/shop.ts';
import { Length } from '../../length/length.ts';
import { sizeOfBlank } from '../blank.ts';
import type { PieceToCut } from './pieces-to-cut.ts';

/** Strips of one stock and one section: how long they are together. */
export interface EdgingToCut {
  readonly stock: Stock;
  /** Across the edge, and outwards from it. */
  readonly width: Length;
  readonly thickness: Length;
  readonly strips: number;
  /** Of all strips, as long as they are in the end. */
  readonly length: Length;
  /** The longest of them. */
  readonly longest: Length;
  /** They are ripped from boards that are bought for it; otherwise it is bought by its length. */
  readonly isFromBoards: boolean;
  /** Ids of the parts whose edges they go on. */
  readonly parts: readonly string[];
}

/** Boards that say how large they are can be planned; anything else is bought by its length. */
export function isBoughtByLength({ what, stock }: PieceToCut): boolean {
  if (what !== 'edging' || stock === undefined) return false;
  return stock.form === 'sheet' || stock.width === undefined || stock.length === undefined;
}

export function edgingToCut(pieces: readonly PieceToCut[]): readonly EdgingToCut[] {
  const groups = new Map<string, EdgingToCut>();
  for (const piece of pieces) {
    const { what, stock, thickness: width, blank, part } = piece;
    if (what !== 'edging' || stock === undefined) continue;
    const { width: thickness, length } = sizeOfBlank(blank);
    const key = JSON.stringify([stock.name, stock.origin, width.exactInches, thickness.exactInches]);
    const known = groups.get(key);
    groups.set(key, {
      stock,
      width,
      thickness,
      strips: (known?.strips ?? 0) + 1,
      length: (known?.length ?? Length.zero).plus(length),
      longest: known?.longest.max(length) ?? length,
      isFromBoards: !isBoughtByLength(piece),
      parts: [...new Set([...(known?.parts ?? []), part.id])],
    });
  }
  return [...groups.values()];
}
