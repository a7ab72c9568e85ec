import { derive, less, plus } from '../design/derive.ts';
import type { Cell, FaceDesign, FrontCell, FrontPanelDesign, OpenCell } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { DoorBefore } from '../design/inside-design.ts';
import type { CarcaseLayout, Span } from '../evaluation.ts';
import { Rational } from '../length/rational.ts';
import { FRONT_THICKNESS, usual } from '../tables/trade-habits.ts';
import { spanFrom } from './spans.ts';
import { fitOf } from './touching-fronts.ts';

/** How thick the fronts are, and how far they stand before the case or its frame. */

/** What the front is made of; undefined while nothing is said. */
export function frontMaterial(
  cell: Pick<FrontCell, 'front'>,
  face: Pick<FaceDesign, 'fronts'>,
): FrontPanelDesign | undefined {
  return cell.front ?? face.fronts;
}

/** The frame that a door is made as; undefined for a plain one, and for fronts that are no doors. */
export function doorFrame(cell: FrontCell, face: Pick<FaceDesign, 'fronts'>): FrontPanelDesign['framed'] {
  return cell.what === 'door' ? frontMaterial(cell, face)?.framed : undefined;
}

export function frontThickness(cell: Pick<FrontCell, 'front'>, face: FaceDesign): Figure {
  return frontMaterial(cell, face)?.thickness ?? face.usualFront ?? threeQuarters;
}

const threeQuarters = usual(FRONT_THICKNESS, 'in');

/** The thickest of these fronts; undefined where there are none. */
export function thickestFront(cells: readonly FrontCell[], face: FaceDesign): Figure | undefined {
  return largest(cells.map((cell) => frontThickness(cell, face)));
}

/**
 * How far a front stands before the plane of the face: an inset one not at all, an overlay one by its whole thickness,
 * a lipped one by its lip, which is half as thick as the front (common practice, no source).
 */
export function frontStandsBefore(cell: Pick<FrontCell, 'front' | 'fit'>, face: FaceDesign): Figure | undefined {
  const thickness = frontThickness(cell, face);
  const fit = fitOf(cell, face);
  switch (fit.kind) {
    case 'inset':
      return undefined;
    case 'overlay':
      return thickness;
    case 'lipped':
      return derive('thickness of the lip, half that of the front (common practice)', [
        plus('thickness of the front', thickness, Rational.of(1, 2)),
      ]);
    default: {
      const unknown: never = fit;
      return unknown;
    }
  }
}

/** By how much the foremost of all fronts stands before the plane of the face; undefined when none does. */
export function frontsStandBefore(face: FaceDesign): Figure | undefined {
  const figures: Figure[] = [];
  const waiting: Cell[] = [face.root];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    if (cell.kind === 'row' || cell.kind === 'stack') waiting.push(...cell.cells);
    if (cell.kind !== 'front') continue;
    const stands = frontStandsBefore(cell, face);
    if (stands !== undefined) figures.push(stands);
  }
  return largest(figures);
}

function largest(figures: readonly Figure[]): Figure | undefined {
  let most: Figure | undefined;
  for (const figure of figures) {
    if (most === undefined || most.length.compare(figure.length) < 0) most = figure;
  }
  return most;
}

/** Where a front lies, front to back. */
export function frontDeep(cell: FrontCell, face: FaceDesign, layout: CarcaseLayout): Span {
  if (cell.behind !== undefined) {
    const start = derive('behind the closed door', [
      plus('the front of the body', layout.body.z.start),
      ...reachBehindDoor(cell.behind, face, layout),
    ]);
    return spanFrom(start, frontThickness(cell, face));
  }
  const stands = frontStandsBefore(cell, face);
  const start =
    stands === undefined
      ? layout.facePlane
      : derive('where the front begins', [
          plus('the plane of the face', layout.facePlane),
          less('it stands before it', stands),
        ]);
  return spanFrom(start, frontThickness(cell, face));
}

/** How far the back of a front lies behind the front of the body, as terms of a sum; none where it lies on it. */
export function reachBehind(
  cell: Pick<FrontCell, 'front' | 'fit' | 'behind'>,
  face: FaceDesign,
  layout: CarcaseLayout,
): readonly Operand[] {
  if (cell.behind !== undefined)
    return [...reachBehindDoor(cell.behind, face, layout), plus('thickness of the front', frontThickness(cell, face))];
  const frame = layout.frame === undefined ? [] : [less('thickness of the frame', layout.frame.thickness)];
  const stands = frontStandsBefore(cell, face);
  const thickness = frontThickness(cell, face);
  // An overlay front stands before the face by all of its thickness.
  if (stands === thickness) return frame;
  const lip = stands === undefined ? [] : [less('thickness of the lip', stands)];
  return [plus('thickness of the front', thickness), ...lip, ...frame];
}

/** How far the fronts behind a door begin behind the front of the body: behind the back of the closed door. */
export function reachBehindDoor(
  { door, behindDoor }: DoorBefore,
  face: FaceDesign,
  layout: CarcaseLayout,
): readonly Operand[] {
  const back = reachBehind(door, face, layout).map((operand) =>
    operand.label === 'thickness of the front' ? { ...operand, label: 'thickness of the door' } : operand,
  );
  return [...back, plus('behind the closed door', behindDoor)];
}

/**
 * How far what closes a space lies behind the front of the body: its own front, or the door that it stands behind.
 * Undefined where it is open to the room.
 */
export function reachBefore(
  cell: FrontCell | OpenCell,
  face: FaceDesign,
  layout: CarcaseLayout,
): readonly Operand[] | undefined {
  if (cell.kind === 'front') return reachBehind(cell, face, layout);
  return cell.behind && reachBehindDoor(cell.behind, face, layout);
}
