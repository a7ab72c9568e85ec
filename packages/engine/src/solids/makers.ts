import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { type FlatPoint, flatCross, flatDifference, pointOf } from './points.ts';
import { BOX_FACES, polyhedronFrom, polyhedronVolume } from './polyhedron.ts';
import {
  type Axis,
  axesAcross,
  type BoxSolid,
  type ConvexSolid,
  type CylinderSolid,
  type End,
  type Interval,
  type Point3,
  type Solid,
} from './solid.ts';

/**
 * Makes solids. None of these throws: handed sizes that make no solid (an interval of no length, an outline with a
 * hollow) they build what they can, and `whyNotSolid` tells what is wrong with it.
 */

/** The two places in order. */
export function intervalOf(one: Length, other: Length): Interval {
  return { from: one.min(other), to: one.max(other) };
}

export function boxOf(x: Interval, y: Interval, z: Interval): BoxSolid {
  return { kind: 'box', x, y, z };
}

/** A round hole, or a pin. `centre` is given on the other two axes in alphabetical order. */
export function boreAlong(
  axis: Axis,
  along: Interval,
  centre: readonly [Length, Length],
  radius: Length,
): CylinderSolid {
  return { kind: 'cylinder', axis, along, centre, radius };
}

/** What a cutter of that radius leaves that is moved across its axis: a slot with round ends, or a loose tenon. */
export function slotAlong(
  axis: Axis,
  along: Interval,
  from: readonly [Length, Length],
  to: readonly [Length, Length],
  radius: Length,
): CylinderSolid {
  return { kind: 'cylinder', axis, along, centre: from, radius, sweptTo: to };
}

/**
 * A straight prism: the same convex outline all along an axis. The outline is given on the other two axes in
 * alphabetical order and may run either way round.
 */
export function prismOf(axis: Axis, along: Interval, outline: readonly (readonly [Length, Length])[]): ConvexSolid {
  const around = outline.map((_, index) => index);
  const next = (index: number): number => (index + 1) % outline.length;
  const count = outline.length;
  const faces = [
    around.toReversed(),
    around.map((index) => count + index),
    ...around.map((index) => [index, next(index), count + next(index), count + index]),
  ];
  return {
    kind: 'convex',
    corners: [along.from, along.to].flatMap((at) => outline.map(([u, v]) => pointAcross(axis, at, u, v))),
    faces: runsInwards(axis, along, outline) ? faces.map((face) => face.toReversed()) : faces,
  };
}

/**
 * Whether the faces of such a prism would point into it: the sign of its volume is that of its outline's area, seen
 * from where the axis points to, times the way it runs along it.
 */
function runsInwards(axis: Axis, along: Interval, outline: readonly (readonly [Length, Length])[]): boolean {
  const [first, ...others] = outline.map(([u, v]) => ({ u: u.in('in'), v: v.in('in') }));
  if (first === undefined) return false;
  let area = Rational.zero;
  let before: FlatPoint | undefined;
  for (const corner of others) {
    const after = flatDifference(corner, first);
    if (before !== undefined) area = area.plus(flatCross(before, after));
    before = after;
  }
  // Of x, y and z in this order, x and z together lie the other way round than the other two pairs.
  return area.sign() * along.to.compare(along.from) * (axis === 'y' ? -1 : 1) < 0;
}

/**
 * The half of a box that is left of a cut through two of its edges: what a mitre or a chamfer takes away. The edges
 * run along `axis`; `corner` is the edge that stays with the wedge, on the other two axes in alphabetical order.
 */
export function wedgeOf(box: BoxSolid, axis: Axis, corner: readonly [End, End]): ConvexSolid {
  const [u, v] = axesAcross(axis);
  const otherEnd = (end: End): End => (end === 'from' ? 'to' : 'from');
  return prismOf(axis, box[axis], [
    [box[u][corner[0]], box[v][corner[1]]],
    [box[u][otherEnd(corner[0])], box[v][corner[1]]],
    [box[u][corner[0]], box[v][otherEnd(corner[1])]],
  ]);
}

