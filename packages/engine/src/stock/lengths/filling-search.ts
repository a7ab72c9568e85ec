import type { Filling } from './effective-lengths.ts';

/**
 * The most valuable filling of a bar, when every size has a value and no size may be taken more often than its limit. A
 * table over all capacities tells what the sizes still to be decided can add at most, and a descent through it finds the
 * filling. Where the capacities are too fine for a table it is made on a coarser scale, on which sizes are rounded down: it
 * then promises a little too much, and the descent has to look further.
 */

/** Cells that are filled within a few milliseconds. */
const MOST_CELLS = 800_000;
const COARSE_CELLS = 400_000;
/** Steps after which a descent stops and says so. */
const MOST_STEPS = 200_000;
const MOST_LISTING_STEPS = 3_000_000;
/** Of a search for a filling with a given longest size, and of all such searches at the same prices. */
const STEPS_FOR_A_LONGEST = 4_000;
const STEPS_FOR_ALL_LONGEST = 100_000;
/** Values nearer than this, as a share, count as the same. */
const SAME = 1e-12;

export interface BestFilling {
  readonly value: number;
  readonly filling: Filling;
  /** No filling is worth more than this; equal to `value` up to rounding unless the search was given up. */
  readonly most: number;
}

export class FillingSearch {
  private readonly size: Float64Array;
  /** Sizes on the scale of the table, rounded down. */
  private readonly coarse: Int32Array;
  private readonly grain: number;
  private readonly width: number;
  /** Row k: the best value of the first k sizes in use within each capacity. */
  private table = new Float64Array(0);
  private used: number[] = [];
  private values: Float64Array = new Float64Array(0);
  private limits: Int32Array = new Int32Array(0);
  private readonly queuePlace: Int32Array;
  private readonly queueValue: Float64Array;
  private steps = 0;

  constructor(size: Float64Array, capacity: number) {
    this.size = size;
    this.grain = Math.max(
      1,
      size.length * (capacity + 1) <= MOST_CELLS ? 1 : Math.ceil((size.length * (capacity + 1)) / COARSE_CELLS),
    );
    this.coarse = Int32Array.from(size, (length) => Math.floor(length / this.grain));
    this.width = Math.floor(capacity / this.grain) + 1;
    this.queuePlace = new Int32Array(this.width);
    this.queueValue = new Float64Array(this.width);
  }

  /** About how many steps one `prepare` and the last `best` took. */
  get effort(): number {
    return this.width * this.used.length * 2 + this.steps * 5;
  }

  /** Sets values and limits. Sizes of no value or limit 0 are left out of every filling. */
  prepare(values: Float64Array, limits: Int32Array): void {
    this.values = values;
    this.limits = limits;
    const { coarse, width } = this;
    this.used = [];
    // Smallest first: the last rows, which a descent decides first, then belong to the longest pieces.
    for (let index = coarse.length - 1; index >= 0; index -= 1) {
      if ((limits[index] as number) > 0 && (values[index] as number) > 0 && (coarse[index] as number) < width) {
        this.used.push(index);
      }
    }
    const cells = (this.used.length + 1) * width;
    if (this.table.length < cells) this.table = new Float64Array(cells);
    this.table.fill(0, 0, width);
    for (let row = 0; row < this.used.length; row += 1) {
      const index = this.used[row] as number;
      const length = coarse[index] as number;
      const value = values[index] as number;
      const limit = limits[index] as number;
      if (length === 0) this.addAll(row * width, limit * value);
      else if (Math.min(limit, Math.floor((width - 1) / length)) <= 4) this.addFew(row * width, length, value, limit);
      else this.addMany(row * width, length, value, limit);
    }
  }

  private addAll(from: number, worth: number): void {
    const { table, width } = this;
    for (let at = 0; at < width; at += 1) table[from + width + at] = (table[from + at] as number) + worth;
  }

  private addFew(from: number, length: number, value: number, limit: number): void {
    const { table, width } = this;
    const to = from + width;
    table.copyWithin(to, from, to);
    for (let count = 1; count <= limit && count * length < width; count += 1) {
      const taken = count * length;
      const worth = count * value;
      for (let at = taken; at < width; at += 1) {
        const other = (table[from + at - taken] as number) + worth;
        if (other > (table[to + at] as number)) table[to + at] = other;
      }
    }
  }

