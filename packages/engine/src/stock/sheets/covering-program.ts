import { realCell } from './cells.ts';

/** One pattern as the program sees it: how many of each type it holds, and what its sheet costs. */
export interface Column {
  readonly counts: Float64Array;
  readonly cost: number;
}

/**
 * The linear program of cutting stock: the least cost of parts of patterns that together hold what is asked of every
 * type. Revised simplex with the whole inverse, for some hundred types; columns enter from outside, the best one first.
 */
export class CoveringProgram {
  readonly columns: Column[] = [];
  private readonly size: number;
  /** The column of each row, or -1 - type for what is made too many of that type. */
  private readonly basis: Int32Array;
  private readonly inverse: Float64Array;
  private readonly amounts: Float64Array;

  /** `first` holds one pattern for each type, with nothing but that type. */
  constructor(asked: Float64Array, first: readonly Column[]) {
    const size = asked.length;
    this.size = size;
    this.columns.push(...first);
    this.basis = Int32Array.from(first, (_, index) => index);
    this.inverse = new Float64Array(size * size);
    this.amounts = new Float64Array(size);
    first.forEach(({ counts }, type) => {
      this.inverse[type * size + type] = 1 / realCell(counts, type);
      this.amounts[type] = realCell(asked, type) / realCell(counts, type);
    });
  }

  /** What one more of each type would cost. */
  prices(): Float64Array {
    const { size } = this;
    const prices = new Float64Array(size);
    for (let row = 0; row < size; row++) {
      const cost = this.columns[this.basis[row] as number]?.cost ?? 0;
      if (cost === 0) continue;
      for (let type = 0; type < size; type++) {
        prices[type] = realCell(prices, type) + cost * realCell(this.inverse, row * size + type);
      }
    }
    return prices;
  }

  cost(): number {
    return this.amounts.reduce(
      (sum, amount, row) => sum + amount * (this.columns[this.basis[row] as number]?.cost ?? 0),
      0,
    );
  }

  /** Lets a pattern in whose cost is less than its prices. Answers false if rounding errors forbid it. */
  enter(column: Column): boolean {
    this.columns.push(column);
    return this.pivot(this.columns.length - 1, column.counts);
  }

  /** Lets types be made too often whose price is negative. Answers whether there was one. */
  enterSurplus(prices: Float64Array): boolean {
    let lowest = -1;
    for (let type = 0; type < this.size; type++) {
      if (realCell(prices, type) < -1e-9 && (lowest < 0 || realCell(prices, type) < realCell(prices, lowest)))
        lowest = type;
    }
    if (lowest < 0) return false;
    const counts = new Float64Array(this.size);
    counts[lowest] = -1;
    return this.pivot(-1 - lowest, counts);
  }

  /** The patterns of the solution with how often each is cut. */
  solution(): readonly { readonly column: Column; readonly amount: number }[] {
    return Array.from(this.basis, (index, row) => ({
      column: this.columns[index],
      amount: realCell(this.amounts, row),
    })).filter(
      (entry): entry is { column: Column; amount: number } => entry.column !== undefined && entry.amount > 1e-9,
    );
  }

  private pivot(entering: number, counts: Float64Array): boolean {
    const { size, inverse, amounts } = this;
    const direction = new Float64Array(size);
    for (let row = 0; row < size; row++) {
      let sum = 0;
      for (let type = 0; type < size; type++) {
        const count = realCell(counts, type);
        if (count !== 0) sum += realCell(inverse, row * size + type) * count;
      }
      direction[row] = sum;
    }
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let row = 0; row < size; row++) {
      const change = realCell(direction, row);
      if (change <= 1e-9) continue;
      const ratio = realCell(amounts, row) / change;
      // Of equal ratios the larger change: the inverse stays accurate.
      if (ratio < least - 1e-12 || (ratio < least + 1e-12 && leaving >= 0 && change > realCell(direction, leaving))) {
        least = ratio;
        leaving = row;
      }
    }
    if (leaving < 0) return false;
    const by = realCell(direction, leaving);
    for (let type = 0; type < size; type++) {
      inverse[leaving * size + type] = realCell(inverse, leaving * size + type) / by;
    }
    for (let row = 0; row < size; row++) {
      const change = realCell(direction, row);
      if (row === leaving || change === 0) continue;
      for (let type = 0; type < size; type++) {
        inverse[row * size + type] =
          realCell(inverse, row * size + type) - change * realCell(inverse, leaving * size + type);
      }
      amounts[row] = Math.max(0, realCell(amounts, row) - change * least);
    }
    amounts[leaving] = least;
    this.basis[leaving] = entering;
    return true;
  }
}
