import { FillingSearch } from '../lengths/filling-search.ts';
import { SeededRandom } from '../seeded-random.ts';
import { measureBoards } from './board-bound.ts';
import { patternBound } from './board-pattern-bound.ts';
import type { BoardBlank, BoardPlan, BoardProblem, BoardStep, CuttingOrder } from './board-problem.ts';
import { type BoardSpace, boardSpace } from './board-space.ts';
import {
  type BlankSizes,
  type FilledBoard,
  type FillStretch,
  fillBoard,
  longestFirst,
  mostValuable,
} from './fill-board.ts';
import { MovedBlanks } from './move-blanks.ts';
import { WholeBoards } from './whole-boards.ts';

/**
 * Plans boards, better and better: a first plan with the first whole step, then others in which what was placed badly is worth
 * more and therefore placed sooner. Each step takes some milliseconds; whoever waits stops when he likes. The same problem
 * and seed give the same steps everywhere. Throws a RangeError, with the first step, where a number is not whole or is
 * negative.
 */
export function* planBoards(problem: BoardProblem, seed = 1): Generator<BoardStep, void> {
  demandWhole(problem);
  const search = new BoardSearch(problem, seed);
  const { area, best: simple, needs } = measureBoards(problem);
  let bound = simple;
  const part = (progress: number): BoardStep => ({ bound, areaBound: area, done: false, isPartial: true, progress });
  const first = search.first();
  let filling = first.next();
  for (; filling.done !== true; filling = first.next()) yield part(0);
  let best = filling.value;
  const isProved = () => best.missing === 0 && best.plan.cost <= bound;
  const step = (plan: BoardPlan | undefined, done: boolean, progress: number): BoardStep => ({
    ...(plan === undefined ? {} : { plan }),
    bound,
    areaBound: area,
    done,
    progress: done ? 1 : progress,
  });
  yield step(best.plan, isProved(), 0);
  if (isProved()) return;
  const whole = new WholeBoards(problem.boards, needs);
  // What leaves something out may cost less than the bound for all.
  const raise = (to: number) => {
    if (Number.isFinite(to) && best.missing === 0) bound = Math.max(bound, to);
  };
  raise(whole.leastCost(best.plan.cost));
  const bounding = patternBound(problem, (to, need) => {
    raise(to);
    if (!isProved() && whole.add(need, to)) raise(whole.leastCost(best.plan.cost));
    return isProved();
  });
  const moving = MovedBlanks.for(problem, seed);
  // What bands are made anew from; `best` may have come from elsewhere.
  let inBands = best;
  for (let round = 0; round < ROUNDS && !isProved(); round += 1) {
    bounding.next();
    const moved = moving?.cheaper(best.missing === 0 ? best.plan.cost : Number.POSITIVE_INFINITY);
    if (moved !== undefined) {
      best = { plan: moved, boards: [], missing: 0 };
      yield step(moved, isProved(), round / ROUNDS);
      if (isProved()) return;
    }
    const again = search.again(inBands);
    let more = again.next();
    for (; more.done !== true; more = again.next()) yield part(round / ROUNDS);
    const next = more.value;
    if (next.missing < inBands.missing || (next.missing === inBands.missing && next.plan.cost <= inBands.plan.cost)) {
      inBands = next;
    }
    const isBetter = next.missing < best.missing || (next.missing === best.missing && next.plan.cost < best.plan.cost);
    if (isBetter) best = next;
    yield step(isBetter ? best.plan : undefined, isProved(), (round + 1) / ROUNDS);
  }
  if (!isProved()) yield step(undefined, true, 1);
}

const ROUNDS = 600;
const BOARDS_A_STEP = 32;
/** Of more different blanks a board chooses among some only. */
const MOST_KINDS_TOGETHER = 120;

interface Found {
  readonly plan: BoardPlan;
  readonly boards: readonly FilledBoard[];
  /** Area of what has no place. */
  readonly missing: number;
}

class BoardSearch {
  private readonly problem: BoardProblem;
  private readonly random: SeededRandom;
  private readonly spaces: readonly BoardSpace[];
  private readonly sizes: Readonly<Record<CuttingOrder, BlankSizes>>;
  private readonly area: Float64Array;
  private readonly values: Float64Array;
  private readonly fills: Readonly<Record<'quick' | 'thorough', Readonly<Record<CuttingOrder, FillStretch>>>>;

