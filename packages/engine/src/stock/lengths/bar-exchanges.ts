import type { SeededRandom } from '../seeded-random.ts';
import type { BarPlan, Sizes } from './effective-lengths.ts';
import { FullBars } from './full-bars.ts';
import type { BarExchange } from './pieces-in-bars.ts';
import { RepackedBars } from './repacked-bars.ts';

/** More pieces than this are not moved one by one. */
const MOST_PIECES = 3_000;

/** Work for full bars, for each piece, before they have only half of it: prices of few sizes are soon found. */
const WORK_FOR_FULL_BARS = 20_000;

/** The share to which what has no bar has to fall to be news. */
const LESS = 0.95;

/** Work without news after which there may be none for long. */
const PATIENCE = 600_000;

/**
 * Plans by moving pieces between bars, where all stock is alike: as few bars as the bound says are asked for. Where less
 * than the shortest piece may be left over in them, all of them have to be full one by one.
 */
export class BarExchanges {
  private readonly sizes: Sizes;
  private readonly random: SeededRandom;
  private readonly length: number;
  private readonly workForFullBars: number;
  /** Whether pieces can be moved at all. */
  readonly isPossible: boolean;
  private full: { readonly bars: number; readonly search: BarExchange } | undefined;
  private repacked: { readonly bars: number; readonly search: BarExchange } | undefined;
  private turns = 0;
  private work = 0;
  private leastLoose = Number.POSITIVE_INFINITY;
  private workAtNews = 0;

  constructor(sizes: Sizes, random: SeededRandom) {
    const { size, demand, stocks } = sizes;
    this.sizes = sizes;
    this.random = random;
    this.length = demand.reduce((sum, count, index) => sum + count * (size[index] as number), 0);
    const pieces = demand.reduce((sum, count) => sum + count, 0);
    this.workForFullBars = WORK_FOR_FULL_BARS * Math.min(300, pieces);
    this.isPossible = stocks.length === 1 && pieces <= MOST_PIECES;
  }

  /** Goes on for about so many decisions; `bound` and `best` cost one for each bar. Answers a plan if it found one. */
  run(bound: number, best: BarPlan, work: number): BarPlan | undefined {
    this.work += work;
    this.turns += 1;
    if (!this.isPossible || best.missing > 0 || best.cost <= bound || bound < 1) return undefined;
    const full = this.fullBars(bound);
    const turnsOfRepacked = this.work < this.workForFullBars ? 4 : 2;
    if (full !== undefined && this.turns % turnsOfRepacked !== 0) return this.turn(full, work);
    if (this.repacked?.bars !== bound) {
      this.repacked = { bars: bound, search: new RepackedBars(this.sizes, bound, best, this.random) };
    }
    return this.turn(this.repacked.search, work);
  }

  /** Whether less and less has no bar: false once nothing has changed for a while. */
  get isGettingOn(): boolean {
    if (!this.isPossible) return false;
    return this.full === undefined ? this.work - this.workAtNews < PATIENCE : this.work < this.workForFullBars;
  }

  private turn(search: BarExchange, work: number): BarPlan | undefined {
    const plan = search.run(work);
    if (search.looseLength < LESS * this.leastLoose) {
      this.leastLoose = search.looseLength;
      this.workAtNews = this.work;
    }
    return plan;
  }

  private fullBars(bars: number): BarExchange | undefined {
    const spare = bars * (this.sizes.stocks[0]?.capacity ?? 0) - this.length;
    if (spare < 0 || spare >= (this.sizes.size.at(-1) ?? 0)) return undefined;
    if (this.full?.bars !== bars) this.full = { bars, search: new FullBars(this.sizes, bars, this.random) };
    return this.full.search;
  }
}
