import { CoveringProgram } from '../covering-program.ts';
import { BestPatterns } from './best-patterns.ts';
import { cell, realCell } from './cells.ts';
import { leastCost } from './cost-bound.ts';
import { BEHIND, SIDE_BY_SIDE } from './cutting-forest.ts';
import {
  type FractionalPlan,
  firstColumn,
  type PatternColumn,
  type PatternEffort,
  planOf,
  type StandingPatterns,
} from './pattern-columns.ts';
import { countBlanks } from './pattern-nodes.ts';
import type { PreparedSheets } from './prepare-sheets.ts';
import { StripPatterns } from './strip-patterns.ts';

/** The table's prices are whole numbers of this fraction of the dearest sheet, so that its sums are exact. */
const PRICE_UNITS = 2 ** 32;

/** Programs larger than this take longer than they are worth. */
const MOST_TYPES = 220;
const MOST_PATTERNS = 6_000;
const MOST_PIVOTS = 5_000;

/** What a row that is not covered costs, in dearest sheets. */
const PENALTY = 1_000;

/** A pattern enters for more than this share of its cost: less is a rounding error. */
const LEAST_GAIN = 2e-7;

/**
 * Prices that leap about call for patterns that are of no use in the end. The table is therefore filled at prices between
 * those of the program and those of the best bound, this much nearer to the latter.
 */
const MOST_SMOOTHING = 0.6;

/**
 * While patterns of strips are sought there are plans on the way: when the program has become hardly cheaper for some rounds,
 * but cheaper than at the last plan.
 */
const ROUNDS_BETWEEN_LOOKS = 6;
const SLOW = 0.98;
const WORTH_A_PLAN = 0.97;

/** Of each filling of the strips' tables, for each kind of sheet. */
const PATTERNS_OF_STRIPS = 8;

/** As many sums as it takes to read a pattern of strips out of its tables. */
const WORK_OF_A_PATTERN = 20_000;

/** So many sums between two pauses. */
const WORK_PER_STEP = 600_000;

/**
 * The strips' tables are filled at prices that follow those of the program by this share of the way only, and patterns worth
 * so much of their cost at such prices are looked at.
 */
const STEADINESS = 0.5;
const WORTH_A_LOOK = 0.9;

/** At the prices of a bound: what the blanks that are asked are worth, and what a sheet of each kind holds at most. */
export interface HeldInWorth {
  readonly total: number;
  readonly bests: readonly number[];
}

/**
 * Column generation: patterns that are worth more than their sheet costs enter the linear program until there are none.
 * Patterns of strips come first, for they are soon found; then a table for all guillotine patterns tells what is missing
 * and gives bounds. Every pattern is kept and tried again before new ones are sought.
 */
export class PatternGeneration {
  private readonly problem: PreparedSheets;
  /** Missing if there are too many places to cut at: then there is no bound. */
  private readonly table: BestPatterns | undefined;
  private readonly strips: readonly StripPatterns[];
  private readonly costs: Float64Array;
  /** The pattern with which a type begins; none if only sheets that may run out hold it. */
  private readonly first: readonly (PatternColumn | undefined)[];
  private readonly pool: PatternColumn[] = [];
  private work = 0;

  /** Undefined if the problem is too large for it, or sheets cost nothing. */
  static for(problem: PreparedSheets, mostPlaces: number): PatternGeneration | undefined {
    const { kinds, types } = problem;
    const isFree = kinds.some(({ cost, available }) => cost === 0 && available === Number.POSITIVE_INFINITY);
    const costsNothing = kinds.every(({ cost }) => cost === 0);
    if (types.length === 0 || types.length > MOST_TYPES || isFree || costsNothing) return undefined;
    return new PatternGeneration(problem, BestPatterns.for(problem, mostPlaces));
  }

  private constructor(problem: PreparedSheets, table: BestPatterns | undefined) {
    this.problem = problem;
    this.table = table;
    const places = table?.exact === true ? table.places : undefined;
    this.strips = [
      StripPatterns.for(problem, SIDE_BY_SIDE, places),
      StripPatterns.for(problem, BEHIND, places && { across: places.along, along: places.across }),
    ];
    const dearest = Math.max(...problem.kinds.map(({ cost }) => cost));
    this.costs = Float64Array.from(problem.kinds, ({ cost }) => cost / dearest);
    this.first = problem.types.map((_, type) => firstColumn(problem, type));
  }

