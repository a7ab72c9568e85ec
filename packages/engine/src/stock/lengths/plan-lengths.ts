import { SeededRandom } from '../seeded-random.ts';
import { BarExchanges } from './bar-exchanges.ts';
import { type BarPlan, effectiveLengths, type Sizes } from './effective-lengths.ts';
import { FillingSearch } from './filling-search.ts';
import { fillBars, isBetter } from './greedy-filling.ts';
import { Landmarks, landmarkCounts } from './landmarks.ts';
import type { LengthProblem, LengthStep } from './length-problem.ts';
import { addPool } from './pattern-pool.ts';
import { type Pattern, PatternProgram } from './pattern-program.ts';
import { costBelow, costFrom } from './reachable-costs.ts';
import { moreForWhatWaits, type Relaxed, relax } from './relaxation.ts';
import { roundings } from './rounding.ts';
import { simpleCostBound } from './simple-bounds.ts';
import { ValueCorrection } from './value-correction.ts';
import { type FindMore, type Outcome, type Patience, searchWhole } from './whole-search.ts';

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

/** Beyond this many different sizes there is no relaxation, and beyond so many only one of landmarks: its rows would not fit. */
const MOST_SIZES = 2_000;
const MOST_SIZES_RELAXED = 450;
/** Of more sizes than this plans by corrected values take longer than they are worth before there are prices. */
const MANY_SIZES = 120;
/** Once nothing more is proved, plans by chance: so often, and so many each time. */
const MOST_AGAIN = 30;
const ROUNDS_AGAIN = 24;
const SMALL_TABLE = 400_000;
/** Nodes of a search through whole numbers: in all, and of the first attempt. */
const MOST_NODES = 30_000;
const FIRST_NODES = 300;
/** Each round begins with an attempt that could prove that there is no plan; the others only look for one. */
const ATTEMPTS_IN_ROUND = 6;
/** What of the search is spent on the least cost that is possible, before it is content with anything better. */
const NODES_FOR_LEAST = 1_500;
/** Pieces are moved between bars for some milliseconds, as long as that gets on and when all else is done; less beside the rest. */
const EXCHANGE_WORK = 120_000;
const WORK_BESIDE = 20_000;
const MOST_EXCHANGES_AT_LAST = 150;

class LengthSearch {
  private readonly sizes: Sizes;
  private readonly available: Float64Array;
  private readonly random: SeededRandom;
  private readonly exchange: BarExchanges;
  best: BarPlan;
  bound: number;
  progress = 0;

  constructor(sizes: Sizes, seed: number) {
    this.sizes = sizes;
    this.random = new SeededRandom(seed);
    this.exchange = new BarExchanges(sizes, new SeededRandom(seed ^ 0x2545f491));
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
    while (this.exchange.isGettingOn) {
      this.exchangePieces(EXCHANGE_WORK);
      if (this.isProved) return;
      yield;
    }
    for (const _ of this.byPrices()) {
      this.exchangePieces(WORK_BESIDE);
      if (this.isProved) return;
      yield;
    }
    for (let turn = 0; turn < MOST_EXCHANGES_AT_LAST && this.exchange.isPossible && !this.isProved; turn += 1) {
      this.exchangePieces(EXCHANGE_WORK);
      yield;
    }
  }

  private exchangePieces(work: number): void {
    const plan = this.exchange.run(this.bound, this.best, work);
    if (plan !== undefined) this.offer(plan);
  }

  private *byPrices(): Generator<void> {
    const { sizes, available } = this;
    const capacity = sizes.stocks.reduce((most, bar) => Math.max(most, bar.capacity), 0);
    const search = new FillingSearch(sizes.size, capacity);
    const correction = new ValueCorrection(sizes, search, this.random);
    const known: BarPlan[] = [this.best];
    const areMany = sizes.size.length > MANY_SIZES;
    // They are soon made where the table of fillings is small, and then they save the relaxation many patterns.
    const corrections = areMany && sizes.size.length * capacity > SMALL_TABLE ? 0 : 4;
    for (let round = 0; round < corrections; round += 1) {
      const plan = correction.next(sizes.demand, available);
      known.push(plan);
      this.offer(plan);
      if (this.isProved) return;
      yield;
    }
    if (sizes.size.length > MOST_SIZES) return;
    this.progress = 0.1;
    // The more patterns of use it has at the start, the sooner the relaxation stands.
    let found: readonly Pattern[] = known.flatMap(({ bars }) => bars);
    let relaxed: Relaxed | undefined;
    for (const count of landmarkCounts(sizes.size.length, MOST_SIZES_RELAXED)) {
      const before = this.bound;
      const few = new PatternProgram(sizes, sizes.demand, available, new Landmarks(sizes, count));
      relaxed = yield* this.relaxFrom(few, found, relaxed, search, correction);
      if (relaxed === undefined) return;
      // Of many sizes plans are only made where the bound rose: else what is missing is a plan, and landmarks are too coarse.
      if (this.bound > before || !areMany) yield* this.round(few, correction, 1);
      if (this.isProved) return;
      found = few.found();
    }
    if (sizes.size.length > MOST_SIZES_RELAXED) return;
    const patterns = new PatternProgram(sizes, sizes.demand, available);
    relaxed = yield* this.relaxFrom(patterns, found, relaxed, search, correction);
    if (relaxed === undefined) return;
    this.progress = 0.5;
    yield* this.round(patterns, correction, 12);
    if (!this.isProved) yield* this.settle(patterns, search, relaxed);
    for (let again = 0; again < MOST_AGAIN && !this.isProved; again += 1) {
      const { cost } = this.best;
      patterns.clearBars();
      patterns.ask(sizes.demand, available, false);
      if (!patterns.program.repair(20_000)) patterns.program.restart();
      patterns.program.cheapen(20_000);
      yield* this.round(patterns, correction, ROUNDS_AGAIN);
      if (this.best.cost < cost && !this.isProved) yield* this.settle(patterns, search, relaxed);
    }
  }

