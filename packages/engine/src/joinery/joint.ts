import type { Origin } from '@fettle/findings';
import type { Figure } from '../design/figure.ts';
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
  /** Nothing is said about it: it is as the trade would make it, or ends merely meet and how is not known. */
  readonly isAssumed: boolean;
  /** How one goes into the other; absent where nothing goes in. */
  readonly fit?: Fit;
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
  | 'sliding-dovetail'
  | 'drawer-rabbet'
  | 'lock-rabbet';

/**
 * `snug`: made to the actual thickness of what goes in. `short`: what goes in ends before the bottom of its cut, so that
 * the shoulder closes. `clearance`: a sheet is a little smaller than the room it has, so that it can be put together.
 * `float`: solid wood is smaller than its room, because it will move.
 */
export interface Fit {
  readonly kind: 'snug' | 'short' | 'clearance' | 'float';
  /** What is left free, at each end or edge. */
  readonly by: Figure;
}
