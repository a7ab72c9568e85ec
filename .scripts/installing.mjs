// @ts-check
/**
 * Makes `npm start` and `npm test` work on a fresh clone: checks this Node's age and installs the dependencies when they
 * are not the ones the lock file names. Nothing is fetched when they already are.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { giveUp, heading, repository } from './running.mjs';

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean, link?: boolean }} Locked */

/** @param {string} file @returns {Record<string, Locked>} */
function lockedPackages(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages ?? {};
}

/**
 * npm keeps its own copy of the lock beside what it installed. Compared by content: dates change with every checkout.
 * @returns {string | undefined} why the dependencies must be installed
 */
function whyInstall() {
  const installedLock = join(repository, 'node_modules/.package-lock.json');
  if (!existsSync(installedLock)) return 'no dependencies yet';
  const wanted = lockedPackages(join(repository, 'package-lock.json'));
  const installed = lockedPackages(installedLock);
  for (const [path, entry] of Object.entries(wanted)) {
    if (!path.startsWith('node_modules/')) continue;
    const present = installed[path];
    if (present === undefined) {
      // Optional ones are left out where they are for another system.
      if (entry.optional === true || entry.devOptional === true) continue;
      return `${path} is not installed`;
    }
    if (present.version !== entry.version || present.integrity !== entry.integrity) return `${path} has changed`;
  }
  return undefined;
}

/** Ends the process with one line when this Node is too old or npm fails. */
export function ensureInstalled() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 10))
    giveUp(`Fettle needs Node 20.10 or newer; this is ${process.versions.node}`);
  const reason = whyInstall();
  if (reason === undefined) return;
  heading(`Installing dependencies (${reason})`);
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  // No package here needs its install script; the warnings left out are about a newer Node that one of them would like.
  const options = ['--ignore-scripts', '--loglevel=error', '--no-audit', '--no-fund'];
  const { status } = spawnSync(npm, ['ci', ...options], {
    cwd: repository,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) giveUp('npm ci failed: is the npm registry reachable?');
}
