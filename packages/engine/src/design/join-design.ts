import type { Origin } from '@fettle/findings';
import type { Figure } from './figure.ts';
import type { DowelEntry, LooseTenonEntry, ScrewEntry } from './shop.ts';

/**
 * How two parts are to be joined, as it is said for a whole case or in the statement of one part. What is not said is
 * absent: the joinery fills it in from the wood that meets there, and shows it as assumed.
 */
export type JoinDesign = DadoJoin | SlidingDovetailJoin | DowelJoin | ButtJoin | TenonJoin | LooseTenonJoin | MitreJoin;

interface Said {
  /** The words that ask for the joint. */
  readonly origin: Origin;
}

/** The end or edge goes into a cut across the face of the part that takes it. */
export interface DadoJoin extends Said {
  readonly kind: 'dado';
  /** Into the face of the part that takes the other. */
  readonly depth?: Figure;
  /** The cut begins this far behind the front edge, and what goes in is notched so that it closes it. */
  readonly stopped?: Figure;
  /** Thickness of a tongue, centred, between two shoulders; absent where the whole thickness goes in. */
  readonly tongue?: Figure;
}

/** The end is a tail that slides from the front into a way of its own shape. */
export interface SlidingDovetailJoin extends Said {
  readonly kind: 'sliding-dovetail';
  /** Into the face of the part that takes the other. */
  readonly depth?: Figure;
}

/** Where a row of fasteners lies: counted from the front edge, or the lower one where the row runs upright. */
interface Row extends Said {
  /** From the edge to the middle of the first. */
  readonly first?: Figure;
  /** From middle to middle. */
  readonly apart?: Figure;
}

export interface DowelJoin extends Row {
  readonly kind: 'dowel';
  readonly dowel?: DowelEntry;
}

/** The end merely meets the face; screws go through the one into the other, where some are named. */
export interface ButtJoin extends Row {
  readonly kind: 'butt';
  readonly screw?: ScrewEntry;
}

export interface TenonJoin extends Said {
  /** A stub tenon goes into a groove that runs on; a tenon into a mortise of its own. */
  readonly kind: 'mortise-and-tenon' | 'stub-tenon';
  readonly length?: Figure;
  readonly thickness?: Figure;
}

export interface LooseTenonJoin extends Row {
  readonly kind: 'loose-tenon';
  readonly tenon?: LooseTenonEntry;
}

export interface MitreJoin extends Said {
  readonly kind: 'mitre';
}
