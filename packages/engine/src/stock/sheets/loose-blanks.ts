import { cell } from './cells.ts';
import type { PreparedType } from './prepare-sheets.ts';

/** How many blanks of each type lie in no sheet, and what they are worth together. */
export class LooseBlanks {
  readonly counts: Int32Array;
  worth = 0;
  private readonly worths: Float64Array;

  constructor(types: readonly PreparedType[], worths: Float64Array) {
    this.counts = new Int32Array(types.length);
    this.worths = worths;
  }

  add(type: number, count: number): void {
    this.counts[type] = cell(this.counts, type) + count;
    this.worth += count * (this.worths[type] as number);
  }

  set(counts: Int32Array): void {
    this.counts.set(counts);
    this.worth = counts.reduce((sum, count, type) => sum + count * (this.worths[type] as number), 0);
  }

  areNone(): boolean {
    for (let type = 0; type < this.counts.length; type++) if (this.counts[type] !== 0) return false;
    return true;
  }
}