  constructor(problem: BoardProblem, seed: number) {
    const { blanks, ripKerf, crosscutKerf } = problem;
    this.problem = problem;
    this.random = new SeededRandom(seed);
    this.spaces = problem.boards.flatMap((kind) => [
      boardSpace(problem, kind, 'rip first'),
      boardSpace(problem, kind, 'crosscut first'),
    ]);
    const widths = Float64Array.from(blanks, ({ width }) => width + ripKerf);
    const lengths = Float64Array.from(blanks, ({ length }) => length + crosscutKerf);
    this.sizes = {
      'rip first': blankSizes(blanks, widths, lengths),
      'crosscut first': blankSizes(blanks, lengths, widths),
    };
    this.area = Float64Array.from(blanks, (_, at) => (widths[at] as number) * (lengths[at] as number));
    this.values = this.area.slice();
    const search = (order: CuttingOrder) => {
      const room = Math.max(1, ...this.spaces.map((space) => (space.order === order ? space.inside : 0)));
      const { order: falling, inside } = this.sizes[order];
      return mostValuable(
        new FillingSearch(
          Float64Array.from(falling, (blank) => inside[blank] as number),
          room,
        ),
      );
    };
    this.fills = {
      quick: {
        'rip first': longestFirst(this.sizes['rip first']),
        'crosscut first': longestFirst(this.sizes['crosscut first']),
      },
      thorough: { 'rip first': search('rip first'), 'crosscut first': search('crosscut first') },
    };
  }

  first(): Generator<void, Found> {
    return this.fillAll([], 'quick');
  }

  /** Keeps some boards of a plan, the fuller ones rather, and makes the others anew. */
  again(found: Found): Generator<void, Found> {
    const chance = 0.2 + 0.7 * this.random.fraction();
    const kept = found.boards.filter((board) => this.random.fraction() < chance * fullness(board) ** 2);
    return this.fillAll(kept, this.random.fraction() < 0.3 ? 'quick' : 'thorough');
  }

  /** Pauses after some boards, so that whoever waits for a plan of thousands of blanks can stop. */
  private *fillAll(kept: readonly FilledBoard[], how: 'quick' | 'thorough'): Generator<void, Found> {
    const { problem, area, spaces } = this;
    const waiting = Int32Array.from(problem.blanks, (blank) => (isSize(blank) ? blank.count : 0));
    const free = new Map(problem.boards.map(({ id, available = Number.POSITIVE_INFINITY }) => [id, available]));
    const boards: FilledBoard[] = [];
    const put = (board: FilledBoard) => {
      boards.push(board);
      const { id } = board.space.kind;
      free.set(id, (free.get(id) ?? 0) - 1);
      for (let at = 0; at < waiting.length; at += 1) {
        waiting[at] = (waiting[at] as number) - (board.counts[at] as number);
      }
    };
    for (const board of kept) put(board);
    let missing = 0;
    for (;;) {
      const hardest = this.hardest(waiting);
      if (hardest === undefined) break;
      const isMany = waiting.length > MOST_KINDS_TOGETHER;
      const sizes = isMany ? this.nearest(waiting, hardest) : this.sizes;
      let best: FilledBoard | undefined;
      let bestRate = Number.POSITIVE_INFINITY;
      for (const space of spaces) {
        if ((free.get(space.kind.id) ?? 0) <= 0) continue;
        const filled = fillBoard(
          space,
          sizes[space.order],
          waiting,
          this.values,
          isMany ? longestFirst(sizes[space.order]) : this.fills[how][space.order],
          hardest,
        );
        if (filled === undefined) continue;
        const rate = (space.kind.cost + 1) / filled.value;
        if (rate < bestRate) {
          best = filled;
          bestRate = rate;
        }
      }
      if (best === undefined) {
        missing += (waiting[hardest] as number) * (area[hardest] as number);
        waiting[hardest] = 0;
        continue;
      }
      put(best);
      this.learn(best);
      if (boards.length % BOARDS_A_STEP === 0) yield;
    }
    const cheaper = boards.map((board) => this.onCheaper(board, free));
    return { boards: cheaper, missing, plan: this.planOf(cheaper) };
  }

  /** The hardest and those that wait behind it, so that the work for a board does not grow with their number. */
  private nearest(waiting: Int32Array, hardest: number): Readonly<Record<CuttingOrder, BlankSizes>> {
    const some: number[] = [hardest];
    for (let step = 1; step < waiting.length && some.length < MOST_KINDS_TOGETHER; step += 1) {
      const at = (hardest + step) % waiting.length;
      if ((waiting[at] as number) > 0) some.push(at);
    }
    const of = (sizes: BlankSizes): BlankSizes => ({ ...sizes, order: fallingInside(some, sizes.inside) });
    return { 'rip first': of(this.sizes['rip first']), 'crosscut first': of(this.sizes['crosscut first']) };
  }

