import { invertMatrix } from './invert-matrix.ts';

/**
 * A linear program: least cost of columns, each at least zero, so that every row is covered (at least its demand) or kept
 * (at most its limit). Columns can be added, barred and priced while it stands; after each change it goes on from where it
 * was. Simplex with a dense inverse, for a few hundred rows. In floating point: what must hold exactly is checked by those
 * who use it. Knows nothing of what its columns are.
 */

/** +1: at least; -1: at most. */
export type RowSense = 1 | -1;

/** Smaller pivots would spoil the inverse. */
const SMALLEST_PIVOT = 1e-7;
/** Reduced costs and values nearer to zero than this count as zero. */
const ZERO = 1e-7;
/** What is left in the inverse where there should be nothing. */
const NOISE = 1e-13;
const PIVOTS_BETWEEN_INVERSIONS = 600;
/** Of columns that may enter; fewer where to look at all columns takes less time than a pivot. */
const MOST_LISTED = 12;

/** Where a program stands, to come back to. */
export interface Standing {
  readonly basis: Int32Array;
  readonly inverse: Float64Array;
}

export class CoveringProgram {
  readonly rows: number;
  private readonly sense: Int8Array;
  private readonly demand: Float64Array;
  /** What leaving one unit of a row undone costs: far more than any column. */
  private readonly penalty: number;

  private columnCount = 0;
  private start = new Int32Array(64);
  private entryRow = new Int32Array(256);
  private entryValue = new Float64Array(256);
  private costs = new Float64Array(64);
  private barred = new Uint8Array(64);

  /** Column, or -1 - 2·row for what a row has too much, or -2 - 2·row for what it lacks. */
  private basis: Int32Array;
  private inverse: Float64Array;
  private readonly level: Float64Array;
  private readonly prices: Float64Array;
  private readonly column: Float64Array;
  private readonly places: Int32Array;
  private readonly candidates: number[] = [];
  private readonly entering: number[] = [];
  private readonly inBasis = new Set<number>();
  private pivots = 0;
  /** All pivots so far, as a measure of work. */
  work = 0;

  constructor(demand: Float64Array, sense: Int8Array, penalty: number) {
    this.rows = demand.length;
    this.demand = demand.slice();
    this.sense = sense;
    this.penalty = penalty;
    this.inverse = new Float64Array(this.rows * this.rows);
    this.level = new Float64Array(this.rows);
    this.prices = new Float64Array(this.rows);
    this.column = new Float64Array(this.rows);
    this.places = new Int32Array(this.rows);
    this.basis = Int32Array.from({ length: this.rows }, (_, row) => (sense[row] === 1 ? -2 - 2 * row : -1 - 2 * row));
    this.invert();
  }

  get columns(): number {
    return this.columnCount;
  }

  /** `entries` is row, value, row, value, …; rows in any order, each once. */
  addColumn(cost: number, entries: readonly number[]): number {
    const id = this.columnCount;
    if (id + 2 > this.start.length) {
      this.start = grown(this.start);
      this.costs = grown(this.costs);
      this.barred = grown(this.barred);
    }
    let at = this.start[id] as number;
    while (at + entries.length / 2 > this.entryRow.length) {
      this.entryRow = grown(this.entryRow);
      this.entryValue = grown(this.entryValue);
    }
    for (let entry = 0; entry < entries.length; entry += 2) {
      this.entryRow[at] = entries[entry] as number;
      this.entryValue[at] = entries[entry + 1] as number;
      at += 1;
    }
    this.columnCount += 1;
    this.start[this.columnCount] = at;
    this.costs[id] = cost;
    this.barred[id] = 0;
    return id;
  }

  /** A barred column is not let in any more; `repair` takes it out where it is. */
  bar(column: number, barred: boolean): void {
    this.barred[column] = barred ? 1 : 0;
  }

  isBarred(column: number): boolean {
    return this.barred[column] === 1;
  }

