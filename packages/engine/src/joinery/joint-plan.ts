import type { Origin } from '@fettle/findings';
import type { Figure } from '../design/figure.ts';
import type { Length, LengthUnit } from '../length/length.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import type { Solid } from '../solids/index.ts';
import type { Growth } from './blanks.ts';
import type { Feature, FeatureKind } from './feature.ts';
import type { Joint, JointKind } from './joint.ts';
import { alongOf, type Meeting, oppositeOf } from './meeting.ts';

/** What one joint asks for: how much longer its parts are cut, and what is then cut from them. */
export interface JointPlan {
  readonly joint: Joint;
  readonly growth: readonly Growth[];
  /** `blank` gives a part with everything that goes into joints. */
  cut(blank: BlankOf): readonly Feature[];
}

export type BlankOf = (part: UnmarkedPart) => UnmarkedPart;

/** What joints depend on beside the two parts. */
export interface JoineryFacts {
  readonly unit: LengthUnit;
  /** The smallest mark of the ruler. */
  readonly mark: Length;
  /** Where the groove or rabbet for the back begins: no fastener is laid out behind it. */
  readonly backFrom?: Length;
  /** Thicknesses of mortises that the shop has tools for. */
  mortiseSizes(): readonly Length[];
}

/** Who asks for a joint. */
export interface AskedBy {
  readonly origin: Origin;
  readonly isAssumed: boolean;
}

export function jointAt(meeting: Meeting, kind: JointKind, by: AskedBy, fit?: Joint['fit']): Joint {
  const { held, holding, at } = meeting;
  return {
    id: jointId(meeting),
    kind,
    held: held.id,
    holding: holding.id,
    at,
    origin: by.origin,
    isAssumed: by.isAssumed,
    ...(fit === undefined ? {} : { fit }),
  };
}

export function jointId({ held, holding }: Meeting): string {
  return `${held.id}>${holding.id}`;
}

export interface Cut {
  readonly kind: FeatureKind;
  readonly solid: Solid;
  readonly width?: Figure;
  readonly depth?: Figure;
  /** Tells several cuts of one joint in one part apart. */
  readonly nth?: number;
  readonly through?: boolean;
  readonly runs?: 'along' | 'across';
}

/** A cut in the part that takes the other: the tool comes to the face that they meet at. */
export function cutInHolding(meeting: Meeting, cut: Cut, by: AskedBy): Feature {
  return feature(meeting, cut, by, meeting.holding, meeting.at, meeting.held.frame ?? meeting.held.id);
}

/** A cut in the end that goes in. */
export function cutInHeld(meeting: Meeting, cut: Cut, by: AskedBy): Feature {
  return feature(meeting, cut, by, meeting.held, oppositeOf(meeting.at), meeting.holding.id);
}

function feature(
  meeting: Meeting,
  { kind, solid, width, depth, nth, through, runs }: Cut,
  by: AskedBy,
  part: UnmarkedPart,
  entry: Feature['entry'],
  other: string,
): Feature {
  return {
    id: `${part.id}/${kind} ${other}${nth === undefined ? '' : ` ${nth}`}`,
    kind,
    part: part.id,
    solid,
    entry,
    ...(runs === undefined ? {} : { runs: runs === 'along' ? alongOf(meeting) : meeting.axis }),
    measures: { ...(width === undefined ? {} : { width }), ...(depth === undefined ? {} : { depth }) },
    stage: 'on the loose part',
    ...(through === true ? { through } : {}),
    joint: jointId(meeting),
    origin: by.origin,
  };
}

/** What goes in grows by as much on the side where they meet. */
export function growthInto({ held, at }: Meeting, by: Figure, words: string): Growth {
  return { part: held.id, at: oppositeOf(at), by, words };
}
