import type { BarPlan, FilledBar, Filling, Sizes } from './effective-lengths.ts';

/** Plans at once: bar after bar, each filled with the largest that still fits, on the stock on which that costs least. */

/** Takes what goes into `capacity`, largest first, out of `demand`, which it leaves as it is. */
export function fillLargestFirst(sizes: Sizes, demand: Int32Array, capacity: number, from = 0): Filling {
  const { size } = sizes;
  const filling: number[] = [];
  let rest = capacity;
  const smallest = size[size.length - 1] as number;
  for (let index = from; index < size.length && rest >= smallest; index += 1) {
    const waiting = demand[index] as number;
    const length = size[index] as number;
    if (waiting === 0 || length > rest) continue;
    const count = Math.min(waiting, Math.floor(rest / length));
    filling.push(index, count);
    rest -= count * length;
  }
  return filling;
}

export function lengthOf(sizes: Sizes, filling: Filling): number {
  let sum = 0;
  for (let at = 0; at < filling.length; at += 2) {
    sum += (sizes.size[filling[at] as number] as number) * (filling[at + 1] as number);
  }
  return sum;
}

/** How often a filling can be taken out of a demand. */
export function timesIn(demand: Int32Array, filling: Filling): number {
  let times = Number.POSITIVE_INFINITY;
  for (let at = 0; at < filling.length; at += 2) {
    times = Math.min(times, Math.floor((demand[filling[at] as number] as number) / (filling[at + 1] as number)));
  }
  return times;
}

export function takeFilling(demand: Int32Array, filling: Filling, times: number): void {
  for (let at = 0; at < filling.length; at += 2) {
    const index = filling[at] as number;
    demand[index] = (demand[index] as number) - times * (filling[at + 1] as number);
  }
}

/** How a bar's content is chosen: out of what waits, from the largest size that waits on, for one kind of stock. */
export type ChooseFilling = (demand: Int32Array, largest: number, stock: number) => Filling;

/**
 * Bar after bar until nothing waits or the stock is used up. Every bar takes the largest size that waits, so that long
 * stock goes to long pieces. `waiting` and `available` are what there is at the start; both are left as they are.
 */
export function fillBars(
  sizes: Sizes,
  waiting: Int32Array,
  available: Float64Array,
  choose: ChooseFilling = (demand, largest, stock) =>
    fillLargestFirst(sizes, demand, sizes.stocks[stock]?.capacity ?? 0, largest),
): BarPlan {
  const { size, stocks } = sizes;
  const demand = waiting.slice();
  const free = available.slice();
  const bars: FilledBar[] = [];
  let missing = 0;
  for (let largest = 0; largest < size.length; ) {
    if ((demand[largest] as number) <= 0) {
      largest += 1;
      continue;
    }
    let best: FilledBar | undefined;
    let bestRate = Number.POSITIVE_INFINITY;
    for (let stock = 0; stock < stocks.length; stock += 1) {
      const bar = stocks[stock];
      if (bar === undefined || (free[stock] as number) === 0 || bar.capacity < (size[largest] as number)) continue;
      const filling = choose(demand, largest, stock);
      const rate = bar.cost / lengthOf(sizes, filling);
      if (rate < bestRate) {
        bestRate = rate;
        best = { stock, filling, times: Math.min(free[stock] as number, timesIn(demand, filling)) };
      }
    }
    if (best === undefined) {
      missing += (demand[largest] as number) * (size[largest] as number);
      largest += 1;
      continue;
    }
    bars.push(best);
    takeFilling(demand, best.filling, best.times);
    free[best.stock] = (free[best.stock] as number) - best.times;
  }
  return onCheapestStock(sizes, available, { bars, cost: 0, missing });
}

/** Moves what is cut to cheaper stock that can hold it, and adds up what it costs. */
export function onCheapestStock(sizes: Sizes, available: Float64Array, plan: BarPlan): BarPlan {
  const { stocks } = sizes;
  const free = available.slice();
  for (const { stock, times } of plan.bars) free[stock] = (free[stock] as number) - times;
  const bars: FilledBar[] = [];
  const dearest = [...plan.bars].sort((a, b) => (stocks[b.stock]?.cost ?? 0) - (stocks[a.stock]?.cost ?? 0));
  const byCost = stocks.map((_, stock) => stock).sort((a, b) => (stocks[a]?.cost ?? 0) - (stocks[b]?.cost ?? 0));
  let cost = 0;
  for (const { stock, filling, times } of dearest) {
    const long = lengthOf(sizes, filling);
    let rest = times;
    for (const other of byCost) {
      if (rest === 0 || (stocks[other]?.cost ?? 0) >= (stocks[stock]?.cost ?? 0)) break;
      const moved = (stocks[other]?.capacity ?? 0) < long ? 0 : Math.min(rest, free[other] as number);
      if (moved === 0) continue;
      bars.push({ stock: other, filling, times: moved });
      free[other] = (free[other] as number) - moved;
      free[stock] = (free[stock] as number) + moved;
      rest -= moved;
    }
    if (rest > 0) bars.push({ stock, filling, times: rest });
  }
  for (const { stock, times } of bars) cost += times * (stocks[stock]?.cost ?? 0);
  return { bars, cost, missing: plan.missing };
}

/** Which of two plans is to be preferred: first the one that places more, then the cheaper. */
export function isBetter(plan: BarPlan, than: BarPlan | undefined): boolean {
  if (than === undefined) return true;
  return plan.missing === than.missing ? plan.cost < than.cost : plan.missing < than.missing;
}
