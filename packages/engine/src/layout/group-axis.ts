import { derive } from '../design/derive.ts';
import type { Cell, FaceDesign, FrontCell, GroupCell, SizeAsked } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { AxisBoundary, AxisCell, AxisRequest } from './axis.ts';
import { cellLabel, dividerLabel } from './cell-names.ts';
import { type CellEdges, edgesAtDivider, lapAt } from './front-edges.ts';
import { rigidTotal } from './solve-axis.ts';
import { zeroAt } from './spans.ts';
import { fitOf, frontsAlong, type Side } from './touching-fronts.ts';

/** One row or stack turned into a question for the axis solver. Knows nothing of where it lies. */

export type Direction = 'width' | 'height';

export function directionOf(group: GroupCell): Direction {
  return group.kind === 'row' ? 'width' : 'height';
}

/** The edges of each cell of `group`, whose own edges are `outer`. In the order of the cells. */
export function edgesOfCells(group: GroupCell, outer: CellEdges, face: FaceDesign): readonly CellEdges[] {
  const last = group.cells.length - 1;
  return group.cells.map((_, at) => {
    const before = at === 0 ? undefined : edgesAtDivider(group, at - 1, face).after;
    const after = at === last ? undefined : edgesAtDivider(group, at, face).before;
    return group.kind === 'row'
      ? { ...outer, left: before ?? outer.left, right: after ?? outer.right }
      : { ...outer, top: before ?? outer.top, bottom: after ?? outer.bottom };
  });
}

/** What the cells of `group` ask for and what stands between them, without the space there is. */
export function cellsAndBoundaries(
  group: GroupCell,
  edges: readonly CellEdges[],
  face: FaceDesign,
): Pick<AxisRequest, 'totalLabel' | 'cells' | 'boundaries'> {
  const direction = directionOf(group);
  const cells = group.cells.map((cell, at): AxisCell => {
    const edge = edges[at];
    const deltas = edge === undefined ? undefined : deltasOf(cell, group.kind, edge, face);
    return {
      id: cell.id,
      ...(cell.name === undefined ? {} : { name: cell.name }),
      label: cellLabel(cell, group),
      asked: askedOf(cell, direction, edge, face),
      ...(cell.atLeast === undefined ? {} : { atLeast: cell.atLeast }),
      ...(cell.atMost === undefined ? {} : { atMost: cell.atMost }),
      ...(cell.measured === undefined ? {} : { measured: cell.measured }),
      ...(cell.measuredFront === undefined ? {} : { measuredFront: cell.measuredFront }),
      hasFront: deltas !== undefined,
      deltaStart: deltas?.start ?? [],
      deltaEnd: deltas?.end ?? [],
    };
  });
  const boundaries = group.cells.slice(0, -1).map((_, at) => boundaryAt(group, at));
  return { totalLabel: `${direction} of the ${group === face.root ? 'face' : group.kind}`, cells, boundaries };
}

const nothingBetween = zeroAt('nothing stands between them');

function boundaryAt(group: GroupCell, at: number): AxisBoundary {
  const divider = group.dividers[at];
  if (divider === undefined || divider.form === 'none') return { label: 'nothing', thickness: nothingBetween };
  return { label: dividerLabel(group, at), thickness: divider.material.thickness };
}

/** A group that asks for nothing of its own takes what its cells add up to, if all of them are written or measured. */
function askedOf(cell: Cell, direction: Direction, edge: CellEdges | undefined, face: FaceDesign): SizeAsked {
  if (cell.along.kind !== 'rest' || edge === undefined) return cell.along;
  const total = rigidSize(cell, direction, edge, face);
  return total === undefined ? cell.along : { kind: 'fixed', basis: 'opening', figure: total };
}

/**
 * The one pass up: what a group's own cells make it, in `direction`; undefined where something in it can give, or
 * copies a size from elsewhere.
 */
