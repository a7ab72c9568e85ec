import { catalogue } from '@fettle/findings';
import { afterAll, expect, test } from 'vitest';
import { checkFixes } from './applying-fixes.ts';
import { helpBlocks, withSmallShop } from './help-blocks.ts';
import { mistakes, withMistake } from './mistakes.ts';
import { inBetterShops } from './more-slips.ts';

/** Whatever the light bulb offers clears the finding it stands beside, and adds none. */

const taken = new Set<string>();

test.each([...catalogue.keys()])('every way out of the help example of %s', async (code) => {
  const entry = catalogue.get(code);
  if (entry === undefined) throw new Error(code);
  for (const block of helpBlocks(entry).filter((each) => each.kind === 'wrong')) {
    for (const how of await checkFixes(withSmallShop(block.source), code)) taken.add(`${code} ${how}`);
  }
});

test.each(mistakes)('every way out of: $slip', async (mistake) => {
  for (const how of await checkFixes(withMistake(mistake), mistake.code)) taken.add(`${mistake.code} ${how}`);
});

test.each(inBetterShops)('every way out of $code where the shop has something better', async ({ code, source }) => {
  for (const how of await checkFixes(withSmallShop(source), code)) taken.add(`${code} ${how}`);
});

afterAll(() => {
  const named = [...catalogue.values()].flatMap((entry) =>
    Object.keys(entry.mends).map((how) => `${entry.code} ${how}`),
  );
  expect([...taken].sort(), 'every way out that the catalogue names was taken').toEqual(named.sort());
});
