// @ts-check
/**
 * `npm test`: installs what it needs, builds and packages, then runs every check there is, one after the other. Ends with
 * a line `N passed, N failed`, and with an exit code that is not zero when anything failed.
 */
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureChromium } from '../tests/editor/set-up/browser.mjs';
import { EditorSetUpError, setUpRealEditor } from '../tests/editor/set-up/real-editor.mjs';
import { setUpWebEditor } from '../tests/editor/set-up/web-editor.mjs';
import { ensureInstalled } from './installing.mjs';
import { heading, repository, runNode } from './running.mjs';

/** Where the real editor may be left out: never in continuous integration. */
const inContinuousIntegration = !['', '0', 'false'].includes(process.env['CI'] ?? '');

let passed = 0;
let failed = 0;

/** @param {boolean} good */
function count(good) {
  if (good) passed += 1;
  else failed += 1;
}

/** One check that either holds or does not. @param {string} title @param {string} script @param {readonly string[]} args */
function check(title, script, args = []) {
  heading(title);
  const good = runNode(script, args) === 0;
  count(good);
  if (good) console.log('passed');
  return good;
}

/**
 * A suite, each of whose tests counts.
 * @param {string} title @param {string} config @param {readonly string[]} options
 */
function suite(title, config, options = []) {
  heading(title);
  const report = join('out', 'test-results', `${title.toLowerCase().replaceAll(/[^a-z]+/g, '-')}.json`);
  rmSync(join(repository, report), { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const code = runNode('node_modules/vitest/vitest.mjs', ['run', '--config', config, ...options, ...reporters]);
  const { passedTests, failedTests } = readReport(join(repository, report));
  passed += passedTests;
  // A suite that does not load, or an error outside any test, fails without a failed test.
  failed += code === 0 ? failedTests : Math.max(failedTests, 1);
}

/** @param {string} file */
function readReport(file) {
  try {
    const report = JSON.parse(readFileSync(file, 'utf8'));
    return { passedTests: Number(report.numPassedTests), failedTests: Number(report.numFailedTests) };
  } catch {
    return { passedTests: 0, failedTests: 1 };
  }
}

/**
 * Sets something up that may be impossible on this machine.
 * @param {string} title
 * @param {() => Promise<string> | string} setUp answers what to say when it stands ready
 * @returns {Promise<boolean>} whether it does; in continuous integration it must
 */
async function prepare(title, setUp) {
  heading(title);
  try {
    console.log(await setUp());
    return true;
  } catch (error) {
    if (!(error instanceof EditorSetUpError)) throw error;
    console.log(error.message);
    if (inContinuousIntegration) count(false);
    else leftOut.push(title);
    return false;
  }
}

/** @type {string[]} */
const leftOut = [];

ensureInstalled();
if (check('Building and packaging', '.scripts/package.mjs')) {
  check('Format and lint', 'node_modules/@biomejs/biome/bin/biome', ['check', '--config-path=.biome.json']);
  check('Import directions', 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs', [
    '--config',
    '.dependency-cruiser.cjs',
    'packages',
  ]);
  check('Types', '.scripts/typecheck.mjs');
  const browser = await prepare('The browser', () => `ready: ${ensureChromium(console.log)}`);
  suite('Suites', 'tests/vitest.config.mts', browser ? [] : ['--exclude', 'tests/preview/**']);
  const editor = await prepare('The real editor', async () => `ready: ${await setUpRealEditor(console.log)}`);
  const web = await prepare('The editor for the web', () => `ready: ${setUpWebEditor(console.log)}`);
  if (browser && editor) {
    suite('In the real editor', 'tests/editor/vitest.config.mts', web ? [] : ['--exclude', 'tests/editor/web/**']);
  }
}

heading('Result');
if (leftOut.length > 0) console.log(`tests were left out for want of: ${leftOut.join(', ')} (see above how to get it)`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
