import type { Origin } from '@fettle/findings';

/** Fronts that are cut from one blank in the order in which they are named. */
export interface SequenceDesign {
  /** What the maker calls it. */
  readonly name?: string;
  readonly origin: Origin;
  readonly members: readonly SequenceMember[];
  /** Which way the grain runs, where it is said; otherwise it runs along the sequence. */
  readonly grain?: 'upright' | 'across';
  /** Leaves of veneer are laid over the fronts. */
  readonly isVeneered: boolean;
}

/** One front, or all from one to another; a pair of doors counts as both its leaves, a row or stack as all it holds. */
export interface SequenceMember {
  readonly from: string;
  readonly to?: string;
  /** The words that name it. */
  readonly origin: Origin;
}
