import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { Span } from '../evaluation.ts';

/** Stretches along an axis, each with its two ends and its size as figures that agree exactly. */

/** A place on an axis that is zero by agreement, such as the floor. */
export function zeroAt(place: string): Figure {
  return derive(place, []);
}

export function spanFrom(start: Figure, size: Figure): Span {
  return { start, size, end: derive('where it ends', [plus('where it starts', start), plus('its size', size)]) };
}

export function spanUpTo(end: Figure, size: Figure): Span {
  return { start: derive('where it starts', [plus('where it ends', end), less('its size', size)]), size, end };
}
