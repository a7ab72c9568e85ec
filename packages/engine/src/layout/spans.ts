import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { CarcaseLayout, Rectangle, Span } from '../evaluation.ts';

/** Stretches along an axis, each with its two ends and its size as figures that agree exactly. */

/** A place on an axis that is zero by agreement, such as the floor. */
export function zeroAt(place: string): Figure {
  return derive(place, []);
}

export function spanFrom(start: Figure, size: Figure): Span {
  return { start, size, end: derive('where it ends', [plus('where it starts', start), plus('its size', size)]) };
}

/** The same stretch, up to the inside of the case where it ends at the edge of the face: behind a face frame. */
export function toInterior(span: Span, axis: 'x' | 'y', layout: Pick<CarcaseLayout, 'face' | 'interior'>): Span {
  const [face, interior] = [layout.face[axis], layout.interior[axis]];
  if (face === interior) return span;
  const start = span.start.length.equals(face.start.length) ? interior.start : span.start;
  const end = span.end.length.equals(face.end.length) ? interior.end : span.end;
  if (start === span.start && end === span.end) return span;
  return {
    start,
    end,
    size: derive('from end to end behind the frame', [plus('where it ends', end), less('where it starts', start)]),
  };
}

/** What of an opening is free for what goes into the case: a stile or rail may leave some of a side behind it. */
export function withinInterior(opening: Rectangle, { interior }: Pick<CarcaseLayout, 'interior'>): Rectangle {
  return { x: clamped(opening.x, interior.x), y: clamped(opening.y, interior.y) };
}

function clamped(span: Span, inside: Span): Span {
  const start = span.start.length.compare(inside.start.length) < 0 ? inside.start : span.start;
  const end = span.end.length.compare(inside.end.length) > 0 ? inside.end : span.end;
  if (start === span.start && end === span.end) return span;
  return {
    start,
    end,
    size: derive('what the case leaves of the opening', [plus('where it ends', end), less('where it starts', start)]),
  };
}

export function spanUpTo(end: Figure, size: Figure): Span {
  return { start: derive('where it starts', [plus('where it ends', end), less('its size', size)]), size, end };
}

/** What is left of a stretch that something keeps clear of at its ends; the stretch itself where nothing does. */
export function lessAtEnds(span: Span, clear: { readonly left?: Figure; readonly right?: Figure }): Span {
  const { left, right } = clear;
  if (left === undefined && right === undefined) return span;
  const at = (words: string, figure: Figure | undefined) => (figure === undefined ? [] : [less(words, figure)]);
  const start =
    left === undefined
      ? span.start
      : derive('clear of the left end', [plus('where the opening begins', span.start), plus('clear at left', left)]);
  return spanFrom(
    start,
    derive('what the opening leaves', [
      plus('width of the opening', span.size),
      ...at('clear at left', left),
      ...at('clear at right', right),
    ]),
  );
}
