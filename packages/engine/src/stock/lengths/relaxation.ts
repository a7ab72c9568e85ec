import { exactCostBound } from './exact-bound.ts';
import type { FillingSearch } from './filling-search.ts';
import type { PatternProgram } from './pattern-program.ts';
import type { FindMore } from './whole-search.ts';

/** Finds all patterns that the relaxation needs, and what it costs: a bound for every plan. */

/** Between two of these steps whoever waits may stop. */
const WORK_PER_STEP = 3_000_000;
/** Steps of a search for a pattern of use, and of one that makes sure that there is none. */
const QUICK_STEPS = 20_000;
/** Patterns beside the best one that the program may choose from. */
const MORE_PATTERNS = 30;
/** How much of the best one's value they have at least, where patterns are sought away from the program's own prices. */
const NEARLY_BEST = 0.98;
const MOST_STEPS = 1_000_000;
const MOST_PIVOTS = 10_000;
const MOST_PIVOTS_MORE = 2_000;
/**
 * Patterns are sought at prices so far from the program's own, which jump, towards those of the best bound, which do not.
 * A third of the rounds is enough then. Idea: smoothing of dual prices (Wentges 1997; Pessoa et al. 2018), from memory.
 */
const SMOOTHING = 0.4;

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
 * `demand` what is to be had; `known` is what another relaxation of the same has found.
 */
export function* relax(
  patterns: PatternProgram,
  search: FillingSearch,
  demand: Int32Array,
  available: Float64Array,
  until: 'until the bound stands' | 'to the end',
  known?: Relaxed,
): Generator<void, Relaxed> {
  const { program, sizes } = patterns;
  let best = known ?? atEvenRate(patterns, available);
  const corner = new Float64Array(sizes.size.length);
  const values = new Float64Array(sizes.size.length);
  let thorough = false;
  let missed = 0;
  let work = 0;
  let complete = false;
  const pivotsOfAStep = Math.ceil(WORK_PER_STEP / program.rows ** 2);
  patterns.ask(demand, available, true);
  for (let round = 0; round < 20_000; round += 1) {
    const before = program.work;
    for (let left = MOST_PIVOTS; left > 0 && !program.cheapen(pivotsOfAStep); left -= pivotsOfAStep) {
      patterns.ask(demand, available, false);
      yield;
      patterns.ask(demand, available, true);
    }
    patterns.copyValues(corner);
    const smoothing = thorough || missed > 0 ? 0 : SMOOTHING;
    for (let index = 0; index < values.length; index += 1) {
      values[index] = smoothing * (best.values[index] as number) + (1 - smoothing) * (corner[index] as number);
    }
    search.prepare(values, demand);
    const dearest = new Float64Array(sizes.stocks.length);
    let added = 0;
    let everyExact = true;
    for (let stock = 0; stock < sizes.stocks.length; stock += 1) {
      const bar = sizes.stocks[stock];
      if (bar === undefined || available[stock] === 0) continue;
      const { filling, value, most } = search.best(bar.capacity, thorough ? MOST_STEPS : QUICK_STEPS);
      everyExact &&= most === value;
      dearest[stock] = most;
      if (patterns.addIfWanted(stock, filling)) added += 1;
      const least = smoothing === 0 ? patterns.worth(stock) * (1 + 1e-7) : value * NEARLY_BEST;
      for (const other of search.byLongest(bar.capacity, least, MORE_PATTERNS)) {
        if (patterns.addIfWanted(stock, other)) added += 1;
      }
    }
    work += search.effort + (program.work - before) * program.rows * program.rows + program.columns * 10;
    const priced = boundAt(patterns, values, dearest, demand, available);
    if (priced.lowest > best.lowest) best = priced;
    if (added > 0) {
      thorough = false;
      missed = 0;
    } else if (smoothing > 0) missed += 1;
    else if (!everyExact && !thorough) thorough = true;
    else {
      complete = everyExact;
      break;
    }
    const cannotRise = Math.ceil(best.lowest - 1e-6) >= Math.ceil(patterns.costOf(demand, available) - 1e-6);
    if (until === 'until the bound stands' && program.isCovered && cannotRise) break;
    if (work > WORK_PER_STEP) {
      work = 0;
      patterns.ask(demand, available, false);
      yield;
      patterns.ask(demand, available, true);
    }
  }
  patterns.ask(demand, available, false);
  const bound = best.lowest > 0 ? exactCostBound(sizes, search, demand, available, best.values) : 0;
  return { ...best, bound, complete };
}

