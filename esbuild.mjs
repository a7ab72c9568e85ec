// @ts-check
/**
 * Bundles the product into dist/: the language server for Node and for a web worker, the extension for both kinds of
 * editor, the preview's page and its styles, and the command line. The parser is generated from the grammar first.
 *
 *   node esbuild.mjs            builds everything
 *   node esbuild.mjs --watch    builds again whenever a source changes
 */
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as esbuild from 'esbuild';
import { generateParser } from './.scripts/generating.mjs';
import { thirdPartyNotices } from './.scripts/third-party-notices.mjs';

const repository = dirname(fileURLToPath(import.meta.url));
const objectGroupBy = join(repository, 'packages/language/object-group-by.mjs');

/** @type {import('esbuild').BuildOptions} */
const common = {
  absWorkingDir: repository,
  bundle: true,
  minify: true,
  legalComments: 'none',
  sourcesContent: false,
  logLevel: 'warning',
  define: { 'process.env.NODE_ENV': '"production"' },
};

/** @type {import('esbuild').BuildOptions} */
const forNode = { ...common, platform: 'node', target: 'node20', format: 'cjs' };
/** @type {import('esbuild').BuildOptions} */
const forBrowser = {
  ...common,
  platform: 'browser',
  target: 'es2022',
  define: { ...common.define, global: 'globalThis' },
};

/** @type {readonly (import('esbuild').BuildOptions & { entryPoints: [string], outfile: string })[]} */
const bundles = [
  {
    ...forNode,
    entryPoints: ['packages/server/src/main-node.ts'],
    outfile: 'dist/server.cjs',
    inject: [objectGroupBy],
  },
  {
    ...forBrowser,
    format: 'iife',
    entryPoints: ['packages/server/src/main-worker.ts'],
    outfile: 'dist/server-worker.js',
    inject: [objectGroupBy],
  },
  {
    ...forNode,
    entryPoints: ['packages/extension/src/activate-node.ts'],
    outfile: 'dist/extension.cjs',
    external: ['vscode'],
  },
  {
    ...forBrowser,
    format: 'cjs',
    entryPoints: ['packages/extension/src/activate-web.ts'],
    // The web's extension host puts `.js` behind whatever name its entry has.
    outfile: 'dist/extension-web.js',
    external: ['vscode'],
  },
  { ...forBrowser, format: 'iife', entryPoints: ['packages/preview/src/page.ts'], outfile: 'dist/preview.js' },
  { ...common, entryPoints: ['packages/preview/src/styles.css'], outfile: 'dist/preview.css' },
  {
    ...forNode,
    entryPoints: ['packages/cli/src/main.ts'],
    outfile: 'dist/cli.cjs',
    banner: { js: '#!/usr/bin/env node' },
    inject: [objectGroupBy],
  },
];

async function build() {
  const missing = bundles
    .flatMap((bundle) => bundle.entryPoints)
    .filter((entry) => !existsSync(join(repository, entry)));
  if (missing.length > 0) throw new Error(`nothing to bundle: missing ${missing.join(', ')}`);
  await generateParser();
  rmSync(join(repository, 'dist'), { recursive: true, force: true });
  mkdirSync(join(repository, 'dist'));
  if (process.argv.includes('--watch')) {
    const contexts = await Promise.all(bundles.map((bundle) => esbuild.context({ ...bundle, logLevel: 'info' })));
    await Promise.all(contexts.map((context) => context.watch()));
    return;
  }
  // esbuild prints its own errors with place and cause; what is left to say here is that the build failed.
  const results = await Promise.all(bundles.map((bundle) => esbuild.build({ ...bundle, metafile: true })));
  const inputs = results.flatMap((result) => Object.keys(result.metafile.inputs));
  writeFileSync(join(repository, 'dist/THIRD-PARTY-NOTICES.txt'), thirdPartyNotices(inputs));
}

try {
  await build();
} catch (error) {
  console.error(`build failed: ${error instanceof Error ? error.message.split('\n')[0] : error}`);
  process.exitCode = 1;
}
