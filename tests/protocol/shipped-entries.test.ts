import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { startServer } from './server-bundles.ts';

/** The manifest names the bundles as each kind of editor will look for them. */

const repository = join(import.meta.dirname, '../..');
const manifest = JSON.parse(readFileSync(join(repository, 'package.json'), 'utf8'));

test('both entries of the extension are there', () => {
  for (const entry of [manifest.main, manifest.browser]) expect(existsSync(join(repository, entry)), entry).toBe(true);
});

test("the browser's entry ends in .js, which the web's extension host would otherwise put behind it", () => {
  expect(manifest.browser).toMatch(/\.js$/);
});

test('every command of the manifest is registered by both entries', () => {
  for (const entry of [manifest.main, manifest.browser]) {
    const bundle = readFileSync(join(repository, entry), 'utf8');
    for (const { command } of manifest.contributes.commands) expect(bundle, entry).toContain(`"${command}"`);
  }
});

// The server's bundle is also that of Node; whatever runs it as a worker in these tests gives it nothing of Node.
test('a worker of these tests has what a browser has, and nothing of Node', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-worker-'));
  const names = ['process', 'require', 'Buffer', 'global', 'module', 'setImmediate', 'setTimeout', 'self'];
  writeFileSync(join(folder, 'server.js'), `postMessage([${names.map((name) => `typeof ${name}`)}])`);
  const first = await startServer('worker', folder).then(
    () => 'a server',
    (error: Error) => error.message,
  );
  rmSync(folder, { recursive: true });
  const none = Array.from({ length: 6 }, () => 'undefined');
  expect(first).toBe(`the worker began with ${JSON.stringify([...none, 'function', 'object'])}`);
});

test('the browser bundle of the extension and the page reach for nothing of Node', () => {
  for (const bundle of ['extension-web.js', 'preview.js']) {
    const text = readFileSync(join(repository, 'dist', bundle), 'utf8');
    expect(text, bundle).not.toMatch(/require\(["']node:|from ["']node:/);
  }
});
