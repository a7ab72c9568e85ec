import { expect, test } from 'vitest';
import { readFixture } from '../language/harness/fixture.ts';
import { checkFixes, findingsIn } from './applying-fixes.ts';
import { type DrawerMistake, drawerChest, drawerMistakes } from './drawer-mistakes.ts';

function withMistake({ changes }: Pick<DrawerMistake, 'changes'>): string {
  return changes.reduce((text, [from, to]) => {
    if (text.split(from).length !== 2) throw new Error(`the chest does not say '${from}' once`);
    return text.replace(from, () => to);
  }, drawerChest);
}

async function graveIn(text: string) {
  const found = await findingsIn(readFixture(text));
  return found.filter(({ severity }) => severity !== 'note');
}

test('the chest is free of errors and warnings', async () => {
  expect((await graveIn(drawerChest)).map(({ code, sentence }) => `${code}: ${sentence}`)).toEqual([]);
});

test.each(drawerMistakes)('$slip gives $code, and every way out clears it', async (mistake) => {
  const text = withMistake(mistake);
  const found = await graveIn(text);
  expect(found.map(({ code, start, end, sentence }) => ({ code, words: text.slice(start, end), sentence }))).toEqual([
    { code: mistake.code, words: mistake.words, sentence: expect.stringContaining(mistake.says) },
  ]);
  await checkFixes(readFixture(text), mistake.code);
});
