import { derive, less, plus } from '../design/derive.ts';
import type { Cell, FaceDesign, FrontCell, FrontFit, GroupCell, LippedFit } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { InsideDesign } from '../design/inside-design.ts';
import type { CarcaseLayout, LaidCell, LaidDivider, Rectangle, Span } from '../evaluation.ts';
import { Rational } from '../length/rational.ts';
import type { AxisResult, SolvedCell } from './axis.ts';
import { gathered } from './axis-plan.ts';
import { type CellEdges, edgesAgainstCase, lapAt, turned } from './front-edges.ts';
import { edgesOfCells } from './group-axis.ts';
import { placeAlong } from './place-along.ts';
import type { SameCircle } from './resolve-same.ts';
import { type SolvedAxis, solveFace } from './solve-face.ts';
import { lessAtEnds, spanFrom, spanUpTo } from './spans.ts';
import { fitOf } from './touching-fronts.ts';

/**
 * Divides the face into openings and fronts: sizes go up once (a group whose cells are all written takes their sum) and
 * down once (each row and stack shares out what it was given). Knows nothing of parts and makes no findings: it hands
 * over what the solver answered.
 */

export interface FaceLayout {
  readonly face: LaidCell;
  /** Outer groups before inner ones; a group whose own size is not known is absent. */
  readonly axes: readonly SolvedAxis[];
  /** Sizes that wait for each other. */
  readonly circles: readonly SameCircle[];
}

/**
 * Never fails: cells whose size cannot be known are left out, with everything within them, and the others stand where
 * they stand. Sizes may come out zero or negative; the checks say so.
 */
export function layOutFace(face: FaceDesign, carcase: CarcaseLayout): FaceLayout {
  const solution = solveFace(face, carcase);
  const context: Context = { face, axes: new Map(solution.axes.map((axis) => [axis.group, axis])) };
  const laid = layOutCell(context, face.root, carcase.face, edgesAgainstCase(carcase.edges), {});
  return { face: laid, ...solution };
}

interface Context {
  readonly face: FaceDesign;
  readonly axes: ReadonlyMap<GroupCell, SolvedAxis>;
  /** Behind a door: from end to end of its opening, and what of that drawers keep to. */
  readonly ends?: { readonly whole: Span; readonly clear: Span };
}

/** The front's size along its parent's direction, as the solver derived it. */
interface FrontAlong {
  readonly width?: Figure;
  readonly height?: Figure;
}

function layOutCell(context: Context, cell: Cell, opening: Rectangle, edges: CellEdges, front: FrontAlong): LaidCell {
  switch (cell.kind) {
    case 'row':
    case 'stack':
      return layOutGroup(context, cell, opening, edges);
    case 'open':
      return { cell, opening: fromEndToEnd(context, opening), leaves: [], cells: [], dividers: [] };
    case 'front':
      return layOutFront(context, cell, opening, edges, front);
    default: {
      const unknown: never = cell;
      return unknown;
    }
  }
}

function layOutGroup(context: Context, group: GroupCell, opening: Rectangle, outer: CellEdges): LaidCell {
  const axis = context.axes.get(group);
  if (axis === undefined) return { cell: group, opening, leaves: [], cells: [], dividers: [] };
  const { direction, request, result } = axis;
  const edges = edgesOfCells(group, outer, context.face);
  const solved = new Map(knownCells(result).map((cell) => [cell.id, cell]));
  const places = placeAlong(
    direction === 'width' ? opening.x : opening.y,
    direction === 'width' ? 'forwards' : 'backwards',
    request.cells.map((cell) => solved.get(cell.id)?.opening),
    request.boundaries.map((boundary) => boundary.thickness),
  );
  const at = (span: Span): Rectangle => (direction === 'width' ? { ...opening, x: span } : { ...opening, y: span });

  const cells: LaidCell[] = [];
  group.cells.forEach((cell, index) => {
    const span = places.cells[index];
    const edge = edges[index];
    if (span === undefined || edge === undefined) return;
    const front = solved.get(cell.id)?.front;
    cells.push(layOutCell(context, cell, at(span), edge, front === undefined ? {} : { [direction]: front }));
  });
  const dividers: LaidDivider[] = [];
  group.dividers.forEach((divider, index) => {
    const span = places.boundaries[index];
    if (span !== undefined && divider.form !== 'none') dividers.push({ divider, at: fromEndToEnd(context, at(span)) });
  });
  return { cell: group, opening, leaves: [], cells, dividers };
}

