import { type BarPlan, effectiveLengths, type Sizes } from './effective-lengths.ts';
import { FillingSearch } from './filling-search.ts';
import { fillBars, isBetter } from './greedy-filling.ts';
import type { LengthProblem, LengthStep } from './length-problem.ts';
import { PatternProgram } from './pattern-program.ts';
import { relax } from './relaxation.ts';
import { roundings } from './rounding.ts';
import { SeededRandom } from './seeded-random.ts';
import { simpleCostBound } from './simple-bounds.ts';
import { ValueCorrection } from './value-correction.ts';

/**
 * Plans lengths, better and better: a first plan with the first step, then whatever improves it, with a bound that says
 * how good it is. Each step takes some milliseconds; whoever waits stops when he likes. The same problem and seed give the
 * same steps everywhere. Throws a RangeError, with the first step, only where the caller breaks what `LengthProblem` asks.
 */
export function* planLengths(problem: LengthProblem, seed = 1): Generator<LengthStep, void> {
  const { sizes, costUnit, toPlan } = effectiveLengths(problem);
  const search = new LengthSearch(sizes, seed);
  let shown: BarPlan | undefined;
  const step = (done: boolean): LengthStep => {
    const plan = search.best;
    const isNew = plan !== shown;
    shown = plan;
    return {
      ...(isNew ? { plan: toPlan(plan) } : {}),
      bound: search.bound * costUnit,
      done,
      progress: done ? 1 : search.progress,
    };
  };
  yield step(search.isProved);
  if (search.isProved) return;
  for (const _ of search.improve()) yield step(false);
  yield step(true);
}

/** Beyond this many different sizes there is no relaxation: its rows would not fit. */
const MOST_SIZES_RELAXED = 450;

class LengthSearch {
  private readonly sizes: Sizes;
  private readonly available: Float64Array;
  private readonly random: SeededRandom;
  best: BarPlan;
  bound: number;
  progress = 0;

  constructor(sizes: Sizes, seed: number) {
    this.sizes = sizes;
    this.random = new SeededRandom(seed);
    this.available = Float64Array.from(sizes.stocks, ({ available }) => available);
    this.best = fillBars(sizes, sizes.demand, this.available);
    this.bound = simpleCostBound(sizes);
  }

  get isProved(): boolean {
    return this.best.missing === 0 && this.best.cost <= this.bound;
  }

  private offer(plan: BarPlan): void {
    if (isBetter(plan, this.best)) this.best = plan;
  }

  private raise(bound: number): void {
    this.bound = Math.max(this.bound, bound);
  }

  *improve(): Generator<void> {
    const { sizes, available } = this;
    const capacity = sizes.stocks.reduce((most, bar) => Math.max(most, bar.capacity), 0);
    const search = new FillingSearch(sizes.size, capacity);
    const correction = new ValueCorrection(sizes, search, this.random);
    for (let round = 0; round < 4; round += 1) {
      this.offer(correction.next(sizes.demand, available));
      if (this.isProved) return;
      yield;
    }
    if (sizes.size.length > MOST_SIZES_RELAXED) return;
    this.progress = 0.1;
    const patterns = new PatternProgram(sizes, sizes.demand, available);
    for (const { stock, filling } of this.best.bars) patterns.add(stock, filling);
    const relaxed = yield* relax(patterns, search, sizes.demand, available, Number.POSITIVE_INFINITY);
    this.raise(relaxed.bound);
    if (this.isProved) return;
    this.progress = 0.5;
    yield;
    for (const plan of roundings(patterns, correction, sizes.demand, available, this.random)) {
      this.offer(plan);
      if (this.isProved) return;
      yield;
    }
  }
}
