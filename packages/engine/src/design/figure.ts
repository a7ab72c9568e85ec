import type { Origin } from '@fettle/findings';
import type { Length } from '../length/length.ts';
import type { WholeOrRational } from '../length/rational.ts';

/**
 * A figured dimension: an exact length that can say where it came from. Every length in a Design, a Layout or a Part
 * is a Figure, so hover, cut list and documents can all show the terms.
 */
export interface Figure {
  readonly length: Length;
  readonly reason: Reason;
}

export type Reason =
  /** Written in the text at `origin`. */
  | { readonly kind: 'given'; readonly origin: Origin }
  /** Measured on the real thing and written down at `origin`; it replaces what was planned. */
  | { readonly kind: 'measured'; readonly origin: Origin; readonly planned?: Figure }
  /** Read from a shop entry. `origin.unit` names that entry. */
  | { readonly kind: 'shop'; readonly entry: string; readonly origin: Origin }
  /** Not said anywhere; a habit of the trade stands in. `because` is a short sentence for hover and documents. */
  | { readonly kind: 'assumed'; readonly because: string }
  /** Computed. `rule` is a short phrase ('opening less a gap at each side'); operands in reading order. */
  | { readonly kind: 'derived'; readonly rule: string; readonly operands: readonly Operand[] };

export interface Operand {
  /** How the term enters: added, taken away, or named only (a factor, a limit). */
  readonly sign: '+' | '-' | '';
  readonly label: string;
  readonly figure: Figure;
  /** The term counts this many times (two gaps, half a gap). A `number` is a whole one. */
  readonly times?: WholeOrRational;
}
