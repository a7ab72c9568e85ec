import type { Sizes } from './effective-lengths.ts';

/** Costs above this are not listed one by one. */
const MOST_COST = 4_000_000;

/** The highest cost below `cost` that some choice of the stock has; -1 if there is none. */
export function costBelow(sizes: Sizes, cost: number): number {
  return cost > MOST_COST ? cost - 1 : reachedUpTo(sizes, cost - 1).lastIndexOf(1);
}

/** The lowest cost from `cost` that some choice of the stock has. */
export function costFrom(sizes: Sizes, cost: number): number {
  if (cost > MOST_COST) return cost;
  const dearest = sizes.stocks.reduce((most, bar) => Math.max(most, bar.cost), 0);
  const next = reachedUpTo(sizes, cost + dearest).indexOf(1, cost);
  return next < 0 ? cost : next;
}

/** For each cost up to `most`, whether some choice of the stock has it. */
function reachedUpTo({ stocks }: Sizes, most: number): Uint8Array {
  const isReached = new Uint8Array(Math.max(0, most + 1));
  if (most >= 0) isReached[0] = 1;
  for (const bar of stocks) {
    if (bar.cost === 0) continue;
    // How many of this stock the first way to a cost takes; 0 where a cost is reached without it.
    const taken = new Int32Array(isReached.length);
    for (let at = bar.cost; at <= most; at += 1) {
      const before = at - bar.cost;
      if (isReached[at] === 1 || isReached[before] === 0 || (taken[before] as number) >= bar.available) continue;
      isReached[at] = 1;
      taken[at] = (taken[before] as number) + 1;
    }
  }
  return isReached;
}
