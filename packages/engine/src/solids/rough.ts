import type { FlatPoint, Point } from './points.ts';
import { edgesOf, type Polyhedron } from './polyhedron.ts';

/**
 * Plain numbers in front of the exact tests. They answer only where what they find is far larger than all rounding
 * that can be in it; else they leave the question open, and it is asked exactly. So no verdict ever
 * depends on them, only how soon it comes.
 */

export type Triple = readonly [number, number, number];

interface RoughCorners {
  readonly corners: readonly Triple[];
  /** The largest coordinate. */
  readonly size: number;
}

const knownCorners = new WeakMap<Polyhedron, RoughCorners>();

function roughCorners(polyhedron: Polyhedron): RoughCorners {
  const kept = knownCorners.get(polyhedron);
  if (kept !== undefined) return kept;
  const corners = polyhedron.corners.map(roughly);
  const size = corners.reduce((most, [x, y, z]) => Math.max(most, Math.abs(x), Math.abs(y), Math.abs(z)), 0);
  const made = { corners, size };
  knownCorners.set(polyhedron, made);
  return made;
}

export function roughly({ x, y, z }: Point): Triple {
  return [x.toNumber(), y.toNumber(), z.toNumber()];
}

export function roughCross([a, b, c]: Triple, [d, e, f]: Triple): Triple {
  return [b * f - c * e, c * d - a * f, a * e - b * d];
}

/** The sum of its parts: not less than its length, and not twice as much. */
export function extentOf([x, y, z]: Triple): number {
  return Math.abs(x) + Math.abs(y) + Math.abs(z);
}

/** A double is good to one part in 2^53, about 1e-16, and each number here is made of some ten: a margin of 10,000. */
const ROUNDING = 1e-11;

/**
 * Whether a plane across `direction` parts the two; undefined if that is too close to tell. `extent` is what the
 * direction was multiplied from: rounding goes by that, not by what is left of it.
 */
export function areRoughlyApart(a: Polyhedron, b: Polyhedron, direction: Triple, extent: number): boolean | undefined {
  const [ofA, ofB] = [roughCorners(a), roughCorners(b)];
  const slack = ROUNDING * extent * (ofA.size + ofB.size);
  const [leastA, mostA] = roughRange(ofA.corners, direction);
  const [leastB, mostB] = roughRange(ofB.corners, direction);
  const between = Math.max(leastB - mostA, leastA - mostB);
  return between > slack ? true : between < -slack ? false : undefined;
}

function roughRange(corners: readonly Triple[], [u, v, w]: Triple): readonly [number, number] {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const [x, y, z] of corners) {
    const reach = u * x + v * y + w * z;
    if (reach < least) least = reach;
    if (reach > most) most = reach;
  }
  return [least, most];
}

interface RoughPoint {
  readonly u: number;
  readonly v: number;
}

/** Whether two convex outlines come nearer to each other than `than`; undefined if that is too close to tell. */
export function areRoughlyNearer(a: readonly FlatPoint[], b: readonly FlatPoint[], than: number): boolean | undefined {
  const [one, other] = [a, b].map((points) => points.map(({ u, v }) => ({ u: u.toNumber(), v: v.toNumber() })));
  if (one === undefined || other === undefined) return undefined;
  const distance = Math.sqrt(roughSquaredDistance(one, other));
  const size = [...one, ...other].reduce((most, { u, v }) => Math.max(most, Math.abs(u), Math.abs(v)), than);
  // The root of a rounding is larger than the rounding: 1e-16 becomes 1e-8, so the margin is smaller here.
  const slack = 1e-6 * size;
  return distance < than - slack ? true : distance > than + slack ? false : undefined;
}

function roughSquaredDistance(a: readonly RoughPoint[], b: readonly RoughPoint[]): number {
  if (a.some((point) => isRoughlyWithin(point, b)) || b.some((point) => isRoughlyWithin(point, a))) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [p, q] of edgesOf(a)) {
    for (const [r, s] of edgesOf(b)) {
      if (turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0) return 0;
      least = Math.min(least, toSegment(p, r, s), toSegment(r, p, q));
    }
  }
  return least;
}

function turn(from: RoughPoint, to: RoughPoint, point: RoughPoint): number {
  return (to.u - from.u) * (point.v - from.v) - (to.v - from.v) * (point.u - from.u);
}

function isRoughlyWithin(point: RoughPoint, outline: readonly RoughPoint[]): boolean {
  return outline.length > 2 && edgesOf(outline).every(([from, to]) => turn(from, to, point) >= 0);
}

function toSegment(point: RoughPoint, from: RoughPoint, to: RoughPoint): number {
  const [u, v] = [to.u - from.u, to.v - from.v];
  const squaredLength = u * u + v * v;
  const along = (point.u - from.u) * u + (point.v - from.v) * v;
  const share = squaredLength === 0 ? 0 : Math.min(1, Math.max(0, along / squaredLength));
  return (point.u - from.u - share * u) ** 2 + (point.v - from.v - share * v) ** 2;
}
