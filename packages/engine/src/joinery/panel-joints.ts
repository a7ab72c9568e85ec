import type { CarcaseDesign, JoinDesign } from '../design/design.ts';
import type { Block, PartRole } from '../parts/part.ts';
import type { Axis, UnmarkedPart } from '../parts/slab.ts';
import type { BoxSolid, Interval } from '../solids/solid.ts';
import type { Growth } from './blanks.ts';
import type { FaceOfPart, Feature } from './feature.ts';
import type { Joinery } from './join-parts.ts';
import type { Joint } from './joint.ts';
import { type Contact, overlap, touchingParts } from './touching-parts.ts';

/**
 * The joints of the panels of a case: wherever the end or edge of one meets the face of another. What is said for the
 * case holds for all of them.
 */

/** What is joined to its neighbours for good. Fronts, drawers and shelves on pins are not. */
const joined: ReadonlySet<PartRole> = new Set<PartRole>([
  'top',
  'side',
  'stile',
  'rail',
  'bottom',
  'stretcher',
  'partition',
  'divider-panel',
  'divider-rail',
]);

interface Meeting {
  readonly held: UnmarkedPart;
  readonly holding: UnmarkedPart;
  readonly axis: Axis;
  /** The face of the holding part. */
  readonly at: FaceOfPart;
}

export function joinPanels(carcase: CarcaseDesign, parts: readonly UnmarkedPart[]): Joinery {
  const meetings = touchingParts(parts.filter((part) => joined.has(part.role))).flatMap(meetingsAt);
  const { join } = carcase;
  const isHoused = (meeting: Meeting) => join !== undefined && takesDado(meeting, carcase);
  const joints = meetings.map((meeting): Joint => jointOf(meeting, isHoused(meeting) ? join : undefined));
  const housed = join === undefined ? [] : meetings.filter(isHoused);
  return {
    joints,
    growth: join === undefined ? [] : housed.map((meeting) => growthOf(meeting, join)),
    features: join === undefined ? [] : dadoes(housed, join),
  };
}

/** The part whose face is met holds; members of one frame are joined in their own way. */
function meetingsAt({ one, other, axis }: Contact): readonly Meeting[] {
  if (one.frame !== undefined && one.frame === other.frame) return [];
  if (one.thin === axis && other.thin !== axis) return [{ held: other, holding: one, axis, at: `+${axis}` }];
  if (other.thin === axis && one.thin !== axis) return [{ held: one, holding: other, axis, at: `-${axis}` }];
  return [];
}

/** A top that lies over the sides is screwed from below: it takes nothing in. */
function takesDado({ holding }: Meeting, carcase: CarcaseDesign): boolean {
  return holding.role !== 'top' || carcase.top?.placement === 'between';
}

function jointOf({ held, holding, at }: Meeting, join: JoinDesign | undefined): Joint {
  return {
    id: `${held.id}>${holding.id}`,
    kind: join === undefined ? 'butt' : join.kind,
    held: held.id,
    holding: holding.id,
    at,
    origin: join?.origin ?? held.origin,
    isAssumed: join === undefined,
  };
}

/** A runner keeps its width and moves along: the rails are what the frame is wide by. */
function growthOf({ held, axis, at }: Meeting, join: JoinDesign): Growth {
  return {
    part: held.id,
    at: at.startsWith('+') ? `-${axis}` : `+${axis}`,
    by: join.depth,
    words: `depth of the ${join.kind}`,
    shifts: held.role === 'divider-rail' && held.grain !== axis && held.grain !== 'none',
  };
}

/** The members of a frame lie in one dado. */
function dadoes(meetings: readonly Meeting[], join: JoinDesign): readonly Feature[] {
  const together = new Map<string, Meeting[]>();
  for (const meeting of meetings) {
    const key = `${meeting.holding.id} ${meeting.at} ${meeting.held.frame ?? meeting.held.id}`;
    const known = together.get(key);
    if (known === undefined) together.set(key, [meeting]);
    else known.push(meeting);
  }
  return [...together.values()].map((group) => {
    const [first] = group as [Meeting, ...Meeting[]];
    const { held, holding, axis, at } = first;
    const runs = (['x', 'y', 'z'] as const).find((each) => each !== axis && each !== held.thin) ?? 'z';
    return {
      id: `${holding.id}/dado ${held.frame ?? held.id}`,
      kind: join.kind,
      part: holding.id,
      solid: dadoSolid(group, join),
      entry: at,
      runs,
      measures: { width: held.thickness, depth: join.depth },
      stage: 'on the loose part',
      joint: `${held.id}>${holding.id}`,
      origin: join.origin,
    };
  });
}

function dadoSolid(group: readonly Meeting[], join: JoinDesign): BoxSolid {
  const [{ holding, axis, at }] = group as [Meeting, ...Meeting[]];
  const face = at.startsWith('+') ? holding.box[axis].end.length : holding.box[axis].start.length;
  const inward: Interval = at.startsWith('+')
    ? { from: face.minus(join.depth.length), to: face }
    : { from: face, to: face.plus(join.depth.length) };
  const covered = (each: Axis): Interval => {
    const spans = group.map(({ held }) => common(held.box, holding.box, each));
    return spans.reduce((all, span) => ({ from: all.from.min(span.from), to: all.to.max(span.to) }));
  };
  return {
    kind: 'box',
    x: axis === 'x' ? inward : covered('x'),
    y: axis === 'y' ? inward : covered('y'),
    z: axis === 'z' ? inward : covered('z'),
  };
}

function common(held: Block, holding: Block, axis: Axis): Interval {
  const [a, b] = [held[axis], holding[axis]];
  if (!overlap(a, b)) return { from: a.start.length, to: a.end.length };
  return { from: a.start.length.max(b.start.length), to: a.end.length.min(b.end.length) };
}
