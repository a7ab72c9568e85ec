import type { BoardKind, BoardProblem } from './board-problem.ts';
import type { Need } from './whole-boards.ts';

/**
 * What boards must cost at least. Lengths are measured by some scale on which whatever fits behind each other in a board adds
 * up to no more than the board does, widths by another; the products then add up as areas do (conservative scales, Fekete
 * and Schepers 2004). With the plain scales that is the bound by area; scales that count what is over a half or a third of
 * the board as whole steps are stronger where large blanks waste what is left beside them. Defects are not counted.
 */

/** How a size is measured: the value on the scale of every blank, and of the room of every kind of board. */
interface Scale {
  readonly blanks: Float64Array;
  readonly boards: Float64Array;
}

export interface BoardBounds {
  readonly area: number;
  /** At least `area`. */
  readonly best: number;
}

/** Of all ways to measure, as many of those that ask most. */
const MOST_NEEDS = 40;

export function boardBounds(problem: BoardProblem): BoardBounds {
  const { area, best } = measureBoards(problem);
  return { area, best };
}

/** The bounds, and what whole boards have to hold by the measures that ask most of them, in the order of the boards. */
export function measureBoards(problem: BoardProblem): BoardBounds & { readonly needs: readonly Need[] } {
  const { boards, blanks, ripKerf, crosscutKerf, endTrim, edgeTrim } = problem;
  if (boards.length === 0) return { area: 0, best: 0, needs: [] };
  const counts = blanks.map(({ count }) => count);
  const lengths = scales(
    blanks.map(({ length }) => length + crosscutKerf),
    counts,
    boards.map(({ length }) => length - 2 * endTrim + crosscutKerf),
  );
  const widths = scales(
    blanks.map(({ width }) => width + ripKerf),
    counts,
    boards.map(({ width }) => width - 2 * edgeTrim + ripKerf),
  );
  const measures = lengths.flatMap((long) =>
    widths.map((wide) => {
      const need: Need = {
        total: counts.reduce(
          (sum, count, at) => sum + count * (long.blanks[at] as number) * (wide.blanks[at] as number),
          0,
        ),
        held: boards.map((_, at) => Math.max(0, (long.boards[at] as number) * (wide.boards[at] as number))),
      };
      return { need, cost: leastCost(boards, need) };
    }),
  );
  const area = measures[0]?.cost ?? 0;
  const demanding = [...measures].sort((a, b) => b.cost - a.cost);
  const needs = demanding.slice(0, MOST_NEEDS).map(({ need }) => need);
  return { area, best: demanding[0]?.cost ?? 0, needs };
}

/** The boards that give most measure for their cost first, as many as there are, the last one in part. */
function leastCost(boards: readonly BoardKind[], { total, held }: Need): number {
  let rest = total;
  const kinds = boards
    .map(({ cost, available = Number.POSITIVE_INFINITY }, at) => ({ cost, available, measure: held[at] as number }))
    .filter(({ measure }) => measure > 0)
    .sort((a, b) => a.cost * b.measure - b.cost * a.measure);
  let cost = 0;
  for (const kind of kinds) {
    if (rest > kind.available * kind.measure) {
      cost += kind.available * kind.cost;
      rest -= kind.available * kind.measure;
      continue;
    }
    // Products of scales are whole or halves; a hair is taken off against the rounding of the division.
    return cost + Math.ceil((rest * kind.cost) / kind.measure - 1e-9);
  }
  return cost;
}

/** Cells that are filled for one scale at most; above that lengths are only measured as they are. */
const MOST_CELLS = 2_000_000;
const MOST_THRESHOLDS = 12;
const MOST_STEPS = 8;

/** The plain scale first. */
function scales(blanks: readonly number[], counts: readonly number[], boards: readonly number[]): readonly Scale[] {
  const room = Math.max(0, ...boards);
  const plain: Scale = { blanks: Float64Array.from(blanks), boards: Float64Array.from(boards) };
  if (room * blanks.length > MOST_CELLS) return [plain];
  // The second one does not count what no choice of blanks can fill.
  const found = [plain, scaleOf(blanks, counts, boards, room, (size) => size)];
  for (let steps = 1; steps <= MOST_STEPS; steps += 1) {
    // What is more than a whole number of (steps + 1)ths of the room counts as the number of such steps.
    found.push(scaleOf(blanks, counts, boards, room, (size) => Math.ceil((size * (steps + 1)) / room) - 1));
  }
  const thresholds = [...new Set(blanks.filter((size) => size * 2 <= room))].sort((a, b) => b - a);
  for (const small of thresholds.slice(0, MOST_THRESHOLDS)) {
    // What leaves less than `small` beside it counts as the whole room, what is smaller than `small` not at all.
    found.push(scaleOf(blanks, counts, boards, room, (size) => (size > room - small ? room : size < small ? 0 : size)));
  }
  return found;
}

function scaleOf(
  blanks: readonly number[],
  counts: readonly number[],
  boards: readonly number[],
  room: number,
  measure: (size: number) => number,
): Scale {
  const values = Float64Array.from(blanks, measure);
  const most = mostWithin(blanks, counts, values, room);
  return { blanks: values, boards: Float64Array.from(boards, (size) => (size < 0 ? 0 : (most[size] as number))) };
}

/** For every room up to `room`, the most that fits into it by one scale, each blank as often as there is of it. */
function mostWithin(
  blanks: readonly number[],
  counts: readonly number[],
  values: Float64Array,
  room: number,
): Float64Array {
  const most = new Float64Array(room + 1);
  blanks.forEach((size, at) => {
    const value = values[at] as number;
    if (value <= 0 || size <= 0) return;
    let left = Math.min(counts[at] as number, Math.floor(room / size));
    // Lots of 1, 2, 4, … make up every count.
    for (let lot = 1; left > 0; lot *= 2) {
      const some = Math.min(lot, left);
      left -= some;
      for (let to = room; to >= some * size; to -= 1) {
        most[to] = Math.max(most[to] as number, (most[to - some * size] as number) + some * value);
      }
    }
  });
  return most;
}