  setDemand(row: number, demand: number): void {
    this.demand[row] = demand;
  }

  /** To be called after demands or bars have changed. */
  refresh(): void {
    const { rows, inverse, level, demand } = this;
    for (let row = 0; row < rows; row += 1) {
      let sum = 0;
      const from = row * rows;
      for (let other = 0; other < rows; other += 1)
        sum += (inverse[from + other] as number) * (demand[other] as number);
      level[row] = sum;
    }
    this.priceRows();
  }

  /** The price of each row: what one more unit of its demand costs. */
  price(row: number): number {
    return this.prices[row] as number;
  }

  copyPrices(into: Float64Array): void {
    for (let row = 0; row < into.length; row += 1) into[row] = this.prices[row] as number;
  }

  get value(): number {
    let sum = 0;
    for (let row = 0; row < this.rows; row += 1)
      sum += this.costOf(this.basis[row] as number) * (this.level[row] as number);
    return sum;
  }

  /** Whether every row is covered without barred columns and without leaving anything undone. */
  get isCovered(): boolean {
    for (let row = 0; row < this.rows; row += 1) {
      const id = this.basis[row] as number;
      const undone = id < 0 ? (-id & 1) === 0 : this.barred[id] === 1;
      if (undone && (this.level[row] as number) > 1e-6) return false;
    }
    return true;
  }

  /** Calls back with every column that is not zero. */
  forEachUsed(visit: (column: number, level: number) => void): void {
    for (let row = 0; row < this.rows; row += 1) {
      const id = this.basis[row] as number;
      if (id >= 0 && (this.level[row] as number) > ZERO) visit(id, this.level[row] as number);
    }
  }

  reducedCost(column: number): number {
    let sum = this.costOf(column);
    const end = this.start[column + 1] as number;
    for (let at = this.start[column] as number; at < end; at += 1) {
      sum -= (this.prices[this.entryRow[at] as number] as number) * (this.entryValue[at] as number);
    }
    return sum;
  }

  /** Lets a column into the plan if that makes it cheaper; false if it does not. */
  enter(column: number): boolean {
    return !this.inBasis.has(column) && this.reducedCost(column) < -ZERO && this.pivotIn(column);
  }

  /** Makes the plan cheaper until nothing does, from a plan in which no level is negative; false if stopped before. */
  cheapen(mostPivots: number): boolean {
    for (let count = 0; count < mostPivots; ) {
      this.listEntering();
      if (this.entering.length === 0) return true;
      // The best of a short list, until nothing in it makes the plan cheaper: to look at all columns takes longer than a pivot.
      for (; count < mostPivots; count += 1) {
        let best: number | undefined;
        let bestGain = 0;
        for (const id of this.entering) {
          const gain = this.inBasis.has(id) ? 0 : this.gainOf(id);
          if (gain <= bestGain) continue;
          bestGain = gain;
          best = id;
        }
        if (best === undefined) break;
        if (!this.pivotIn(best)) return true;
      }
    }
    return false;
  }

  /** What promises to make the plan cheaper, the likeliest of it. */
  private listEntering(): void {
    const { entering } = this;
    entering.length = 0;
    const entries = this.start[this.columnCount] as number;
    const most = Math.max(1, Math.min(MOST_LISTED, Math.floor((2 * entries) / this.rows ** 2)));
    const gains: number[] = [];
    const consider = (id: number): void => {
      const gain = this.gainOf(id);
      const last = gains.length - 1;
      if (gain <= 0 || (last + 1 === most && gain <= (gains[last] as number)) || this.inBasis.has(id)) return;
      let place = last + 1 === most ? last : last + 1;
      for (; place > 0 && gain > (gains[place - 1] as number); place -= 1) {
        gains[place] = gains[place - 1] as number;
        entering[place] = entering[place - 1] as number;
      }
      gains[place] = gain;
      entering[place] = id;
    };
    for (let column = 0; column < this.columnCount; column += 1) if (this.barred[column] !== 1) consider(column);
    for (let row = 0; row < this.rows; row += 1) consider(-1 - 2 * row);
  }

