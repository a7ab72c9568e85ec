import { outlineAround } from './flat.ts';
import { cross, difference, dot, type FlatPoint, inWholeNumbers, isNowhere, type Point, pointOf } from './points.ts';
import { heightOver, type Plane } from './polyhedron.ts';
import { type Axis, axesAcross, type ConvexSolid, type Point3 } from './solid.ts';

/**
 * The smallest convex solid around some points; points inside of it, or amid a face or an edge, are left out. For a
 * handful of points: every three of them are tried as a face. Points that all lie in one plane make no solid, and
 * `whyNotSolid` says so.
 */
export function convexAround(points: readonly Point3[]): ConvexSolid {
  const places = points.map(pointOf);
  const rings = new Map<string, readonly number[]>();
  for (const [i, a] of places.entries()) {
    for (const [j, b] of places.slice(0, i).entries()) {
      for (const c of places.slice(0, j)) {
        const normal = inWholeNumbers(cross(difference(b, a), difference(c, a)));
        if (isNowhere(normal)) continue;
        const plane = planeWithAllBehind({ normal, offset: dot(normal, a) }, places);
        if (plane === undefined) continue;
        const name = `${plane.normal.x} ${plane.normal.y} ${plane.normal.z}`;
        if (!rings.has(name)) rings.set(name, ringInPlane(plane, places));
      }
    }
  }
  const used = [...new Set([...rings.values()].flat())];
  return {
    kind: 'convex',
    corners: used.flatMap((index) => points[index] ?? []),
    faces: [...rings.values()].map((ring) => ring.map((index) => used.indexOf(index))),
  };
}

/** The plane, turned so that no point is in front of it; undefined if there are points on both sides, or on none. */
function planeWithAllBehind(plane: Plane, places: readonly Point[]): Plane | undefined {
  const sides = new Set(places.map((place) => heightOver(plane, place).sign()));
  if (sides.has(1) === sides.has(-1)) return undefined;
  if (sides.has(-1)) return plane;
  const { x, y, z } = plane.normal;
  return { normal: { x: x.negated(), y: y.negated(), z: z.negated() }, offset: plane.offset.negated() };
}

function ringInPlane(plane: Plane, places: readonly Point[]): readonly number[] {
  // Seen along any axis that the plane does not contain, its outline is convex, too.
  const axis: Axis = !plane.normal.x.isZero() ? 'x' : !plane.normal.y.isZero() ? 'y' : 'z';
  const [u, v] = axesAcross(axis);
  const seen = new Map<FlatPoint, number>();
  for (const [index, place] of places.entries()) {
    if (heightOver(plane, place).isZero()) seen.set({ u: place[u], v: place[v] }, index);
  }
  const ring = outlineAround([...seen.keys()]).flatMap((point) => seen.get(point) ?? []);
  // u, v and the axis are right-handed but for y.
  const isSeenFromOutside = plane.normal[axis].sign() > 0 === (axis !== 'y');
  return isSeenFromOutside ? ring : ring.toReversed();
}
