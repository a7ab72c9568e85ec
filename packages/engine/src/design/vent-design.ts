import type { Origin } from '@fettle/findings';
import type { Material } from './design.ts';
import type { Figure } from './figure.ts';

/** An opening for air: through a front, and through what lies behind it where that is said. */
export interface VentDesign {
  readonly origin: Origin;
  /** Clear, inside the lining where there is one. */
  readonly width: Figure;
  readonly height: Figure;
  /** From the lower edge of the front, or of an open space, to that of the opening. */
  readonly up: Figure;
  /** What a cutter leaves in its corners; absent where they are square. */
  readonly corners?: Figure;
  /** The words that say so, of either kind. */
  readonly cornersOrigin?: Origin;
  readonly lining?: Material & { readonly origin: Origin };
  readonly ledge?: VentLedge;
  /** Through both ends of a drawer box, and through the back of the case. */
  readonly box?: VentLayer;
  readonly back?: VentLayer;
}

/** A rabbet around the opening, behind the front, that a screen lies in. */
export interface VentLedge {
  readonly origin: Origin;
  readonly width: Figure;
  readonly depth: Figure;
}

/** Sizes of its own, or so much larger all round than the opening in the front; of that size where neither is said. */
export interface VentLayer {
  readonly origin: Origin;
  readonly larger?: Figure;
  readonly width?: Figure;
  readonly height?: Figure;
}
