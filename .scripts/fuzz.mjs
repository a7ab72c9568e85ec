// @ts-check
/**
 * `npm run fuzz`: cuts and splices the examples a million times (or as often as the first argument says) and evaluates
 * each text: none may throw, and nothing may be said about a place outside it.
 */
import { ensureInstalled } from './installing.mjs';
import { giveUp, runNode } from './running.mjs';

const runs = process.argv[2] ?? '1000000';
if (!/^\d+$/.test(runs)) giveUp(`how many texts? '${runs}' is no number`);
ensureInstalled();
process.env['FETTLE_FUZZ_RUNS'] = runs;
process.env['FETTLE_SEED'] ??= 'fresh';
process.exitCode = runNode('node_modules/vitest/vitest.mjs', [
  'run',
  '--config',
  'tests/vitest.config.mts',
  'tests/language/cut-and-splice.test.ts',
]);
