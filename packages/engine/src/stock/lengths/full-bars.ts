import type { SeededRandom } from '../seeded-random.ts';
import type { BarPlan, Sizes } from './effective-lengths.ts';
import { type BarExchange, piecesOf, planOfBars } from './pieces-in-bars.ts';

/** Decisions on the way to fill one bar, before the fullest so far has to do. */
const STEPS_FOR_A_BAR = 1_500;
/** So many bars at most are emptied at once. */
const MOST_EMPTIED = 3;

/**
 * A plan of so many bars in which next to nothing may be left over: bars are taken apart together with what has no bar
 * yet, and are kept if as many are full again; what remains is always another rest. All the bars together waste no more
 * than the problem allows, so that the plan stands as soon as what remains would be one bar.
 */
export class FullBars implements BarExchange {
  private readonly sizes: Sizes;
  private readonly capacity: number;
  private readonly count: number;
  private readonly random: SeededRandom;
  private readonly full: (readonly number[])[] = [];
  private rest: readonly number[];
  /** What may still be left over in bars. */
  private spare: number;
  /** What is filled from, in the order in which it is tried, and whether it is taken. */
  private readonly waiting: Int32Array;
  private readonly length: Float64Array;
  private readonly key: Float64Array;
  private readonly isTaken: Uint8Array;
  /** How many there are. */
  private waits = 0;
  private readonly chosen: Int32Array;
  private readonly best: Int32Array;
  private bestCount = 0;
  private bestLeft = 0;
  private steps = 0;
  private work = 0;

  /** All stock is alike; `count` bars have room for everything by their length. */
  constructor(sizes: Sizes, count: number, random: SeededRandom) {
    this.sizes = sizes;
    this.capacity = sizes.stocks[0]?.capacity ?? 0;
    this.count = count;
    this.random = random;
    this.rest = piecesOf(sizes.demand);
    this.waiting = new Int32Array(this.rest.length);
    this.length = new Float64Array(this.rest.length);
    this.key = new Float64Array(this.rest.length);
    this.isTaken = new Uint8Array(this.rest.length);
    this.chosen = new Int32Array(this.rest.length);
    this.best = new Int32Array(this.rest.length);
    this.spare = count * this.capacity - this.lengthOf(this.rest);
  }

  get looseLength(): number {
    return this.lengthOf(this.rest);
  }

  run(work: number): BarPlan | undefined {
    for (this.work = work; this.work > 0; ) {
      if (this.count - this.full.length <= 1) return planOfBars(this.sizes, [...this.full, this.rest], []);
      this.change();
    }
    return undefined;
  }

  private change(): void {
    const { full, random } = this;
    const emptied = Math.min(full.length, 1 + random.below(MOST_EMPTIED));
    // Those to be emptied go to the end.
    for (let taken = 0; taken < emptied; taken += 1) {
      const last = full.length - 1 - taken;
      const place = random.below(last + 1);
      const bar = full[place] as readonly number[];
      full[place] = full[last] as readonly number[];
      full[last] = bar;
    }
    const open = full.slice(full.length - emptied);
    const spare = this.spare + open.reduce((sum, bar) => sum + this.leftIn(bar), 0);
    this.waits = 0;
    const noise = 0.05 + 0.2 * random.fraction();
    for (const index of this.rest) this.line(index, noise);
    for (const bar of open) for (const index of bar) this.line(index, noise);
    const found = this.fillAll(this.count - full.length + emptied, spare);
    if (found.length < emptied) return;
    full.splice(full.length - emptied, emptied, ...found);
    this.spare = spare - found.reduce((sum, bar) => sum + this.leftIn(bar), 0);
    this.rest = Array.from(this.waiting.subarray(0, this.waits)).filter((_, at) => this.isTaken[at] === 0);
  }

  /** About the longest first: another order every time. */
  private line(index: number, noise: number): void {
    const { waiting, key, isTaken } = this;
    const own = (this.sizes.size[index] as number) * (1 + noise * this.random.fraction());
    let at = this.waits;
    for (; at > 0 && (key[at - 1] as number) < own; at -= 1) {
      key[at] = key[at - 1] as number;
      waiting[at] = waiting[at - 1] as number;
    }
    key[at] = own;
    waiting[at] = index;
    isTaken[this.waits] = 0;
    this.waits += 1;
    this.work -= 10;
  }

  /** At most `most` bars, each around the first piece that waits, and together with no more left over than `spare`. */
  private fillAll(most: number, spare: number): readonly (readonly number[])[] {
    const { waiting, length, isTaken, best } = this;
    for (let at = 0; at < this.waits; at += 1) length[at] = this.sizes.size[waiting[at] as number] as number;
    const bars: number[][] = [];
    let left = spare;
    for (let at = 0; at < this.waits && bars.length < most; at += 1) {
      if (isTaken[at] === 1) continue;
      const content = Math.floor((2 * left * this.random.fraction()) / (most - bars.length));
      isTaken[at] = 1;
      this.fillFrom(at, content);
      if (this.bestLeft > left) {
        isTaken[at] = 0;
        continue;
      }
      const bar: number[] = [];
      for (let place = 0; place < this.bestCount; place += 1) {
        isTaken[best[place] as number] = 1;
        bar.push(waiting[best[place] as number] as number);
      }
      bars.push(bar);
      left -= this.bestLeft;
    }
    return bars;
  }

  /** Fills a bar that has one piece until no more than `content` is left over, or as full as it gets. */
  private fillFrom(at: number, content: number): void {
    this.chosen[0] = at;
    this.bestCount = 0;
    this.bestLeft = Number.POSITIVE_INFINITY;
    this.steps = STEPS_FOR_A_BAR;
    this.descend(0, this.capacity - (this.length[at] as number), 1, content);
    this.work -= STEPS_FOR_A_BAR - this.steps + 10;
  }

  private descend(from: number, left: number, chosen: number, content: number): boolean {
    const { isTaken, length, waits } = this;
    if (left < this.bestLeft) {
      this.bestLeft = left;
      this.bestCount = chosen;
      for (let at = 0; at < chosen; at += 1) this.best[at] = this.chosen[at] as number;
      if (left <= content) return true;
    }
    for (let at = from; at < waits; at += 1) {
      this.steps -= 1;
      if (this.steps < 0) return false;
      if (isTaken[at] === 1 || (length[at] as number) > left) continue;
      this.chosen[chosen] = at;
      if (this.descend(at + 1, left - (length[at] as number), chosen + 1, content)) return true;
    }
    return false;
  }

  private lengthOf(pieces: readonly number[]): number {
    return pieces.reduce((sum, index) => sum + (this.sizes.size[index] as number), 0);
  }

  private leftIn(bar: readonly number[]): number {
    return this.capacity - this.lengthOf(bar);
  }
}
