import type { Length } from '../length/length.ts';
import { boundsOf } from './bounds.ts';
import { meets } from './meets.ts';
import type { Solid } from './solid.ts';

/**
 * Which of many solids to compare at all. Plain numbers may only say that two are clearly apart; whatever is nearer
 * than their rounding is left to the exact tests.
 */

/** Positions in the list, the lower one first. */
export type Pair = readonly [number, number];

/** Pairs that share volume, exactly; in the order of their first and then of their second solid. */
export function pairsThatMeet(solids: readonly Solid[]): readonly Pair[] {
  return pairsWithin(solids, 0).filter(([i, j]) => {
    const [one, other] = [solids[i], solids[j]];
    return one !== undefined && other !== undefined && meets(one, other);
  });
}

/**
 * Pairs whose bounds come within `reach` of each other on all three axes. None that does is missing; some that just
 * do not may be among them.
 */
export function pairsNearer(solids: readonly Solid[], reach: Length): readonly Pair[] {
  return pairsWithin(solids, reach.approximateInches);
}

interface RoughBounds {
  readonly index: number;
  readonly lows: readonly [number, number, number];
  readonly highs: readonly [number, number, number];
}

/** More than any rounding of a double for a piece of a mile, and less than a maker can measure. */
const SAFETY = 1e-6;

function pairsWithin(solids: readonly Solid[], reach: number): readonly Pair[] {
  // From left to right: a solid is compared with those before it that reach far enough to the right.
  const sorted = solids.map(roughBounds).sort((a, b) => a.lows[0] - b.lows[0]);
  const room = reach + SAFETY;
  const pairs: Pair[] = [];
  let open: RoughBounds[] = [];
  for (const next of sorted) {
    open = open.filter((before) => before.highs[0] + room > next.lows[0]);
    for (const before of open) {
      if (before.highs[1] + room <= next.lows[1] || next.highs[1] + room <= before.lows[1]) continue;
      if (before.highs[2] + room <= next.lows[2] || next.highs[2] + room <= before.lows[2]) continue;
      pairs.push(before.index < next.index ? [before.index, next.index] : [next.index, before.index]);
    }
    open.push(next);
  }
  return pairs.sort(([i, j], [k, l]) => i - k || j - l);
}

function roughBounds(solid: Solid, index: number): RoughBounds {
  const { x, y, z } = boundsOf(solid);
  return {
    index,
    lows: [x.from.approximateInches, y.from.approximateInches, z.from.approximateInches],
    highs: [x.to.approximateInches, y.to.approximateInches, z.to.approximateInches],
  };
}
