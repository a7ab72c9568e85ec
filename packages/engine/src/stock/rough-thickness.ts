import { Length } from '../length/length.ts';
import { HARDWOOD_THICKNESSES, type LumberSize, SOFTWOOD_THICKNESSES } from '../tables/lumber-thickness.ts';

/** Which thickness to buy for a finished one. */

export type LumberKind = 'hardwood' | 'softwood';

/**
 * The thinnest lumber that, surfaced as usual, still has the finished thickness; undefined if the thickest has not. Careful
 * work can get more out of a flat board than the table promises: then one size thinner may do.
 */
export function roughThicknessFor(finished: Length, kind: LumberKind): LumberSize | undefined {
  return sizesOf(kind).find(({ surfaced }) => surfaced.compare(finished) >= 0);
}

/** What is left of the thickest lumber when it is surfaced. */
export function thickestSurfaced(kind: LumberKind): Length {
  return sizesOf(kind).reduce((thickest, { surfaced }) => thickest.max(surfaced), Length.zero);
}

function sizesOf(kind: LumberKind): readonly LumberSize[] {
  return kind === 'hardwood' ? HARDWOOD_THICKNESSES : SOFTWOOD_THICKNESSES;
}
