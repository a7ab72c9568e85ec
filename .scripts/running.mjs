// @ts-check
/**
 * What every script of this folder shares: where the repository is, a heading, and running a program with its output
 * shown. Plain Node without dependencies, because these scripts are what installs the dependencies.
 */
import { spawnSync } from 'node:child_process';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export const repository = resolve(dirname(fileURLToPath(import.meta.url)), '..');

/** @param {string} title */
export function heading(title) {
  console.log(`\n== ${title}`);
}

/**
 * Runs this Node with a script, its output going where ours goes.
 * @param {string} script relative to the repository
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string>>} environment added to our own
 * @returns {number} its exit code; 1 when it was ended by a signal
 */
export function runNode(script, args = [], environment = {}) {
  const { status } = spawnSync(process.execPath, [join(repository, script), ...args], {
    cwd: repository,
    stdio: 'inherit',
    env: { ...process.env, ...environment },
  });
  return status ?? 1;
}

/** Ends this process at once with a plain line. @param {string} line @returns {never} */
export function giveUp(line) {
  console.error(line);
  process.exit(1);
}
