import type { Sizes } from './effective-lengths.ts';

/**
 * Bounds that need no search. Both are made for stock of the greatest capacity: of a dual feasible function f with
 * f(x) at most 1 summed over whatever fits one bar, the sum over all pieces is at most the number of bars. Sources: the
 * bound by thresholds of Martello and Toth (1990); the rounding functions of Fekete and Schepers (2001).
 */

/** Fewest bars of `capacity`; a whole number. */
export function fewestBars(sizes: Sizes, capacity: number): number {
  return Math.max(byLength(sizes, capacity), byThresholds(sizes, capacity), byRounding(sizes, capacity));
}

function byLength({ size, demand }: Sizes, capacity: number): number {
  let sum = 0;
  for (let index = 0; index < size.length; index += 1) sum += (size[index] as number) * (demand[index] as number);
  return Math.ceil(sum / capacity);
}

/** Pieces over capacity - k take a bar each, those over half a bar another each, the rest must fill what these leave. */
function byThresholds({ size, demand }: Sizes, capacity: number): number {
  const count = new Float64Array(size.length + 1);
  const length = new Float64Array(size.length + 1);
  for (let index = 0; index < size.length; index += 1) {
    count[index + 1] = (count[index] as number) + (demand[index] as number);
    length[index + 1] = (length[index] as number) + (demand[index] as number) * (size[index] as number);
  }
  let half = 0;
  while (half < size.length && (size[half] as number) * 2 > capacity) half += 1;
  let best = count[half] as number;
  let alone = half;
  for (let upTo = half; upTo < size.length; upTo += 1) {
    const threshold = size[upTo] as number;
    while (alone > 0 && (size[alone - 1] as number) <= capacity - threshold) alone -= 1;
    const paired = (count[half] as number) - (count[alone] as number);
    const free = paired * capacity - ((length[half] as number) - (length[alone] as number));
    const small = (length[upTo + 1] as number) - (length[half] as number);
    best = Math.max(best, (count[half] as number) + Math.max(0, Math.ceil((small - free) / capacity)));
  }
  return best;
}

/** Sizes become steps of 1/k of a bar: what is not a whole step counts as the step below it, on a scale of k steps. */
function byRounding({ size, demand }: Sizes, capacity: number): number {
  let best = 0;
  const mostSteps = Math.min(100, Math.ceil(capacity / Math.max(1, size[size.length - 1] ?? 1)));
  for (let k = 1; k <= mostSteps; k += 1) {
    let sum = 0;
    for (let index = 0; index < size.length; index += 1) {
      const whole = (size[index] as number) * (k + 1);
      const exact = whole % capacity === 0;
      // Multiplied by k · capacity so that it stays whole.
      const value = exact ? (size[index] as number) * k : Math.floor(whole / capacity) * capacity;
      sum += value * (demand[index] as number);
    }
    best = Math.max(best, Math.ceil(sum / (k * capacity)));
  }
  return best;
}

/**
 * Least cost by length alone, with the stock that is cheapest for its length first, and by the number of bars; whole.
 * What the stock cannot hold is not counted.
 */
export function simpleCostBound(sizes: Sizes): number {
  const { size, demand, stocks } = sizes;
  let rest = 0;
  for (let index = 0; index < size.length; index += 1) rest += (size[index] as number) * (demand[index] as number);
  let byRate = 0;
  for (const bar of [...stocks].sort((a, b) => a.cost * b.capacity - b.cost * a.capacity)) {
    const whole = bar.available * bar.capacity;
    if (rest > whole) {
      byRate += bar.available * bar.cost;
      rest -= whole;
      continue;
    }
    byRate += Math.ceil((rest * bar.cost) / bar.capacity);
    break;
  }
  const capacity = stocks.reduce((most, bar) => Math.max(most, bar.capacity), 0);
  const cheapest = stocks.reduce((least, bar) => Math.min(least, bar.cost), Number.POSITIVE_INFINITY);
  return stocks.length === 0 ? 0 : Math.max(byRate, fewestBars(sizes, capacity) * cheapest);
}
