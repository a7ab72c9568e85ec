import { expect, test } from 'vitest';
import { checkPlanted } from './planting.ts';
import { shelfAndVentMistakes } from './shelf-and-vent-mistakes.ts';

/** Mistakes with shelves and vents: each gives its finding at its words, and nothing else. */

test('there are ten at least, each of a kind of its own', () => {
  expect(shelfAndVentMistakes.length).toBeGreaterThanOrEqual(10);
  expect(new Set(shelfAndVentMistakes.map(({ code }) => code)).size).toBe(shelfAndVentMistakes.length);
});

test.each(shelfAndVentMistakes)('$into: $slip gives $code', checkPlanted);
