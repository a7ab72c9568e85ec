import type { BarPlan, FilledBar, Sizes } from './effective-lengths.ts';
import { fillBars } from './greedy-filling.ts';

/** Plans as lists of single pieces, for searches that move them from bar to bar. Pieces are indexes into `Sizes.size`. */

/** Looks for a plan of a given number of bars by moving pieces between them. */
export interface BarExchange {
  /** Goes on for about so many decisions; answers a plan if it found one. */
  run(work: number): BarPlan | undefined;
  /** The length of what is in no bar at present. */
  readonly looseLength: number;
}

/** As often as each size is asked, its index. */
export function piecesOf(demand: Int32Array): readonly number[] {
  return [...demand].flatMap((count, index) => new Array<number>(count).fill(index));
}

/** The plan with these bars, and with as many more as it takes for what is in none. */
export function planOfBars(sizes: Sizes, contents: readonly (readonly number[])[], loose: readonly number[]): BarPlan {
  const bars = contents.filter((content) => content.length > 0).map((content) => barOf(content));
  const waiting = new Int32Array(sizes.size.length);
  for (const index of loose) waiting[index] = (waiting[index] as number) + 1;
  const free = Float64Array.from(sizes.stocks, ({ available }) => Math.max(0, available - bars.length));
  const more = fillBars(sizes, waiting, free);
  const cost = more.cost + bars.length * (sizes.stocks[0]?.cost ?? 0);
  return { bars: [...bars, ...more.bars], cost, missing: more.missing };
}

function barOf(content: readonly number[]): FilledBar {
  const filling: number[] = [];
  for (const index of [...content].sort((a, b) => a - b)) {
    if (filling.at(-2) === index) filling[filling.length - 1] = (filling.at(-1) as number) + 1;
    else filling.push(index, 1);
  }
  return { stock: 0, filling, times: 1 };
}
