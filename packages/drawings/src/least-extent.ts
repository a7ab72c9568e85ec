import type { Evaluation } from '@fettle/engine';
import { type Chain, elevationChains } from './dimension-chains.ts';
import { captionReach, leastReach } from './dimension-lanes.ts';
import { FIRST_LANE } from './elevation-view.ts';
import { cleanName } from './lettering.ts';
import { realMm } from './shown-lengths.ts';

/**
 * How much room an elevation takes at least, told without laying out anything: most scales that are tried are far too
 * large, above all while a mistake is typed that makes a front as high as a room.
 */

export interface LeastExtent {
  /** In mm on paper. */
  readonly wide: number;
  readonly high: number;
}

/** Sums come out a little otherwise in another order; a view that just fits must not be taken for one that does not. */
const TOLERANCE = 1e-6;

interface Reach {
  readonly low: number;
  readonly high: number;
}

/** With at most so many lanes of dimensions on each side; nothing for a piece without a carcase. */
export function leastExtent(evaluation: Evaluation, lanes: number, factor: number): LeastExtent {
  const outside = evaluation.layout.carcase?.outside;
  if (outside === undefined) return { wide: 0, high: 0 };
  const { above, right, below, left } = elevationChains(evaluation, lanes);
  const onPaper = (of: keyof typeof outside): Reach => ({
    low: realMm(outside[of].start.length) * factor,
    high: realMm(outside[of].end.length) * factor,
  });
  const x = onPaper('x');
  const y = onPaper('y');
  const across = reachOf([...above, ...below], factor, x);
  const standing = [...left, ...right];
  const upright = reachOf(standing, factor, y);
  // What lies below the piece keeps clear of the names of the chains that stand beside it.
  const named = standing.filter(({ caption }) => caption !== '');
  const foot = Math.min(
    y.low,
    ...named.map((chain) => reachOf([chain], factor, undefined).low - captionReach(cleanName(chain.caption))),
  );
  const reach = (chains: readonly Chain[], side: Parameters<typeof leastReach>[1]): number =>
    chains.length === 0 ? 0 : FIRST_LANE + leastReach(chains.length, side);
  return {
    wide:
      Math.max(x.high + reach(right, 'right'), across.high) -
      Math.min(x.low - reach(left, 'left'), across.low) -
      TOLERANCE,
    high:
      Math.max(y.high + reach(above, 'above'), upright.high) -
      Math.min(foot - reach(below, 'below'), upright.low) -
      TOLERANCE,
  };
}

/** From the lowest end of a line of dimensions to the highest, and of `also`. */
function reachOf(chains: readonly Chain[], factor: number, also: Reach | undefined): Reach {
  let low = also?.low ?? Number.POSITIVE_INFINITY;
  let high = also?.high ?? Number.NEGATIVE_INFINITY;
  for (const { stretches } of chains) {
    for (const { start, end } of stretches) {
      low = Math.min(low, realMm(start) * factor);
      high = Math.max(high, realMm(end) * factor);
    }
  }
  return { low, high };
}