  /** The square of what a column saves for each unit, over the number of its entries; 0 if it saves nothing. */
  private gainOf(id: number): number {
    const cost = id >= 0 ? this.reducedCost(id) : this.reducedCostOfSlack(id);
    if (cost >= -ZERO) return 0;
    return (cost * cost) / (1 + (id >= 0 ? (this.start[id + 1] as number) - (this.start[id] as number) : 1));
  }

  /**
   * Brings negative levels and barred columns to zero, from prices at which nothing makes the plan cheaper; false if
   * stopped before. With every pivot the plan becomes dearer: once its value is above `enough` the rest is left as it is.
   */
  repair(mostPivots: number, enough = Number.POSITIVE_INFINITY): boolean {
    const { rows, level } = this;
    for (let count = 0; count < mostPivots; count += 1) {
      let leaving = -1;
      let worst = 0;
      for (let row = 0; row < rows; row += 1) {
        const amount = level[row] as number;
        const id = this.basis[row] as number;
        const wrong = id >= 0 && this.barred[id] === 1 ? Math.abs(amount) : -amount;
        if (wrong <= ZERO) continue;
        // How far it is from where it should be, not how far its level is: saves half of the pivots (dual steepest edge).
        const distance = (wrong * wrong) / this.steepness(row);
        if (distance > worst) {
          worst = distance;
          leaving = row;
        }
      }
      if (leaving < 0 || this.value > enough) return true;
      const best = this.entersFor(leaving, (level[leaving] as number) < 0 ? 1 : -1);
      if (best === undefined) return false;
      this.multiply(best);
      this.pivot(best, leaving);
    }
    return false;
  }

  private steepness(row: number): number {
    const { rows, inverse } = this;
    const from = row * rows;
    let sum = 0;
    for (let at = from; at < from + rows; at += 1) sum += (inverse[at] as number) * (inverse[at] as number);
    return sum;
  }

  /**
   * What may replace the column of a row whose level has to rise (1) or to fall (-1), so that no reduced cost becomes negative by more than
   * rounding; of several the one with the largest pivot, for the sake of the figures (Harris's two passes).
   */
  private entersFor(leaving: number, direction: 1 | -1): number | undefined {
    const { rows, inverse, prices, sense, candidates } = this;
    const from = leaving * rows;
    candidates.length = 0;
    let lowest = Number.POSITIVE_INFINITY;
    const consider = (id: number, pivot: number, cost: number) => {
      const size = -pivot;
      candidates.push(id, size, Math.max(0, cost));
      lowest = Math.min(lowest, (Math.max(0, cost) + ZERO) / size);
    };
    for (let column = 0; column < this.columnCount; column += 1) {
      if (this.barred[column] === 1) continue;
      const end = this.start[column + 1] as number;
      let pivot = 0;
      for (let at = this.start[column] as number; at < end; at += 1) {
        pivot += (inverse[from + (this.entryRow[at] as number)] as number) * (this.entryValue[at] as number);
      }
      pivot *= direction;
      if (pivot < -SMALLEST_PIVOT && !this.inBasis.has(column)) consider(column, pivot, this.reducedCost(column));
    }
    for (let row = 0; row < rows; row += 1) {
      const lacking = direction * (sense[row] as number) * (inverse[from + row] as number);
      // What a row has too much counts against it; what it lacks counts for it.
      if (lacking > SMALLEST_PIVOT && !this.inBasis.has(-1 - 2 * row)) {
        consider(-1 - 2 * row, -lacking, (prices[row] as number) * (sense[row] as number));
      } else if (lacking < -SMALLEST_PIVOT && !this.inBasis.has(-2 - 2 * row)) {
        consider(-2 - 2 * row, lacking, this.penalty - (prices[row] as number) * (sense[row] as number));
      }
    }
    let best: number | undefined;
    let bestSize = 0;
    for (let at = 0; at < candidates.length; at += 3) {
      const size = candidates[at + 1] as number;
      if (size <= bestSize || (candidates[at + 2] as number) / size > lowest) continue;
      best = candidates[at];
      bestSize = size;
    }
    return best;
  }

