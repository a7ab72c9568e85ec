import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

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
test('the browser bundle of the extension and the page reach for nothing of Node', () => {
  for (const bundle of ['extension-web.js', 'preview.js']) {
    const text = readFileSync(join(repository, 'dist', bundle), 'utf8');
    expect(text, bundle).not.toMatch(/require\(["']node:|from ["']node:/);
  }
});
