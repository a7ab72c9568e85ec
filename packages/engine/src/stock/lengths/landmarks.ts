import type { Filling, Sizes } from './effective-lengths.ts';

/** Fewer landmarks say too little. */
const FEWEST = 12;

/** How many landmarks to take of so many sizes, one relaxation after the other, before all sizes are rows: rising. */
export function landmarkCounts(sizes: number, most: number): readonly number[] {
  return [8, 4, 2].map((part) => Math.ceil(sizes / part)).filter((count) => count >= FEWEST && count <= most);
}

/**
 * Some of the sizes, the longest and the shortest among them, that stand for all: the worth of a size between two of them
 * lies between theirs, on a straight line over the length. What is worth the most under such prices holds for all prices,
 * and a program of the few rows is solved in a fraction of the time. Idea: prices aggregated by length, as in Gschwind and
 * Irnich's and Sadykov's work on stabilised column generation; from memory.
 */
export class Landmarks {
  /** Indexes of the sizes that stand for all, rising. */
  readonly chosen: Int32Array;
  /** For each size the landmark before it, and how much of it counts there; the rest counts for the next one. */
  private readonly before: Int32Array;
  private readonly share: Float64Array;

  /** `count` of the sizes; at least two if there are two. */
  constructor({ size }: Sizes, count: number) {
    const last = size.length - 1;
    const most = Math.min(Math.max(2, count), size.length);
    this.chosen = Int32Array.from({ length: most }, (_, at) => (most === 1 ? 0 : Math.round((at * last) / (most - 1))));
    this.before = new Int32Array(size.length);
    this.share = new Float64Array(size.length).fill(1);
    for (let index = 0, row = 0; index < size.length; index += 1) {
      if (row + 1 < most && (this.chosen[row + 1] as number) <= index) row += 1;
      this.before[index] = row;
      if (row + 1 === most) continue;
      const longer = size[this.chosen[row] as number] as number;
      const shorter = size[this.chosen[row + 1] as number] as number;
      this.share[index] = ((size[index] as number) - shorter) / (longer - shorter);
    }
  }

  get areAll(): boolean {
    return this.chosen.length === this.before.length;
  }

  /** What is asked of each landmark, if so many of each size are asked. */
  spread(demand: Int32Array): Float64Array {
    const asked = new Float64Array(this.chosen.length);
    for (let index = 0; index < demand.length; index += 1) this.give(asked, index, demand[index] as number);
    return asked;
  }

  /** A filling as row, amount, row, amount, … */
  entriesOf(filling: Filling): readonly number[] {
    if (this.areAll) return filling;
    const amounts = new Float64Array(this.chosen.length);
    for (let at = 0; at < filling.length; at += 2) this.give(amounts, filling[at] as number, filling[at + 1] as number);
    const entries: number[] = [];
    amounts.forEach((amount, row) => {
      if (amount > 0) entries.push(row, amount);
    });
    return entries;
  }

  /** The worth of a size, from what each landmark is worth. */
  worthOf(index: number, worthOfRow: (row: number) => number): number {
    const row = this.before[index] as number;
    const share = this.share[index] as number;
    return share === 1 ? worthOfRow(row) : share * worthOfRow(row) + (1 - share) * worthOfRow(row + 1);
  }

  private give(amounts: Float64Array, index: number, amount: number): void {
    const row = this.before[index] as number;
    const share = this.share[index] as number;
    amounts[row] = (amounts[row] as number) + share * amount;
    if (share < 1) amounts[row + 1] = (amounts[row + 1] as number) + (1 - share) * amount;
  }
}
