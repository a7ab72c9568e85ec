import { groupedBy } from '../../grouping.ts';
import type { LengthPlan, LengthProblem, Pieces, StockLength } from './length-problem.ts';

/**
 * The problem as the search sees it. With the kerf added to every piece and to every stock a plan needs no cuts between
 * pieces; equal lengths become one size with a demand; everything is divided by what all sizes have in common.
 */
export interface Sizes {
  /** Falling, each once. */
  readonly size: Float64Array;
  /** How many of each, at least 1. */
  readonly demand: Int32Array;
  /** Kinds of stock that can hold at least the smallest size, in the order of the problem. */
  readonly stocks: readonly Bar[];
}

/** A kind of stock, in the units of `Sizes`. */
export interface Bar {
  readonly capacity: number;
  /** Divided by what all costs have in common. */
  readonly cost: number;
  /** Infinity if there is no limit. */
  readonly available: number;
  readonly is: StockLength;
}

/** Indexes into `Sizes.size` and how many of each, one after the other: [size, count, size, count, …], sizes falling. */
export type Filling = readonly number[];

export interface FilledBar {
  readonly stock: number;
  readonly filling: Filling;
  readonly times: number;
}

/** A plan in the search's own terms. */
export interface BarPlan {
  readonly bars: readonly FilledBar[];
  readonly cost: number;
  /** How much of the sizes has no place, as the sum of their lengths. */
  readonly missing: number;
}

export interface Effective {
  readonly sizes: Sizes;
  /** One unit of `Bar.cost` in the problem's money. */
  readonly costUnit: number;
  readonly toPlan: (plan: BarPlan) => LengthPlan;
}

/** Throws a RangeError where the caller breaks what `LengthProblem` promises; items that no stock can hold are no such case. */
export function effectiveLengths(problem: LengthProblem): Effective {
  const { kerf, trim } = problem;
  demandWhole(kerf, 0, 'kerf');
  demandWhole(trim, 0, 'trim');
  for (const { length, cost, available } of problem.stocks) {
    demandWhole(length, 1, 'length of stock');
    demandWhole(cost, 0, 'cost of stock');
    if (available !== undefined) demandWhole(available, 0, 'number of stock');
  }
  for (const { count } of problem.items) demandWhole(count, 0, 'number of pieces');

  const usable = problem.stocks.filter(({ length, available }) => length > trim && available !== 0);
  const longest = usable.reduce((most, { length }) => Math.max(most, length - trim), 0);
  const impossible = problem.items.filter(({ length }) => !fits(length, longest));
  const items = problem.items.filter(({ length, count }) => fits(length, longest) && count > 0);
  const byLength = groupedBy(items, ({ length }) => length);
  const lengths = [...byLength.keys()].sort((a, b) => b - a);
  const unit = Math.max(
    1,
    lengths.reduce((common, length) => greatestCommonDivisor(common, length + kerf), 0),
  );
  const costUnit = Math.max(
    1,
    usable.reduce((common, { cost }) => greatestCommonDivisor(common, cost), 0),
  );
  const size = Float64Array.from(lengths, (length) => (length + kerf) / unit);
  const demand = Int32Array.from(lengths, (length) =>
    (byLength.get(length) ?? []).reduce((sum, { count }) => sum + count, 0),
  );
  const smallest = size[size.length - 1] ?? 1;
  const stocks: readonly Bar[] = usable
    .map((is) => ({
      capacity: Math.floor((is.length - trim + kerf) / unit),
      cost: is.cost / costUnit,
      available: is.available ?? Number.POSITIVE_INFINITY,
      is,
    }))
    .filter(({ capacity }) => capacity >= smallest);

  const toPlan = (plan: BarPlan): LengthPlan => {
    const waiting = lengths.map((length) => (byLength.get(length) ?? []).map(({ id, count }) => ({ id, count })));
    const take = (index: number, count: number): readonly Pieces[] => takeFrom(waiting[index] ?? [], count);
    const cuts = plan.bars.flatMap(({ stock, filling, times }) => {
      const bar = stocks[stock]?.is;
      if (bar === undefined) return [];
      let used = 0;
      for (let at = 0; at < filling.length; at += 2) {
        used += (filling[at + 1] ?? 0) * ((lengths[filling[at] ?? 0] ?? 0) + kerf);
      }
      const left = Math.max(0, bar.length - trim - used);
      return alike(times, () =>
        filling.flatMap((index, at) => (at % 2 === 0 ? take(index, filling[at + 1] ?? 0) : [])),
      ).map((same) => ({ stock: bar.id, times: same.times, pieces: same.pieces, left }));
    });
    const unplaced = [
      ...impossible.filter(({ count }) => count > 0).map(({ id, count }) => ({ item: id, count })),
      ...waiting.flatMap((items) => takeFrom(items, Number.POSITIVE_INFINITY)),
    ];
    return { cuts, unplaced, cost: plan.cost * costUnit };
  };
  return { sizes: { size, demand, stocks }, costUnit, toPlan };
}

function fits(length: number, longest: number): boolean {
  return Number.isSafeInteger(length) && length > 0 && length <= longest;
}

function demandWhole(value: number, least: number, what: string): void {
  if (!Number.isSafeInteger(value) || value < least)
    throw new RangeError(`${what}: ${value} is not a whole number from ${least}`);
}

/** Of two whole numbers, not negative; zero has everything in common. */
export function greatestCommonDivisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}

function takeFrom(items: { id: string; count: number }[], count: number): readonly Pieces[] {
  const taken: Pieces[] = [];
  let wanted = count;
  while (wanted > 0) {
    const first = items[0];
    if (first === undefined) break;
    const some = Math.min(wanted, first.count);
    taken.push({ item: first.id, count: some });
    wanted -= some;
    first.count -= some;
    if (first.count === 0) items.shift();
  }
  return taken;
}

/** Makes `times` lists of pieces and joins those that follow each other and are the same. */
function alike(times: number, make: () => readonly Pieces[]): readonly { pieces: readonly Pieces[]; times: number }[] {
  const made: { pieces: readonly Pieces[]; times: number; key: string }[] = [];
  for (let index = 0; index < times; index += 1) {
    const pieces = make();
    const key = JSON.stringify(pieces);
    const last = made.at(-1);
    if (last !== undefined && last.key === key) last.times += 1;
    else made.push({ pieces, times: 1, key });
  }
  return made;
}
