import { catalogue } from '@fettle/findings';
import { evaluateDocument, verdictWords } from '@fettle/language';
import { expect, test } from 'vitest';
import { helpBlocks, withSmallShop } from '../findings/help-blocks.ts';
import { openFixture } from '../language/harness/workbench.ts';

/** What the status bar says of a text: short, and with the number that matters. */

const grave = [...catalogue.values()].filter(({ severity }) => severity !== 'note');

const wrong = grave.flatMap((entry) => helpBlocks(entry).filter(({ kind }) => kind === 'wrong'));

test.each(wrong)('$code has a gist that fits a status bar: $source', async ({ code, source }) => {
  const workbench = await openFixture(withSmallShop(source));
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('a help block holds no file');
  const told = evaluateDocument(workbench.services, document).findings.find((each) => each.code === code);
  if (told === undefined) throw new Error(`${code} is not found in its own example`);
  // Some codes are notes in some circumstances; those leave the verdict alone.
  const expected = told.severity === 'note' ? 'fits, 1 note' : `1 finding: ${told.brief}`;
  expect(verdictWords(true, [told])).toBe(expected);
  expect(told.severity === 'note' || told.brief.length <= 60, told.brief).toBe(true);
  // Where the sentence ends in what is too much or too little, the gist has that number.
  const difference = /: ([\d/ "-]+) (too \w+|left over|apart)$/.exec(told.sentence)?.[1];
  if (difference !== undefined) expect(told.brief).toContain(difference);
});

test('the numbers are those of the text', async () => {
  const text = (last: string) => `piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 9 high
    drawer "blankets" ${last}
    fronts thick 3/4
  }
}`;
  const verdict = async (last: string) => {
    const workbench = await openFixture({ files: [{ name: 'piece.fettle', text: text(last) }] });
    return verdictWords(true, evaluateDocument(workbench.services, workbench.document('piece.fettle')).findings);
  };
  // 30 less 3/4 leaves 29-1/4; three gaps take 3/8, the first front 9: 19-7/8.
  expect(await verdict('rest')).toMatch(/^fits/);
  expect(await verdict('front 20-1/16 high')).toBe('1 finding: 3/16" too much');
  expect(await verdict('front 19 high')).toBe('1 finding: 7/8" left over');
});

test('errors come before warnings, notes do not count, and words of any length are cut', () => {
  const told = (severity: 'error' | 'warning' | 'note', brief: string) => ({ severity, brief });
  expect(verdictWords(true, [])).toBe('fits');
  expect(verdictWords(false, [])).toBe('cannot be read yet');
  expect(verdictWords(true, [told('note', 'a')])).toBe('fits, 1 note');
  expect(verdictWords(true, [told('warning', 'a'), told('error', 'b'), told('note', 'c')])).toBe('2 findings: b');
  expect(verdictWords(true, [told('error', 'word '.repeat(40))])).toBe(`1 finding: ${'word '.repeat(12).trim()}…`);
});