  /** Forgets the plan it stands at and starts with everything left undone. */
  restart(): void {
    const { basis, sense } = this;
    for (let row = 0; row < this.rows; row += 1) basis[row] = sense[row] === 1 ? -2 - 2 * row : -1 - 2 * row;
    this.invert();
  }

  /** Where it stands, written over a standing that is no longer needed if one is given. */
  standing(over?: Standing): Standing {
    if (over === undefined) return { basis: this.basis.slice(), inverse: this.inverse.slice() };
    over.basis.set(this.basis);
    over.inverse.set(this.inverse);
    return over;
  }

  /** Goes back to where it stood; to be followed by `refresh` if demands or bars have changed as well. */
  stand({ basis, inverse }: Standing): void {
    this.basis.set(basis);
    this.inverse.set(inverse);
    this.inBasis.clear();
    for (const id of basis) this.inBasis.add(id);
    this.refresh();
  }

  /** Starts from given columns, one for each row (-1 - 2·row: its slack; -2 - 2·row: undone). False if they do not span. */
  startFrom(basis: Int32Array): boolean {
    const before = this.standing();
    this.basis.set(basis);
    if (this.invert()) return true;
    this.stand(before);
    return false;
  }

  basisCopy(): Int32Array {
    return this.basis.slice();
  }

  private costOf(id: number): number {
    if (id >= 0) return this.costs[id] as number;
    return (-id & 1) === 1 ? 0 : this.penalty;
  }

  private pivotIn(entering: number): boolean {
    const { rows, column, level, basis } = this;
    this.multiply(entering);
    let lowest = Number.POSITIVE_INFINITY;
    for (let row = 0; row < rows; row += 1) {
      const pivot = column[row] as number;
      if (pivot > SMALLEST_PIVOT) lowest = Math.min(lowest, (Math.max(0, level[row] as number) + ZERO) / pivot);
    }
    let leaving = -1;
    for (let row = 0; row < rows; row += 1) {
      const pivot = column[row] as number;
      if (pivot <= SMALLEST_PIVOT || Math.max(0, level[row] as number) / pivot > lowest) continue;
      if (leaving < 0 || pivot > (column[leaving] as number)) leaving = row;
    }
    if (leaving < 0 || basis[leaving] === entering) return false;
    this.pivot(entering, leaving);
    return true;
  }

  /** inverse · column of `id`, into `this.column`. */
  private multiply(id: number): void {
    const { rows, inverse, column, sense } = this;
    if (id < 0) {
      const row = (-id - 1) >> 1;
      const sign = (-id & 1) === 1 ? -(sense[row] as number) : (sense[row] as number);
      for (let at = 0; at < rows; at += 1) column[at] = (inverse[at * rows + row] as number) * sign;
      return;
    }
    column.fill(0);
    const end = this.start[id + 1] as number;
    for (let at = this.start[id] as number; at < end; at += 1) {
      const row = this.entryRow[at] as number;
      const value = this.entryValue[at] as number;
      for (let to = 0; to < rows; to += 1)
        column[to] = (column[to] as number) + (inverse[to * rows + row] as number) * value;
    }
  }

