import { test } from 'vitest';
import { lidMistakes } from './lid-mistakes.ts';
import { checkPlanted } from './planting.ts';

/** Mistakes with the lid of a chest: each gives its finding at its words, and nothing else. */

test.each(lidMistakes)('$into: $slip gives $code', checkPlanted);
