import { test } from 'vitest';
import { insideMistakes } from './inside-mistakes.ts';
import { checkPlanted } from './planting.ts';

/** Mistakes with drawers behind doors: each gives its finding at its words, and nothing else. */

test.each(insideMistakes)('$into: $slip gives $code', checkPlanted);
