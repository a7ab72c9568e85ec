import type { Slab } from './visible-edges.ts';

type Extent = Pick<Slab, 'x0' | 'x1' | 'y0' | 'y1'>;

/**
 * What fronts that lap a stile or a rail leave of its width, over its whole length: a mark there stands on no edge of a
 * door. The whole of it where less than `least` would be left.
 */
export function clearOfFronts(slab: Extent, fronts: readonly Extent[], least: number): Extent {
  const isUpright = slab.y1 - slab.y0 > slab.x1 - slab.x0;
  const [low, high] = isUpright ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const);
  let [from, to] = [slab[low], slab[high]];
  for (const front of fronts) {
    const meets = front.x0 < slab.x1 && slab.x0 < front.x1 && front.y0 < slab.y1 && slab.y0 < front.y1;
    if (!meets) continue;
    const [reachesLow, reachesHigh] = [front[low] <= slab[low], front[high] >= slab[high]];
    // One that lies across the whole width, or within it, leaves no strip that runs on.
    if (reachesLow === reachesHigh) continue;
    if (reachesLow) from = Math.max(from, front[high]);
    else to = Math.min(to, front[low]);
  }
  return to - from >= least ? { ...slab, [low]: from, [high]: to } : slab;
}
