import type { Length } from '../../length/length.ts';

/** Wide parts out of narrow boards. */

export interface GlueUp {
  /** How many staves; 1 if nothing is glued. */
  readonly staves: number;
  /** What each stave is ripped to, its edges not yet jointed. */
  readonly staveWidth: Length;
}

/** More staves than this are a butcher's block, not a panel. */
const MOST_STAVES = 40;

/**
 * The fewest equal staves that make up a width when none may be wider than `widest`; undefined if that takes too many. Each
 * edge that is glued loses `jointing`; the two outer ones lose what the width already has on it.
 */
export function glueUp(width: Length, widest: Length, jointing: Length): GlueUp | undefined {
  if (width.compare(widest) <= 0) return { staves: 1, staveWidth: width };
  for (let staves = 2; staves <= MOST_STAVES; staves += 1) {
    // Between n staves there are n - 1 joints of two edges; shared out so that all staves are equal.
    const lost = jointing.times(2 * (staves - 1));
    const staveWidth = width.plus(lost).dividedBy(staves);
    if (staveWidth.compare(widest) <= 0) return { staves, staveWidth };
  }
  return undefined;
}