  /** The same in one pass however high the limit: the greatest of a sliding window, along each remainder of the length. */
  private addMany(from: number, length: number, value: number, limit: number): void {
    const { table, width, queuePlace, queueValue } = this;
    const to = from + width;
    for (let remainder = 0; remainder < length && remainder < width; remainder += 1) {
      let head = 0;
      let tail = 0;
      for (let at = remainder, step = 0; at < width; at += length, step += 1) {
        const level = (table[from + at] as number) - step * value;
        while (tail > head && (queueValue[tail - 1] as number) <= level) tail -= 1;
        queuePlace[tail] = step;
        queueValue[tail] = level;
        tail += 1;
        if ((queuePlace[head] as number) < step - limit) head += 1;
        table[to + at] = (queueValue[head] as number) + step * value;
      }
    }
  }

  /** What the first `rows` sizes in use can add at most within `rest`. */
  private most(rows: number, rest: number): number {
    return this.table[rows * this.width + Math.floor(rest / this.grain)] as number;
  }

  /** The best within a capacity, or the best found within so many steps. */
  best(capacity: number, mostSteps = MOST_STEPS): BestFilling {
    const { used, size, values, limits } = this;
    const top = this.most(used.length, capacity);
    const slack = top * SAME;
    this.steps = used.length;
    let best = this.promising(capacity);
    let bestValue = this.valueOf(best);
    if (bestValue >= top - slack) return { value: bestValue, filling: best, most: bestValue };
    const taken: number[] = [];
    let steps = 0;
    const descend = (rows: number, rest: number, value: number): void => {
      if (value > bestValue) {
        bestValue = value;
        best = taken.slice();
      }
      for (let row = rows; row > 0; row -= 1) {
        steps += 1;
        if (steps > mostSteps || value + this.most(row, rest) <= bestValue + slack) return;
        const index = used[row - 1] as number;
        const length = size[index] as number;
        if (length > rest) continue;
        const worth = values[index] as number;
        for (let count = Math.min(limits[index] as number, Math.floor(rest / length)); count > 0; count -= 1) {
          if (value + count * worth + this.most(row - 1, rest - count * length) <= bestValue + slack) continue;
          taken.push(index, count);
          descend(row - 1, rest - count * length, value + count * worth);
          taken.length -= 2;
        }
      }
    };
    descend(used.length, capacity, 0);
    this.steps += steps;
    return { value: bestValue, filling: best, most: steps > mostSteps ? top : bestValue };
  }

  /**
   * The most promising fillings for different longest sizes, of those that seem to be worth more than `moreThan`; the
   * likeliest first, at most `most` of them.
   */
  byLongest(capacity: number, moreThan: number, most: number): readonly Filling[] {
    const { used, size, values } = this;
    const rows: { row: number; worth: number }[] = [];
    for (let row = used.length; row > 0; row -= 1) {
      const index = used[row - 1] as number;
      const rest = capacity - (size[index] as number);
      // At least one of the size, and beside it more of it or of what is shorter.
      const worth = rest < 0 ? 0 : (values[index] as number) + this.most(row - 1, rest);
      if (worth > moreThan) rows.push({ row, worth });
    }
    rows.sort((a, b) => b.worth - a.worth);
    if (this.grain === 1) return rows.slice(0, most).map(({ row }) => this.promising(capacity, row, 1));
    const found: Filling[] = [];
    let left = STEPS_FOR_ALL_LONGEST;
    for (const { row } of rows) {
      if (found.length >= most || left <= 0) break;
      const { filling, steps } = this.withLongest(capacity, row, moreThan, Math.min(left, STEPS_FOR_A_LONGEST));
      if (filling !== undefined) found.push(filling);
      left -= steps;
    }
    this.steps += STEPS_FOR_ALL_LONGEST - left;
    return found;
  }

