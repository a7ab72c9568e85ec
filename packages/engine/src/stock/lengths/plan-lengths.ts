import { SeededRandom } from '../seeded-random.ts';
import { type BarPlan, effectiveLengths, type Sizes } from './effective-lengths.ts';
import { FillingSearch } from './filling-search.ts';
import { fillBars, isBetter } from './greedy-filling.ts';
import type { LengthProblem, LengthStep } from './length-problem.ts';
import { poolOf } from './pattern-pool.ts';
import { PatternProgram } from './pattern-program.ts';
import { costBelow } from './reachable-costs.ts';
import { relax } from './relaxation.ts';
import { roundings } from './rounding.ts';
import { simpleCostBound } from './simple-bounds.ts';
import { ValueCorrection } from './value-correction.ts';
import { type Outcome, type Patience, searchWhole } from './whole-search.ts';

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
const PATIENCE: readonly Patience[] = [
  { nodes: 300, refusals: 1 },
  { nodes: 1_000, refusals: 3 },
  { nodes: 20_000, refusals: Number.POSITIVE_INFINITY },
];

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

  private highestCost(): number {
    return (
      this.sizes.stocks.reduce((sum, bar) => sum + bar.cost, 0) *
      this.sizes.demand.reduce((sum, count) => sum + count, 0)
    );
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
    const patterns = new PatternProgram(sizes, sizes.demand, available, true);
    for (const { stock, filling } of this.best.bars) patterns.add(stock, filling);
    const relaxed = yield* relax(patterns, search, sizes.demand, available, 'until the bound stands');
    this.raise(relaxed.bound);
    if (this.isProved) return;
    this.progress = 0.5;
    yield;
    for (const plan of roundings(patterns, correction, sizes.demand, available, this.random)) {
      this.offer(plan);
      if (this.isProved) return;
      yield;
    }
    yield* this.settle(patterns, search);
  }

  /**
   * Looks for a plan that is cheaper than the best among all patterns that such a plan can use, or proves that there is
   * none: at the relaxation's prices no pattern of it can cost more above its worth than the plan may above the relaxation.
   */
  private *settle(patterns: PatternProgram, search: FillingSearch): Generator<void> {
    const { sizes, available } = this;
    const relaxed = yield* relax(patterns, search, sizes.demand, available, 'to the end');
    this.raise(relaxed.bound);
    while (!this.isProved) {
      const isWhole = this.best.missing === 0;
      if (!isWhole && !patterns.program.isCovered) return;
      const target = isWhole ? costBelow(sizes, this.best.cost) : this.highestCost();
      if (target < this.bound) {
        if (isWhole) this.raise(this.best.cost);
        return;
      }
      const pool = poolOf(patterns, search, relaxed, available, target);
      yield;
      const outcome = yield* this.searchPatiently(pool.patterns, target);
      if (outcome.kind === 'plan' && isBetter(outcome.plan, this.best)) this.best = outcome.plan;
      else {
        if (outcome.kind === 'none' && pool.isComplete && isWhole) this.raise(this.best.cost);
        return;
      }
    }
  }

  /** At first only where the relaxation leads, then farther and farther away from it. */
  private *searchPatiently(patterns: PatternProgram, target: number): Generator<void, Outcome> {
    const { sizes, available } = this;
    let outcome: Outcome = { kind: 'gave up' };
    for (const patience of PATIENCE) {
      outcome = yield* searchWhole(patterns, sizes.demand, available, target, patience);
      patterns.program.clearBars();
      if (outcome.kind !== 'gave up') break;
    }
    return outcome;
  }
}
