import { catalogue } from '@fettle/findings';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import { openFixture } from '../language/harness/workbench.ts';
import { type HelpBlock, helpBlocks, withSmallShop } from './help-blocks.ts';

/**
 * Every example on every help page is run: what is called wrong has its finding and no other, what is right has none.
 * Notes about other things are no part of the lesson: any piece with drawers is told to stand against a wall.
 */

async function findingsOf(block: HelpBlock) {
  const workbench = await openFixture(withSmallShop(block.source));
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('a help block holds no file');
  return evaluateDocument(workbench.services, document).findings;
}

describe.each([...catalogue.values()].map((entry) => [entry.code, entry] as const))('%s', (code, entry) => {
  const blocks = helpBlocks(entry);

  test('has an example that is wrong and one that is right', () => {
    expect(blocks.map((block) => block.kind)).toEqual(expect.arrayContaining(['wrong', 'right']));
  });

  test.each(blocks.filter((block) => block.kind === 'wrong'))('wrong: $source', async (block) => {
    const found = await findingsOf(block);
    const told = found.filter((each) => each.severity !== 'note' || each.code === code);
    expect(told.map((each) => `${each.code}: ${each.sentence}`)).toEqual([
      expect.stringMatching(new RegExp(`^${code}: `)),
    ]);
  });

  test.each(blocks.filter((block) => block.kind === 'right'))('right: $source', async (block) => {
    const found = (await findingsOf(block)).filter((each) => each.severity !== 'note' || each.code === code);
    expect(found.map((each) => `${each.code}: ${each.sentence}`)).toEqual([]);
  });
});
