import { Length } from '../length/length.ts';
import { type Axis, axesAcross, type ConvexSolid, type CylinderSolid, type Interval, type Solid } from './solid.ts';

/** The smallest box around a solid, exact: a cylinder's is its centres' less and plus the radius. */

export type Bounds = Readonly<Record<Axis, Interval>>;

const known = new WeakMap<Solid, Bounds>();

/** The smallest box around `solid`; of a solid without corners a box of no size. */
export function boundsOf(solid: Solid): Bounds {
  if (solid.kind === 'box') return solid;
  const kept = known.get(solid);
  if (kept !== undefined) return kept;
  const bounds = solid.kind === 'convex' ? boundsOfCorners(solid) : boundsOfCylinder(solid);
  known.set(solid, bounds);
  return bounds;
}

function boundsOfCorners({ corners }: ConvexSolid): Bounds {
  const along = (axis: Axis): Interval => {
    let from: Length | undefined;
    let to: Length | undefined;
    for (const { [axis]: place } of corners) {
      from = from === undefined ? place : from.min(place);
      to = to === undefined ? place : to.max(place);
    }
    return { from: from ?? Length.zero, to: to ?? Length.zero };
  };
  return { x: along('x'), y: along('y'), z: along('z') };
}

function boundsOfCylinder({ axis, along, centre, sweptTo = centre, radius }: CylinderSolid): Bounds {
  const [u, v] = axesAcross(axis);
  const across = (index: 0 | 1): Interval => ({
    from: centre[index].min(sweptTo[index]).minus(radius),
    to: centre[index].max(sweptTo[index]).plus(radius),
  });
  const bounds: Record<Axis, Interval> = { x: along, y: along, z: along };
  bounds[u] = across(0);
  bounds[v] = across(1);
  return bounds;
}

/** Whether the two share more than an end. */
export function intervalsMeet(a: Interval, b: Interval): boolean {
  return sharedInterval(a, b) !== undefined;
}

/** What both intervals cover; undefined if that has no length. */
export function sharedInterval(a: Interval, b: Interval): Interval | undefined {
  const from = a.from.max(b.from);
  const to = a.to.min(b.to);
  return from.compare(to) < 0 ? { from, to } : undefined;
}

export function boundsMeet(a: Bounds, b: Bounds): boolean {
  return intervalsMeet(a.x, b.x) && intervalsMeet(a.y, b.y) && intervalsMeet(a.z, b.z);
}