function rigidSize(cell: Cell, direction: Direction, edge: CellEdges, face: FaceDesign): Figure | undefined {
  if (cell.kind !== 'row' && cell.kind !== 'stack') return undefined;
  const edges = edgesOfCells(cell, edge, face);
  if (directionOf(cell) === direction) return rigidTotal(cellsAndBoundaries(cell, edges, face));
  // Seen across its own direction every cell is as large as the group: the first that is rigid decides, and another
  // that disagrees is found when its own sum does not come out.
  for (const [at, inner] of cell.cells.entries()) {
    const innerEdge = edges[at];
    const size = innerEdge === undefined ? undefined : rigidSize(inner, direction, innerEdge, face);
    if (size !== undefined) return size;
  }
  return undefined;
}

interface Deltas {
  readonly start: readonly Operand[];
  readonly end: readonly Operand[];
}

/**
 * What a cell's front has beyond its opening along its row or stack; undefined where there is no front. A row or stack
 * whose every space has a front reads from outside like one front, if all of them do the same at its edges. Where a
 * size of the front is asked of a row or stack it means the fronts that are there, whatever stands open beside them.
 */
function deltasOf(cell: Cell, along: 'row' | 'stack', edges: CellEdges, face: FaceDesign): Deltas | undefined {
  const asked = asksFront(cell);
  if (!isAllFronts(cell) && !asked) return undefined;
  const [startSide, endSide] = sidesAlong(along);
  const start = commonLap(cell, startSide, edges, face);
  const end = commonLap(cell, endSide, edges, face);
  if (start !== undefined && end !== undefined) return { start, end };
  return asked ? mostCommonDeltas(cell, along, edges, face) : undefined;
}

function asksFront(cell: Cell): boolean {
  if (cell.measuredFront !== undefined && cell.measured === undefined) return true;
  return (cell.along.kind === 'fixed' || cell.along.kind === 'same') && cell.along.basis === 'front';
}

function sidesAlong(along: 'row' | 'stack'): readonly [Side, Side] {
  return along === 'row' ? ['left', 'right'] : ['top', 'bottom'];
}

/** The fronts that reach from one end of the cell to the other along its row or stack. */
export function frontsAcross(cell: Cell, along: 'row' | 'stack'): readonly FrontCell[] {
  const [startSide, endSide] = sidesAlong(along);
  const ending = new Set(frontsAlong(cell, endSide));
  return frontsAlong(cell, startSide).filter((front) => ending.has(front));
}

/** Where fronts sit in different ways, what most of them do: as many as can be get the size that is asked for. */
function mostCommonDeltas(cell: Cell, along: 'row' | 'stack', edges: CellEdges, face: FaceDesign): Deltas | undefined {
  const [startSide, endSide] = sidesAlong(along);
  const counted = new Map<string, { readonly deltas: Deltas; count: number }>();
  for (const front of frontsAcross(cell, along)) {
    const fit = fitOf(front, face);
    const deltas = { start: lapAt(edges[startSide], fit), end: lapAt(edges[endSide], fit) };
    const key = derive('', [...deltas.start, ...deltas.end]).length.exactInches;
    const alike = counted.get(key);
    if (alike === undefined) counted.set(key, { deltas, count: 1 });
    else alike.count += 1;
  }
  let most: { readonly deltas: Deltas; readonly count: number } | undefined;
  for (const alike of counted.values()) if (most === undefined || alike.count > most.count) most = alike;
  return most?.deltas;
}

function commonLap(cell: Cell, side: Side, edges: CellEdges, face: FaceDesign): readonly Operand[] | undefined {
  const laps = frontsAlong(cell, side).map((front) => lapAt(edges[side], fitOf(front, face)));
  const [first] = laps;
  if (first === undefined) return undefined;
  const length = derive('', first).length;
  return laps.every((lap) => derive('', lap).length.equals(length)) ? first : undefined;
}

function isAllFronts(cell: Cell): boolean {
  if (cell.kind === 'open') return false;
  if (cell.kind === 'front') return true;
  return cell.cells.length > 0 && cell.cells.every(isAllFronts);
}