  /** A filling that is really worth more, with at least one of the last of the first `rows` sizes; the best that is found. */
  private withLongest(
    capacity: number,
    rows: number,
    moreThan: number,
    mostSteps: number,
  ): { readonly filling: Filling | undefined; readonly steps: number } {
    const { used, size, values, limits } = this;
    const taken: number[] = [];
    let best: Filling | undefined;
    let bestValue = moreThan;
    let steps = 0;
    const take = (row: number, rest: number, value: number): void => {
      const index = used[row - 1] as number;
      const length = size[index] as number;
      const worth = values[index] as number;
      for (let count = Math.min(limits[index] as number, Math.floor(rest / length)); count > 0; count -= 1) {
        steps += 1;
        if (value + count * worth + this.most(row - 1, rest - count * length) <= bestValue) continue;
        taken.push(index, count);
        descend(row - 1, rest - count * length, value + count * worth);
        taken.length -= 2;
      }
    };
    const descend = (below: number, rest: number, value: number): void => {
      if (value > bestValue) {
        bestValue = value;
        best = taken.slice();
      }
      for (let row = below; row > 0; row -= 1) {
        steps += 1;
        if (steps > mostSteps || value + this.most(row, rest) <= bestValue) return;
        take(row, rest, value);
      }
    };
    take(rows, capacity, 0);
    return { filling: best, steps };
  }

  /**
   * The filling that the table leads to, of the first `rows` sizes and at least so many of the last of them; the best one if
   * the table is not coarse.
   */
  private promising(capacity: number, rows = this.used.length, least = 0): Filling {
    const { used, size, values, limits } = this;
    const filling: number[] = [];
    let rest = capacity;
    for (let row = rows; row > 0; row -= 1) {
      const index = used[row - 1] as number;
      const length = size[index] as number;
      let bestCount = row === rows ? least : 0;
      let best = bestCount * (values[index] as number) + this.most(row - 1, rest - bestCount * length);
      const fits = Math.min(limits[index] as number, Math.floor(rest / length));
      for (let count = bestCount + 1; count <= fits; count += 1) {
        const most = count * (values[index] as number) + this.most(row - 1, rest - count * length);
        if (most > best * (1 + SAME)) {
          best = most;
          bestCount = count;
        }
      }
      if (bestCount > 0) filling.push(index, bestCount);
      rest -= bestCount * length;
    }
    return filling;
  }

  private valueOf(filling: Filling): number {
    let value = 0;
    for (let at = 0; at < filling.length; at += 2) {
      value += (this.values[filling[at] as number] as number) * (filling[at + 1] as number);
    }
    return value;
  }

  /**
   * Fillings of at least a value into which nothing more goes, in no special order; undefined if there are more than
   * `most`, or finding them all takes too long.
   */
  all(capacity: number, atLeast: number, most: number): readonly Filling[] | undefined {
    const { used, size, values, limits } = this;
    const found: Filling[] = [];
    const filling: number[] = [];
    let steps = 0;
    const isFull = (rest: number): boolean => {
      let at = filling.length - 2;
      for (const index of used) {
        if ((size[index] as number) > rest) return true;
        const isIn = filling[at] === index;
        if ((isIn ? (filling[at + 1] as number) : 0) < (limits[index] as number)) return false;
        if (isIn) at -= 2;
      }
      return true;
    };
    const descend = (rows: number, rest: number, value: number): boolean => {
      if (value >= atLeast && isFull(rest)) found.push(filling.slice());
      if (found.length > most) return false;
      for (let row = rows; row > 0; row -= 1) {
        steps += 1;
        if (steps > MOST_LISTING_STEPS) return false;
        if (value + this.most(row, rest) < atLeast) return true;
        const index = used[row - 1] as number;
        const length = size[index] as number;
        if (length > rest) continue;
        for (let count = Math.min(limits[index] as number, Math.floor(rest / length)); count > 0; count -= 1) {
          const worth = value + count * (values[index] as number);
          const left = rest - count * length;
          if (worth + this.most(row - 1, left) < atLeast) continue;
          filling.push(index, count);
          const goOn = descend(row - 1, left, worth);
          filling.length -= 2;
          if (!goOn) return false;
        }
      }
      return true;
    };
    return descend(used.length, capacity, 0) ? found : undefined;
  }
}
