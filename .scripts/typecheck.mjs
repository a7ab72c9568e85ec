// @ts-check
/** `npm run typecheck`: each part of the source under the library of the place it runs in. */
import { generateParser } from './generating.mjs';
import { runNode } from './running.mjs';

const projects = ['tsconfig.json', 'packages/preview/tsconfig.json', 'tests/editor/tsconfig.json'];

await generateParser();
const failed = projects.filter((project) => runNode('node_modules/typescript/bin/tsc', ['-p', project]) !== 0);
if (failed.length > 0) process.exitCode = 1;