  /** What is worth most by its own size, for it goes into the fewest places. */
  private hardest(waiting: Int32Array): number | undefined {
    let best: number | undefined;
    for (let at = 0; at < waiting.length; at += 1) {
      if (
        (waiting[at] as number) > 0 &&
        (best === undefined || (this.values[at] as number) > (this.values[best] as number))
      ) {
        best = at;
      }
    }
    return best;
  }

  /** What went into a board that was filled badly is worth more the next time. */
  private learn(board: FilledBoard): void {
    const badness = 1 / Math.max(0.05, fullness(board));
    for (let at = 0; at < this.values.length; at += 1) {
      if (board.counts[at] === 0) continue;
      const share = 0.1 + 0.4 * this.random.fraction();
      this.values[at] = (1 - share) * (this.values[at] as number) + share * (this.area[at] as number) * badness;
    }
  }

  /** The same cuts on a cheaper board, if they go into one that is free. */
  private onCheaper(board: FilledBoard, free: Map<string, number>): FilledBoard {
    const { space, bands } = board;
    if (space.defects.length > 0) return board;
    const sizes = this.sizes[space.order];
    const lastBand = bands[bands.length - 1];
    const bandsEnd = (lastBand?.at ?? 0) + (lastBand?.size ?? 0) - space.bandsFrom + space.bandKerf;
    let insideEnd = 0;
    for (const { blanks } of bands) {
      const last = blanks[blanks.length - 1];
      if (last === undefined) continue;
      const at = sizes.blanks.findIndex(({ id }) => id === last.blank);
      insideEnd = Math.max(insideEnd, last.at - space.insideFrom + (sizes.inside[at] as number));
    }
    const fits = this.spaces
      .filter((other) => other.order === space.order && other.defects.length === 0)
      .filter((other) => other.kind.cost < space.kind.cost && (free.get(other.kind.id) ?? 0) > 0)
      .filter((other) => bandsEnd <= other.bands && insideEnd <= other.inside)
      .sort((a, b) => a.kind.cost - b.kind.cost)[0];
    if (fits === undefined) return board;
    free.set(fits.kind.id, (free.get(fits.kind.id) ?? 0) - 1);
    free.set(space.kind.id, (free.get(space.kind.id) ?? 0) + 1);
    return { ...board, space: fits };
  }

  private planOf(boards: readonly FilledBoard[]): BoardPlan {
    const left = this.problem.blanks.map(({ id, count }, at) => ({
      blank: id,
      count: count - boards.reduce((sum, board) => sum + (board.counts[at] as number), 0),
    }));
    return {
      boards: boards.map(({ space, bands }) => ({ board: space.kind.id, order: space.order, bands })),
      unplaced: left.filter(({ count }) => count > 0),
      cost: boards.reduce((sum, { space }) => sum + space.kind.cost, 0),
    };
  }
}

function blankSizes(blanks: readonly BoardBlank[], band: Float64Array, inside: Float64Array): BlankSizes {
  const all = blanks.map((_, at) => at);
  return { blanks, band, inside, order: fallingInside(all, inside) };
}

function fallingInside(some: readonly number[], inside: Float64Array): Int32Array {
  return Int32Array.from(some).sort((a, b) => (inside[b] as number) - (inside[a] as number) || a - b);
}

/** How much of its room is blanks, as a share; kerfs count as blanks. */
function fullness(board: FilledBoard): number {
  return Math.min(1, board.used / Math.max(1, board.space.bands * board.space.inside));
}

/** Whether it is a rectangle in whole units at all; what is none is left out of every plan. */
function isSize({ width, length }: BoardBlank): boolean {
  return Number.isSafeInteger(width) && Number.isSafeInteger(length) && width > 0 && length > 0;
}

function demandWhole({ boards, blanks, ...rest }: BoardProblem): void {
  const sizes = [
    ...boards.flatMap(({ width, length, cost, available = 0 }) => [width, length, cost, available]),
    ...blanks.flatMap(({ count }) => [count]),
    ...Object.values(rest),
  ];
  const broken = sizes.find((size) => !Number.isSafeInteger(size) || size < 0);
  if (broken !== undefined) throw new RangeError(`${broken} is not a whole number from 0`);
}