/**
 * A sum that does not come out is still laid out as it is written, so that one sees where it overflows; of a sum that
 * leaves nothing for some cells only the others are known.
 */
function knownCells(result: AxisResult): readonly SolvedCell[] {
  return result.kind === 'solved' ? result.cells : result.known;
}

function layOutFront(
  context: Context,
  cell: FrontCell,
  opening: Rectangle,
  edges: CellEdges,
  along: FrontAlong,
): LaidCell {
  const fit = fitOf(cell, context.face);
  const laps = {
    left: lapAt(edges.left, fit),
    right: lapAt(edges.right, fit),
    top: lapAt(edges.top, fit),
    bottom: lapAt(edges.bottom, fit),
  };
  const width =
    along.width ??
    derive('width of the front', gathered([plus('width of the opening', opening.x.size), ...laps.left, ...laps.right]));
  const height =
    along.height ??
    derive(
      'height of the front',
      gathered([plus('height of the opening', opening.y.size), ...laps.top, ...laps.bottom]),
    );
  const left = derive('where the front begins', [
    plus('where the opening begins', opening.x.start),
    ...turned(laps.left),
  ]);
  const foot = derive('the lower edge of the front', [
    plus('where the opening begins', opening.y.start),
    ...turned(laps.bottom),
  ]);
  const front = { x: spanFrom(left, width), y: spanFrom(foot, height) };
  const leaves = leavesOf(cell, fit, front);
  const bodies = fit.kind === 'lipped' ? { bodies: bodiesOf(fit, opening, leaves) } : {};
  const cells = cell.inside === undefined ? [] : [layOutInside(context, cell.inside, opening)];
  return { cell, opening, front, leaves, ...bodies, cells, dividers: [] };
}

/** Drawers behind a door keep clear of the ends of its opening; shelves and dividers reach from end to end. */
function layOutInside(context: Context, inside: InsideDesign, opening: Rectangle): LaidCell {
  const clear = lessAtEnds(opening.x, inside.clear);
  const behind = { ...context, ends: { whole: opening.x, clear } };
  return layOutCell(behind, inside.root, { ...opening, x: clear }, edgesAgainstCase({}), {});
}

function fromEndToEnd({ ends }: Context, at: Rectangle): Rectangle {
  if (ends === undefined || ends.whole === ends.clear) return at;
  const start = at.x.start.length.equals(ends.clear.start.length) ? ends.whole.start : at.x.start;
  const end = at.x.end.length.equals(ends.clear.end.length) ? ends.whole.end : at.x.end;
  if (start === at.x.start && end === at.x.end) return at;
  const size = derive('from end to end of the opening', [plus('where it ends', end), less('where it starts', start)]);
  return { ...at, x: { start, end, size } };
}

/** A pair meets with one gap between its leaves, which are equally wide. */
function leavesOf(cell: FrontCell, fit: FrontFit, front: Rectangle): readonly Rectangle[] {
  if (cell.leaves === 1) return [front];
  const both = derive('both leaves together', [
    plus('width of the pair', front.x.size),
    less('gap between the leaves', fit.gap),
  ]);
  const leaf = derive('width of one leaf of the pair', [plus('both leaves together', both, Rational.of(1, 2))]);
  return [
    { ...front, x: spanFrom(front.x.start, leaf) },
    { ...front, x: spanUpTo(front.x.end, leaf) },
  ];
}

/** What of a lipped front goes into the opening: a gap away from it all round, and as far as the leaves meet. */
function bodiesOf(fit: LippedFit, opening: Rectangle, leaves: readonly Rectangle[]): readonly Rectangle[] {
  const clear = (span: Span): Span =>
    spanFrom(
      derive('a gap inside the opening', [plus('where the opening begins', span.start), plus('gap', fit.gap)]),
      derive('the opening less a gap at each side', [plus('size of the opening', span.size), less('gap', fit.gap, 2)]),
    );
  const whole = { x: clear(opening.x), y: clear(opening.y) };
  const [left, right] = leaves;
  if (left === undefined || right === undefined) return [whole];
  const leaf = (start: Figure, end: Figure): Rectangle => ({
    ...whole,
    x: spanFrom(
      start,
      derive('width of the body of a leaf', [plus('where it ends', end), less('where it begins', start)]),
    ),
  });
  return [leaf(whole.x.start, left.x.end), leaf(right.x.start, whole.x.end)];
}
