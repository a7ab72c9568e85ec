import { exactCostBound } from './exact-bound.ts';
import type { FillingSearch } from './filling-search.ts';
import type { PatternProgram } from './pattern-program.ts';

/** Finds all patterns that the relaxation needs, and what it costs: a bound for every plan. */

/** Between two of these steps whoever waits may stop. */
const WORK_PER_STEP = 3_000_000;
/** Steps of a search for a pattern of use, and of one that makes sure that there is none. */
const QUICK_STEPS = 20_000;
/** Patterns beside the best one that the program may choose from. */
const MORE_PATTERNS = 30;
const MOST_STEPS = 1_000_000;

export interface Relaxed {
  /** A whole number that no plan can be below, worked out exactly from the prices; 0 if that failed. */
  readonly bound: number;
  /** False if it was given up before no pattern was missing. */
  readonly complete: boolean;
  /** The same before it was made sure of, and the worth of each size at which it was found. */
  readonly lowest: number;
  readonly values: Float64Array;
  /** What each kind of stock may hold in value, at most. */
  readonly worth: Float64Array;
}

/**
 * Adds patterns until none would make the relaxation cheaper. `limits` is how often each size may be in one bar, and
 * `demand` what is to be had.
 */
export function* relax(
  patterns: PatternProgram,
  search: FillingSearch,
  demand: Int32Array,
  available: Float64Array,
  until: 'until the bound stands' | 'to the end',
): Generator<void, Relaxed> {
  const { program, sizes } = patterns;
  const { stocks } = sizes;
  const values = new Float64Array(sizes.size.length);
  let thorough = false;
  let work = 0;
  let complete = false;
  let lowest = 0;
  let bestValues: Float64Array | undefined;
  let bestWorths = new Float64Array(stocks.length);
  const worths = new Float64Array(stocks.length);
  const dearest = new Float64Array(stocks.length);
  patterns.ask(demand, available, true);
  for (let round = 0; round < 20_000; round += 1) {
    const before = program.work;
    program.cheapen(10_000);
    patterns.copyValues(values);
    search.prepare(values, demand);
    work += search.effort + (program.work - before) * program.rows * program.rows + program.columns * 10;
    let entered = 0;
    let everyExact = true;
    let dearness = 1;
    for (let stock = 0; stock < stocks.length; stock += 1) {
      const bar = stocks[stock];
      if (bar === undefined || available[stock] === 0) continue;
      const { filling, value, most } = search.best(bar.capacity, thorough ? MOST_STEPS : QUICK_STEPS);
      everyExact &&= most === value;
      dearest[stock] = most;
      if (!Number.isFinite(available[stock]) && bar.cost > 0) dearness = Math.max(dearness, most / bar.cost);
      if (program.enter(patterns.add(stock, filling))) entered += 1;
      for (const other of search.byLongest(bar.capacity, patterns.worth(stock) * (1 + 1e-7), MORE_PATTERNS)) {
        patterns.add(stock, other);
      }
    }
    let bound = 0;
    for (let index = 0; index < values.length; index += 1) {
      bound += ((values[index] as number) / dearness) * (demand[index] as number);
    }
    for (let stock = 0; stock < stocks.length; stock += 1) {
      const bar = stocks[stock];
      const limit = available[stock] as number;
      if (bar === undefined || limit === 0) continue;
      const worth = Number.isFinite(limit) ? Math.max(bar.cost, (dearest[stock] as number) / dearness) : bar.cost;
      if (worth > bar.cost) bound -= limit * (worth - bar.cost);
      worths[stock] = worth;
    }
    if (bound > lowest) {
      lowest = bound;
      bestValues = values.map((value) => value / dearness);
      bestWorths = worths.slice();
    }
    if (entered > 0) thorough = false;
    else if (!everyExact && !thorough) thorough = true;
    else {
      complete = everyExact;
      break;
    }
    const cannotRise = Math.ceil(lowest - 1e-6) >= Math.ceil(patterns.costOf(demand, available) - 1e-6);
    if (until === 'until the bound stands' && program.isCovered && cannotRise) break;
    if (work > WORK_PER_STEP) {
      work = 0;
      patterns.ask(demand, available, false);
      yield;
      patterns.ask(demand, available, true);
    }
  }
  patterns.ask(demand, available, false);
  const bound = bestValues === undefined ? 0 : exactCostBound(sizes, search, demand, available, bestValues);
  return { bound, complete, lowest, values: bestValues ?? values, worth: bestWorths };
}
