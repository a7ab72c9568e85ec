import type { Filling } from './effective-lengths.ts';
import { FillingTable } from './filling-table.ts';

/**
 * The most valuable filling of a bar, when every size has a value and no size may be taken more often than its limit: a
 * descent through a table that tells what the sizes still to be decided can add at most. Where the table is coarse and
 * promises too much the descent has to look further.
 */

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
  private readonly table: FillingTable;
  private readonly size: Float64Array;
  private steps = 0;

  constructor(size: Float64Array, capacity: number) {
    this.size = size;
    this.table = new FillingTable(size, capacity);
  }

  /** About how many steps one `prepare` and the last `best` took. */
  get effort(): number {
    return this.table.width * this.table.used.length * 2 + this.steps * 5;
  }

  /** Sets values and limits. Sizes of no value or limit 0 are left out of every filling. */
  prepare(values: Float64Array, limits: Int32Array): void {
    this.table.prepare(values, limits);
  }

  private most(rows: number, rest: number): number {
    return this.table.most(rows, rest);
  }

  /** The best within a capacity, or the best found within so many steps. */
  best(capacity: number, mostSteps = MOST_STEPS): BestFilling {
    const { size } = this;
    const { used, values, limits } = this.table;
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
    const { size } = this;
    const { used, values } = this.table;
    const rows: { row: number; worth: number }[] = [];
    for (let row = used.length; row > 0; row -= 1) {
      const index = used[row - 1] as number;
      const rest = capacity - (size[index] as number);
      // At least one of the size, and beside it more of it or of what is shorter.
      const worth = rest < 0 ? 0 : (values[index] as number) + this.most(row - 1, rest);
      if (worth > moreThan) rows.push({ row, worth });
    }
    rows.sort((a, b) => b.worth - a.worth);
    if (this.table.grain === 1) return rows.slice(0, most).map(({ row }) => this.promising(capacity, row, 1));
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
    const { size } = this;
    const { used, values, limits } = this.table;
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
  private promising(capacity: number, rows = this.table.used.length, least = 0): Filling {
    const { size } = this;
    const { used, values, limits } = this.table;
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
      value += (this.table.values[filling[at] as number] as number) * (filling[at + 1] as number);
    }
    return value;
  }

  /**
   * Fillings of at least a value into which nothing more goes, in no special order; undefined if there are more than
   * `most`, or finding them all takes too long.
   */
  all(capacity: number, atLeast: number, most: number): readonly Filling[] | undefined {
    const { size } = this;
    const { used, values, limits } = this.table;
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
