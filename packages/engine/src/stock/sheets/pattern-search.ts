import { SeededRandom } from '../seeded-random.ts';
import { PatternGeneration } from './generate-patterns.ts';
import type { FractionalPlan, PatternEffort } from './pattern-columns.ts';
import type { PreparedSheets } from './prepare-sheets.ts';
import { RoundedPlan } from './round-patterns.ts';
import type { StateRecord } from './sheet-state.ts';

/** At so many places of a side can be cut before the table of patterns becomes coarse. */
const MOST_PLACES = 300;

/** Steps on one way to round before the next one is tried. */
const TURNS_PER_ROUNDING = 60;

/** The same while the fractional plan is not yet the best. */
const TURNS_ON_THE_WAY = 30;
/** With more blanks better patterns are worth more than that. */
const FEW_BLANKS = 500;

/** New patterns for each step of a dive; on the way it makes do with what is known. */
const OF_A_DIVE: PatternEffort = { rounds: 4, stripRounds: 6, isForBound: false };
const ON_THE_WAY: PatternEffort = { rounds: 0, stripRounds: 0, isForBound: false };
const OF_THE_WHOLE: PatternEffort = {
  rounds: Number.POSITIVE_INFINITY,
  stripRounds: Number.POSITIVE_INFINITY,
  isForBound: true,
};

/** First the fractional plan and its bound, then one whole plan after the other made from it. */
export class PatternSearch {
  private readonly work: Generator<StateRecord | undefined, void> | undefined;
  private over = false;

  /** Whether it finds plans; if not, it only raises the bound. */
  readonly findsPlans: boolean;

  /** `raise` is told every lower bound and answers whether nothing better can be found. */
  constructor(
    problem: PreparedSheets,
    areas: Float64Array,
    step: number,
    seed: number,
    raise: (bound: number) => boolean,
  ) {
    const generation = PatternGeneration.for(problem, MOST_PLACES);
    const { longestRip, longestCrosscut, stages } = problem.limits;
    // The patterns know nothing of limits: with them they are only good for the bound.
    const unlimited = Math.min(longestRip, longestCrosscut, stages) === Number.POSITIVE_INFINITY;
    this.findsPlans = unlimited && generation !== undefined;
    const random = new SeededRandom(seed ^ 0x5bd1e995);
    this.over = generation === undefined;
    this.work =
      generation === undefined
        ? undefined
        : searchPatterns(problem, generation, this.findsPlans, areas, step, random, raise);
  }

  /** False once there is nothing more to do. */
  isAtWork(): boolean {
    return !this.over;
  }

  /** A small step; answers a plan if it found one. */
  run(): StateRecord | undefined {
    const next = this.work?.next();
    this.over = next === undefined || next.done === true;
    return next?.value ?? undefined;
  }
}

function* searchPatterns(
  problem: PreparedSheets,
  generation: PatternGeneration,
  findsPlans: boolean,
  areas: Float64Array,
  step: number,
  random: SeededRandom,
  raise: (bound: number) => boolean,
): Generator<StateRecord | undefined, void> {
  const asked = Int32Array.from(problem.types, ({ count }) => count);
  const blanks = asked.reduce((sum, count) => sum + count, 0);
  const solving = generation.solve(asked, OF_THE_WHOLE, raise);
  let solved = solving.next();
  while (solved.done !== true) {
    yield undefined;
    if (solved.value !== undefined && findsPlans && isRepetitive(solved.value)) {
      const plan = new RoundedPlan(problem, areas, solved.value, random, 0);
      yield* asSteps(plan.dive(generation, ON_THE_WAY, random));
      yield plan.record();
      if (blanks <= FEW_BLANKS) yield* improved(plan, step, random, TURNS_ON_THE_WAY);
    }
    solved = solving.next();
  }
  if (!findsPlans || !isRepetitive(solved.value)) return;
  for (let rounding = 0; ; rounding++) {
    const release = rounding === 0 ? 0 : 0.1 + 0.4 * random.fraction();
    const plan = new RoundedPlan(problem, areas, solved.value, random, release);
    yield* asSteps(plan.dive(generation, OF_A_DIVE, random));
    yield plan.record();
    yield* improved(plan, step, random, TURNS_PER_ROUNDING);
  }
}

function* improved(
  plan: RoundedPlan,
  step: number,
  random: SeededRandom,
  turns: number,
): Generator<StateRecord | undefined, void> {
  const improver = plan.improver(step, random.below(2 ** 30));
  for (let turn = 0; turn < turns; turn++) {
    if (!improver.run(64)) yield undefined;
    else {
      plan.adopt(improver.best);
      yield plan.record();
    }
  }
}

/** Whether some pattern is cut more than once: if not, the fractional plan says nothing of whole ones. */
function isRepetitive(plan: FractionalPlan): boolean {
  return plan.some(({ amount }) => amount >= 1);
}

function* asSteps(work: Generator<void, void>): Generator<undefined, void> {
  while (work.next().done !== true) yield undefined;
}
