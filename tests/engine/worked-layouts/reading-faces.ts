import type { Evaluation, FrontFit, Rectangle, Span } from '@fettle/engine';
import { inches, written } from '../design-builder.ts';
import { cellNamed } from '../reading-layouts.ts';

/** Fits to ask for, and sizes read back in sixteenths and the like, as one writes them in a sum. */

export const inset = (gap: string): FrontFit => ({ kind: 'inset', gap: written(gap) });

export const overlay = (how: 'full' | 'half', gap: string, reveal = '1/16'): FrontFit => ({
  kind: 'overlay',
  how,
  reveal: written(reveal),
  gap: written(gap),
});

export const overlayBy = (by: string, gap: string): FrontFit => ({
  kind: 'overlay',
  how: 'by',
  by: written(by),
  reveal: written('0'),
  gap: written(gap),
});

export const lipped = (lip: string, gap: string): FrontFit => ({
  kind: 'lipped',
  lip: written(lip),
  gap: written(gap),
});

/** The same number as an exact fraction in lowest terms: '14-9/16' is '233/16'. */
export const exactly = (text: string): string => inches(text).exactInches;

export const sizeOfSpan = (span: Span | undefined): string => span?.size.length.exactInches ?? 'none';

/** 'from to': where a stretch begins and ends. */
export const stretch = (span: Span | undefined): readonly string[] =>
  span === undefined ? [] : [span.start.length.exactInches, span.end.length.exactInches];

export const widths = (evaluation: Evaluation, ids: readonly string[]) => sizes(evaluation, ids, 'x');
export const heights = (evaluation: Evaluation, ids: readonly string[]) => sizes(evaluation, ids, 'y');

function sizes(evaluation: Evaluation, ids: readonly string[], axis: 'x' | 'y') {
  const laid = ids.map((id) => cellNamed(evaluation, id));
  const of = (rectangle: Rectangle | undefined) => sizeOfSpan(rectangle?.[axis]);
  return { fronts: laid.map(({ front }) => of(front)), openings: laid.map(({ opening }) => of(opening)) };
}
