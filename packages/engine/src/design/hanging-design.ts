import type { Origin } from '@fettle/findings';
import type { Figure } from './figure.ts';
import type { HingeEntry, PullEntry } from './shop.ts';

/** How doors are hung and what fronts are opened by, as plain readonly data: part of the Design. */

/** What is said about the hinges of one door or pair, besides which they are. Absent is whatever the trade would do. */
export interface HangingDesign {
  readonly origin: Origin;
  /** The hinges on that edge, where they are not those of the others. */
  readonly atLeft?: NamedHinges;
  readonly atRight?: NamedHinges;
  /** On each leaf. */
  readonly count?: number;
  readonly countOrigin?: Origin;
  /** From each end of the door: to the end of a leaf of a butt hinge, to the middle of a cup. */
  readonly fromEnds?: Figure;
  /** Depth of the gain in the case, planned or measured: the gain in the door makes up the rest. */
  readonly caseGain?: Figure;
  /** How much of the closing edge is taken off at the back of the door. */
  readonly bevel?: Figure;
}

export interface NamedHinges {
  readonly entry: HingeEntry;
  /** The words that name them. */
  readonly origin: Origin;
  /** Those words, and those that say at which edge. */
  readonly phrase: Origin;
}

/** What holds a door shut, or what it comes to rest on. */
export interface CatchDesign {
  readonly origin: Origin;
  readonly kind: 'catch' | 'stop';
  readonly how?: 'magnet' | 'ball' | 'touch';
  readonly at: readonly ('top' | 'bottom')[];
  readonly atOrigins?: Readonly<Partial<Record<'top' | 'bottom', Origin>>>;
}

/** Pulls of a front, or of all fronts that open. */
export interface PullsDesign {
  readonly origin: Origin;
  readonly entry: PullEntry;
  /** The words that name it. */
  readonly entryOrigin: Origin;
  readonly countEach: number;
  readonly countOrigin?: Origin;
  /** From the edge of a door that is away from its hinges, or from each end of a drawer front with two. */
  readonly fromEdge?: Figure;
  readonly height?: PullHeight;
  readonly stands?: 'upright' | 'level';
  /** Half of it in each of two leaves that meet. */
  readonly isShared: boolean;
  readonly screwLength?: Figure;
}

/** Where the middle of a pull is, up and down. */
export type PullHeight =
  | { readonly kind: 'centred' }
  | { readonly kind: 'from-top' | 'from-bottom' | 'above-floor'; readonly figure: Figure };
