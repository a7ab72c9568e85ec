import {
  braceNotClosed,
  braceNotOpened,
  type Finding,
  halfMarkedRemark,
  hyphenLeftOut,
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

/** The slips that the structure pass mended, as findings: a run of the same slip is one. */
export function slipFindings(document: LangiumDocument): Finding[] {
  const report = document.parseResult.lexerReport as StructureReport | undefined;
  const text = document.textDocument.getText();
  const slips = [...(report?.slips ?? [])];
  const strays = slips.filter(isStray).sort((a, b) => a.start - b.start);
  const isDeep = (slip: Slip) => slip.kind === 'too-deep' && slip.limit > 0;
  const deep = slips.filter(isDeep);
  const [deepest] = deep;
  return [
    ...slips.filter((slip) => !isStray(slip) && !isDeep(slip)).map((slip) => toFinding(slip, text)),
    ...runsOf(strays, text).map((run) => strayFinding(run, text)),
    ...(deepest === undefined ? [] : [toFinding(deepest, text, deep.length)]),
  ];
}

type Stray = Extract<Slip, { readonly kind: 'stray-brace' | 'stray-mark' }>;

function isStray(slip: Slip): slip is Stray {
  return slip.kind === 'stray-brace' || slip.kind === 'stray-mark';
}

type Run = { readonly first: Stray; last: Stray; count: number };

/** Strays between which nothing stands but blanks. They are in the order of the text. */
function runsOf(strays: readonly Stray[], text: string): readonly Run[] {
  const runs: Run[] = [];
  for (const slip of strays) {
    const run = runs.at(-1);
    if (run !== undefined && text.slice(run.last.end, slip.start).trim() === '') {
      run.last = slip;
      run.count++;
    } else {
      runs.push({ first: slip, last: slip, count: 1 });
    }
  }
  return runs;
}

/** Of more marks than these the first few are shown. */
const MOST_MARKS_SHOWN = 12;

function strayFinding({ first, last, count }: Run, text: string): Finding {
  const here: Origin = { unit: fileUnitId, start: first.start, end: last.end };
  const marks = text.slice(here.start, Math.min(here.end, here.start + MOST_MARKS_SHOWN + 1)).replace(/\s+/g, ' ');
  const all = count === 1 ? (first.kind === 'stray-brace' ? first.brace : first.mark) : marks;
  const mark = count > 1 && all.length > MOST_MARKS_SHOWN ? `${all.slice(0, MOST_MARKS_SHOWN)}…` : all;
  return strayMark.at(
    here,
    { mark, count },
    { mends: [{ how: 'remove', values: { mark }, changes: [{ kind: 'remove', at: here }] }] },
  );
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

function toFinding(slip: Slip, text: string, count = 1): Finding {
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
    case 'stray-mark':
      return strayFinding({ first: slip, last: slip, count: 1 }, text);
    case 'half-marked-remark':
      return halfMarkedRemark.at(
        at(slip.start, slip.start + 1),
        {},
        {
          mends: [
            {
              how: 'mark',
              values: {},
              changes: [{ kind: 'set-words', at: at(slip.start, slip.start + 1), words: '//' }],
            },
          ],
        },
      );
    case 'hyphen-left-out':
      return hyphenLeftOut.at(
        here,
        { words: slip.words, word: slip.word },
        {
          mends: [
            {
              how: 'join',
              safe: true,
              values: { word: slip.word },
              changes: [{ kind: 'set-words', at: here, words: slip.word }],
            },
          ],
        },
      );
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
      return textTooLarge.at(here, { what: slip.limit === 0 ? 'text' : 'braces', limit: slip.limit, count });
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
