import { byEachOther, type Evaluation, isTogether } from '@fettle/engine';
import { cleanName } from './lettering.ts';
import { PEN_GROUPS } from './line-types.ts';
import type { Drawing, Group } from './primitives.ts';
import type { Sheet } from './scale.ts';
import { figureOnSheet, isInch } from './shown-lengths.ts';
import { messageLines, roomForView, type SheetWords, sheetFurniture } from './title-block.ts';

/** What every sheet of a piece says of it, and the sheet that says why nothing is drawn. */

/** Which drawing a sheet carries. */
export interface DrawingName {
  /** Prefix of every id in it. */
  readonly id: string;
  /** In the title block: 'Front elevation'. */
  readonly words: string;
  readonly description: string;
}

/** Lines of notes that room is kept for, besides a warning in its box. */
export const NOTE_LINES = 3;

export function messageSheet(
  evaluation: Evaluation,
  name: DrawingName,
  sheet: Sheet,
  messages: readonly string[],
): Drawing {
  const words: SheetWords = {
    ...commonWords(evaluation, name),
    scale: 'none',
    overall: overallWords(evaluation),
    notes: [],
    warnings: [],
  };
  const [pens] = PEN_GROUPS;
  const lines = messageLines(roomForView(sheet, NOTE_LINES), messages);
  const message: Group = { kind: 'group', id: 'message', name: 'message', children: lines };
  return {
    ...commonDrawing(evaluation, name, sheet),
    pens: pens ?? { wide: 0.35, narrow: 0.18 },
    content: [...sheetFurniture(sheet, words), message],
  };
}

export function commonDrawing(evaluation: Evaluation, name: DrawingName, sheet: Sheet) {
  return {
    id: name.id,
    title: `${name.words} of ${cleanName(evaluation.design.name)}`,
    description: name.description,
    width: sheet.width,
    height: sheet.height,
  };
}

export function commonWords(evaluation: Evaluation, name: DrawingName) {
  return {
    piece: evaluation.design.name,
    drawing: name.words,
    projection: isInch(evaluation.design.units) ? ('third' as const) : ('first' as const),
  };
}

export function overallWords(evaluation: Evaluation): string {
  if (isTogether(evaluation)) return `${evaluation.pieces.length} pieces`;
  const { width, height, depth } = evaluation.design.size;
  const { units } = evaluation.design;
  const sizes = [width, height, depth].map((figure) =>
    figure === undefined ? '?' : figureOnSheet(figure.length, units),
  );
  return `${byEachOther(...sizes)}${units.unit === 'mm' ? ' mm' : ''}`;
}

export function missingSizes(evaluation: Evaluation): readonly string[] {
  const { width, height, depth } = evaluation.design.size;
  const missing = [
    ...(width === undefined ? ['width'] : []),
    ...(height === undefined ? ['height'] : []),
    ...(depth === undefined ? ['depth'] : []),
  ];
  const what = missing.length === 0 ? 'its case' : missing.join(' and ');
  return [`Nothing is drawn yet: the piece still lacks ${what}.`];
}

/** Why the piece cannot be drawn at all; undefined where it can. */
export function whyNotDrawn(evaluation: Evaluation): readonly string[] | undefined {
  const { carcase } = evaluation.layout;
  if (carcase === undefined) return missingSizes(evaluation);
  const { x, y, z } = carcase.outside;
  return [x, y, z].every(({ size }) => size.length.isPositive())
    ? undefined
    : ['Nothing is drawn yet: width, height and depth must be more than nothing.'];
}

/** Whether anything is to be built from the sheet; undefined where nothing stands against it. */
export function errorWords(evaluation: Evaluation): string | undefined {
  const errors = evaluation.findings.filter((finding) => finding.severity === 'error').length;
  if (errors === 0) return undefined;
  return `Do not build from this sheet: ${errors === 1 ? '1 error stands' : `${errors} errors stand`} against the piece`;
}

/** The marks of some parts, at most twelve of them. */
export function marksOf(parts: readonly { readonly mark: string }[]): string {
  const marks = parts.slice(0, 12).map((part) => cleanName(part.mark));
  return parts.length > marks.length ? `${marks.join(', ')} and ${parts.length - marks.length} more` : marks.join(', ');
}

export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
