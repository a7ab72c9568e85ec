import type { Origin } from '@fettle/findings';
import type { Figure } from '../design/figure.ts';
import type { Price } from '../design/shop.ts';
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
  /** What has to be bought or made for it; absent where the wood alone holds. */
  readonly fasteners?: Fasteners;
}

/** Alike ones of one joint. */
export interface Fasteners {
  readonly what: 'dowel' | 'loose-tenon' | 'screw';
  /** The name of their shop entry; absent where none is named. */
  readonly entry?: string;
  readonly count: number;
  readonly length: Figure;
  /** Diameter of a dowel, thickness of a tenon, diameter of the hole that the shank of a screw passes through. */
  readonly thickness: Figure;
  readonly price?: Price;
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
