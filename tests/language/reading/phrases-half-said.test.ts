import { expect, test } from 'vitest';
import { check } from '../harness/check.ts';
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

/** A piece in which something is said by halves. */
const box = (inCase: string, inFace: string) => `piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   ${inCase} }
  face inset, gap 1/8 { ${inFace} }
}`;

test.each([
  ['a value before its word', box('feet 4 high, <|>1-3/4 thick', ''), ["Write 'thick 1-3/4'"]],
  ['another direction', box('feet 4 high, thick 1-3/4 { rails <|>3 high }', ''), ["Write '3 wide'"]],
  ['one word of two', box('', 'door "a" rest, <|>left'), ["Write 'hinged left'"]],
  ['a word of the trade', box('', 'open "a" rest   divider <|>frame   open "b" rest'), ["Write 'web-frame'"]],
])('%s', async (_, spoilt, titles) => {
  const found = (await titlesAtCaret(spoilt)).map((title) => title.replace(/^\* /, ''));
  expect(found.slice(0, titles.length)).toEqual(titles);
  expect(found[titles.length]).toMatch(/^Take out/);
});

test('what goes on with a value that nobody knows is told, and nothing is written for it', async () => {
  await check(`
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, in rabbet }
//                                                                           ^^^^^^^^^ error unknown-word: 'in rabbet' means nothing in 'back'; did you mean 'in rabbet … deep'?
}
`);
});
