import { BestPatterns } from './best-patterns.ts';
import { realCell } from './cells.ts';
import { leastCost } from './cost-bound.ts';
import { type Column, CoveringProgram } from './covering-program.ts';
import { countBlanks, gridOf, type PatternNode } from './pattern-nodes.ts';
import type { PreparedKind, PreparedSheets, PreparedType } from './prepare-sheets.ts';

/** A pattern of a sheet with what the linear program knows of it. */
export interface PatternColumn extends Column {
  readonly kind: number;
  /** Missing if the places of cuts were too coarse to tell. */
  readonly pattern?: PatternNode;
}

/** The patterns of the fractional plan and how often each is cut; none if they cannot be cut as they are. */
export type FractionalPlan = readonly { readonly column: PatternColumn; readonly amount: number }[];

/** Prices are whole numbers of this fraction of the dearest sheet, so that the table's sums are exact. */
const PRICE_UNITS = 2 ** 32;

/** Programs larger than this take longer than they are worth. */
const MOST_TYPES = 220;

/** A pattern enters for more than this share of its cost: less is a rounding error. */
const LEAST_GAIN = 1e-7;

/**
 * Column generation: patterns that are worth more than their sheet costs enter the linear program until there are none.
 * Every pattern is kept and tried again before the table is asked for new ones.
 */
export class PatternGeneration {
  private readonly problem: PreparedSheets;
  private readonly table: BestPatterns;
  /** Kinds that patterns are sought for: those that never run out, if there are any. */
  private readonly usable: readonly number[];
  private readonly first: readonly PatternColumn[];
  private readonly pool: PatternColumn[] = [];
  private readonly perPrice: number;

  /** Undefined if the problem is too large for it, or sheets cost nothing. */
  static for(problem: PreparedSheets, mostPlaces: number): PatternGeneration | undefined {
    const { kinds, types } = problem;
    const unlimited = kinds.flatMap(({ available }, kind) => (available === Number.POSITIVE_INFINITY ? [kind] : []));
    const usable = unlimited.length > 0 ? unlimited : kinds.map((_, kind) => kind);
    if (types.length > MOST_TYPES || usable.some((kind) => kinds[kind]?.cost === 0)) return undefined;
    const first = types.map((_, type) => firstColumn(problem, type, usable));
    if (!first.every((column) => column !== undefined)) return undefined;
    const table = BestPatterns.for(problem, mostPlaces);
    return table === undefined ? undefined : new PatternGeneration(problem, table, usable, first);
  }

  private constructor(
    problem: PreparedSheets,
    table: BestPatterns,
    usable: readonly number[],
    first: readonly PatternColumn[],
  ) {
    this.problem = problem;
    this.table = table;
    this.usable = usable;
    this.first = first;
    this.perPrice = PRICE_UNITS / Math.max(...problem.kinds.map(({ cost }) => cost));
  }

  /** Whether the patterns can be cut; if not, they only serve the bound. */
  get exact(): boolean {
    return this.table.exact;
  }

  /**
   * The fractional plan for `asked` blanks of each type, with at most so many rounds of new patterns. Every such round
   * gives a lower bound, which `raise` is told and may end the work by answering true: with any prices that are not
   * negative, the blanks' worth cannot exceed that of the sheets' best patterns (A. A. Farley, A note on bounding a class
   * of linear programming problems, Operations Research 38(5), 1990). The plan on the way is yielded now and then.
   */
  *solve(
    asked: Int32Array,
    rounds: number,
    raise: (bound: number) => boolean,
  ): Generator<FractionalPlan | undefined, FractionalPlan> {
    // A little more than asked, different for each type: equal steps would let the simplex run in circles.
    const perturbed = Float64Array.from(asked, (count, type) => count + 1e-5 * (1 + ((type * 7919) % 101) / 101));
    const program = new CoveringProgram(perturbed, this.first);
    const mostPivots = 4 * asked.length + 50;
    let pivots = 0;
    const milestones = new Set([1, 2, 4].map((times) => times * asked.length));
    for (let round = 0; ; ) {
      const prices = program.prices();
      if (++pivots % 64 === 0) yield undefined;
      if (pivots < mostPivots * (round + 1) && program.enterSurplus(prices)) continue;
      const known = pivots < mostPivots * (round + 1) ? this.bestKnown(prices) : undefined;
      if (known !== undefined && program.enter(known)) continue;
      if (round >= rounds) break;
      const worths = prices.map((price) => Math.max(0, Math.floor(price * this.perPrice)));
      yield* this.fillTable(worths);
      const bests = this.problem.kinds.map((_, kind) => this.table.worthOn(kind));
      const total = asked.reduce((sum, count, type) => sum + count * realCell(worths, type), 0);
      if (raise(leastCost(total, this.problem.kinds, bests))) break;
      round++;
      if (!this.addPatterns(bests)) break;
      yield this.exact && milestones.has(round) ? (program.solution() as FractionalPlan) : undefined;
    }
    return program.solution() as FractionalPlan;
  }

  private *fillTable(worths: Float64Array): Generator<undefined, void> {
    const filling = this.table.fill(worths);
    while (filling.next().done !== true) yield undefined;
  }

  /** The pattern whose worth at these prices is most above its cost. */
  private bestKnown(prices: Float64Array): PatternColumn | undefined {
    let best: PatternColumn | undefined;
    let most = LEAST_GAIN;
    for (const column of this.pool) {
      const { counts, cost } = column;
      let worth = 0;
      for (let type = 0; type < counts.length; type++) worth += realCell(counts, type) * realCell(prices, type);
      const gain = worth / cost - 1;
      if (gain > most) {
        most = gain;
        best = column;
      }
    }
    return best;
  }

  /** Keeps the table's best pattern for each kind where it is worth more than the sheet. Answers whether there was one. */
  private addPatterns(bests: readonly number[]): boolean {
    let added = false;
    for (const kind of this.usable) {
      const { cost } = this.problem.kinds[kind] as PreparedKind;
      if ((bests[kind] as number) / this.perPrice / cost - 1 <= 2 * LEAST_GAIN) continue;
      if (this.exact) {
        const pattern = this.table.patternOn(kind);
        // The pattern may hold other blanks of the same worth, or more, than the table counts: pieces can be larger.
        this.pool.push({ kind, counts: countBlanks(pattern, this.problem.types.length), cost, pattern });
      } else this.pool.push({ kind, counts: this.table.countsOn(kind), cost });
      added = true;
    }
    return added;
  }
}

/** As many of one type as go on one sheet in rows and columns, on the kind where each costs least. */
function firstColumn(problem: PreparedSheets, type: number, usable: readonly number[]): PatternColumn | undefined {
  const { width, length, mayTurn } = problem.types[type] as PreparedType;
  let best: PatternColumn | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const kind of usable) {
    const sheet = problem.kinds[kind] as PreparedKind;
    for (const blank of mayTurn
      ? [
          { width, length },
          { width: length, length: width },
        ]
      : [{ width, length }]) {
      const count = Math.floor(sheet.width / blank.width) * Math.floor(sheet.length / blank.length);
      if (count === 0 || sheet.cost / count >= least) continue;
      least = sheet.cost / count;
      const counts = new Float64Array(problem.types.length);
      counts[type] = count;
      best = { kind, counts, cost: sheet.cost, pattern: gridOf(type, blank, sheet) };
    }
  }
  return best;
}
