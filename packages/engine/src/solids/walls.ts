import { Length } from '../length/length.ts';
import { boundsOf } from './bounds.ts';
import { contactAlong } from './contact.ts';
import { meets } from './meets.ts';
import { isExact } from './roots.ts';
import { AXES, type Axis, type BoxSolid, type End, type Solid } from './solid.ts';

/** What is left between a feature and another, or between a feature and the faces of its part. */

/** A face of a box: the one at the lower (`from`) or the higher (`to`) end of an axis. */
export interface BoxFace {
  readonly axis: Axis;
  readonly end: End;
}

/** The wall between two solids, measured along one axis where it is thinnest. */
export interface Gap {
  readonly axis: Axis;
  /** Zero if the two touch. Where it is not exact, the wall may be a little thicker, never thinner. */
  readonly wall: Length;
  readonly isExact: boolean;
}

/**
 * The wall left between two solids along `axis`: how far the one could move before it touched the other. Undefined if
 * it would pass the other by, and if the two meet.
 */
export function gapBetween(a: Solid, b: Solid, axis: Axis): Gap | undefined {
  const contact = contactAlong(a, b, axis);
  if (contact === undefined || meets(a, b)) return undefined;
  const { begins, ends } = contact;
  // Neither holds where they all but touch and only bounds of a root are known: then nothing is promised.
  if (begins.least.sign() >= 0) return { axis, wall: Length.of(begins.least, 'in'), isExact: isExact(begins) };
  if (ends.most.sign() <= 0) return { axis, wall: Length.of(ends.most.negated(), 'in'), isExact: isExact(ends) };
  return { axis, wall: Length.zero, isExact: false };
}

/** The thinnest of the walls along the three axes; undefined if the two pass each other on all of them, or meet. */
export function thinnestGap(a: Solid, b: Solid): Gap | undefined {
  return AXES.map((axis) => gapBetween(a, b, axis)).reduce(
    (thinnest, gap) =>
      gap !== undefined && (thinnest === undefined || gap.wall.compare(thinnest.wall) < 0) ? gap : thinnest,
    undefined,
  );
}

/**
 * What is left between `feature` and one face of its part, measured square to that face; exact. Zero if it reaches
 * the face, negative by how much it passes it.
 */
export function wallTo(face: BoxFace, feature: Solid, part: BoxSolid): Length {
  const reach = boundsOf(feature)[face.axis];
  const within = part[face.axis];
  return face.end === 'from' ? reach.from.minus(within.from) : within.to.minus(reach.to);
}

/** How a feature that is cut in from one face stands to the face opposite. */
export type Depth =
  | { readonly kind: 'stops-short'; readonly wall: Length }
  /** It reaches that face exactly: nothing is left, and nothing beyond is cut. */
  | { readonly kind: 'reaches' }
  | { readonly kind: 'breaks-through'; readonly by: Length };

/** `entry` is the face it is cut in from. Exact, for every kind of feature. */
export function depthOf(feature: Solid, part: BoxSolid, entry: BoxFace): Depth {
  const wall = wallTo({ axis: entry.axis, end: entry.end === 'from' ? 'to' : 'from' }, feature, part);
  if (wall.isPositive()) return { kind: 'stops-short', wall };
  return wall.isZero() ? { kind: 'reaches' } : { kind: 'breaks-through', by: wall.negated() };
}

/** The faces of its part that a feature reaches or passes: where it opens. */
export function openFaces(feature: Solid, part: BoxSolid): readonly BoxFace[] {
  return AXES.flatMap((axis) => (['from', 'to'] as const).map((end) => ({ axis, end }))).filter(
    (face) => !wallTo(face, feature, part).isPositive(),
  );
}
