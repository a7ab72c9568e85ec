import { SeededRandom } from '../seeded-random.ts';
import { type FractionalPlan, generatePatterns } from './generate-patterns.ts';
import type { PreparedSheets } from './prepare-sheets.ts';
import { RoundedPlan } from './round-patterns.ts';
import type { StateRecord } from './sheet-state.ts';

/** At so many places of a side can be cut before the table of patterns becomes coarse. */
const MOST_PLACES = 300;

/** Steps on one way to round before the next one is tried. */
const TURNS_PER_ROUNDING = 250;

/** First the fractional plan and its bound, then one whole plan after the other made from it. */
export class PatternSearch {
  private readonly problem: PreparedSheets;
  private readonly areas: Float64Array;
  private readonly step: number;
  private readonly random: SeededRandom;
  private readonly generation: Generator<void, FractionalPlan>;
  private fractional: FractionalPlan | undefined;
  private rounded: RoundedPlan | undefined;
  private turns = 0;
  private roundings = 0;

  /** `raise` is told every lower bound and answers whether nothing better can be found. */
  constructor(
    problem: PreparedSheets,
    areas: Float64Array,
    counts: readonly number[],
    step: number,
    seed: number,
    raise: (bound: number) => boolean,
  ) {
    this.problem = problem;
    this.areas = areas;
    this.step = step;
    this.random = new SeededRandom(seed ^ 0x5bd1e995);
    this.generation = generatePatterns(problem, counts, MOST_PLACES, raise);
  }

  /** False once there is nothing more to do. */
  isAtWork(): boolean {
    if (this.fractional === undefined) return true;
    const { limits } = this.problem;
    const limited = Math.min(limits.longestRip, limits.longestCrosscut, limits.stages) < Number.POSITIVE_INFINITY;
    // The patterns know nothing of limits. Without one that is cut whole they say nothing either.
    return !limited && this.fractional.some(({ amount }) => amount >= 1);
  }

  /** A small step; answers a plan if it found one. */
  run(): StateRecord | undefined {
    if (this.fractional === undefined) {
      const { value, done } = this.generation.next();
      if (done === true) this.fractional = value;
      return undefined;
    }
    if (this.rounded === undefined || this.turns >= TURNS_PER_ROUNDING) {
      const release = this.roundings === 0 ? 0 : 0.1 + 0.4 * this.random.fraction();
      this.rounded = new RoundedPlan(this.problem, this.areas, this.fractional, this.step, this.random, release);
      this.turns = 0;
      this.roundings++;
      return this.rounded.record();
    }
    this.turns++;
    return this.rounded.run(64) ? this.rounded.record() : undefined;
  }
}
