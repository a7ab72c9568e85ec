import { expect, test } from 'vitest';
import { buyingMistakes } from './buying-mistakes.ts';
import { checkPlanted } from './planting.ts';

/** Mistakes about stock, prices, offcuts and machines: each gives its finding at its words, and nothing else. */

test('there are twenty-five at least, of ten kinds or more', () => {
  expect(buyingMistakes.length).toBeGreaterThanOrEqual(25);
  expect(new Set(buyingMistakes.map(({ code }) => code)).size).toBeGreaterThanOrEqual(10);
});

test.each(buyingMistakes)('$into: $slip gives $code', checkPlanted);
