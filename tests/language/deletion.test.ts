import { evaluateDocument } from '@fettle/language';
import { afterAll, describe, expect, test } from 'vitest';
import { services } from './harness/workbench.ts';
import { sideboard } from './sideboard.ts';
import { lostUnits, parsed, type UnitOfText, unitsOf } from './units-of-text.ts';

/**
 * The gate for the grammar: whatever one character does to the sideboard, the rest of it is still read as it was meant,
 * and what is said about it is one thing. A text that stops anywhere is measured by what stood complete before.
 */
interface Variants {
  readonly label: string;
  /** Undefined past the last place. */
  at(offset: number): string | undefined;
  /** Units that should still be there. */
  meant(offset: number): readonly UnitOfText[];
}

const all = unitsOf(parsed(sideboard));
const insertions = ['}', '"', '{'].map(
  (mark): Variants => ({
    label: `one ${mark} too many`,
    at: (offset) => sideboard.slice(0, offset) + mark + sideboard.slice(offset),
    meant: () => all,
  }),
);
const kinds: readonly Variants[] = [
  {
    label: 'cut off',
    at: (offset) => sideboard.slice(0, offset),
    meant: (offset) => all.filter((unit) => unit.end <= offset),
  },
  {
    label: 'one character less',
    at: (offset) => (offset < sideboard.length ? sideboard.slice(0, offset) + sideboard.slice(offset + 1) : undefined),
    meant: () => all,
  },
  ...insertions,
];

/** Codes that say a text is not written as the language is. */
const ofWriting: ReadonlySet<string> = new Set([
  'brace-not-closed',
  'brace-not-opened',
  'name-empty',
  'name-missing',
  'name-not-closed',
  'name-not-opened',
  'size-of-what',
  'stray-mark',
  'text-too-large',
  'unit-apart',
  'unknown-word',
  'word-belongs-elsewhere',
]);

const mostInHundred = 2;
/** Findings take an evaluation each: every third place is asked for them, or all with FETTLE_EVERY_PLACE=1. */
const stride = process.env['FETTLE_EVERY_PLACE'] === '1' ? 1 : 3;

const rows: string[] = [];
afterAll(() => console.log(['', 'variants of the sideboard', ...rows].join('\n')));

test('the sideboard itself has units and nothing is wrong with its writing', () => {
  expect(all.length).toBeGreaterThan(50);
  expect(findingsOfWriting(sideboard)).toEqual([]);
});

describe.each(kinds)('$label', ({ label, at, meant }) => {
  const variants = [...Array(sideboard.length + 1).keys()].flatMap((offset) => {
    const text = at(offset);
    return text === undefined ? [] : [{ offset, text }];
  });

  test('at most one unit is lost', { timeout: 300_000 }, () => {
    const bad: string[] = [];
    let worst = 0;
    for (const { offset, text } of variants) {
      const document = parsed(text);
      expect(document.parseResult.parserErrors).toEqual([]);
      const lost = lostUnits(meant(offset), unitsOf(document));
      worst = Math.max(worst, lost.length);
      if (lost.length > 1) bad.push(`${around(offset)} loses ${lost.length}: ${lost.slice(0, 3).join(', ')}`);
    }
    rows.push(row(label, variants.length, bad.length, `lose more than one unit, ${worst} at most`));
    expect(bad.length, bad.join('\n')).toBeLessThanOrEqual((variants.length * mostInHundred) / 100);
  });

  test('at most one thing is said', { timeout: 300_000 }, () => {
    const asked = variants.filter(({ offset }) => offset % stride === 0);
    const bad: string[] = [];
    let most = 0;
    for (const { offset, text } of asked) {
      const said = findingsOfWriting(text);
      most = Math.max(most, said.length);
      if (said.length > 1) bad.push(`${around(offset)}: ${said.join('; ')}`);
    }
    rows.push(row(label, asked.length, bad.length, `have more than one finding, ${most} at most`));
    expect(bad.length, bad.join('\n')).toBeLessThanOrEqual((asked.length * mostInHundred) / 100);
  });
});

function findingsOfWriting(text: string): string[] {
  return evaluateDocument(services, parsed(text))
    .findings.filter((finding) => ofWriting.has(finding.code))
    .map((finding) => finding.sentence);
}

function around(offset: number): string {
  return JSON.stringify(`${sideboard.slice(Math.max(0, offset - 20), offset)}|${sideboard.slice(offset, offset + 20)}`);
}

function row(label: string, count: number, bad: number, what: string): string {
  const share = ((100 * bad) / count).toFixed(2).padStart(5);
  return `${label.padEnd(20)} ${String(count).padStart(5)} variants   ${share} % ${what}`;
}
