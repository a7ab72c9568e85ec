import type { Origin } from '@fettle/findings';
import type { Figure } from '../design/figure.ts';
import type { Axis, Solid } from '../solids/solid.ts';

/**
 * What joinery and hardware take away from a part: an exact volume in the coordinates of the piece, with the way the
 * tool comes to it. A part is its blank less its features.
 */
export interface Feature {
  /** Unique in the piece and stable while the text around it changes. */
  readonly id: string;
  readonly kind: FeatureKind;
  /** The part it is cut in. */
  readonly part: string;
  /** May reach beyond the blank where a tool runs out; never where wood is to stay. */
  readonly solid: Solid;
  /** The face of the part that the tool enters. */
  readonly entry: FaceOfPart;
  /** The axis the cutter travels along; absent for a hole. */
  readonly runs?: Axis;
  /** As one sets the tool: each absent where the feature has no such measure. */
  readonly measures: FeatureMeasures;
  readonly stage: WorkStage;
  /** It is meant to come out on the other side: a dovetail, a hole for a screw's shank. */
  readonly through?: true;
  /** The joint that it belongs to; absent for hardware and vents. */
  readonly joint?: string;
  /** The statement that caused it. */
  readonly origin: Origin;
}

export type FeatureKind =
  | 'dado'
  | 'groove'
  | 'rabbet'
  | 'tongue-shoulder'
  | 'tenon-shoulder'
  | 'mortise'
  | 'dowel-hole'
  | 'screw-hole'
  | 'socket'
  | 'tail-cheek'
  | 'mitre'
  | 'gain'
  /** What a pull lies in. */
  | 'recess'
  | 'cup-hole'
  | 'pin-hole'
  | 'notch'
  | 'taper'
  | 'bevel'
  | 'vent';

/** A blind hole for a screw of hardware: what it meets is asked of its screw, with all that the screw finds. */
export function isHoleOfHardware({ kind, joint, through }: Feature): boolean {
  return kind === 'screw-hole' && joint === undefined && through === undefined;
}

/** The outer face of a part on this side: '-x' is its left one, '+y' its upper one, '-z' its front one. */
export type FaceOfPart = '-x' | '+x' | '-y' | '+y' | '-z' | '+z';

export interface FeatureMeasures {
  /** Across the cut: the width of the cutter, or the diameter of the hole. */
  readonly width?: Figure;
  /** From the face that the tool enters. */
  readonly depth?: Figure;
  /** The radius of its inside corners; zero where they are cut square by hand, absent where the tool leaves none. */
  readonly corner?: Figure;
}

/** When it is made. A tool that reaches a loose part may not reach it in the glued-up case. */
export type WorkStage = 'on the loose part' | 'after glue-up' | 'when hanging';

export function axisOf(face: FaceOfPart): Axis {
  return face.slice(1) as Axis;
}
