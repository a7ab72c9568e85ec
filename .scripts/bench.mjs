// @ts-check
/**
 * `npm run bench`: builds and packages, and prints times and sizes of what was built. `npm run bench -- cutting`: cutting
 * plans against published problems, without building the rest. Nothing is asserted: machines differ, and a slow one is no
 * fault of the product.
 */
import { join } from 'node:path';
import { ensureInstalled } from './installing.mjs';
import { giveUp, heading, repository, runNode } from './running.mjs';

const isCutting = process.argv[2] === 'cutting';
const name = isCutting ? 'cutting' : 'bench';
const bundled = `out/bench/${name}.cjs`;

ensureInstalled();
if (!isCutting && runNode('.scripts/package.mjs') !== 0) giveUp('nothing was measured');
heading('Measuring');
const { build } = await import('esbuild');
await build({
  absWorkingDir: repository,
  entryPoints: [`tests/bench/${name}.ts`],
  outfile: bundled,
  bundle: true,
  platform: 'node',
  target: 'node20',
  // The packer's other file is broken for Node: it calls itself a module and is none.
  ...(isCutting ? { mainFields: ['module', 'main'] } : {}),
  format: 'cjs',
  logLevel: 'warning',
  inject: [join(repository, 'packages/language/object-group-by.mjs')],
});
process.exitCode = runNode(bundled, [repository]);
