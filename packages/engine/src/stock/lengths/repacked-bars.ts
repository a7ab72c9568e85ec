import type { SeededRandom } from '../seeded-random.ts';
import type { BarPlan, Sizes } from './effective-lengths.ts';
import { type BarExchange, planOfBars } from './pieces-in-bars.ts';

/** Decisions on the way to fill one bar, before the fullest so far has to do. */
const STEPS_FOR_A_BAR = 300;
/** A change is kept if it is no worse than what there was so many changes ago. */
const LATENESS = 200;
/** What the squares of what is left over in bars count, against the length of what is in none. */
const GATHERED_WORTH = 0.05;

/**
 * A plan of so many bars, from the best one by the fullest of its bars: two or three are emptied, filled again with what
 * was in them and with what has no bar yet, each as full as can be, so that what is left over gathers, until everything
 * is in a bar. After T. Gardeyn and T. Wauters, A goal-driven ruin and recreate heuristic for the 2D variable-sized bin
 * packing problem, European Journal of Operational Research 301(2), 2022, along one dimension; changes are kept by late
 * acceptance (E. K. Burke and Y. Bykov, EJOR 258(1), 2017).
 */
export class RepackedBars implements BarExchange {
  private readonly sizes: Sizes;
  private readonly capacity: number;
  private readonly random: SeededRandom;
  private readonly bars: (readonly number[])[];
  private readonly left: number[];
  private loose: readonly number[];
  private readonly late: Float64Array;
  private value = 0;
  private changes = 0;
  /** A plan is told when what is loose would go into so many bars: one fewer each time. */
  private mostMore = Number.POSITIVE_INFINITY;
  /** What is filled from, the longest first, of what length, and whether it is taken; as many as `count` says. */
  private readonly waiting: Int32Array;
  private readonly length: Float64Array;
  private readonly isTaken: Uint8Array;
  private count = 0;
  /** For each place in `waiting` the length of what waits from there on. */
  private readonly lengthFrom: Float64Array;
  private readonly chosen: Int32Array;
  private readonly best: Int32Array;
  private bestCount = 0;
  private bestLeft = 0;
  private skipped = 0;
  private steps = 0;
  private work = 0;

  /** All stock is alike; `best` has more bars than `count`. */
  constructor(sizes: Sizes, count: number, best: BarPlan, random: SeededRandom) {
    this.sizes = sizes;
    this.capacity = sizes.stocks[0]?.capacity ?? 0;
    this.random = random;
    const pieces = sizes.demand.reduce((sum, asked) => sum + asked, 0);
    this.waiting = new Int32Array(pieces);
    this.length = new Float64Array(pieces);
    this.isTaken = new Uint8Array(pieces);
    this.lengthFrom = new Float64Array(pieces + 1);
    this.chosen = new Int32Array(pieces);
    this.best = new Int32Array(pieces);
    const contents = best.bars
      .flatMap(({ filling, times }) => Array.from({ length: times }, () => piecesIn(filling)))
      .map((content) => ({ content, left: this.capacity - this.lengthOf(content) }))
      .sort((a, b) => a.left - b.left);
    this.bars = contents.slice(0, count).map(({ content }) => content);
    this.left = contents.slice(0, count).map(({ left }) => left);
    this.loose = contents.slice(count).flatMap(({ content }) => content);
    this.value = this.worth();
    this.late = new Float64Array(LATENESS).fill(this.value);
  }

  get looseLength(): number {
    return this.lengthOf(this.loose);
  }

  run(work: number): BarPlan | undefined {
    for (this.work = work; this.work > 0; ) {
      this.change();
      const more = this.looseLength / this.capacity;
      if (more > this.mostMore) continue;
      this.mostMore = Math.ceil(more) - 1;
      return planOfBars(this.sizes, this.bars, this.loose);
    }
    return undefined;
  }

