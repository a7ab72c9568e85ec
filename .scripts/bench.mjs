// @ts-check
/**
 * `npm run bench`: builds and packages, and prints times and sizes of what was built. Nothing is asserted: machines
 * differ, and a slow one is no fault of the product.
 */
import { join } from 'node:path';
import { ensureInstalled } from './installing.mjs';
import { giveUp, heading, repository, runNode } from './running.mjs';

const bundled = 'out/bench/bench.cjs';

ensureInstalled();
if (runNode('.scripts/package.mjs') !== 0) giveUp('nothing was measured');
heading('Measuring');
const { build } = await import('esbuild');
await build({
  absWorkingDir: repository,
  entryPoints: ['tests/bench/bench.ts'],
  outfile: bundled,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  logLevel: 'warning',
  inject: [join(repository, 'packages/language/object-group-by.mjs')],
});
process.exitCode = runNode(bundled, [repository]);
