import type { TextSpan } from '@fettle/protocol';

/** Where words lie after the text around or within them was edited. Pure. */

/** One edit: `removed` code units at `start` gave way to `inserted` ones. */
export interface SpanEdit {
  readonly start: number;
  readonly removed: number;
  readonly inserted: number;
}

/**
 * Where `span` lies after `edit`. Text put in at its very start or end stays outside; text that replaces one of its
 * ends belongs to it.
 */
export function moveSpan(span: TextSpan, edit: SpanEdit): TextSpan {
  const { start, inserted, removed } = edit;
  const oldEnd = start + removed;
  const shift = inserted - removed;
  const newStart = span.start >= oldEnd ? span.start + shift : Math.min(span.start, start);
  let newEnd = span.end;
  if (span.end > oldEnd || (span.end === oldEnd && removed > 0)) newEnd = span.end + shift;
  else if (span.end > start) newEnd = start + inserted;
  return { start: newStart, end: Math.max(newStart, newEnd) };
}
