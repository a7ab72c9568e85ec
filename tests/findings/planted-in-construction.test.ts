import { expect, test } from 'vitest';
import { constructionMistakes } from './construction-mistakes.ts';
import { checkPlanted } from './planting.ts';

/** Mistakes in how a case is built up: each gives its finding at its words, and nothing else. */

test('there are twenty at least, of more than ten kinds', () => {
  expect(constructionMistakes.length).toBeGreaterThanOrEqual(20);
  expect(new Set(constructionMistakes.map(({ code }) => code)).size).toBeGreaterThan(10);
});

test.each(constructionMistakes)('$into: $slip gives $code', checkPlanted);