/** A rectangle across an axis, its sides given on the other two axes in alphabetical order. */
export interface TaperEnd {
  readonly at: Length;
  readonly sides: readonly [Interval, Interval];
}

/** What changes evenly from one rectangle to another: a tapered leg. Neither rectangle may be a line. */
export function taperOf(axis: Axis, one: TaperEnd, other: TaperEnd): ConvexSolid {
  const corners = [one, other].flatMap(({ at, sides: [u, v] }) =>
    [u.from, u.to].flatMap((alongU) => [v.from, v.to].map((alongV) => pointAcross(axis, at, alongU, alongV))),
  );
  return facingOut(corners, BOX_FACES);
}

/** A dovetail, or a socket or a sliding dovetail's way. */
export interface DovetailShape {
  /** The axis along which its outline stays the same: through the wood for a tail, along the board for a way. */
  readonly axis: Axis;
  readonly along: Interval;
  /** The axis across which it widens; on this one, `middle` is its centre line. */
  readonly across: Axis;
  readonly middle: Length;
  /** On the third axis: where it is narrow and where it is wide. */
  readonly narrow: { readonly at: Length; readonly width: Length };
  readonly wide: { readonly at: Length; readonly width: Length };
}

/** `across` must not be `axis`: such a shape has no extent. */
export function dovetailOf({ axis, along, across, middle, narrow, wide }: DovetailShape): ConvexSolid {
  const isFirst = axesAcross(axis)[0] === across;
  const corner = (place: Length, at: Length): readonly [Length, Length] => (isFirst ? [place, at] : [at, place]);
  const end = ({ at, width }: DovetailShape['narrow']) =>
    [middle.minus(width.dividedBy(2)), middle.plus(width.dividedBy(2))].map((place) => corner(place, at));
  return prismOf(axis, along, [...end(narrow), ...end(wide).toReversed()]);
}

/** The same solid elsewhere. */
export function movedBy<S extends Solid>(solid: S, by: Point3): S;
export function movedBy(solid: Solid, by: Point3): Solid {
  const moved = (interval: Interval, axis: Axis): Interval => ({
    from: interval.from.plus(by[axis]),
    to: interval.to.plus(by[axis]),
  });
  switch (solid.kind) {
    case 'box':
      return boxOf(moved(solid.x, 'x'), moved(solid.y, 'y'), moved(solid.z, 'z'));
    case 'convex':
      return {
        ...solid,
        corners: solid.corners.map(({ x, y, z }) => ({ x: x.plus(by.x), y: y.plus(by.y), z: z.plus(by.z) })),
      };
    case 'cylinder': {
      const [u, v] = axesAcross(solid.axis);
      const place = ([atU, atV]: readonly [Length, Length]) => [atU.plus(by[u]), atV.plus(by[v])] as const;
      const elsewhere = { ...solid, along: moved(solid.along, solid.axis), centre: place(solid.centre) };
      return solid.sweptTo === undefined ? elsewhere : { ...elsewhere, sweptTo: place(solid.sweptTo) };
    }
    default: {
      const never: never = solid;
      return never;
    }
  }
}

function pointAcross(axis: Axis, at: Length, alongU: Length, alongV: Length): Point3 {
  const [u, v] = axesAcross(axis);
  const point: Record<Axis, Length> = { x: at, y: at, z: at };
  point[u] = alongU;
  point[v] = alongV;
  return point;
}

/** Turns all faces about if they point inwards: an outline may have been given either way round. */
function facingOut(corners: readonly Point3[], faces: readonly (readonly number[])[]): ConvexSolid {
  const volume = polyhedronVolume(polyhedronFrom(corners.map(pointOf), faces));
  const facing = volume.sign() < 0 ? faces.map((face) => face.toReversed()) : faces;
  return { kind: 'convex', corners, faces: facing };
}
