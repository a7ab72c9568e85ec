import type { Standing } from '../covering-program.ts';
import type { SeededRandom } from '../seeded-random.ts';
import type { BarPlan, FilledBar } from './effective-lengths.ts';
import { takeFilling } from './greedy-filling.ts';
import type { Pattern, PatternProgram } from './pattern-program.ts';

/**
 * Whole numbers for a closed list of patterns: a search through the relaxation's fractions, one pattern after the other cut
 * once more or not at all any more.
 */

const WHOLE = 1e-5;
const ROUNDING = 1e-6;
const MOST_PIVOTS = 2_000;

export type Outcome =
  | { readonly kind: 'plan'; readonly plan: BarPlan }
  | { readonly kind: 'none' }
  | { readonly kind: 'gave up' };

/** How far a search goes, and in which order it looks. */
export interface Patience {
  readonly nodes: number;
  /** How often, from the start to where it is, it may pass over what was proposed. */
  readonly refusals: number;
  /**
   * 'likeliest first' follows the relaxation and soon has some plan; 'most pressing first' looks at the size with the fewest
   * patterns left, which soon shows what is impossible.
   */
  readonly order: 'likeliest first' | 'most pressing first';
  /** From 0, how much chance has a say among equals. */
  readonly chance: number;
}

/**
 * Adds patterns for what waits until the program costs no more than `room`, from prices at which nothing makes it cheaper;
 * false if they do not bring it there.
 */
export type FindMore = (waiting: Int32Array, free: Float64Array, room: number) => boolean;

/** A pattern that is decided: cut once more, then, when that has led to nothing, not cut any more. */
interface Decision {
  readonly column: number;
  /** Patterns that are too dear to be in any better plan from here on. */
  readonly tooDear: readonly number[];
  /** Where the program stood before; absent once the second way is taken. */
  standing: Standing | undefined;
}

/**
 * A plan of at most `target`, from the patterns that are there, and of others only those that `findMore` finds; 'none' if
 * there is none of those that are there. Yields after each node. Leaves `patterns` in the middle of what it has decided.
 */
export function* searchWhole(
  patterns: PatternProgram,
  demand: Int32Array,
  available: Float64Array,
  target: number,
  patience: Patience,
  root: Standing,
  random: SeededRandom,
  findMore?: FindMore,
): Generator<void, Outcome> {
  const { program, sizes } = patterns;
  const waiting = demand.slice();
  const free = available.slice();
  const decisions: Decision[] = [];
  /** Large arrays that are used again. */
  const spare: Standing[] = [];
  let spent = 0;
  let refusals = 0;
  let isWhole = true;

  const showDemand = () => {
    for (let index = 0; index < waiting.length; index += 1) {
      program.setDemand(index, Math.max(0, waiting[index] as number));
    }
    for (let stock = 0; stock < free.length; stock += 1) {
      const row = patterns.stockRow[stock] as number;
      if (row >= 0) program.setDemand(row, free[stock] as number);
    }
  };
  const take = (column: number, times: 1 | -1) => {
    const { stock, filling } = patterns.patterns[column] as Pattern;
    takeFilling(waiting, filling, times);
    free[stock] = (free[stock] as number) - times;
    spent += times * (sizes.stocks[stock]?.cost ?? 0);
    showDemand();
  };
  /** Where more patterns may be found the program has to stand before they are sought; else what is too dear is enough. */
  const repair = (): boolean =>
    program.repair(MOST_PIVOTS, findMore === undefined ? target - spent + ROUNDING : undefined);
  /** Where rounding has spoilt the program's figures. */
  const startAgain = () => {
    program.restart();
    program.cheapen(MOST_PIVOTS);
  };
  /** Goes back to the last decision whose second way is open, and takes it; false if there is none. */
  const turnBack = (): boolean => {
    for (let last = decisions.at(-1); last !== undefined; last = decisions.at(-1)) {
      const { column, standing } = last;
      if (standing !== undefined) {
        take(column, -1);
        last.standing = undefined;
        refusals += 1;
        program.bar(column, true);
        program.stand(standing);
        spare.push(standing);
        if (refusals <= patience.refusals) {
          if (!repair()) startAgain();
          return true;
        }
        isWhole = false;
      }
      program.bar(column, false);
      refusals -= 1;
      for (const other of last.tooDear) program.bar(other, false);
      decisions.pop();
    }
    program.refresh();
    return false;
  };

  const propose = () => {
    const rank = (level: number) => level * (1 - patience.chance * random.fraction());
    return patience.order === 'likeliest first' ? mostWanted(patterns, rank) : mostPressing(patterns, waiting, rank);
  };

  showDemand();
  program.stand(root);
  for (let node = 0; node < patience.nodes; node += 1) {
    yield;
    const room = target - spent - program.value + ROUNDING;
    const isPossible =
      (room >= 0 && program.isCovered) ||
      (findMore?.(waiting, free, target - spent + ROUNDING) === true && program.isCovered);
    const branch = isPossible ? propose() : undefined;
    if (branch === 'all whole') {
      const taken = decisions.flatMap(({ column, standing }) => (standing === undefined ? [] : [column]));
      const plan = planOf(patterns, taken, demand);
      return { kind: 'plan', plan };
    }
    if (branch === undefined) {
      if (!turnBack()) return { kind: isWhole ? 'none' : 'gave up' };
      continue;
    }
    const tooDear: number[] = [];
    const left = target - spent - program.value + ROUNDING;
    for (let column = 0; column < program.columns; column += 1) {
      if (program.isBarred(column) || program.reducedCost(column) <= left) continue;
      program.bar(column, true);
      tooDear.push(column);
    }
    decisions.push({ column: branch, tooDear, standing: program.standing(spare.pop()) });
    take(branch, 1);
    program.refresh();
    if (!repair()) startAgain();
  }
  return { kind: 'gave up' };
}