  /** The relaxation from patterns that are known, until its bound stands; undefined once the best plan is proved. */
  private *relaxFrom(
    patterns: PatternProgram,
    found: readonly Pattern[],
    before: Relaxed | undefined,
    search: FillingSearch,
    correction: ValueCorrection,
  ): Generator<void, Relaxed | undefined> {
    const { sizes, available } = this;
    for (const { stock, filling } of found) patterns.add(stock, filling);
    const relaxing = relax(patterns, search, sizes.demand, available, 'until the bound stands', before);
    let relaxed = relaxing.next();
    for (let round = 1; relaxed.done !== true; round += 1) {
      // Half-finished prices are good for a plan, too; tried ever more seldom, for they become the same.
      if ((round & (round - 1)) === 0 && round >= 8) {
        yield* this.round(patterns, correction, sizes.size.length > MANY_SIZES ? 1 : 2);
        if (this.isProved) return undefined;
      }
      yield;
      relaxed = relaxing.next();
    }
    this.raise(relaxed.value.bound);
    return this.isProved ? undefined : relaxed.value;
  }

  private *round(patterns: PatternProgram, correction: ValueCorrection, rounds: number): Generator<void> {
    for (const plan of roundings(patterns, correction, this.sizes.demand, this.available, this.random, rounds)) {
      this.offer(plan);
      if (this.isProved) return;
      yield;
    }
  }

  /**
   * Looks for a plan that is cheaper than the best among all patterns that such a plan can use, or proves that there is
   * none: at the relaxation's prices no pattern of it can cost more above its worth than the plan may above the relaxation.
   */
  private *settle(patterns: PatternProgram, search: FillingSearch, before: Relaxed): Generator<void> {
    const { sizes, available } = this;
    const relaxed = yield* relax(patterns, search, sizes.demand, available, 'to the end', before);
    this.raise(relaxed.bound);
    let nodes = 0;
    for (let isAtLeast = true; !this.isProved; ) {
      const isWhole = this.best.missing === 0;
      if (!isWhole && !patterns.program.isCovered) return;
      const below = isWhole ? costBelow(sizes, this.best.cost) : this.highestCost();
      if (below < this.bound) {
        this.raise(this.best.cost);
        return;
      }
      const target = isAtLeast ? Math.min(below, costFrom(sizes, this.bound)) : below;
      const isComplete = addPool(patterns, search, relaxed, available, target);
      yield;
      const most = isAtLeast && target < below ? NODES_FOR_LEAST : MOST_NODES - nodes;
      const findMore = isComplete ? undefined : moreForWhatWaits(patterns, search);
      const { outcome, spent } = yield* this.searchPatiently(patterns, target, most, findMore);
      nodes += spent;
      if (outcome.kind === 'plan' && isBetter(outcome.plan, this.best)) this.best = outcome.plan;
      else if (outcome.kind === 'none' && isComplete) this.raise(target + 1);
      else if (target < below) isAtLeast = false;
      else return;
    }
  }

  /** One attempt after the other, each longer than the one before, because luck in the first decisions counts for much. */
  private *searchPatiently(
    patterns: PatternProgram,
    target: number,
    most: number,
    findMore: FindMore | undefined,
  ): Generator<void, { outcome: Outcome; spent: number }> {
    const { sizes, available } = this;
    patterns.clearBars();
    patterns.program.refresh();
    if (!patterns.program.repair(20_000)) patterns.program.restart();
    patterns.program.cheapen(20_000);
    const root = patterns.program.standing();
    let spent = 0;
    for (let attempt = findMore === undefined ? 0 : 1; ; attempt += 1) {
      const round = Math.floor(attempt / ATTEMPTS_IN_ROUND);
      const place = attempt % ATTEMPTS_IN_ROUND;
      const patience: Patience =
        place === 0
          ? {
              nodes: FIRST_NODES * 3 ** round,
              refusals: Number.POSITIVE_INFINITY,
              order: 'most pressing first',
              chance: round === 0 ? 0 : 0.5,
            }
          : {
              nodes: Math.ceil((FIRST_NODES / 2) * 1.6 ** round),
              refusals: 1 + place,
              order: 'likeliest first',
              chance: 0.3,
            };
      const searching = searchWhole(patterns, sizes.demand, available, target, patience, root, this.random, findMore);
      let step = searching.next();
      for (; step.done !== true; step = searching.next()) {
        spent += 1;
        yield;
      }
      patterns.clearBars();
      if (step.value.kind !== 'gave up' || spent >= most) return { outcome: step.value, spent };
    }
  }
}
