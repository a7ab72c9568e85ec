import type { Length } from '../length/length.ts';
import { HARDWOOD_THICKNESSES, type LumberSize, SOFTWOOD_THICKNESSES } from '../tables/lumber-thickness.ts';

/** Which thickness to buy for a finished one. */

export type LumberKind = 'hardwood' | 'softwood';

/**
 * The thinnest lumber that, surfaced as usual, still has the finished thickness; undefined if the thickest has not. Careful
 * work can get more out of a flat board than the table promises: then one size thinner may do.
 */
export function roughThicknessFor(finished: Length, kind: LumberKind): LumberSize | undefined {
  const sizes = kind === 'hardwood' ? HARDWOOD_THICKNESSES : SOFTWOOD_THICKNESSES;
  return sizes.find(({ surfaced }) => surfaced.compare(finished) >= 0);
}