/** The pattern that the relaxation cuts most surely but not yet all whole times. */
function mostWanted({ program }: PatternProgram, rankOf: (level: number) => number): number | 'all whole' {
  let best = -1;
  let bestRank = -1;
  let isWhole = true;
  program.forEachUsed((column, level) => {
    if (level - Math.floor(level + WHOLE) > WHOLE) isWhole = false;
    const rank = (level >= 1 - WHOLE ? 2 : 0) + rankOf(level);
    if (rank <= bestRank) return;
    best = column;
    bestRank = rank;
  });
  return isWhole ? 'all whole' : best;
}

/**
 * The pattern the relaxation cuts most often of those for the size that has the fewest patterns left. Proves sooner that
 * there is no plan, and finds one later.
 */
function mostPressing(
  patterns: PatternProgram,
  waiting: Int32Array,
  rankOf: (level: number) => number,
): number | 'all whole' {
  const { program } = patterns;
  const wanted = mostWanted(patterns, rankOf);
  if (wanted === 'all whole') return wanted;
  const choices = new Int32Array(waiting.length);
  for (let column = 0; column < program.columns; column += 1) {
    if (program.isBarred(column)) continue;
    const { filling } = patterns.patterns[column] as Pattern;
    for (let at = 0; at < filling.length; at += 2) {
      const index = filling[at] as number;
      choices[index] = (choices[index] as number) + 1;
    }
  }
  let best = wanted;
  let bestChoices = Number.POSITIVE_INFINITY;
  let bestRank = 0;
  program.forEachUsed((column, level) => {
    if (Math.abs(level - Math.round(level)) < WHOLE) return;
    const { filling } = patterns.patterns[column] as Pattern;
    const rank = rankOf(level);
    for (let at = 0; at < filling.length; at += 2) {
      const index = filling[at] as number;
      if ((waiting[index] as number) <= 0) continue;
      const few = choices[index] as number;
      if (few > bestChoices || (few === bestChoices && rank <= bestRank)) continue;
      best = column;
      bestChoices = few;
      bestRank = rank;
    }
  });
  return best;
}

/** What is decided and what the program then cuts, each piece only as often as it is asked. */
function planOf(patterns: PatternProgram, taken: readonly number[], demand: Int32Array): BarPlan {
  const { sizes } = patterns;
  const left = demand.slice();
  const bars: FilledBar[] = [];
  let cost = 0;
  const cut = (column: number, times: number) => {
    const { stock, filling } = patterns.patterns[column] as Pattern;
    for (let time = 0; time < times; time += 1) {
      const some: number[] = [];
      for (let at = 0; at < filling.length; at += 2) {
        const index = filling[at] as number;
        const count = Math.min(left[index] as number, filling[at + 1] as number);
        if (count > 0) some.push(index, count);
      }
      if (some.length === 0) continue;
      takeFilling(left, some, 1);
      bars.push({ stock, filling: some, times: 1 });
      cost += sizes.stocks[stock]?.cost ?? 0;
    }
  };
  for (const column of taken) cut(column, 1);
  patterns.program.forEachUsed((column, level) => cut(column, Math.round(level)));
  const missing = left.reduce((sum, count, index) => sum + count * (sizes.size[index] as number), 0);
  return { bars, cost, missing };
}
