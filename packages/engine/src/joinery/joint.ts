import type { Origin } from '@fettle/findings';
import type { FaceOfPart } from './feature.ts';

/** How two parts hold to each other: the one that goes in or against, and the one whose face or edge takes it. */
export interface Joint {
  readonly id: string;
  readonly kind: JointKind;
  /** The part whose end or edge goes in. */
  readonly held: string;
  /** The part that takes it. */
  readonly holding: string;
  /** The face of the holding part that they meet at. */
  readonly at: FaceOfPart;
  /** The words that asked for it, or the statement of the held part where nothing is said. */
  readonly origin: Origin;
  /** Nothing is said about it: the ends merely meet, and what fastens them is not known. */
  readonly isAssumed: boolean;
}

export type JointKind =
  | 'butt'
  | 'dado'
  | 'groove'
  | 'rabbet'
  | 'tongue'
  | 'stub-tenon'
  | 'mortise-and-tenon'
  | 'loose-tenon'
  | 'dowel'
  | 'mitre'
  | 'box-joint'
  | 'dovetail'
  | 'drawer-rabbet'
  | 'lock-rabbet';
