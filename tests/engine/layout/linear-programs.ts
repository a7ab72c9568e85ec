import { type Constraint, type Model, solve } from 'yalps';
import { derive } from '../../../packages/engine/src/design/derive.ts';
import type { AxisCell, AxisRequest } from '../../../packages/engine/src/layout/axis.ts';

/**
 * A third way, for rows and stacks with limits: a general-purpose linear-programming library in ordinary floating point.
 *
 * Sizes that all follow one share, each held between limits, are the fairest division of the total: the one in which
 * the smallest level is as large as it can be, then the next smallest, and so on (a cell's level is its size less its
 * grading, over its weight). A cell held at its least has a higher level than the others and a cell held at its most a
 * lower one, so that neither can help the rest. Hence the programs, one after the other:
 *
 *     maximise t  subject to  size_i >= weight_i t + grading_i  for every cell still free,
 *                             least_i <= size_i <= most_i,  sum of openings and boundaries = total.
 *
 * Free cells that cannot exceed the best t because their most stops them are frozen there, and the rest is done again.
 * When no cell is stopped every free size is decided by t and its least.
 */

/** Openings in inches, or undefined when no sizes within the limits fill the total. */
export function openingsByLinearPrograms(request: AxisRequest): readonly number[] | undefined {
  const sharesFronts = request.cells.filter(isSharing).every((cell) => cell.hasFront);
  const cells = request.cells.map((cell) => linearCell(cell, sharesFronts));
  const room = request.boundaries.reduce(
    (left, boundary) => left - boundary.thickness.length.approximateInches,
    request.total.length.approximateInches,
  );
  const frozen = new Map<number, number>();
  cells.forEach((cell, at) => {
    if (cell.fixed !== undefined) frozen.set(at, cell.fixed);
  });
  for (;;) {
    const level = bestLevel(cells, frozen, room);
    if (level === undefined) return undefined;
    const stopped = cells.flatMap((cell, at) =>
      !frozen.has(at) && cell.most - (cell.weight * level + cell.offset) < 1e-9 ? [at] : [],
    );
    if (stopped.length === 0 || frozen.size + stopped.length === cells.length) {
      return cells.map(
        (cell, at) => frozen.get(at) ?? Math.min(cell.most, Math.max(cell.least, cell.weight * level + cell.offset)),
      );
    }
    for (const at of stopped) frozen.set(at, cells[at]?.most ?? Number.NaN);
  }
}

/** All in inches of opening: opening = weight x level + offset. */
interface LinearCell {
  readonly fixed?: number;
  readonly weight: number;
  readonly offset: number;
  readonly least: number;
  readonly most: number;
}

function linearCell(cell: AxisCell, sharesFronts: boolean): LinearCell {
  const delta = cell.hasFront ? derive('', [...cell.deltaStart, ...cell.deltaEnd]).length.approximateInches : 0;
  const none = { weight: 0, offset: 0, least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY };
  const { asked } = cell;
  if (cell.measured !== undefined) return { ...none, fixed: cell.measured.length.approximateInches };
  if (asked.kind === 'fixed') {
    return { ...none, fixed: asked.figure.length.approximateInches - (asked.basis === 'front' ? delta : 0) };
  }
  if (asked.kind === 'same') throw new Error('copies are not part of these programs');
  const steps = asked.kind === 'graded' ? asked.by.length.approximateInches * asked.step : 0;
  return {
    weight: asked.kind === 'share' ? asked.weight.toNumber() : 1,
    offset: steps - (sharesFronts ? delta : 0),
    least: cell.atLeast === undefined ? none.least : cell.atLeast.length.approximateInches - delta,
    most: cell.atMost === undefined ? none.most : cell.atMost.length.approximateInches - delta,
  };
}

function isSharing(cell: AxisCell): boolean {
  return cell.measured === undefined && cell.asked.kind !== 'fixed' && cell.asked.kind !== 'same';
}

/** The library's variables are never negative: the level is the difference of two, and sizes count from a low floor. */
function bestLevel(
  cells: readonly LinearCell[],
  frozen: ReadonlyMap<number, number>,
  room: number,
): number | undefined {
  const floor = -1000;
  const constraints: Record<string, Constraint> = {};
  const up: Record<string, number> = { level: 1 };
  const down: Record<string, number> = { level: -1 };
  const variables: Record<string, Record<string, number>> = { up, down };
  let left = room;
  cells.forEach((cell, at) => {
    const held = frozen.get(at);
    if (held !== undefined) {
      left -= held;
      return;
    }
    left -= floor;
    variables[`size${at}`] = { sum: 1, [`above${at}`]: 1, [`within${at}`]: 1 };
    up[`above${at}`] = -cell.weight;
    down[`above${at}`] = cell.weight;
    constraints[`above${at}`] = { min: cell.offset - floor };
    const within: { min?: number; max?: number } = {};
    if (Number.isFinite(cell.least)) within.min = cell.least - floor;
    if (Number.isFinite(cell.most)) within.max = cell.most - floor;
    constraints[`within${at}`] = within;
  });
  constraints['sum'] = { equal: left };
  const model: Model = { direction: 'maximize', objective: 'level', constraints, variables };
  const solution = solve(model, { precision: 1e-10, includeZeroVariables: true });
  return solution.status === 'optimal' ? solution.result : undefined;
}
