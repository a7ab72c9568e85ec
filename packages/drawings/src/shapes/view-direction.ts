import { dot, type Vector, vector } from './vectors.ts';

/** From where one looks: how a point of the piece comes to lie in the picture. Parallel rays, no perspective. */

export interface ViewDirection {
  /** What runs to the right and upwards in the picture, and what runs towards the viewer; each one long. */
  readonly right: Vector;
  readonly up: Vector;
  readonly towards: Vector;
}

/** A point of the picture in real millimetres, v upwards. */
export interface Flat {
  readonly u: number;
  readonly v: number;
}

/** Axes of a piece: x to the right, y up, z from the front to the back. */
export const FROM_FRONT: ViewDirection = {
  right: vector(1, 0, 0),
  up: vector(0, 1, 0),
  towards: vector(0, 0, -1),
};
/** Facing the right-hand side, one has the front to the left. */
export const FROM_RIGHT: ViewDirection = {
  right: vector(0, 0, 1),
  up: vector(0, 1, 0),
  towards: vector(1, 0, 0),
};
/** Looking down, the front at the foot of the sheet. */
export const FROM_ABOVE: ViewDirection = {
  right: vector(1, 0, 0),
  up: vector(0, 0, 1),
  towards: vector(0, 1, 0),
};

export function flat(point: Vector, { right, up }: ViewDirection): Flat {
  return { u: dot(point, right), v: dot(point, up) };
}

/** The corners of the smallest convex outline around points, counter-clockwise. */
export function hullOf(points: readonly Flat[]): readonly Flat[] {
  const sorted = [...points].sort((a, b) => a.u - b.u || a.v - b.v);
  const half = (ordered: readonly Flat[]): Flat[] => {
    const kept: Flat[] = [];
    for (const point of ordered) {
      while (kept.length >= 2 && turn(kept[kept.length - 2], kept[kept.length - 1], point) <= 1e-9) kept.pop();
      kept.push(point);
    }
    kept.pop();
    return kept;
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

/** Positive where the way a-b-c turns to the left. */
function turn(a: Flat | undefined, b: Flat | undefined, c: Flat): number {
  if (a === undefined || b === undefined) return 1;
  return (b.u - a.u) * (c.v - b.v) - (b.v - a.v) * (c.u - b.u);
}
