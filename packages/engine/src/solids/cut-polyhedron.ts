import type { Rational } from '../length/rational.ts';
import { difference, type Point } from './points.ts';
import { edgesOf, type Face, heightOver, type Plane, type Polyhedron } from './polyhedron.ts';

/** Cuts convex polyhedra along planes, exactly. */

/** What of `polyhedron` lies behind all of `planes`; undefined if that has no volume. */
export function cutByAll(polyhedron: Polyhedron, planes: readonly Plane[]): Polyhedron | undefined {
  let left: Polyhedron | undefined = polyhedron;
  for (const plane of planes) {
    left = cutBy(left, plane);
    if (left === undefined) return undefined;
  }
  return left;
}

export function planesOf(polyhedron: Polyhedron): readonly Plane[] {
  return polyhedron.faces.map((face) => face.plane);
}

function cutBy(polyhedron: Polyhedron, plane: Plane): Polyhedron | undefined {
  const heights = new Map<Point, Rational>(polyhedron.corners.map((corner) => [corner, heightOver(plane, corner)]));
  const sign = (corner: Point): number => heights.get(corner)?.sign() ?? 0;
  if (!polyhedron.corners.some((corner) => sign(corner) < 0)) return undefined;
  if (!polyhedron.corners.some((corner) => sign(corner) > 0)) return polyhedron;

  const crossings = new Map<Point, Map<Point, Point>>();
  /** One and the same corner for the two faces that share an edge. */
  const crossing = (behind: Point, before: Point): Point => {
    const from = crossings.get(behind) ?? new Map<Point, Point>();
    crossings.set(behind, from);
    const made = from.get(before) ?? pointWhereCut(behind, before, heights);
    from.set(before, made);
    return made;
  };

  const faces: Face[] = [];
  const nextOnCut = new Map<Point, Point>();
  for (const face of polyhedron.faces) {
    if (!face.ring.some((corner) => sign(corner) < 0)) continue;
    const ring = edgesOf(face.ring).flatMap(([from, to]) => {
      const kept = sign(from) <= 0 ? [from] : [];
      const across = sign(from) * sign(to) < 0;
      return across ? [...kept, sign(from) < 0 ? crossing(from, to) : crossing(to, from)] : kept;
    });
    faces.push({ plane: face.plane, ring });
    // The new face runs along the cut against the order of the old ones.
    for (const [from, to] of edgesOf(ring)) if (sign(from) === 0 && sign(to) === 0) nextOnCut.set(to, from);
  }
  const cut = { plane, ring: closedRing(nextOnCut) };
  const all = cut.ring.length < 3 ? faces : [...faces, cut];
  return { corners: [...new Set(all.flatMap((face) => face.ring))], faces: all };
}

function pointWhereCut(behind: Point, before: Point, heights: ReadonlyMap<Point, Rational>): Point {
  const low = heights.get(behind);
  const high = heights.get(before);
  if (low === undefined || high === undefined) return behind;
  const share = low.dividedBy(low.minus(high));
  const way = difference(before, behind);
  return {
    x: behind.x.plus(way.x.times(share)),
    y: behind.y.plus(way.y.times(share)),
    z: behind.z.plus(way.z.times(share)),
  };
}

function closedRing(next: ReadonlyMap<Point, Point>): readonly Point[] {
  const [start] = next.keys();
  const ring: Point[] = [];
  let at = start;
  while (at !== undefined && ring.length < next.size) {
    ring.push(at);
    at = next.get(at);
  }
  return ring;
}