  private change(): void {
    const { bars, left, random } = this;
    const places: number[] = [];
    const count = Math.min(bars.length, 2 + random.below(2));
    while (places.length < count) {
      const place = random.below(bars.length);
      if (!places.includes(place)) places.push(place);
    }
    const contentsBefore = places.map((place) => bars[place] as readonly number[]);
    const leftBefore = places.map((place) => left[place] as number);
    this.count = 0;
    for (const index of this.loose) this.waits(index);
    for (const content of contentsBefore) for (const index of content) this.waits(index);
    this.sort();
    let value = this.value - this.looseLength + this.gathered(leftBefore);
    for (const place of places) {
      this.fill();
      const content: number[] = [];
      for (let at = 0; at < this.bestCount; at += 1) {
        const taken = this.best[at] as number;
        this.isTaken[taken] = 1;
        content.push(this.waiting[taken] as number);
      }
      bars[place] = content;
      left[place] = this.bestLeft;
      value -= this.gathered([this.bestLeft]);
    }
    for (let at = 0; at < this.count; at += 1) if (this.isTaken[at] === 0) value += this.length[at] as number;
    const late = this.changes % LATENESS;
    this.changes += 1;
    if (value <= this.value || value <= (this.late[late] as number)) {
      this.value = value;
      this.loose = Array.from(this.waiting.subarray(0, this.count)).filter((_, at) => this.isTaken[at] === 0);
    } else {
      for (let at = 0; at < places.length; at += 1) {
        bars[places[at] as number] = contentsBefore[at] as readonly number[];
        left[places[at] as number] = leftBefore[at] as number;
      }
    }
    this.late[late] = this.value;
  }

  private worth(): number {
    return this.lengthOf(this.loose) - this.gathered(this.left);
  }

  private gathered(lefts: readonly number[]): number {
    return (GATHERED_WORTH / this.capacity) * lefts.reduce((sum, left) => sum + left * left, 0);
  }

  private waits(index: number): void {
    this.waiting[this.count] = index;
    this.count += 1;
  }

  /** The longest first: sizes fall with their index. */
  private sort(): void {
    const { waiting, isTaken, length, count } = this;
    waiting.subarray(0, count).sort();
    for (let at = 0; at < count; at += 1) {
      length[at] = this.sizes.size[waiting[at] as number] as number;
      isTaken[at] = 0;
    }
    this.work -= count * 6;
  }

  /** The fullest bar that is found; some pieces are passed over by chance. */
  private fill(): void {
    const { isTaken, length, lengthFrom, random, count } = this;
    lengthFrom[count] = 0;
    for (let at = count - 1; at >= 0; at -= 1) {
      lengthFrom[at] = (lengthFrom[at + 1] as number) + (isTaken[at] === 1 ? 0 : (length[at] as number));
    }
    this.bestCount = 0;
    this.bestLeft = this.capacity;
    this.skipped = random.fraction() < 0.3 ? 0 : 0.2 * random.fraction();
    this.steps = STEPS_FOR_A_BAR;
    this.descend(0, this.capacity, 0);
    this.work -= STEPS_FOR_A_BAR - this.steps + 10;
  }

  private descend(from: number, left: number, chosen: number): void {
    const { waiting, isTaken, length, lengthFrom, count } = this;
    if (left < this.bestLeft) {
      this.bestLeft = left;
      this.bestCount = chosen;
      for (let at = 0; at < chosen; at += 1) this.best[at] = this.chosen[at] as number;
    }
    for (let at = from; at < count; at += 1) {
      this.steps -= 1;
      if (this.bestLeft === 0 || this.steps < 0 || left - (lengthFrom[at] as number) >= this.bestLeft) return;
      if (isTaken[at] === 1 || (length[at] as number) > left) continue;
      // Of pieces that are alike only the first that are free are tried.
      const isSecond = at > from && waiting[at - 1] === waiting[at] && isTaken[at - 1] === 0;
      if (isSecond || (this.skipped > 0 && this.random.fraction() < this.skipped)) continue;
      this.chosen[chosen] = at;
      this.descend(at + 1, left - (length[at] as number), chosen + 1);
    }
  }

  private lengthOf(pieces: readonly number[]): number {
    let sum = 0;
    for (const index of pieces) sum += this.sizes.size[index] as number;
    return sum;
  }
}

function piecesIn(filling: readonly number[]): readonly number[] {
  const pieces: number[] = [];
  for (let at = 0; at < filling.length; at += 2) {
    pieces.push(...new Array<number>(filling[at + 1] as number).fill(filling[at] as number));
  }
  return pieces;
}
