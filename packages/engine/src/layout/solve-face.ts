import { derive, less, plus } from '../design/derive.ts';
import type { Cell, FaceDesign, GroupCell } from '../design/design.ts';
import type { Operand } from '../design/figure.ts';
import type { InsideDesign } from '../design/inside-design.ts';
import type { CarcaseLayout } from '../evaluation.ts';
import type { AxisCell, AxisRequest, AxisResult, SameTarget, SolvedCell } from './axis.ts';
import { type CellEdges, edgesAgainstCase } from './front-edges.ts';
import { cellsAndBoundaries, type Direction, directionOf, edgesOfCells } from './group-axis.ts';
import { type AxisToSolve, type SameCircle, solveAxes, totalOf } from './resolve-same.ts';

/** Asks the solver for all rows and stacks of the face at once, so that sizes can be copied from one to another. */

/** One row or stack as it was asked of the solver, and the answer. */
export interface SolvedAxis {
  readonly group: GroupCell;
  readonly direction: Direction;
  /** Can be asked again with other sizes: cells outside this row or stack then stay as they were solved. */
  readonly request: AxisRequest;
  readonly result: AxisResult;
}

export function solveFace(
  face: FaceDesign,
  carcase: CarcaseLayout,
): { readonly axes: readonly SolvedAxis[]; readonly circles: readonly SameCircle[] } {
  const asked: AskedAxis[] = [];
  const across: Giver = { kind: 'given', figure: carcase.face.x.size };
  const upright: Giver = { kind: 'given', figure: carcase.face.y.size };
  collect(face, face.root, edgesAgainstCase(carcase.edges), { width: across, height: upright }, asked);
  const { results, circles } = solveAxes(asked.map(({ axis }) => axis));

  const solved = new Map<string, SolvedCell>();
  for (const result of results.values()) {
    for (const cell of result.kind === 'solved' ? result.cells : result.known) solved.set(cell.id, cell);
  }
  const byName = new Map<string, SolvedCell>();
  for (const { name, id } of asked.flatMap(({ axis }) => axis.cells)) {
    const cell = solved.get(id);
    if (name !== undefined && cell !== undefined && !byName.has(name)) byName.set(name, cell);
  }
  const axes = asked.flatMap(({ group, axis }): SolvedAxis[] => {
    const result = results.get(axis.id);
    const total = totalOf(axis.total, solved);
    if (result === undefined || total === undefined) return [];
    const { totalLabel, cells, boundaries } = axis;
    const request = { total, totalLabel, cells, boundaries, sameAs: sameAsSolved(cells, byName) };
    return [{ group, direction: directionOf(group), request, result }];
  });
  return { axes, circles };
}

type Giver = AxisToSolve['total'];

interface AskedAxis {
  readonly group: GroupCell;
  readonly axis: AxisToSolve;
}

function collect(
  face: FaceDesign,
  cell: Cell,
  outer: CellEdges,
  space: Readonly<Record<Direction, Giver>>,
  asked: AskedAxis[],
): void {
  if (cell.kind === 'front' && cell.inside !== undefined) {
    const { root } = cell.inside;
    collect(face, root, edgesAgainstCase({}), { ...space, width: lessEnds(space.width, cell.inside) }, asked);
  }
  if (cell.kind !== 'row' && cell.kind !== 'stack') return;
  const direction = directionOf(cell);
  const edges = edgesOfCells(cell, outer, face);
  if (cell.cells.length > 0) {
    asked.push({
      group: cell,
      axis: { id: cell.id, total: space[direction], ...cellsAndBoundaries(cell, edges, face) },
    });
  }
  cell.cells.forEach((inner, at) => {
    const edge = edges[at];
    if (edge === undefined) return;
    collect(face, inner, edge, { ...space, [direction]: { kind: 'opening-of', cell: inner.id } }, asked);
  });
}

/** Drawers behind a door may have to keep clear of the ends of its opening. */
function lessEnds(giver: Giver, { clear }: InsideDesign): Giver {
  const ends: readonly Operand[] = [
    ...(clear.left === undefined ? [] : [less('clear at left', clear.left)]),
    ...(clear.right === undefined ? [] : [less('clear at right', clear.right)]),
  ];
  if (ends.length === 0) return giver;
  if (giver.kind === 'opening-of') return { ...giver, less: [...(giver.less ?? []), ...ends] };
  return {
    kind: 'given',
    figure: derive('what the opening leaves', [plus('width of the opening', giver.figure), ...ends]),
  };
}

function sameAsSolved(
  cells: readonly AxisCell[],
  byName: ReadonlyMap<string, SolvedCell>,
): (cellId: string) => SameTarget {
  return (cellId) => {
    const asked = cells.find((cell) => cell.id === cellId)?.asked;
    const as = asked?.kind === 'same' ? asked.as : undefined;
    const here = cells.find((cell) => cell.name !== undefined && cell.name === as);
    if (here !== undefined) return { kind: 'here', id: here.id };
    const elsewhere = as === undefined ? undefined : byName.get(as);
    return elsewhere === undefined ? { kind: 'unknown', why: 'no-such-cell' } : { kind: 'known', cell: elsewhere };
  };
}