/** Rounds of looking for patterns for what waits; what they do not bring is left. */
const MOST_ROUNDS_MORE = 12;

/** Looks for patterns for what is left of the demand, in the middle of a search through whole numbers. */
export function moreForWhatWaits(patterns: PatternProgram, search: FillingSearch): FindMore {
  const { program, sizes } = patterns;
  const values = new Float64Array(sizes.size.length);
  const dearest = new Float64Array(sizes.stocks.length);
  return (waiting, free, room) => {
    const limits = waiting.map((count) => Math.max(0, count));
    for (let round = 0; round < MOST_ROUNDS_MORE; round += 1) {
      program.cheapen(MOST_PIVOTS_MORE);
      if (program.isCovered && program.value <= room) return true;
      patterns.copyValues(values);
      search.prepare(values, limits);
      let added = 0;
      dearest.fill(0);
      for (let stock = 0; stock < sizes.stocks.length; stock += 1) {
        const bar = sizes.stocks[stock];
        if (bar === undefined || (free[stock] as number) <= 0) continue;
        const { filling, most } = search.best(bar.capacity, QUICK_STEPS);
        dearest[stock] = most;
        if (patterns.addIfWanted(stock, filling)) added += 1;
        for (const other of search.byLongest(bar.capacity, patterns.worth(stock) * (1 + 1e-7), MORE_PATTERNS)) {
          if (patterns.addIfWanted(stock, other)) added += 1;
        }
      }
      if (added === 0 || boundAt(patterns, values, dearest, limits, free).lowest > room) return false;
    }
    return false;
  };
}

type Priced = Pick<Relaxed, 'lowest' | 'values' | 'worth'>;

/** Every length worth what it takes of the stock that is cheapest for its length; no bound is known of it yet. */
function atEvenRate({ sizes }: PatternProgram, available: Float64Array): Priced {
  const isPlenty = sizes.stocks.some((_, stock) => !Number.isFinite(available[stock]));
  const rate = sizes.stocks.reduce((least, { cost, capacity }, stock) => {
    const counts = !isPlenty || !Number.isFinite(available[stock]);
    return counts ? Math.min(least, cost / capacity) : least;
  }, Number.POSITIVE_INFINITY);
  return { lowest: 0, values: sizes.size.map((length) => length * rate), worth: new Float64Array(sizes.stocks.length) };
}

/** The bound at given values, `dearest` being what each kind of stock can hold at most; the values made so small that it holds. */
function boundAt(
  { sizes: { stocks } }: PatternProgram,
  values: Float64Array,
  dearest: Float64Array,
  demand: Int32Array,
  available: Float64Array,
): Priced {
  const dearness = stocks.reduce(
    (most, { cost }, stock) =>
      Number.isFinite(available[stock]) || cost === 0 ? most : Math.max(most, (dearest[stock] as number) / cost),
    1,
  );
  const small = values.map((value) => value / dearness);
  let lowest = small.reduce((sum, value, index) => sum + value * (demand[index] as number), 0);
  const worth = new Float64Array(stocks.length);
  stocks.forEach(({ cost }, stock) => {
    const limit = available[stock] as number;
    if (limit === 0) return;
    worth[stock] = Number.isFinite(limit) ? Math.max(cost, (dearest[stock] as number) / dearness) : cost;
    if ((worth[stock] as number) > cost) lowest -= limit * ((worth[stock] as number) - cost);
  });
  return { lowest, values: small, worth };
}