  /**
   * The fractional plan for `asked` blanks of each type, with at most so much effort. Every filling of the table
   * gives a lower bound, which `raise` is told and may end the work by answering true: with any prices that are not
   * negative, the blanks' worth cannot exceed that of the sheets' best patterns (A. A. Farley, A note on bounding a class
   * of linear programming problems, Operations Research 38(5), 1990). The plan on the way is yielded now and then.
   */
  *solve(
    asked: Int32Array,
    { rounds, stripRounds: mostStripRounds, isForBound }: PatternEffort,
    raise: (bound: number, held: HeldInWorth) => boolean,
  ): Generator<FractionalPlan | undefined, FractionalPlan> {
    const standing = this.begin(asked, isForBound);
    const { program } = standing;
    const { table } = this;
    const prices = new Float64Array(asked.length);
    let plan: FractionalPlan | undefined;
    let stripRounds = 0;
    let center: Float64Array | undefined;
    let highest = 0;
    let smoothing = MOST_SMOOTHING;
    let valueBefore = Number.POSITIVE_INFINITY;
    let planned = Number.POSITIVE_INFINITY;
    const steady = new Float64Array(asked.length);
    for (let round = 0; this.pool.length < MOST_PATTERNS; ) {
      const before = program.work;
      program.cheapen(MOST_PIVOTS);
      this.work += (program.work - before) * program.rows ** 2 + program.columns * asked.length;
      this.readPrices(standing, asked, prices);
      if (this.work > WORK_PER_STEP) {
        this.work = 0;
        yield undefined;
      }
      if (stripRounds < mostStripRounds && this.addSteadily(standing, prices, steady, stripRounds === 0)) {
        stripRounds++;
        // A plan from half of the patterns is better than none while the others are sought.
        if (isForBound && stripRounds % ROUNDS_BETWEEN_LOOKS === 0) {
          const { value } = program;
          if (value > SLOW * valueBefore && value < WORTH_A_PLAN * planned) {
            yield planOf(standing);
            planned = value;
          }
          valueBefore = value;
        }
        continue;
      }
      if (plan === undefined) {
        plan = planOf(standing);
        yield plan;
      }
      if (table === undefined || round >= rounds) break;
      round++;
      const isSmoothed: boolean = center !== undefined && smoothing > 0;
      const between = prices.map((price, type) =>
        center === undefined ? price : smoothing * realCell(center, type) + (1 - smoothing) * price,
      );
      const worths = between.map((price) => Math.floor(price * PRICE_UNITS));
      for (const _ of table.fill(worths)) yield undefined;
      const bests = this.problem.kinds.map((_, kind) => table.worthOn(kind));
      const total = asked.reduce((sum, count, type) => sum + count * realCell(worths, type), 0);
      const bound = leastCost(total, this.problem.kinds, bests);
      if (raise(bound, { total, bests })) break;
      if (bound > highest) {
        highest = bound;
        center = between;
      }
      if (this.addTablePatterns(standing, table, prices)) smoothing = Math.min(MOST_SMOOTHING, smoothing + 0.1);
      else if (isSmoothed) smoothing = smoothing > 0.3 ? smoothing - 0.3 : 0;
      else break;
    }
    return table?.exact === true || plan === undefined ? planOf(standing) : plan;
  }

  /** The program for what is asked, with what is known. `forBound` lets in patterns that cannot be cut. */
  private begin(asked: Int32Array, forBound: boolean): StandingPatterns {
    const { kinds, types } = this.problem;
    const kindRows = new Int32Array(kinds.length).fill(-1);
    let rows = types.length;
    kinds.forEach(({ available }, kind) => {
      if (Number.isFinite(available)) kindRows[kind] = rows++;
    });
    const demand = new Float64Array(rows);
    const sense = new Int8Array(rows).fill(-1).fill(1, 0, types.length);
    // A little more than asked, different for each type: equal steps would let the simplex run in circles.
    asked.forEach((count, type) => {
      demand[type] = count === 0 ? 0 : count + 1e-5 * (1 + ((type * 7919) % 101) / 101);
    });
    kinds.forEach(({ available }, kind) => {
      const row = cell(kindRows, kind);
      if (row >= 0) demand[row] = available;
    });
    const program = new CoveringProgram(demand, sense, PENALTY);
    // What is more than is asked covers nothing; but the bound's patterns hold each type as often as one likes.
    const standing: StandingPatterns = { program, columns: [], kindRows, counted: forBound ? undefined : asked };
    const basis = program.basisCopy();
    this.first.forEach((column, type) => {
      if (cell(asked, type) === 0) basis[type] = -1 - 2 * type;
      else if (column !== undefined) basis[type] = this.addTo(standing, column);
    });
    program.startFrom(basis);
    for (const column of this.pool) {
      if (column.pattern !== undefined || forBound) this.addTo(standing, column);
    }
    return standing;
  }

