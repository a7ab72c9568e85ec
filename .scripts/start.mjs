// @ts-check
/**
 * `npm start`: on a fresh clone with nothing but Node, installs, builds, checks the sideboard and draws it, and says
 * where to look.
 */
import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled } from './installing.mjs';
import { giveUp, heading, repository, runNode } from './running.mjs';

const example = 'examples/sideboard.fettle';
const outFolder = 'out/sideboard';

ensureInstalled();

heading('Building');
if (runNode('esbuild.mjs') !== 0) giveUp('nothing was drawn: the build failed');
if (!existsSync(join(repository, example))) giveUp(`nothing was drawn: ${example} is not there`);

heading(`Checking ${example}`);
const checked = runNode('dist/cli.cjs', ['check', example]);
if (checked > 1) giveUp(`${example} could not be checked`);

heading(`Drawing it into ${outFolder}/`);
rmSync(join(repository, outFolder), { recursive: true, force: true });
mkdirSync(join(repository, 'out'), { recursive: true });
const made = runNode('dist/cli.cjs', ['make', example, '--out', outFolder]);
const files = existsSync(join(repository, outFolder)) ? readdirSync(join(repository, outFolder)).sort() : [];
if (made > 1 || files.length === 0) giveUp(`${example} could not be drawn`);

heading('Where things are');
for (const file of files) console.log(`  ${outFolder}/${file}   ${whatItIs(file)}`);
console.log('\nTo see it live, the picture following every key:   npm run editor');
console.log('To have it in your own editor:                      npm run package, then install out/fettle.vsix');
process.exitCode = Math.max(checked, made);

/** @param {string} file */
function whatItIs(file) {
  if (file.endsWith('.svg')) return 'a picture: open it in a browser';
  if (file.endsWith('.csv')) return 'a table: open it in a spreadsheet';
  return 'every size, exact and as shown, for programs';
}
