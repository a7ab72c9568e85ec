import type { Length } from '../length/length.ts';
import type { Block, PartRole } from '../parts/part.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { AXES, type Axis, type BoxSolid, boreAlong, type CylinderSolid, type Interval } from '../solids/index.ts';
import type { FaceOfPart } from './feature.ts';
import { type Contact, overlap } from './touching-parts.ts';

/**
 * Where the end or edge of one part meets the face or edge of another, with three directions of its own: into the part
 * that takes the other, across the thickness of what goes in, and along the line they meet in. Knows of no joint.
 */
export interface Meeting {
  readonly held: UnmarkedPart;
  readonly holding: UnmarkedPart;
  readonly axis: Axis;
  /** The face of the holding part. */
  readonly at: FaceOfPart;
}

const ofFaceFrame: ReadonlySet<PartRole> = new Set<PartRole>(['frame-stile', 'frame-rail']);

/** The part whose face is met holds; in a frame, where edges meet ends, the part that runs past. */
export function meetingsAt({ one, other, axis }: Contact): readonly Meeting[] {
  if (one.thin === axis && other.thin !== axis) return [{ held: other, holding: one, axis, at: `+${axis}` }];
  if (other.thin === axis && one.thin !== axis) return [{ held: one, holding: other, axis, at: `-${axis}` }];
  if (one.thin === axis || other.thin === axis) return [];
  if (!areOfOneFrame(one, other) && one.role !== 'foot' && other.role !== 'foot') return [];
  if (runsAlong(other, axis) && !runsAlong(one, axis)) return [{ held: other, holding: one, axis, at: `+${axis}` }];
  if (runsAlong(one, axis) && !runsAlong(other, axis)) return [{ held: one, holding: other, axis, at: `-${axis}` }];
  return [];
}

export function areOfOneFrame(one: UnmarkedPart, other: UnmarkedPart): boolean {
  if (one.frame !== undefined) return one.frame === other.frame;
  return ofFaceFrame.has(one.role) && ofFaceFrame.has(other.role);
}

/** Along its grain; where there is none, along its longest edge. */
export function runsAlong(part: UnmarkedPart, axis: Axis): boolean {
  if (part.grain !== 'none') return part.grain === axis;
  return AXES.every((each) => part.box[axis].size.length.compare(part.box[each].size.length) >= 0);
}

/** Across the thickness of what goes in. */
export function acrossOf({ held, holding, axis }: Meeting): Axis {
  return held.thin === axis ? holding.thin : held.thin;
}

export function alongOf(meeting: Meeting): Axis {
  const across = acrossOf(meeting);
  return AXES.find((axis) => axis !== meeting.axis && axis !== across) ?? 'z';
}

export function oppositeOf(face: FaceOfPart): FaceOfPart {
  return `${face.startsWith('+') ? '-' : '+'}${face.slice(1) as Axis}`;
}

/** Where the face that they meet at lies. */
export function faceAt({ holding, axis, at }: Meeting): Length {
  return at.startsWith('+') ? holding.box[axis].end.length : holding.box[axis].start.length;
}

/** From the face into the part that takes the other, so deep. */
export function inward(meeting: Meeting, depth: Length): Interval {
  const face = faceAt(meeting);
  return meeting.at.startsWith('+') ? { from: face.minus(depth), to: face } : { from: face, to: face.plus(depth) };
}

/** From the face into the part that goes in, so far. */
export function outward(meeting: Meeting, reach: Length): Interval {
  const face = faceAt(meeting);
  return meeting.at.startsWith('+') ? { from: face, to: face.plus(reach) } : { from: face.minus(reach), to: face };
}

/** What both take up along this axis; of parts that merely touch there, what the held one does. */
export function shared({ held, holding }: Meeting, axis: Axis): Interval {
  return commonOf(held.box, holding.box, axis);
}

function commonOf(held: Block, holding: Block, axis: Axis): Interval {
  const [a, b] = [held[axis], holding[axis]];
  if (!overlap(a, b)) return { from: a.start.length, to: a.end.length };
  return { from: a.start.length.max(b.start.length), to: a.end.length.min(b.end.length) };
}

export function wholeOf(block: Block, axis: Axis): Interval {
  return { from: block[axis].start.length, to: block[axis].end.length };
}

export function centred(within: Interval, width: Length): Interval {
  const middle = middleOf(within);
  return { from: middle.minus(width.dividedBy(2)), to: middle.plus(width.dividedBy(2)) };
}

export function middleOf({ from, to }: Interval): Length {
  return from.plus(to).dividedBy(2);
}

export function sizeOf({ from, to }: Interval): Length {
  return to.minus(from);
}

/** A box in the directions of the meeting. */
export function boxAt(meeting: Meeting, into: Interval, across: Interval, along: Interval): BoxSolid {
  const sides: Record<Axis, Interval> = { x: into, y: into, z: into };
  sides[acrossOf(meeting)] = across;
  sides[alongOf(meeting)] = along;
  return { kind: 'box', ...sides };
}

/** A hole along the axis of the meeting, its middle given across and along. */
export function holeAt(
  meeting: Meeting,
  into: Interval,
  across: Length,
  along: Length,
  diameter: Length,
): CylinderSolid {
  return boreAlong(meeting.axis, into, placeAt(meeting, across, along), diameter.dividedBy(2));
}

/** On the two axes that are not the meeting's, in alphabetical order. */
export function placeAt(meeting: Meeting, across: Length, along: Length): readonly [Length, Length] {
  return acrossOf(meeting) < alongOf(meeting) ? [across, along] : [along, across];
}
