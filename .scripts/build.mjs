// @ts-check
/** `npm run build`: everything into dist/. */
import { ensureInstalled } from './installing.mjs';
import { runNode } from './running.mjs';

ensureInstalled();
process.exitCode = runNode('esbuild.mjs', process.argv.slice(2));
