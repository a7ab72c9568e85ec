import { exactCostBound } from './exact-bound.ts';
import type { FillingSearch } from './filling-search.ts';
import type { PatternProgram } from './pattern-program.ts';

/** Finds all patterns that the relaxation needs, and what it costs: a bound for every plan. */

/** Between two of these steps whoever waits may stop. */
const WORK_PER_STEP = 3_000_000;

export interface Relaxed {
  /** Value of the relaxation, in floating point. */
  readonly value: number;
  /** A whole number that no plan can be below, worked out exactly from the prices; 0 if that failed. */
  readonly bound: number;
  /** False if it was given up before no pattern was missing. */
  readonly complete: boolean;
}

/**
 * Adds patterns until none would make the relaxation cheaper. `limits` is how often each size may be in one bar, and
 * `demand` what is to be had. Stops early once the bound cannot rise any more, or reaches `enough`.
 */
export function* relax(
  patterns: PatternProgram,
  search: FillingSearch,
  demand: Int32Array,
  available: Float64Array,
  enough: number,
): Generator<void, Relaxed> {
  const { program, sizes } = patterns;
  const { stocks } = sizes;
  const values = new Float64Array(sizes.size.length);
  let work = 0;
  let complete = false;
  let lowest = 0;
  let bestValues: Float64Array | undefined;
  for (let round = 0; round < 20_000; round += 1) {
    const before = program.work;
    program.cheapen(10_000);
    patterns.copyValues(values);
    search.prepare(values, demand);
    work += search.effort + (program.work - before) * program.rows * program.rows * 2 + program.columns * 10;
    let added = 0;
    let everyExact = true;
    let floating = 0;
    for (let index = 0; index < values.length; index += 1)
      floating += (values[index] as number) * (demand[index] as number);
    let dearness = 1;
    for (let stock = 0; stock < stocks.length; stock += 1) {
      const bar = stocks[stock];
      if (bar === undefined || (available[stock] as number) === 0) continue;
      const { value, filling, most } = search.best(bar.capacity);
      everyExact &&= most === value;
      const worth = patterns.worth(stock);
      if (value > worth + 1e-7 * Math.max(1, bar.cost)) {
        const count = program.columns;
        const column = patterns.add(stock, filling);
        if (program.columns > count) added += 1;
        program.enter(column);
      }
      if (Number.isFinite(available[stock])) floating += (available[stock] as number) * Math.min(0, bar.cost - most);
      else if (bar.cost > 0) dearness = Math.max(dearness, most / bar.cost);
    }
    if (floating / dearness > lowest) {
      lowest = floating / dearness;
      bestValues = values.slice();
    }
    if (added === 0) {
      complete = everyExact;
      break;
    }
    if (
      program.isCovered &&
      (Math.ceil(lowest - 1e-6) >= Math.ceil(program.value - 1e-6) || lowest > enough - 1 + 1e-6)
    )
      break;
    if (work > WORK_PER_STEP) {
      work = 0;
      yield;
    }
  }
  const bound = bestValues === undefined ? 0 : exactCostBound(sizes, search, demand, available, bestValues);
  patterns.copyValues(values);
  return { value: program.value, bound, complete };
}
