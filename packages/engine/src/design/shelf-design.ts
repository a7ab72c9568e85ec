import type { Origin } from '@fettle/findings';
import type { Material } from './design.ts';
import type { Figure } from './figure.ts';
import type { Price, ScrewEntry } from './shop.ts';

/** What carries shelves, and where they lie when that is not left to even spreading. */

/**
 * Rows of holes in what stands at both ends of the shelves: a front row and a back row at each. Absent measures are
 * chosen where the rows are laid out.
 */
export interface PinRowsDesign {
  readonly origin: Origin;
  readonly diameter: Figure;
  readonly depth: Figure;
  /** From the middle of one hole to that of the next above it. */
  readonly apart: Figure;
  /** From the front edge, or from the back of an inset front, to the middle of the front row. */
  readonly fromFront: Figure;
  /** From the front of the back to the middle of the back row; absent: as many whole pitches behind as there is room for. */
  readonly fromBack?: Figure;
  /** From the lower edge of the opening to the middle of the lowest hole, and of the highest that may be. */
  readonly lowest?: Figure;
  readonly highest?: Figure;
  /** They keep to the pitch of the 32 mm system, from front to back too. */
  readonly isSystem: boolean;
  /** Of one pin. */
  readonly price?: Price;
}

/** Strips on both ends of the opening that the ends of a shelf lie on. */
export interface CleatsDesign extends Material {
  readonly origin: Origin;
  readonly height: Figure;
  /** How far they begin behind the front of the shelf. */
  readonly setBack: Figure;
  /** What they are fastened with; absent while nothing is said. */
  readonly screws?: ScrewEntry;
  /** The words that name them. */
  readonly screwsOrigin?: Origin;
}

/** Where one shelf lies, from the lower edge of its opening. */
export interface ShelfHeight {
  readonly origin: Origin;
  readonly up: Figure;
  readonly to: 'underside' | 'upper face';
}
