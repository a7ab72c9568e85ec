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

const ACROSS = [0.25, 0.5, 0.75];
const ALONG = Array.from({ length: 41 }, (_, step) => (step + 0.5) / 41);

/**
 * Whether fronts that lie over a part leave anything of it that a leader could end at. Of a case without a face frame
 * they leave an edge, and a leader to that would be taken to lead to the front.
 */
export function isCoveredByFronts(slab: Extent, fronts: readonly Extent[]): boolean {
  const isUpright = slab.y1 - slab.y0 > slab.x1 - slab.x0;
  const near = fronts.filter(
    (front) => front.x0 < slab.x1 && slab.x0 < front.x1 && front.y0 < slab.y1 && slab.y0 < front.y1,
  );
  const isFree = (along: number): boolean =>
    ACROSS.some((across) => {
      const [wide, high] = isUpright ? [across, along] : [along, across];
      const x = slab.x0 + wide * (slab.x1 - slab.x0);
      const y = slab.y0 + high * (slab.y1 - slab.y0);
      return !near.some((front) => front.x0 < x && x < front.x1 && front.y0 < y && y < front.y1);
    });
  const free = ALONG.map(isFree);
  // What shows through the gap between two fronts is no place for a dot.
  return !free.some((each, at) => each && free[at + 1] === true);
}
