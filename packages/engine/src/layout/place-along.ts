import type { Figure } from '../design/figure.ts';
import type { Span } from '../evaluation.ts';
import { spanFrom, spanUpTo } from './spans.ts';

/**
 * Stands cells and boundaries one after the other in a stretch. What stands before the first unknown size is placed
 * from the start, what stands after the last unknown size from the end; what lies between two unknowns has no place.
 */
export function placeAlong(
  along: Span,
  /** `backwards`: the first cell stands at the end of the stretch, as the topmost of a stack does. */
  order: 'forwards' | 'backwards',
  cells: readonly (Figure | undefined)[],
  boundaries: readonly Figure[],
): { readonly cells: readonly (Span | undefined)[]; readonly boundaries: readonly (Span | undefined)[] } {
  const items: (Figure | undefined)[] = [];
  cells.forEach((size, at) => {
    items.push(size);
    if (at < cells.length - 1) items.push(boundaries[at]);
  });
  if (order === 'backwards') items.reverse();

  const spans: (Span | undefined)[] = items.map(() => undefined);
  let start = along.start;
  let reached = 0;
  for (; reached < items.length; reached += 1) {
    const size = items[reached];
    if (size === undefined) break;
    const span = spanFrom(start, size);
    spans[reached] = span;
    start = span.end;
  }
  let end = along.end;
  for (let at = items.length - 1; at > reached; at -= 1) {
    const size = items[at];
    if (size === undefined) break;
    const span = spanUpTo(end, size);
    spans[at] = span;
    end = span.start;
  }

  if (order === 'backwards') spans.reverse();
  return {
    cells: spans.filter((_, at) => at % 2 === 0),
    boundaries: spans.filter((_, at) => at % 2 === 1),
  };
}
