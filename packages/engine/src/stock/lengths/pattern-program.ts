import { CoveringProgram } from '../covering-program.ts';
import type { Filling, Sizes } from './effective-lengths.ts';
import { Landmarks } from './landmarks.ts';

/** In place of a stock: not a pattern but an exchange of places. */
const EXCHANGE = -1;

/** A pattern has to be worth more than its stock by this share, or it is not worth letting in. */
const LEAST_GAIN = 1e-7;

/** Of a piece. */
const UNEVENNESS = 1e-5;

/** One way to fill one kind of stock. */
export interface Pattern {
  readonly stock: number;
  readonly filling: Filling;
}

/**
 * The relaxation over the patterns found so far: how often is each cut, fractions allowed, so that every size is had and
 * no stock is used up more than there is. Rows: the sizes, or the landmarks that stand for them, then the kinds of stock that
 * are limited.
 */
export class PatternProgram {
  readonly sizes: Sizes;
  readonly patterns: Pattern[] = [];
  readonly program: CoveringProgram;
  /** Row of each kind of stock that is limited; -1 for the others. */
  readonly stockRow: Int32Array;
  private readonly landmarks: Landmarks;
  private readonly known = new Map<string, number>();

  constructor(
    sizes: Sizes,
    demand: Int32Array,
    available: Float64Array,
    landmarks = new Landmarks(sizes, sizes.size.length),
  ) {
    this.sizes = sizes;
    this.landmarks = landmarks;
    const count = landmarks.chosen.length;
    const limited = sizes.stocks.map((_, stock) => stock).filter((stock) => Number.isFinite(available[stock]));
    this.stockRow = new Int32Array(sizes.stocks.length).fill(-1);
    limited.forEach((stock, place) => {
      this.stockRow[stock] = count + place;
    });
    const demands = new Float64Array(count + limited.length);
    demands.set(landmarks.spread(demand));
    limited.forEach((stock, place) => {
      demands[count + place] = available[stock] as number;
    });
    const sense = Int8Array.from(demands, (_, row) => (row < count ? 1 : -1));
    const dearest = sizes.stocks.reduce((most, { cost }) => Math.max(most, cost), 1);
    this.program = new CoveringProgram(demands, sense, dearest * 1000);
    this.startAlone(demand, available);
    this.addExchanges();
  }

  /**
   * Columns that let a place for one size serve the next shorter one. They cost nothing and keep the prices in the order of
   * the lengths from the start, which saves half of the patterns. A plan that uses one covers less than it seems to.
   */
  private addExchanges(): void {
    for (let i = 0; i + 1 < this.landmarks.chosen.length; i += 1) {
      this.program.addColumn(0, [i, -1, i + 1, 1]);
      this.patterns.push({ stock: EXCHANGE, filling: [] });
    }
  }

  /** The patterns found so far, without the exchanges. */
  found(): readonly Pattern[] {
    return this.patterns.filter(({ stock }) => stock !== EXCHANGE);
  }

  /** Adds the pattern if it is new and would make the relaxation cheaper; whether it did. */
  addIfWanted(stock: number, filling: Filling): boolean {
    let value = 0;
    for (let at = 0; at < filling.length; at += 2) {
      value += this.worthOfSize(filling[at] as number) * (filling[at + 1] as number);
    }
    if (value <= this.worth(stock) * (1 + LEAST_GAIN)) return false;
    const before = this.patterns.length;
    return this.add(stock, filling) === before;
  }

  /** The pattern's column; found again if it is known. */
  add(stock: number, filling: Filling): number {
    const key = `${stock}:${filling.join(',')}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const row = this.stockRow[stock] as number;
    const entries = this.landmarks.entriesOf(filling);
    const id = this.program.addColumn(this.sizes.stocks[stock]?.cost ?? 0, row < 0 ? entries : [...entries, row, 1]);
    this.patterns.push({ stock, filling });
    this.known.set(key, id);
    return id;
  }

  /**
   * Asks for a little more of each size, a different part of a piece each time, or for what is really asked. Among equal
   * demands most pivots change nothing but the basis; the prices that are the best for the one are the best for the other.
   */
  ask(demand: Int32Array, available: Float64Array, isUneven: boolean): void {
    this.landmarks.spread(demand).forEach((asked, row) => {
      const more = isUneven && asked > 0 ? UNEVENNESS * (1 + ((row * 7919) % 101) / 101) : 0;
      this.program.setDemand(row, asked + more);
    });
    for (let stock = 0; stock < available.length; stock += 1) {
      const row = this.stockRow[stock] as number;
      if (row >= 0) this.program.setDemand(row, available[stock] as number);
    }
    this.program.refresh();
  }

  /** What the relaxation costs for what is really asked. */
  costOf(demand: Int32Array, available: Float64Array): number {
    let cost = 0;
    for (let index = 0; index < demand.length; index += 1) {
      cost += this.worthOfSize(index) * (demand[index] as number);
    }
    for (let stock = 0; stock < available.length; stock += 1) {
      const row = this.stockRow[stock] as number;
      if (row >= 0) cost += this.program.price(row) * (available[stock] as number);
    }
    return cost;
  }

  /** Lets in every pattern again, but none of the exchanges: what counts now is plans that really cover. */
  clearBars(): void {
    for (let column = 0; column < this.patterns.length; column += 1) {
      this.program.bar(column, this.patterns[column]?.stock === EXCHANGE);
    }
  }

  /** What one of each size is worth at present; never less than nothing. */
  copyValues(into: Float64Array): void {
    for (let index = 0; index < into.length; index += 1) into[index] = Math.max(0, this.worthOfSize(index));
  }

  private worthOfSize(index: number): number {
    return this.landmarks.worthOf(index, this.priceOfRow);
  }

  private readonly priceOfRow = (row: number): number => this.program.price(row);

  /** What a bar of this stock may hold in value without being worth more than it costs. */
  worth(stock: number): number {
    const row = this.stockRow[stock] as number;
    return (this.sizes.stocks[stock]?.cost ?? 0) - (row < 0 ? 0 : Math.min(0, this.program.price(row)));
  }

  /** Each size alone, as often as it goes into the stock on which that is cheapest: a first plan and its inverse at once. */
  private startAlone(demand: Int32Array, available: Float64Array): void {
    const { size, stocks } = this.sizes;
    const basis = this.program.basisCopy();
    const { chosen } = this.landmarks;
    for (let row = 0; row < chosen.length; row += 1) {
      const index = chosen[row] as number;
      if ((demand[index] as number) <= 0) {
        basis[row] = -1 - 2 * row;
        continue;
      }
      let best = -1;
      let bestCount = 0;
      let bestRate = Number.POSITIVE_INFINITY;
      for (let stock = 0; stock < stocks.length; stock += 1) {
        const bar = stocks[stock];
        if (bar === undefined || Number.isFinite(available[stock])) continue;
        const count = Math.min(demand[index] as number, Math.floor(bar.capacity / (size[index] as number)));
        if (count > 0 && bar.cost / count < bestRate) {
          best = stock;
          bestCount = count;
          bestRate = bar.cost / count;
        }
      }
      if (best >= 0) basis[row] = this.add(best, [index, bestCount]);
    }
    this.program.startFrom(basis);
  }
}
