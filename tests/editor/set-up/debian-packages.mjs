// @ts-check
/**
 * What the real editor needs from the operating system: a Chromium, ripgrep, the Kerberos headers one native module is
 * built against, and a compiler. Each is looked for first; what is missing is installed where that is possible (root on
 * a Debian-like system) and otherwise named in one line with the command that would install it.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The set-up cannot go on; the message is one line that says what is missing and what to do. */
export class EditorSetUpError extends Error {}

/**
 * @typedef {{ what: string, debianPackage: string, find: () => string | undefined }} Need
 */

/** @param {string} name @returns {string | undefined} the first executable of that name on the path */
export function onThePath(name) {
  for (const folder of (process.env['PATH'] ?? '').split(delimiter)) {
    const candidate = join(folder, name);
    try {
      accessSync(candidate, constants.X_OK);
      return candidate;
    } catch {
      // Not here: the next folder.
    }
  }
  return undefined;
}

/**
 * The Chromium to drive: the environment variable CHROMIUM wins, then the usual names on the path.
 * @returns {string | undefined}
 */
export function findChromium() {
  const chosen = process.env['CHROMIUM'];
  if (chosen !== undefined && chosen !== '') {
    if (!existsSync(chosen)) throw new EditorSetUpError(`CHROMIUM names ${chosen}, which is not there`);
    return chosen;
  }
  for (const name of ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']) {
    const found = onThePath(name);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Where C headers usually live; enough to tell whether the development package is there. */
function findKerberosHeaders() {
  const folders = ['/usr/include', '/usr/local/include', '/opt/homebrew/include', '/usr/include/mit-krb5'];
  return folders.map((folder) => join(folder, 'gssapi', 'gssapi.h')).find((file) => existsSync(file));
}

/** @type {Need} */
const browser = { what: 'Chromium', debianPackage: 'chromium', find: findChromium };

/** @type {readonly Need[]} what it takes to build and run the editor's server */
const forTheServer = [
  { what: 'ripgrep', debianPackage: 'ripgrep', find: () => onThePath('rg') },
  { what: 'the Kerberos headers', debianPackage: 'libkrb5-dev', find: findKerberosHeaders },
  { what: 'Python 3', debianPackage: 'python3', find: () => onThePath('python3') },
  { what: 'make', debianPackage: 'make', find: () => onThePath('make') },
  { what: 'a C++ compiler', debianPackage: 'g++', find: () => onThePath('g++') ?? onThePath('clang++') },
];

/**
 * Makes sure of everything the editor's server is built from, installing what is missing where that is possible.
 * @param {(line: string) => void} say
 * @returns {string} ripgrep
 * @throws {EditorSetUpError} when something is missing and cannot be installed from here
 */
export function ensureBuildPrograms(say) {
  ensure(forTheServer, say);
  return String(onThePath('rg'));
}

/**
 * Makes sure of a browser to drive.
 * @param {(line: string) => void} say
 * @returns {string} the Chromium
 * @throws {EditorSetUpError} when there is none and none can be installed from here
 */
export function ensureChromium(say) {
  ensure([browser], say);
  return String(findChromium());
}

/** @param {readonly Need[]} needs @param {(line: string) => void} say */
function ensure(needs, say) {
  const missing = needs.filter((need) => need.find() === undefined);
  if (missing.length > 0) install(missing, say);
  const still = needs.filter((need) => need.find() === undefined);
  if (still.length > 0) throw new EditorSetUpError(howToInstall(still));
}

/** @param {readonly Need[]} missing */
function howToInstall(missing) {
  const names = missing.map((need) => need.what).join(', ');
  const packages = missing.map((need) => need.debianPackage).join(' ');
  const elsewhere = missing.includes(browser) ? '; or set CHROMIUM to the path of a Chromium or Chrome' : '';
  return `the real editor needs ${names}. On Debian: apt-get install ${packages}${elsewhere}`;
}

/** @param {readonly Need[]} missing @param {(line: string) => void} say */
function install(missing, say) {
  const mayInstall = process.getuid?.() === 0 && onThePath('apt-get') !== undefined;
  if (!mayInstall) throw new EditorSetUpError(howToInstall(missing));
  const packages = missing.map((need) => need.debianPackage);
  say(`installing with apt-get: ${packages.join(' ')}`);
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  // A stale or empty package index is the usual state of a fresh machine; a failed refresh may still leave a usable one.
  spawnSync('apt-get', ['update', '-q'], { stdio: 'ignore', env: environment });
  try {
    execFileSync('apt-get', ['install', '-y', '-q', '--no-install-recommends', ...packages], {
      stdio: ['ignore', 'ignore', 'pipe'],
      env: environment,
    });
  } catch (error) {
    const stderr = error instanceof Error && 'stderr' in error ? String(error.stderr) : String(error);
    const lastLine = stderr.trim().split('\n').at(-1) ?? '';
    throw new EditorSetUpError(`apt-get could not install ${packages.join(' ')}: ${lastLine}`);
  }
}
