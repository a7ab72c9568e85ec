/**
 * What is shipped: exactly the files that are meant to be, whole, small, and named as the editors look for them. Reads what
 * `npm run package` has built.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { workerReady } from '@fettle/protocol';
import { listFiles, PackageManager } from '@vscode/vsce';
import { describe, expect, test } from 'vitest';

const repository = join(import.meta.dirname, '../..');
const manifest = JSON.parse(readFileSync(join(repository, 'package.json'), 'utf8'));
const mostBytes = 1_500_000;

const shipped = (await listFiles({ cwd: repository, packageManager: PackageManager.None })).sort();

function read(file: string): string {
  return readFileSync(join(repository, file), 'utf8');
}

/** What a bundle asks its surroundings for; a question put to an object that may not be there (`x.require`) is none. */
function required(file: string): readonly string[] {
  const names = [...read(file).matchAll(/(?<![.\w$])require\(["'`]([^"'`]+)["'`]\)/g)].map((match) => match[1] ?? '');
  return [...new Set(names)].sort();
}

describe('the package', () => {
  test('holds what is meant to be shipped and nothing else', () => {
    expect(shipped).toEqual([
      'CHANGELOG.md',
      'LICENSE',
      'README.md',
      'dist/THIRD-PARTY-NOTICES.txt',
      'dist/cli.cjs',
      'dist/extension-web.js',
      'dist/extension.cjs',
      'dist/preview.css',
      'dist/preview.js',
      'dist/server.js',
      'package.json',
      'packages/extension/media/file-dark.svg',
      'packages/extension/media/file-light.svg',
      'packages/extension/media/icon.png',
      'packages/extension/media/sideboard.png',
      'packages/extension/media/walkthrough/bench.svg',
      'packages/extension/media/walkthrough/findings.svg',
      'packages/extension/media/walkthrough/own-piece.svg',
      'packages/extension/media/walkthrough/picture.svg',
      'packages/extension/media/walkthrough/text.svg',
      'syntaxes/fettle.language-configuration.json',
      'syntaxes/fettle.tmLanguage.json',
    ]);
  });

  test(`is smaller than ${mostBytes / 1_000_000} MB`, () => {
    const file = join(repository, 'out/fettle.vsix');
    expect(existsSync(file), 'run npm run package first').toBe(true);
    expect(statSync(file).size).toBeLessThan(mostBytes);
  });

  test('ships every file its manifest names', () => {
    const { main, browser, icon, contributes } = manifest;
    const [language] = contributes.languages;
    const named = [main, browser, icon, language.configuration, language.icon.light, language.icon.dark];
    for (const grammar of contributes.grammars) named.push(grammar.path);
    for (const { steps } of contributes.walkthroughs) {
      for (const { media } of steps) named.push(media.svg);
    }
    expect(named.map((file: string) => file.replace(/^\.\//, '')).filter((file) => !shipped.includes(file))).toEqual(
      [],
    );
  });

  test("the web's entry is named and loaded as its extension host expects", () => {
    // That host adds `.js` to any other ending, and takes every `.js` of a module package for a module.
    expect(manifest.browser).toMatch(/\.js$/);
    expect(manifest.type).toBeUndefined();
  });

  test.each(['dist/extension.cjs', 'dist/extension-web.js'])('%s knows every command of the manifest', (file) => {
    const bundle = read(file);
    const commands: readonly { readonly command: string }[] = manifest.contributes.commands;
    expect(commands.filter(({ command }) => !bundle.includes(`"${command}"`))).toEqual([]);
  });

  test('what runs in a browser asks for nothing a browser lacks', () => {
    expect(required('dist/extension-web.js')).toEqual(['vscode']);
    expect(required('dist/preview.js')).toEqual([]);
  });

  test('the server starts in a worker that has nothing of Node, and in Node from the same file', async () => {
    const heard: unknown[] = [];
    const world: Record<string, unknown> = { console, setTimeout, clearTimeout, URL, TextEncoder, TextDecoder };
    world['self'] = Object.assign(world, {
      addEventListener: () => {},
      postMessage: (said: unknown) => heard.push(said),
    });
    runInNewContext(read('dist/server.js'), world);
    await expect.poll(() => heard).toEqual([workerReady]);
    expect(required('dist/server.js').filter((name) => !isBuiltin(name))).toEqual([]);
  });

  test('ships no source and no path of the machine it was built on', () => {
    for (const file of shipped.filter((name) => name.startsWith('dist/'))) {
      expect(read(file)).not.toContain('sourceMappingURL');
      expect(read(file)).not.toContain(repository);
    }
  });
});
