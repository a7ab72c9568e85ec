// @ts-check
/**
 * `npm run reference`: writes packages/language/REFERENCE.md and packages/findings/FINDINGS.md anew, from the vocabulary
 * and from the catalogue of findings. The tests say when it is time to run it.
 */

import { generateParser } from './generating.mjs';
import { ensureInstalled } from './installing.mjs';
import { runNode } from './running.mjs';

ensureInstalled();
await generateParser();
process.exitCode = runNode('node_modules/vitest/vitest.mjs', [
  'run',
  '--config',
  'tests/vitest.config.mts',
  'tests/reference',
  '--update',
]);
