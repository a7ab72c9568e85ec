import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { Rectangle, Span } from '../evaluation.ts';

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

export function spanBetween(start: Figure, end: Figure, rule: string): Span {
  return { start, size: derive(rule, [plus('where it ends', end), less('where it starts', start)]), end };
}

/** `a` and `b` share more than an edge. */
export function spansOverlap(a: Span, b: Span): boolean {
  return a.start.length.compare(b.end.length) < 0 && b.start.length.compare(a.end.length) < 0;
}

export function rectanglesOverlap(a: Rectangle, b: Rectangle): boolean {
  return spansOverlap(a.x, b.x) && spansOverlap(a.y, b.y);
}
