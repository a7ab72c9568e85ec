import { Rational } from '../length/rational.ts';
import { acrossAxis, type Bore, exchanged } from './bore.ts';
import { cutByAll } from './cut-polyhedron.ts';
import { outlineAround } from './flat.ts';
import type { FlatPoint } from './points.ts';
import { type Plane, type Polyhedron, polyhedronOf } from './polyhedron.ts';
import { reachBetween } from './rim.ts';
import type { WithRoot } from './roots.ts';
import { AXES, type Axis, axesAcross, type BoxSolid, type ConvexSolid } from './solid.ts';

/** What of a solid lies level with a bore: between its two ends, however far to its side. */

/** As an eye looking along the bore sees it: counter-clockwise; undefined if there is nothing. */
export function outlineBeside(bore: Bore, solid: BoxSolid | ConvexSolid): readonly FlatPoint[] | undefined {
  const stretch = stretchBeside(bore, solid);
  if (stretch === undefined) return undefined;
  return outlineAround(stretch.corners.map((corner) => acrossAxis(corner, bore.axis)));
}

function stretchBeside({ axis, from, to }: Bore, solid: BoxSolid | ConvexSolid): Polyhedron | undefined {
  if (solid.kind === 'convex') return cutByAll(polyhedronOf(solid), endPlanes(axis, from, to));
  // A box looks the same all along.
  const isBeside = solid[axis].from.in('in').compare(to) < 0 && solid[axis].to.in('in').compare(from) > 0;
  return isBeside ? polyhedronOf(solid) : undefined;
}

/** The planes at the two ends of a stretch of an axis. */
export function endPlanes(axis: Axis, from: Rational, to: Rational): readonly Plane[] {
  return [
    { normal: unitAlong(axis, -1), offset: from.negated() },
    { normal: unitAlong(axis, 1), offset: to },
  ];
}

function unitAlong(axis: Axis, by: 1 | -1): Record<Axis, Rational> {
  const unit = { x: Rational.zero, y: Rational.zero, z: Rational.zero };
  unit[axis] = Rational.of(by);
  return unit;
}

/**
 * Of two bores at right angles: how far `bore` reaches, along the axis that is neither's, within the stretch of
 * `other`; undefined if it passes that stretch.
 */
export function reachBeside(bore: Bore, other: Bore): readonly [WithRoot, WithRoot] | undefined {
  return reachBetween(spineFacing(bore, axisOfNeither(bore, other)), bore.radius, other.from, other.to);
}

export function axisOfNeither(a: Bore, b: Bore): Axis {
  return AXES.find((axis) => axis !== a.axis && axis !== b.axis) ?? a.axis;
}

/** The spine with u along the given axis. */
export function spineFacing(bore: Bore, axis: Axis): readonly FlatPoint[] {
  return axesAcross(bore.axis)[0] === axis ? bore.spine : bore.spine.map(exchanged);
}
