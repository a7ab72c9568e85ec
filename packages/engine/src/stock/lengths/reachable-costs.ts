import type { Sizes } from './effective-lengths.ts';

/** Costs above this are not listed one by one. */
const MOST_COST = 4_000_000;

/** The highest cost below `cost` that some choice of the stock has; -1 if there is none. */
export function costBelow({ stocks }: Sizes, cost: number): number {
  if (cost > MOST_COST) return cost - 1;
  const isReached = new Uint8Array(cost);
  if (cost > 0) isReached[0] = 1;
  for (const bar of stocks) {
    if (bar.cost === 0 || bar.cost >= cost) continue;
    // How many of this stock the cheapest way to a cost takes; 0 where a cost is reached without it.
    const taken = new Int32Array(cost);
    for (let at = bar.cost; at < cost; at += 1) {
      const before = at - bar.cost;
      if (isReached[at] === 1 || isReached[before] === 0 || (taken[before] as number) >= bar.available) continue;
      isReached[at] = 1;
      taken[at] = (taken[before] as number) + 1;
    }
  }
  return isReached.lastIndexOf(1);
}
