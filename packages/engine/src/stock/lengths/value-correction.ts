import type { SeededRandom } from '../seeded-random.ts';
import type { BarPlan, Filling, Sizes } from './effective-lengths.ts';
import type { FillingSearch } from './filling-search.ts';
import { fillBars, lengthOf } from './greedy-filling.ts';

/**
 * Plans by fillings that are each the most valuable of what waits, where a size becomes dearer whenever the bar it went
 * into was filled badly: what is hard to place is then placed early. Idea: sequential value correction (Mukhacheva;
 * Belov and Scheithauer 2007).
 */
export class ValueCorrection {
  private readonly sizes: Sizes;
  private readonly search: FillingSearch;
  private readonly random: SeededRandom;
  /** Longer sizes are worth a little more than their length. */
  private readonly base: Float64Array;
  private readonly values: Float64Array;
  private readonly limits: Int32Array;

  constructor(sizes: Sizes, search: FillingSearch, random: SeededRandom) {
    this.sizes = sizes;
    this.search = search;
    this.random = random;
    this.base = sizes.size.map((length) => length ** 1.02);
    this.values = this.base.slice();
    this.limits = new Int32Array(sizes.size.length);
  }

  /** Forgets what it has learned, or learns from prices that somebody else has found. */
  begin(prices?: Float64Array): void {
    if (prices === undefined) {
      this.values.set(this.base);
      return;
    }
    const scale = Math.max(...this.base) / Math.max(1e-9, ...prices);
    for (let index = 0; index < prices.length; index += 1) {
      this.values[index] = Math.max(0.3 * (this.base[index] as number), (prices[index] as number) * scale);
    }
  }

  /** One plan of what waits; the next one will be another. */
  next(waiting: Int32Array, available: Float64Array): BarPlan {
    return fillBars(this.sizes, waiting, available, (demand, largest, stock) => this.fill(demand, largest, stock));
  }

  private fill(demand: Int32Array, largest: number, stock: number): Filling {
    const { sizes, search, limits, values } = this;
    const capacity = sizes.stocks[stock]?.capacity ?? 0;
    limits.set(demand);
    limits[largest] = (limits[largest] as number) - 1;
    search.prepare(values, limits);
    const filling = withOneOf(largest, search.best(capacity - (sizes.size[largest] as number)).filling);
    this.learn(filling, capacity);
    return filling;
  }

  private learn(filling: Filling, capacity: number): void {
    const badness = capacity / lengthOf(this.sizes, filling);
    for (let at = 0; at < filling.length; at += 2) {
      const index = filling[at] as number;
      const share = 0.2 + 0.5 * this.random.fraction();
      this.values[index] =
        (1 - share) * (this.values[index] as number) + share * (this.base[index] as number) * badness ** 2;
    }
  }
}

/** The filling and one more of a size that is not shorter than any in it. */
function withOneOf(largest: number, filling: Filling): Filling {
  return filling[0] === largest ? [largest, (filling[1] as number) + 1, ...filling.slice(2)] : [largest, 1, ...filling];
}
