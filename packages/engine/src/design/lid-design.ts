import type { Origin } from '@fettle/findings';
import type { Rational } from '../length/rational.ts';
import type { Figure } from './figure.ts';
import type { HingeEntry, Price } from './shop.ts';

/** How the lid of a chest is hung, as plain readonly data: part of the Design. */
export interface LidDesign {
  readonly origin: Origin;
  readonly hinges?: HingeEntry;
  readonly hingesOrigin?: Origin;
  /** Hinges are spoken of, be it by a name that nothing declares, which has its own finding. */
  readonly isHung: boolean;
  readonly count?: number;
  /** In degrees; a right angle where it is absent. */
  readonly opens?: Rational;
  /** From the rearmost point of the piece. */
  readonly fromWall: Figure;
  readonly support?: LidSupport;
}

/** What holds a lid that is open, and keeps it from falling. */
export interface LidSupport {
  readonly origin: Origin;
  /** `torsion`: it holds the lid wherever that is let go. `stay`: it holds the lid open. */
  readonly how?: 'torsion' | 'stay';
  /** Some of its words mean nothing, which has its own finding; they may be what is missing here. */
  readonly hasLostWords: boolean;
  readonly count: number;
  /** Where their number is said. */
  readonly countOrigin?: Origin;
  /** What each is rated for, and where that number is said. */
  readonly carries?: {
    readonly moment: Rational;
    readonly unit: 'inch-pounds' | 'newton-metres';
    readonly origin?: Origin;
  };
  /** From its data sheet; empty while nobody tells them. */
  readonly holes: readonly SupportHole[];
  readonly screws?: { readonly length: Figure; readonly diameter?: Figure };
  /** From the inner faces of the sides to the middles of the outermost. */
  readonly fromSides?: Figure;
  /** Of one. */
  readonly price?: Price;
}

/** A screw hole of a support: in the lid where it is only forward, in the back where only down, in a side where both. */
export interface SupportHole {
  /** Towards the front, from the line on which the lid turns. */
  readonly forward?: Figure;
  /** From the underside of the lid when it is closed. */
  readonly down?: Figure;
}
