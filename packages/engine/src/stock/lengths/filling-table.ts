/**
 * For every capacity the most that the first of the sizes can add up to in value, and so what the sizes still to be decided
 * can add at most. Where the capacities are too fine for a table it is made on a coarser scale, on which sizes are rounded
 * down: it then promises a little too much.
 */

/** Cells that are filled within a few milliseconds. */
const MOST_CELLS = 800_000;
const COARSE_CELLS = 400_000;

/** How many cells a table for so many sizes has, at most. */
export function tableCells(sizes: number, capacity: number): number {
  const cells = sizes * (capacity + 1);
  return cells <= MOST_CELLS ? cells : COARSE_CELLS;
}

export class FillingTable {
  /** How many units of length are one of the table's. */
  readonly grain: number;
  readonly width: number;
  /** Sizes on the scale of the table, rounded down. */
  private readonly coarse: Int32Array;
  /** Row k: the best value of the first k sizes in use within each capacity. */
  private table = new Float64Array(0);
  private readonly queuePlace: Int32Array;
  private readonly queueValue: Float64Array;
  /** The sizes in use, smallest first: the last rows, which a descent decides first, then belong to the longest pieces. */
  used: readonly number[] = [];
  values: Float64Array = new Float64Array(0);
  limits: Int32Array = new Int32Array(0);

  constructor(size: Float64Array, capacity: number) {
    this.grain = Math.max(
      1,
      size.length * (capacity + 1) <= MOST_CELLS ? 1 : Math.ceil((size.length * (capacity + 1)) / COARSE_CELLS),
    );
    this.coarse = Int32Array.from(size, (length) => Math.floor(length / this.grain));
    this.width = Math.floor(capacity / this.grain) + 1;
    this.queuePlace = new Int32Array(this.width);
    this.queueValue = new Float64Array(this.width);
  }

  /** Sets values and limits. Sizes of no value or limit 0 are left out of every filling. */
  prepare(values: Float64Array, limits: Int32Array): void {
    this.values = values;
    this.limits = limits;
    const { coarse, width } = this;
    const used: number[] = [];
    for (let index = coarse.length - 1; index >= 0; index -= 1) {
      if ((limits[index] as number) > 0 && (values[index] as number) > 0 && (coarse[index] as number) < width) {
        used.push(index);
      }
    }
    this.used = used;
    const cells = (used.length + 1) * width;
    if (this.table.length < cells) this.table = new Float64Array(cells);
    this.table.fill(0, 0, width);
    for (let row = 0; row < used.length; row += 1) {
      const index = used[row] as number;
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
  most(rows: number, rest: number): number {
    return this.table[rows * this.width + Math.floor(rest / this.grain)] as number;
  }
}
