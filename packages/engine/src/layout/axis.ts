import type { SizeAsked } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { Length } from '../length/length.ts';

/**
 * One row or one stack, seen along its own direction only: what the axis solver is asked and what it answers. Knows
 * nothing of the other direction, of carcases, or of what a front is made of.
 */

export interface AxisCell {
  readonly id: string;
  /** What `same as` may call it. */
  readonly name?: string;
  /** How derivations and findings name it: '"cards"' or 'the third opening'. */
  readonly label: string;
  readonly asked: SizeAsked;
  /** Limits of the front, or of the opening where there is no front; of the asked face where a size is asked for. */
  readonly atLeast?: Figure;
  readonly atMost?: Figure;
  /** The real opening; it replaces whatever was asked. */
  readonly measured?: Figure;
  /** The real front, where no opening is measured; it replaces whatever was asked. */
  readonly measuredFront?: Figure;
  readonly hasFront: boolean;
  /**
   * What makes the front longer (+) or shorter (-) than its opening at its start (left, top) and at its end: a gap is
   * taken away, a covered divider adds what the front laps over. front = opening + deltaStart + deltaEnd.
   */
  readonly deltaStart: readonly Operand[];
  readonly deltaEnd: readonly Operand[];
}

export interface AxisBoundary {
  /** 'partition', 'divider under "cards"'. */
  readonly label: string;
  readonly thickness: Figure;
}

/** Where `same as` leads. */
export type SameTarget =
  /** Another cell of this axis. */
  | { readonly kind: 'here'; readonly id: string }
  /** A cell of an axis that is already solved, or whose size is fixed. */
  | { readonly kind: 'known'; readonly cell: SolvedCell }
  | { readonly kind: 'unknown'; readonly why: WhyUnknown };

export type WhyUnknown = 'no-such-cell' | 'circular' | 'no-front' | 'not-laid-out';

export interface AxisRequest {
  /** The space between the two outer boundaries. */
  readonly total: Figure;
  /** 'height of the face'. */
  readonly totalLabel: string;
  readonly cells: readonly AxisCell[];
  /** Everything that takes space between the cells, in order. */
  readonly boundaries: readonly AxisBoundary[];
  /** Resolves `same as` of the cell with this id; without it only cells of this axis are found, by name. */
  readonly sameAs?: (cellId: string) => SameTarget;
}

export interface SolvedCell {
  readonly id: string;
  readonly label: string;
  readonly opening: Figure;
  /** Present when the cell has a front. */
  readonly front?: Figure;
  /** What decided its size. `at-least` and `at-most`: it would be smaller or larger, its limit holds it. */
  readonly by: 'measured' | 'fixed' | 'same' | 'share' | 'at-least' | 'at-most';
}

/** Two statements about one cell that cannot both hold; the first of `between` was followed. */
export interface LimitClash {
  readonly id: string;
  readonly between: readonly [Figure, Figure];
  readonly what: 'size-under-least' | 'size-over-most' | 'least-over-most';
}

/** One written size that takes part in a sum that does not come out. */
export interface Blame {
  readonly id: string;
  readonly label: string;
  readonly by: 'fixed' | 'measured' | 'same' | 'at-least' | 'at-most';
  readonly basis: 'front' | 'opening';
  /** The size as written, of `basis`. */
  readonly figure: Figure;
  /** How far it can give in the direction that mends the sum before it meets a limit or nothing; absent: without end. */
  readonly slack?: Length;
  /** The size, of `basis`, that makes the sum come out if nothing else changes; absent if it cannot. */
  readonly mended?: Length;
}

export type AxisFailure =
  /** Nothing can give, and the sum is not the total. */
  | {
      readonly kind: 'difference';
      readonly needed: Figure;
      readonly available: Figure;
      /** Positive. */
      readonly difference: Length;
      readonly tooMuch: boolean;
      /** Those that can mend it alone come first, the one with most slack before the others. */
      readonly blame: readonly Blame[];
    }
  /** The written sizes leave these cells nothing, or less. */
  | {
      readonly kind: 'nothing-left';
      /** With the sizes they would have: zero or negative. */
      readonly squeezed: readonly SolvedCell[];
      /** What everything else takes, gaps of the squeezed fronts included. */
      readonly taken: Figure;
      readonly available: Figure;
      readonly blame: readonly Blame[];
    }
  /** Written or measured sizes from which no opening or no front is left. */
  | { readonly kind: 'not-positive'; readonly cells: readonly SolvedCell[] }
  /** Shares of nothing or less than nothing. */
  | { readonly kind: 'share-not-positive'; readonly ids: readonly string[] }
  /** `same as` leads nowhere. */
  | { readonly kind: 'unknown-same'; readonly cells: readonly { readonly id: string; readonly why: WhyUnknown }[] };

export type AxisResult =
  | {
      readonly kind: 'solved';
      /** In the order asked; openings and boundaries add up to the total exactly. */
      readonly cells: readonly SolvedCell[];
      /** What one share comes to, when anything shares; of a front or of an opening. */
      readonly share?: { readonly figure: Figure; readonly basis: 'front' | 'opening' };
      readonly clashes: readonly LimitClash[];
    }
  | {
      readonly kind: 'failed';
      readonly failure: AxisFailure;
      /** The cells whose size does not depend on the failure: written and measured ones. */
      readonly known: readonly SolvedCell[];
      readonly clashes: readonly LimitClash[];
    };
