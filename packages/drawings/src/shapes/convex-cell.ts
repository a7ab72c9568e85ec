import { cross, dot, minus, plus, scaled, unit, type Vector, vector } from './vectors.ts';

/**
 * Convex pieces of wood in real millimetres, as plain numbers: what a picture is made of. A part with cuts in it is
 * several of them, side by side. Exact volumes are the engine's business; nothing here is ever measured for a size.
 */

/** What lies behind it has normal · point <= offset. */
export interface Plane {
  /** One long. */
  readonly normal: Vector;
  readonly offset: number;
}

export interface CellFace extends Plane {
  /** Corners in turn, so that (b - a) x (c - b) points as the normal does. */
  readonly ring: readonly Vector[];
}

export interface ConvexCell {
  readonly faces: readonly CellFace[];
}

/** Closer than this, in real millimetres, is touching. */
export const TOUCHING_MM = 1e-4;

/** Of six numbers, the lower end first. */
export interface Extent {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly z: readonly [number, number];
}

export function boxCell({ x, y, z }: Extent): ConvexCell {
  const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((at) => vector(x[at & 1 ? 1 : 0], y[at & 2 ? 1 : 0], z[at & 4 ? 1 : 0]));
  const corner = (a: 0 | 1, b: 0 | 1, c: 0 | 1): Vector => corners[a + 2 * b + 4 * c] ?? vector(x[a], y[b], z[c]);
  const face = (normal: Vector, ...ring: Vector[]): CellFace => faceThrough(normal, ring);
  return {
    faces: [
      face(vector(-1, 0, 0), corner(0, 0, 0), corner(0, 0, 1), corner(0, 1, 1), corner(0, 1, 0)),
      face(vector(1, 0, 0), corner(1, 0, 0), corner(1, 1, 0), corner(1, 1, 1), corner(1, 0, 1)),
      face(vector(0, -1, 0), corner(0, 0, 0), corner(1, 0, 0), corner(1, 0, 1), corner(0, 0, 1)),
      face(vector(0, 1, 0), corner(0, 1, 0), corner(0, 1, 1), corner(1, 1, 1), corner(1, 1, 0)),
      face(vector(0, 0, -1), corner(0, 0, 0), corner(0, 1, 0), corner(1, 1, 0), corner(1, 0, 0)),
      face(vector(0, 0, 1), corner(0, 0, 1), corner(1, 0, 1), corner(1, 1, 1), corner(0, 1, 1)),
    ],
  };
}

/** The ring is turned about if it runs against the normal. */
export function faceThrough(normal: Vector, ring: readonly Vector[]): CellFace {
  const [a, b, c] = ring;
  if (a === undefined || b === undefined || c === undefined) return { normal, offset: 0, ring };
  const runsWith = dot(cross(minus(b, a), minus(c, b)), normal) >= 0;
  return { normal, offset: dot(normal, a), ring: runsWith ? ring : [...ring].reverse() };
}

export function flipped({ normal, offset }: Plane): Plane {
  return { normal: scaled(normal, -1), offset: -offset };
}

export function heightOver({ normal, offset }: Plane, point: Vector): number {
  return dot(normal, point) - offset;
}

/** Each once, where the faces share it as one object; else as often as it has faces. */
export function cornersOf(cell: ConvexCell): readonly Vector[] {
  return [...new Set(cell.faces.flatMap(({ ring }) => ring))];
}

/** What of a cell lies behind the plane; undefined where nothing of any thickness does. */
export function behindPlane(cell: ConvexCell, plane: Plane): ConvexCell | undefined {
  let low = 0;
  let high = 0;
  for (const { ring } of cell.faces) {
    for (const corner of ring) {
      const height = heightOver(plane, corner);
      if (height < low) low = height;
      if (height > high) high = height;
    }
  }
  if (high <= TOUCHING_MM) return low < -TOUCHING_MM ? cell : undefined;
  if (low >= -TOUCHING_MM) return undefined;
  const faces: CellFace[] = [];
  const onCut: Vector[] = [];
  for (const face of cell.faces) {
    const ring = clippedRing(face.ring, plane, onCut);
    if (ring.length >= 3) faces.push({ ...face, ring });
  }
  const cap = ringAround(onCut, plane.normal);
  if (cap.length >= 3) faces.push({ ...plane, ring: cap });
  return { faces };
}

/** The corners behind the plane and where the ring crosses it; the latter are handed to `onCut`, too. */
function clippedRing(ring: readonly Vector[], plane: Plane, onCut: Vector[]): readonly Vector[] {
  const kept: Vector[] = [];
  ring.forEach((from, at) => {
    const to = ring[(at + 1) % ring.length] ?? from;
    const [a, b] = [heightOver(plane, from), heightOver(plane, to)];
    if (a <= TOUCHING_MM) kept.push(from);
    if (Math.abs(a) <= TOUCHING_MM) onCut.push(from);
    else if (Math.abs(b) > TOUCHING_MM && a < 0 !== b < 0) {
      // From the lower end in either direction, so that both faces of an edge get the very same point.
      const crossing = a < 0 ? crossed(from, to, a, b) : crossed(to, from, b, a);
      kept.push(crossing);
      onCut.push(crossing);
    }
  });
  return kept;
}

function crossed(low: Vector, high: Vector, a: number, b: number): Vector {
  return plus(low, scaled(minus(high, low), a / (a - b)));
}

/** Points of a convex outline in turn, each once, running with the normal. */
function ringAround(points: readonly Vector[], normal: Vector): readonly Vector[] {
  const once: Vector[] = [];
  for (const point of points) {
    const isNew = once.every((other) => {
      const way = minus(other, point);
      return dot(way, way) > TOUCHING_MM * TOUCHING_MM;
    });
    if (isNew) once.push(point);
  }
  const [first] = once;
  if (first === undefined || once.length < 3) return [];
  const middle = scaled(
    once.reduce((sum, point) => plus(sum, point)),
    1 / once.length,
  );
  const right = unit(minus(first, middle));
  const up = cross(normal, right);
  const turn = (point: Vector): number => Math.atan2(dot(minus(point, middle), up), dot(minus(point, middle), right));
  return [...once].sort((a, b) => turn(a) - turn(b));
}

function liesBefore({ faces }: ConvexCell, plane: Plane): boolean {
  for (const { ring } of faces) {
    for (const corner of ring) if (heightOver(plane, corner) < -TOUCHING_MM) return false;
  }
  return true;
}

/** A cell less what lies behind all the planes: the pieces that stay, side by side. */
export function lessConvex(cell: ConvexCell, planes: readonly Plane[]): readonly ConvexCell[] {
  if (planes.length === 0 || planes.some((plane) => liesBefore(cell, plane))) return [cell];
  const pieces: ConvexCell[] = [];
  let rest: ConvexCell | undefined = cell;
  for (const plane of planes) {
    const outside = behindPlane(rest, flipped(plane));
    if (outside !== undefined) pieces.push(outside);
    rest = behindPlane(rest, plane);
    if (rest === undefined) break;
  }
  return pieces;
}
