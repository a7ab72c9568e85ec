import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { cross, difference, dot, eitherWay, inWholeNumbers, isNowhere, type Point, pointOf, sum } from './points.ts';
import type { BoxSolid, ConvexSolid, Interval } from './solid.ts';

/**
 * A convex polyhedron to calculate with: faces hold their corners themselves, each corner is one object, and each
 * face knows its plane. Corners are exact, so every verdict here is.
 */

/** What lies behind it has `normal · point <= offset`. The normal points out of the solid, in whole numbers. */
export interface Plane {
  readonly normal: Point;
  readonly offset: Rational;
}

export interface Face {
  readonly plane: Plane;
  /** So that (b - a) x (c - b) points outwards. */
  readonly ring: readonly Point[];
}

export interface Polyhedron {
  readonly corners: readonly Point[];
  readonly faces: readonly Face[];
}

const known = new WeakMap<BoxSolid | ConvexSolid, Polyhedron>();

/** A face that names a corner which is not there, or that has no area, is left out. */
export function polyhedronOf(solid: BoxSolid | ConvexSolid): Polyhedron {
  const kept = known.get(solid);
  if (kept !== undefined) return kept;
  const polyhedron =
    solid.kind === 'box' ? boxAsPolyhedron(solid) : polyhedronFrom(solid.corners.map(pointOf), solid.faces);
  known.set(solid, polyhedron);
  return polyhedron;
}

/** Corner number 4a + 2b + c lies at the end a of x, b of y and c of z. */
export const BOX_FACES: readonly (readonly number[])[] = [
  [0, 1, 3, 2],
  [4, 6, 7, 5],
  [0, 4, 5, 1],
  [2, 3, 7, 6],
  [0, 2, 6, 4],
  [1, 5, 7, 3],
];

function boxAsPolyhedron(box: BoxSolid): Polyhedron {
  const ends = (interval: Interval): readonly Length[] => [interval.from, interval.to];
  const corners = ends(box.x).flatMap((x) => ends(box.y).flatMap((y) => ends(box.z).map((z) => pointOf({ x, y, z }))));
  return polyhedronFrom(corners, BOX_FACES);
}

export function polyhedronFrom(corners: readonly Point[], faces: readonly (readonly number[])[]): Polyhedron {
  return { corners, faces: faces.flatMap((indices) => faceFrom(corners, indices) ?? []) };
}

/** Undefined if it names a corner that is not there, or has no area. */
export function faceFrom(corners: readonly Point[], indices: readonly number[]): Face | undefined {
  const ring = indices.flatMap((index) => corners[index] ?? []);
  const normal = inWholeNumbers(areaVector(ring));
  const [first] = ring;
  if (first === undefined || ring.length !== indices.length || isNowhere(normal)) return undefined;
  return { plane: { normal, offset: dot(normal, first) }, ring };
}

/** Twice the area of a flat ring, as a vector that stands on it; sound where its first corners lie on one line, too. */
function areaVector(ring: readonly Point[]): Point {
  let total: Point = { x: Rational.zero, y: Rational.zero, z: Rational.zero };
  const [first] = ring;
  if (first === undefined) return total;
  for (const [from, to] of edgesOf(ring)) total = sum(total, cross(difference(from, first), difference(to, first)));
  return total;
}

/** Each corner of a closed ring with the next one. */
export function edgesOf<T>(ring: readonly T[]): readonly (readonly [T, T])[] {
  return ring.map((from, index) => [from, ring[(index + 1) % ring.length] ?? from]);
}

/** Above zero outside of the plane, zero on it. */
export function heightOver(plane: Plane, point: Point): Rational {
  return dot(plane.normal, point).minus(plane.offset);
}

/** How far a polyhedron reaches in a direction, in units of that direction. */
export function rangeAlong(polyhedron: Polyhedron, direction: Point): readonly [Rational, Rational] {
  let least: Rational | undefined;
  let most: Rational | undefined;
  for (const corner of polyhedron.corners) {
    const reach = dot(direction, corner);
    if (least === undefined || reach.compare(least) < 0) least = reach;
    if (most === undefined || reach.compare(most) > 0) most = reach;
  }
  return [least ?? Rational.zero, most ?? Rational.zero];
}

interface Directions {
  readonly normals: readonly Point[];
  readonly edges: readonly Point[];
}

const knownDirections = new WeakMap<Polyhedron, Directions>();

/** The directions of its normals and edges, parallel ones once. */
export function directionsOf(polyhedron: Polyhedron): Directions {
  const kept = knownDirections.get(polyhedron);
  if (kept !== undefined) return kept;
  const directions = {
    normals: eachOnce(polyhedron.faces.map((face) => face.plane.normal)),
    edges: eachOnce(
      polyhedron.faces.flatMap((face) => edgesOf(face.ring).map(([from, to]) => inWholeNumbers(difference(to, from)))),
    ),
  };
  knownDirections.set(polyhedron, directions);
  return directions;
}

function eachOnce(directions: readonly Point[]): readonly Point[] {
  const found = new Map<string, Point>();
  for (const direction of directions) {
    const one = eitherWay(direction);
    if (!isNowhere(one)) found.set(`${one.x} ${one.y} ${one.z}`, one);
  }
  return [...found.values()];
}

/** Exact, in cubic inches. */
export function polyhedronVolume(polyhedron: Polyhedron): Rational {
  const [origin] = polyhedron.corners;
  if (origin === undefined) return Rational.zero;
  let six = Rational.zero;
  for (const { ring } of polyhedron.faces) {
    const [first, ...others] = ring.map((corner) => difference(corner, origin));
    if (first === undefined) continue;
    for (const [from, to] of edgesOf(others).slice(0, -1)) six = six.plus(dot(first, cross(from, to)));
  }
  return six.dividedBy(6);
}
