import {
  braceNotClosed,
  braceNotOpened,
  type Finding,
  nameNotClosed,
  nameNotOpened,
  type Origin,
  strayMark,
  textTooLarge,
} from '@fettle/findings';
import type { LangiumDocument } from 'langium';
import type { StructureReport } from '../tokens/fettle-lexer.ts';
import { nameInQuotes } from '../tokens/names-in-quotes.ts';
import type { Slip } from '../tokens/slips.ts';
import { fileUnitId } from './text-units.ts';

/** The slips that the structure pass mended, as findings. */
export function slipFindings(document: LangiumDocument): Finding[] {
  const report = document.parseResult.lexerReport as StructureReport | undefined;
  const text = document.textDocument.getText();
  return (report?.slips ?? []).map((slip) => toFinding(slip, text));
}

/** Whether braces had to be guessed in this stretch of the text: what seems to be missing there may only be misplaced. */
export function bracesWereGuessed(document: LangiumDocument, start: number, end: number): boolean {
  const report = document.parseResult.lexerReport as StructureReport | undefined;
  return (report?.slips ?? []).some(
    (slip) => bracesGuessed.has(slip.kind) && slip.start < end && start < Math.max(slip.end, slip.start + 1),
  );
}

const bracesGuessed: ReadonlySet<Slip['kind']> = new Set([
  'brace-not-closed',
  'brace-not-opened',
  'stray-brace',
  'too-deep',
  'too-long',
]);

function toFinding(slip: Slip, text: string): Finding {
  const at = (start: number, end: number): Origin => ({ unit: fileUnitId, start, end });
  const here = at(slip.start, slip.end);
  switch (slip.kind) {
    case 'brace-not-closed':
      return braceNotClosed.at(
        here,
        { word: slip.word, atEnd: slip.atEnd, others: slip.around.length },
        {
          mends: [
            {
              how: 'close',
              safe: true,
              values: { braces: slip.around.length + 1 },
              changes: [
                { kind: 'insert-words', after: at(slip.closeAt, slip.closeAt), words: closingBraces(slip, text) },
              ],
            },
          ],
        },
      );
    case 'brace-not-opened':
      return braceNotOpened.at(
        here,
        { word: slip.word },
        {
          mends: [
            {
              how: 'open',
              safe: true,
              values: {},
              changes: [{ kind: 'insert-words', after: at(slip.openAt, slip.openAt), words: ' {' }],
            },
          ],
        },
      );
    case 'stray-brace':
    case 'stray-mark': {
      const mark = slip.kind === 'stray-brace' ? slip.brace : slip.mark;
      return strayMark.at(
        here,
        { mark },
        {
          mends: [{ how: 'remove', values: { mark }, changes: [{ kind: 'remove', at: here }] }],
        },
      );
    }
    case 'name-not-closed': {
      const words = text.slice(slip.start, slip.end);
      const end = slip.start + words.trimEnd().length;
      return nameNotClosed.at(
        at(slip.start, end),
        { name: nameInQuotes(words).slice(0, 60) },
        {
          mends: [
            {
              how: 'close',
              safe: true,
              values: {},
              changes: [{ kind: 'insert-words', after: at(end, end), words: '"' }],
            },
          ],
        },
      );
    }
    case 'name-not-opened':
      return nameNotOpened.at(
        here,
        { name: nameInQuotes(text.slice(slip.start, slip.end)).slice(0, 60) },
        {
          mends: [
            {
              how: 'open',
              safe: true,
              values: {},
              changes: [{ kind: 'insert-words', after: at(slip.start, slip.start), words: '"' }],
            },
          ],
        },
      );
    case 'too-deep':
      return textTooLarge.at(here, { what: slip.limit === 0 ? 'text' : 'braces', limit: slip.limit });
    case 'too-long':
      return textTooLarge.at(here, { what: 'words', limit: slip.limit });
    default: {
      const unknown: never = slip;
      return unknown;
    }
  }
}

/** Each on the line of its statement, or on a line of its own below what it encloses. */
function closingBraces(slip: Slip & { readonly kind: 'brace-not-closed' }, text: string): string {
  return [slip.start, ...slip.around].map((start) => closingBrace(start, slip.closeAt, text)).join('');
}

function closingBrace(start: number, closeAt: number, text: string): string {
  if (!text.slice(start, closeAt).includes('\n')) return ' }';
  const lineStart = text.lastIndexOf('\n', start - 1) + 1;
  const indent = /^[ \t]*/.exec(text.slice(lineStart, start))?.[0] ?? '';
  return `\n${indent}}`;
}
