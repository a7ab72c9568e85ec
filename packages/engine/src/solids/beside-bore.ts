import { Rational } from '../length/rational.ts';
import { acrossAxis, type Bore, exchanged } from './bore.ts';
import { cutByAll } from './cut-polyhedron.ts';
import { outlineAround } from './flat.ts';
import type { FlatPoint } from './points.ts';
import { type Plane, polyhedronOf } from './polyhedron.ts';
import { reachBetween } from './rim.ts';
import type { WithRoot } from './roots.ts';
import { AXES, type Axis, axesAcross, type BoxSolid, type ConvexSolid } from './solid.ts';

/** What of a solid lies level with a bore: between its two ends, however far to its side. */

/** As an eye looking along the bore sees it: counter-clockwise; undefined if there is nothing. */
export function outlineBeside(
  { axis, from, to }: Bore,
  solid: BoxSolid | ConvexSolid,
): readonly FlatPoint[] | undefined {
  if (solid.kind === 'box') {
    // A box looks the same all along.
    const isBeside = solid[axis].from.in('in').compare(to) < 0 && solid[axis].to.in('in').compare(from) > 0;
    return isBeside ? outlineAlong(solid, axis) : undefined;
  }
  const stretch = cutByAll(polyhedronOf(solid), endPlanes(axis, from, to));
  return stretch === undefined ? undefined : outlineAround(stretch.corners.map((corner) => acrossAxis(corner, axis)));
}

/** The whole of a solid as an eye looking along an axis sees it: counter-clockwise. */
export function outlineAlong(solid: BoxSolid | ConvexSolid, axis: Axis): readonly FlatPoint[] {
  if (solid.kind === 'convex') {
    return outlineAround(polyhedronOf(solid).corners.map((corner) => acrossAxis(corner, axis)));
  }
  const [u, v] = axesAcross(axis);
  const [left, right] = [solid[u].from.in('in'), solid[u].to.in('in')];
  const [low, high] = [solid[v].from.in('in'), solid[v].to.in('in')];
  return [
    { u: left, v: low },
    { u: right, v: low },
    { u: right, v: high },
    { u: left, v: high },
  ];
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
