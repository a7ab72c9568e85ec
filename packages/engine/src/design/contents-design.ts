import type { Origin } from '@fettle/findings';
import type { Rational } from '../length/rational.ts';
import type { Figure } from './figure.ts';

/** What a piece must hold, as the maker wrote it. */

export interface ThingDesign {
  readonly name: string;
  readonly origin: Origin;
  /** As it stands the way it is meant to stand. */
  readonly width: Figure;
  readonly depth: Figure;
  readonly height: Figure;
  /** It may be turned around but not tipped over. */
  readonly keepsUpright: boolean;
  readonly weighs?: { readonly amount: Rational; readonly unit: 'lb' | 'kg' };
}

export interface HeldDesign {
  readonly origin: Origin;
  readonly thing: ThingDesign;
  readonly count: number;
  /** The number itself, where one is written. */
  readonly countOrigin?: Origin;
}
