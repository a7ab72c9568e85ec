// @ts-check
/**
 * Starts the real editor's server on a free loopback port with data of its own, an extension package installed, and stops
 * all of it again by process id. Shared by the tests and by `npm run editor`.
 */
import { execFile, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { EditorSetUpError } from './real-editor.mjs';

/**
 * @typedef {object} RunningEditor
 * @property {(folder: string) => string} addressOf where a browser finds the editor with that folder open
 * @property {(tell: () => void) => void} onEnd tells when the server ends by itself
 * @property {() => void} stop idempotent; ends the server and what it started
 * @property {() => string} log what the server has printed so far
 */

/**
 * @typedef {object} WantedEditor
 * @property {string} serverMain the server's entry
 * @property {string} stateFolder its own data and extensions go here
 * @property {string} [extensionPackage] a .vsix to install
 * @property {Readonly<Record<string, unknown>>} [settings] beside the steady ones
 */

const startLimitMs = 60_000;

/** Quiet, steady and private: no start page, no telemetry, no update checks, nothing fetched, nothing that moves. */
const steadySettings = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.enableExperiments': false,
  'workbench.reduceMotion': 'on',
  'workbench.welcomePage.walkthroughs.openOnInstall': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'chat.commandCenter.enabled': false,
  'git.enabled': false,
  'files.autoSave': 'off',
  'editor.minimap.enabled': false,
  'editor.cursorBlinking': 'solid',
  'editor.smoothScrolling': false,
};

/**
 * @param {WantedEditor} wanted
 * @returns {Promise<RunningEditor>}
 * @throws {EditorSetUpError} when the package does not install or the server does not come up
 */
export async function startEditor({ serverMain, stateFolder, extensionPackage, settings = {} }) {
  const data = join(stateFolder, 'data');
  const extensions = join(stateFolder, 'extensions');
  const machineSettings = join(data, 'data', 'Machine');
  for (const folder of [machineSettings, extensions]) mkdirSync(folder, { recursive: true });
  writeFileSync(join(machineSettings, 'settings.json'), JSON.stringify({ ...steadySettings, ...settings }, null, 2));

  const own = [
    '--server-data-dir',
    data,
    '--extensions-dir',
    extensions,
    '--accept-server-license-terms',
    '--telemetry-level',
    'off',
  ];
  if (extensionPackage !== undefined) await installExtension(serverMain, own, extensionPackage);

  const token = randomBytes(16).toString('hex');
  const listen = ['--host', '127.0.0.1', '--port', '0', '--connection-token', token];
  // A process group of its own, so that its extension hosts and terminals end with it.
  const server = spawn(process.execPath, [serverMain, ...own, ...listen], {
    detached: true,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: environmentForEditor(),
  });
  let printed = '';
  const collect = (/** @type {Buffer} */ chunk) => {
    printed += chunk;
  };
  server.stdout.on('data', collect);
  server.stderr.on('data', collect);

  const stop = () => {
    process.off('exit', stop);
    if (server.pid === undefined || server.exitCode !== null) return;
    try {
      process.kill(-server.pid, 'SIGKILL');
    } catch {
      // Already gone.
    }
  };
  process.on('exit', stop);

  try {
    const port = await portOf(server, () => printed);
    return {
      addressOf: (folder) => `http://127.0.0.1:${port}/?tkn=${token}&folder=${encodeURIComponent(folder)}`,
      onEnd: (tell) => {
        server.on('exit', tell);
      },
      stop,
      log: () => printed,
    };
  } catch (error) {
    stop();
    throw error;
  }
}

/**
 * Unpacks an extension as the editor itself does, without running anything of it.
 * @param {{ serverMain: string, stateFolder: string, extensionPackage: string }} wanted
 * @returns {Promise<string>} the folder that holds its package.json
 * @throws {EditorSetUpError} when the editor refuses the package
 */
export async function unpackExtension({ serverMain, stateFolder, extensionPackage }) {
  const extensions = join(stateFolder, 'unpacked');
  const own = ['--server-data-dir', join(stateFolder, 'unpacking'), '--extensions-dir', extensions];
  await installExtension(serverMain, [...own, '--accept-server-license-terms'], extensionPackage);
  const folder = readdirSync(extensions).find((name) => existsSync(join(extensions, name, 'package.json')));
  if (folder === undefined) throw new EditorSetUpError(`the editor unpacked nothing from ${extensionPackage}`);
  return join(extensions, folder);
}

/** @param {string} serverMain @param {readonly string[]} own @param {string} extensionPackage */
async function installExtension(serverMain, own, extensionPackage) {
  try {
    await promisify(execFile)(
      process.execPath,
      [serverMain, ...own, '--install-extension', extensionPackage, '--force'],
      {
        env: environmentForEditor(),
      },
    );
  } catch (error) {
    throw new EditorSetUpError(
      `the editor refused ${extensionPackage}: ${error instanceof Error ? error.message : error}`,
    );
  }
}

/**
 * The port the server chose, read from its own first lines.
 * @param {import('node:child_process').ChildProcess} server @param {() => string} printed
 * @returns {Promise<number>}
 */
function portOf(server, printed) {
  return new Promise((settle, fail) => {
    const giveUp = (/** @type {string} */ why) => {
      clearTimeout(limit);
      fail(new EditorSetUpError(`the editor's server ${why}: ${printed().trim().split('\n').at(-1) ?? ''}`));
    };
    const limit = setTimeout(() => giveUp('did not start in time'), startLimitMs);
    server.on('exit', (code) => giveUp(`ended with ${code}`));
    server.stdout?.on('data', () => {
      const found = /Extension host agent listening on (\d+)/.exec(printed());
      if (found === null) return;
      clearTimeout(limit);
      settle(Number(found[1]));
    });
  });
}

/** An editor started from within another editor's terminal must not talk to that one, nor any to an extension gallery. */
function environmentForEditor() {
  const kept = Object.entries(process.env).filter(([name]) => !/^(VSCODE_|ELECTRON_|NODE_OPTIONS$|VITEST)/.test(name));
  return { ...Object.fromEntries(kept), EXTENSIONS_GALLERY: '{"serviceUrl":""}' };
}
