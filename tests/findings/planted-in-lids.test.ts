import { test } from 'vitest';
import { checkFixes } from './applying-fixes.ts';
import { lidMistakes } from './lid-mistakes.ts';
import { withMistake } from './mistakes.ts';
import { checkPlanted } from './planting.ts';

/** Mistakes with the lid of a chest: each gives its finding at its words, and nothing else. */

test.each(lidMistakes)('$into: $slip gives $code', checkPlanted);

test.each(lidMistakes)('every way out of: $slip', async (mistake) => {
  await checkFixes(withMistake(mistake), mistake.code);
});
