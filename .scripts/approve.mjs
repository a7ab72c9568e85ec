// @ts-check
/**
 * `npm run approve`: rewrites the approved files under tests/ from what is computed now. Look at every difference before
 * committing it; approval never replaces measurement.
 */

import { generateParser } from './generating.mjs';
import { ensureInstalled } from './installing.mjs';
import { runNode } from './running.mjs';

ensureInstalled();
await generateParser();
process.exitCode = runNode(
  'node_modules/vitest/vitest.mjs',
  ['run', '--config', 'tests/vitest.config.mts', '--update', ...process.argv.slice(2)],
  { APPROVE: '1' },
);
