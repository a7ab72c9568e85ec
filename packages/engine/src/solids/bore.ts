import type { Rational } from '../length/rational.ts';
import { outlineAround } from './flat.ts';
import type { FlatPoint, Point } from './points.ts';
import { type Axis, axesAcross, type CylinderSolid } from './solid.ts';

/**
 * A cylinder or slot to calculate with: a stretch along its axis and, across it, everything nearer than the radius to
 * a spine, which is a point or the line between two.
 */

export interface Bore {
  readonly axis: Axis;
  readonly from: Rational;
  readonly to: Rational;
  /** One point, or the two between which it is swept. */
  readonly spine: readonly FlatPoint[];
  readonly radius: Rational;
}

const known = new WeakMap<CylinderSolid, Bore>();

export function boreOf(solid: CylinderSolid): Bore {
  const kept = known.get(solid);
  if (kept !== undefined) return kept;
  const { axis, along, centre, sweptTo = centre, radius } = solid;
  const bore = {
    axis,
    from: along.from.in('in'),
    to: along.to.in('in'),
    spine: outlineAround([centre, sweptTo].map(([u, v]) => ({ u: u.in('in'), v: v.in('in') }))),
    radius: radius.in('in'),
  };
  known.set(solid, bore);
  return bore;
}

/** What an eye looking along `axis` sees of a point. */
export function acrossAxis(point: Point, axis: Axis): FlatPoint {
  const [u, v] = axesAcross(axis);
  return { u: point[u], v: point[v] };
}

/** The same point with its two directions exchanged. */
export function exchanged({ u, v }: FlatPoint): FlatPoint {
  return { u: v, v: u };
}
