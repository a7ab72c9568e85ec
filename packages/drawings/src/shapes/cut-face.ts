import { edgesOfCells } from './cell-edges.ts';
import { behindPlane, type ConvexCell, cornersOf, heightOver, type Plane, TOUCHING_MM } from './convex-cell.ts';
import type { Stretch } from './seen-edges.ts';
import { dot, type Vector } from './vectors.ts';
import { type Flat, flat, hullOf, type ViewDirection } from './view-direction.ts';

/** What a saw would lay open: the face of a part in a plane through it. */

export interface CutFace {
  /** Convex pieces side by side, each counter-clockwise. */
  readonly pieces: readonly (readonly Flat[])[];
  /** Its outline, with the wood on the left of every stretch. */
  readonly outline: readonly Stretch[];
}

/** The viewer stands before the plane, so what lies behind it stays. Undefined where the plane passes the wood. */
export function cutFace(cells: readonly ConvexCell[], plane: Plane, from: ViewDirection): CutFace | undefined {
  const pieces: (readonly Flat[])[] = [];
  const faces: ConvexCell[] = [];
  for (const cell of cells) {
    const heights = cornersOf(cell).map((corner) => heightOver(plane, corner));
    if (Math.min(...heights) > -TOUCHING_MM || Math.max(...heights) < TOUCHING_MM) continue;
    const cap = behindPlane(cell, plane)?.faces.find(
      (face) => dot(face.normal, plane.normal) > 1 - 1e-9 && Math.abs(face.offset - plane.offset) <= TOUCHING_MM,
    );
    if (cap === undefined) continue;
    pieces.push(hullOf(cap.ring.map((corner) => flat(corner, from))));
    faces.push({ faces: [cap] });
  }
  if (pieces.length === 0) return undefined;
  const outline = edgesOfCells(faces).map(({ from: one, to: other }) => woodOnLeft(one, other, pieces, from));
  return { pieces, outline };
}

function woodOnLeft(one: Vector, other: Vector, pieces: readonly (readonly Flat[])[], from: ViewDirection): Stretch {
  const [a, b] = [flat(one, from), flat(other, from)];
  const length = Math.hypot(b.u - a.u, b.v - a.v);
  const aside = 0.01;
  const left = {
    u: (a.u + b.u) / 2 - ((b.v - a.v) / length) * aside,
    v: (a.v + b.v) / 2 + ((b.u - a.u) / length) * aside,
  };
  return pieces.some((piece) => isInside(left, piece)) ? { from: a, to: b } : { from: b, to: a };
}

export function isInside(point: Flat, outline: readonly Flat[]): boolean {
  return outline.every((a, at) => {
    const b = outline[(at + 1) % outline.length] ?? a;
    return (b.u - a.u) * (point.v - a.v) - (b.v - a.v) * (point.u - a.u) >= 0;
  });
}

/** What of the cells lies behind the plane. */
export function behind(cells: readonly ConvexCell[], plane: Plane): readonly ConvexCell[] {
  const kept = cells.flatMap((cell) => behindPlane(cell, plane) ?? []);
  // The very same where nothing is taken away, so that what is known of it stays known.
  return kept.length === cells.length && kept.every((cell, at) => cell === cells[at]) ? cells : kept;
}