  private addTo({ program, columns, kindRows, counted }: StandingPatterns, column: PatternColumn): number {
    const entries: number[] = [];
    column.counts.forEach((count, type) => {
      const most = counted === undefined ? count : Math.min(count, cell(counted, type));
      if (most > 0) entries.push(type, most);
    });
    const row = cell(kindRows, column.kind);
    if (row >= 0) entries.push(row, 1);
    columns.push(column);
    return program.addColumn(realCell(this.costs, column.kind), entries);
  }

  /** What one more of each type costs, in dearest sheets, but not more than one: what is not asked is worth nothing. */
  private readPrices({ program }: StandingPatterns, asked: Int32Array, into: Float64Array): void {
    for (let type = 0; type < into.length; type++) {
      into[type] = cell(asked, type) === 0 ? 0 : Math.min(1, Math.max(0, program.price(type)));
    }
  }

  /** What a sheet of this kind may hold in worth without being worth more than it costs. */
  private limitOf({ program, kindRows }: StandingPatterns, kind: number): number {
    const row = cell(kindRows, kind);
    return realCell(this.costs, kind) - (row < 0 ? 0 : Math.min(0, program.price(row)));
  }

  /** Adds patterns of strips, at the program's own prices if steadier ones find none. Answers whether there were any. */
  private addSteadily(
    standing: StandingPatterns,
    prices: Float64Array,
    steady: Float64Array,
    isFirst: boolean,
  ): boolean {
    const share = isFirst ? 0 : STEADINESS;
    for (let type = 0; type < prices.length; type++) {
      steady[type] = share * realCell(steady, type) + (1 - share) * realCell(prices, type);
    }
    if (this.addStripPatterns(standing, steady)) return true;
    if (isFirst) return false;
    steady.set(prices);
    return this.addStripPatterns(standing, steady);
  }

  private addStripPatterns(standing: StandingPatterns, prices: Float64Array): boolean {
    let added = false;
    for (const strips of this.strips) {
      strips.fill(prices);
      for (let kind = 0; kind < this.problem.kinds.length; kind++) {
        const moreThan = WORTH_A_LOOK * this.limitOf(standing, kind);
        const found = new Set<string>();
        for (const { pattern } of strips.bestOn(kind, moreThan, PATTERNS_OF_STRIPS)) {
          this.work += WORK_OF_A_PATTERN;
          const counts = countBlanks(pattern, this.problem.types.length);
          const key = counts.join();
          if (found.has(key) || !this.isWorthIt(standing, kind, counts)) continue;
          found.add(key);
          this.add(standing, { kind, counts, pattern });
          added = true;
        }
      }
      this.work += strips.effort;
    }
    return added;
  }

  /** Keeps the table's best pattern for each kind where it makes the plan cheaper. Answers whether there was one. */
  private addTablePatterns(standing: StandingPatterns, table: BestPatterns, prices: Float64Array): boolean {
    let added = false;
    for (let kind = 0; kind < this.problem.kinds.length; kind++) {
      // The pattern may hold other blanks of the same worth, or more, than the table counts: pieces can be larger.
      const pattern = table.exact ? table.patternOn(kind) : undefined;
      const counts = pattern ? countBlanks(pattern, prices.length) : table.countsOn(kind);
      if (!this.isWorthIt(standing, kind, counts)) continue;
      this.add(standing, pattern ? { kind, counts, pattern } : { kind, counts });
      added = true;
    }
    return added;
  }

  private add(standing: StandingPatterns, column: PatternColumn): void {
    this.pool.push(column);
    this.addTo(standing, column);
  }

  private isWorthIt(standing: StandingPatterns, kind: number, counts: Float64Array): boolean {
    let worth = 0;
    const { program, counted } = standing;
    for (let type = 0; type < counts.length; type++) {
      const count = realCell(counts, type);
      if (count === 0) continue;
      worth += (counted === undefined ? count : Math.min(count, cell(counted, type))) * program.price(type);
    }
    return worth > this.limitOf(standing, kind) + LEAST_GAIN;
  }
}
