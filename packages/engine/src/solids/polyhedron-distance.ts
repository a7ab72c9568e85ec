import { Rational } from '../length/rational.ts';
import { cross, difference, dot, isNowhere, type Point } from './points.ts';
import { edgesOf, type Face, heightOver, type Polyhedron } from './polyhedron.ts';

/** How near two convex polyhedra come to each other, exact: the distance stays squared. In square inches. */

/** For two that do not meet: the nearest points lie on a corner and a face, or on two edges. */
export function squaredDistanceOfPolyhedra(a: Polyhedron, b: Polyhedron): Rational {
  const [edgesOfA, edgesOfB] = [edgesOnce(a), edgesOnce(b)];
  return least([
    ...a.corners.flatMap((corner) => b.faces.map((face) => squaredDistanceToFace(corner, face))),
    ...b.corners.flatMap((corner) => a.faces.map((face) => squaredDistanceToFace(corner, face))),
    ...edgesOfA.flatMap((one) => edgesOfB.map((other) => squaredDistanceOfEdges(one, other))),
  ]);
}

type Edge = readonly [Point, Point];

/** Each edge is listed by two faces, in opposite directions. */
function edgesOnce(polyhedron: Polyhedron): readonly Edge[] {
  const order = new Map(polyhedron.corners.map((corner, index) => [corner, index]));
  const place = (corner: Point): number => order.get(corner) ?? 0;
  return polyhedron.faces.flatMap((face) => edgesOf(face.ring).filter(([from, to]) => place(from) < place(to)));
}

/** Undefined unless the foot of the corner lies on the face: else an edge is nearer. */
function squaredDistanceToFace(corner: Point, { plane, ring }: Face): Rational | undefined {
  const height = heightOver(plane, corner);
  if (height.sign() < 0) return undefined;
  const isOver = edgesOf(ring).every(
    ([from, to]) => dot(cross(difference(to, from), difference(corner, from)), plane.normal).sign() >= 0,
  );
  return isOver ? height.times(height).dividedBy(dot(plane.normal, plane.normal)) : undefined;
}

function squaredDistanceOfEdges([p, q]: Edge, [r, s]: Edge): Rational {
  const [one, other, apart] = [difference(q, p), difference(s, r), difference(r, p)];
  const across = cross(one, other);
  if (!isNowhere(across)) {
    // Where the common perpendicular stands, as shares of the two edges.
    const squared = dot(across, across);
    const onOne = dot(cross(apart, other), across).dividedBy(squared);
    const onOther = dot(cross(apart, one), across).dividedBy(squared);
    if (isShare(onOne) && isShare(onOther)) {
      const height = dot(apart, across);
      return height.times(height).dividedBy(squared);
    }
  }
  return least([toEdge(p, [r, s]), toEdge(q, [r, s]), toEdge(r, [p, q]), toEdge(s, [p, q])]);
}

function isShare(value: Rational): boolean {
  return value.sign() >= 0 && value.compare(Rational.one) <= 0;
}

function toEdge(point: Point, [from, to]: Edge): Rational {
  const way = difference(to, from);
  const out = difference(point, from);
  const along = dot(out, way);
  const squaredLength = dot(way, way);
  if (along.sign() <= 0) return dot(out, out);
  if (along.compare(squaredLength) >= 0) {
    const back = difference(point, to);
    return dot(back, back);
  }
  return dot(out, out).minus(along.times(along).dividedBy(squaredLength));
}

function least(values: readonly (Rational | undefined)[]): Rational {
  let found: Rational | undefined;
  for (const value of values) {
    if (value !== undefined && (found === undefined || value.compare(found) < 0)) found = value;
  }
  return found ?? Rational.zero;
}
