import { expect, test } from 'vitest';
import { titlesAtCaret } from '../harness/check-fix.ts';
import { example } from '../sideboard.ts';

/** Words that are nearly a phrase: the phrase comes first, before the offer to take them out. */

const chest = `${example('shop.fettle').text}\n${example('blanket-chest.fettle').text.replace('use "shop.fettle"', '')}`;
const offers = (from: string, to: string) => titlesAtCaret(chest.replace(from, () => to));

test.each([
  ['7/8 from wall', '<|>7/8 from the wall', ["Write '7/8 from wall'"]],
  [
    'carries 125 inch-pounds',
    '<|>carries 125',
    ["Write 'carries 125 inch-pounds'", "Write 'carries 125 newton-metres'"],
  ],
  ['costs 6 each', 'costs 6 each, <|>opens 110', ["Write 'opens 110 degrees'"]],
])('%s as %s', async (from, to, titles) => {
  const found = (await offers(from, to)).map((title) => title.replace(/^\* /, ''));
  expect(found.slice(0, titles.length)).toEqual(titles);
  expect(found[titles.length]).toMatch(/^Take out/);
});