  /** `this.column` holds inverse · column of `entering`. */
  private pivot(entering: number, leaving: number): void {
    const { rows, inverse, column, level, prices, places } = this;
    const pivot = column[leaving] as number;
    const cost = entering >= 0 ? this.reducedCost(entering) : this.reducedCostOfSlack(entering);
    const from = leaving * rows;
    const factor = 1 / pivot;
    let filled = 0;
    for (let at = 0; at < rows; at += 1) {
      const value = inverse[from + at] as number;
      if (Math.abs(value) < NOISE) {
        inverse[from + at] = 0;
        continue;
      }
      inverse[from + at] = value * factor;
      places[filled] = at;
      filled += 1;
    }
    const step = (level[leaving] as number) * factor;
    for (let row = 0; row < rows; row += 1) {
      const share = column[row] as number;
      if (row === leaving || Math.abs(share) < NOISE) continue;
      const to = row * rows;
      // Few places of a row are filled as a rule; to look only at those is several times as fast.
      if (filled * 2 < rows) {
        for (let place = 0; place < filled; place += 1) {
          const at = places[place] as number;
          inverse[to + at] = (inverse[to + at] as number) - share * (inverse[from + at] as number);
        }
      } else {
        subtract(inverse, to, from, rows, share);
      }
      level[row] = (level[row] as number) - share * step;
    }
    level[leaving] = step;
    for (let at = 0; at < rows; at += 1) prices[at] = (prices[at] as number) + cost * (inverse[from + at] as number);
    this.inBasis.delete(this.basis[leaving] as number);
    this.inBasis.add(entering);
    this.basis[leaving] = entering;
    this.pivots += 1;
    this.work += 1;
    if (this.pivots >= PIVOTS_BETWEEN_INVERSIONS) this.invert();
  }

  private reducedCostOfSlack(id: number): number {
    const row = (-id - 1) >> 1;
    const price = (this.prices[row] as number) * (this.sense[row] as number);
    return (-id & 1) === 1 ? price : this.penalty - price;
  }

  private priceRows(): void {
    const { rows, inverse, prices, basis } = this;
    prices.fill(0);
    for (let row = 0; row < rows; row += 1) {
      const cost = this.costOf(basis[row] as number);
      if (cost === 0) continue;
      const from = row * rows;
      for (let at = 0; at < rows; at += 1) prices[at] = (prices[at] as number) + cost * (inverse[from + at] as number);
    }
  }

  /** Works the inverse out anew, against drift. False, and nothing is changed but the order, if the basis is singular. */
  private invert(): boolean {
    const { rows, basis, sense } = this;
    const matrix = new Float64Array(rows * rows);
    const inverse = new Float64Array(rows * rows);
    for (let place = 0; place < rows; place += 1) {
      const id = basis[place] as number;
      inverse[place * rows + place] = 1;
      if (id < 0) {
        const row = (-id - 1) >> 1;
        matrix[row * rows + place] = (-id & 1) === 1 ? -(sense[row] as number) : (sense[row] as number);
        continue;
      }
      const end = this.start[id + 1] as number;
      for (let at = this.start[id] as number; at < end; at += 1) {
        matrix[(this.entryRow[at] as number) * rows + place] = this.entryValue[at] as number;
      }
    }
    if (!invertMatrix(matrix, inverse, rows)) return false;
    this.inverse = inverse;
    this.pivots = 0;
    this.inBasis.clear();
    for (const id of basis) this.inBasis.add(id);
    this.refresh();
    return true;
  }
}

/** Takes a multiple of one row away from another; four at a time, which the processor does faster. */
function subtract(array: Float64Array, to: number, from: number, count: number, share: number): void {
  let at = 0;
  for (; at + 3 < count; at += 4) {
    const here = to + at;
    const there = from + at;
    array[here] = (array[here] as number) - share * (array[there] as number);
    array[here + 1] = (array[here + 1] as number) - share * (array[there + 1] as number);
    array[here + 2] = (array[here + 2] as number) - share * (array[there + 2] as number);
    array[here + 3] = (array[here + 3] as number) - share * (array[there + 3] as number);
  }
  for (; at < count; at += 1) array[to + at] = (array[to + at] as number) - share * (array[from + at] as number);
}

function grown<T extends Int32Array | Float64Array | Uint8Array>(array: T): T {
  const larger = new (array.constructor as new (length: number) => T)(array.length * 2);
  larger.set(array as never);
  return larger;
}
