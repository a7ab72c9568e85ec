import type { Rational } from '../length/rational.ts';
import { axisOfNeither, spineFacing } from './beside-bore.ts';
import { acrossAxis, type Bore, boreOf } from './bore.ts';
import { boundsOf } from './bounds.ts';
import { squaredDistance } from './flat.ts';
import { dot, type FlatPoint, type Point } from './points.ts';
import { heightOver, type Plane, polyhedronOf } from './polyhedron.ts';
import { AXES, axesAcross, type Interval, type Solid } from './solid.ts';

/**
 * Whether `a` lies wholly within `b`. Exact; it may touch b's faces from inside, and a solid lies within itself.
 */
export function insideOf(a: Solid, b: Solid): boolean {
  const [boundsA, boundsB] = [boundsOf(a), boundsOf(b)];
  if (!AXES.every((axis) => isWithin(boundsA[axis], boundsB[axis]))) return false;
  switch (b.kind) {
    case 'box':
      return true;
    case 'convex':
      return polyhedronOf(b).faces.every(({ plane }) => isBehind(a, plane));
    case 'cylinder':
      return isInsideBore(a, boreOf(b));
    default: {
      const never: never = b;
      return never;
    }
  }
}

function isWithin(inner: Interval, outer: Interval): boolean {
  return inner.from.compare(outer.from) >= 0 && inner.to.compare(outer.to) <= 0;
}

function isBehind(solid: Solid, plane: Plane): boolean {
  if (solid.kind !== 'cylinder') {
    return polyhedronOf(solid).corners.every((corner) => heightOver(plane, corner).sign() <= 0);
  }
  const bore = boreOf(solid);
  const [u, v] = axesAcross(bore.axis);
  const [acrossU, acrossV] = [plane.normal[u], plane.normal[v]];
  // The wall reaches furthest by the radius times the part of the normal across the axis.
  const squaredReach = acrossU.times(acrossU).plus(acrossV.times(acrossV)).times(bore.radius.times(bore.radius));
  return pointsOnSpine(bore).every((point) => {
    const left = plane.offset.minus(dot(plane.normal, point));
    return left.sign() >= 0 && left.times(left).compare(squaredReach) >= 0;
  });
}

/** The ends of the spine at both ends of the bore. */
function pointsOnSpine({ axis, from, to, spine }: Bore): readonly Point[] {
  const [u, v] = axesAcross(axis);
  return [from, to].flatMap((at) =>
    spine.map((on) => {
      const point = { x: at, y: at, z: at };
      point[u] = on.u;
      point[v] = on.v;
      return point;
    }),
  );
}

/** Its bounds are within those of the bore, so only the rim is left to ask about. */
function isInsideBore(solid: Solid, outer: Bore): boolean {
  const isNearSpine = (point: FlatPoint, within: Rational): boolean =>
    within.sign() >= 0 && squaredDistance([point], outer.spine).compare(within.times(within)) <= 0;
  if (solid.kind !== 'cylinder') {
    return polyhedronOf(solid).corners.every((corner) => isNearSpine(acrossAxis(corner, outer.axis), outer.radius));
  }
  const bore = boreOf(solid);
  if (bore.axis === outer.axis) {
    const room = outer.radius.minus(bore.radius);
    return bore.spine.every((point) => isNearSpine(point, room));
  }
  // Seen along the outer one, the inner one is a rectangle.
  const heights = spineFacing(bore, axisOfNeither(bore, outer)).map((point) => point.u);
  const across = [
    heights.reduce((least, height) => least.min(height)).minus(bore.radius),
    heights.reduce((most, height) => most.max(height)).plus(bore.radius),
  ];
  const along = [bore.from, bore.to];
  const [alongU, alongV] = bore.axis === axesAcross(outer.axis)[0] ? [along, across] : [across, along];
  return alongU.every((atU) => alongV.every((atV) => isNearSpine({ u: atU, v: atV }, outer.radius)));
}
