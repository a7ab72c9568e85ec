// @ts-check
/**
 * Generates the parser from the grammar into packages/language/src/generated, which git ignores. Skipped while what
 * stands there is newer than the grammar, so that a build costs nothing for it.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { repository } from './running.mjs';

const language = join(repository, 'packages/language');
const generated = join(language, 'src/generated');
const sources = ['src/fettle.langium', 'langium-config.json'].map((file) => join(language, file));
const madeFiles = ['ast.ts', 'grammar.ts', 'module.ts'].map((file) => join(generated, file));

/** @throws {Error} when a source is missing or the grammar is wrong; the generator has then printed where */
export async function generateParser() {
  for (const source of sources) if (!existsSync(source)) throw new Error(`nothing to generate from: missing ${source}`);
  if (isUpToDate()) return;
  // The stand-in is loaded before the generator, which calls `Object.groupBy` on Node 20 whatever its mode.
  const standIn = pathToFileURL(join(language, 'object-group-by.mjs')).href;
  const generator = join(repository, 'node_modules/langium-cli/bin/langium.js');
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', standIn, generator, 'generate', '--mode=production'],
    { cwd: language, encoding: 'utf8' },
  );
  if (status !== 0) {
    console.error(`${stdout}${stderr}`.trim());
    throw new Error('the parser could not be generated from the grammar');
  }
}

function isUpToDate() {
  if (!madeFiles.every((file) => existsSync(file))) return false;
  const newestSource = Math.max(...sources.map((file) => statSync(file).mtimeMs));
  const oldestMade = Math.min(...readdirSync(generated).map((name) => statSync(join(generated, name)).mtimeMs));
  return newestSource < oldestMade;
}
