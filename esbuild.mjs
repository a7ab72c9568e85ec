// @ts-check
/**
 * Bundles the product into dist/: the language server with the command line, the extension for both kinds of editor, and
 * the preview's page with its styles. The parser is generated from the grammar first.
 *
 *   node esbuild.mjs            builds everything
 *   node esbuild.mjs --watch    builds again whenever a source changes
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
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

/**
 * The server of either kind of editor and the command line are nearly the same code, so they are one bundle: loaded by a
 * browser's worker it is the server there; run by Node on its own it is the server as a process, required by dist/cli.cjs
 * it is the command line, and in a thread of the server it searches for cutting plans. Only what is asked for is loaded,
 * so nothing of Node is ever asked for in a browser. It ends in `.js`, or browsers would not take it for a script.
 */
const serverOrCommandLine = `
if (typeof module === 'undefined' || typeof require === 'undefined') import('./packages/server/src/main-worker.ts');
else {
  const { isMainThread, workerData } = require('node:worker_threads');
  if (!isMainThread && workerData?.fettle === 'plans') import('./packages/server/src/main-plans-node.ts');
  else if (require.main === module) import('./packages/server/src/main-node.ts');
  else import('./packages/cli/src/main.ts');
}
`;
const commandLine = `#!/usr/bin/env node
'use strict';
require('./server.js');
`;

/** @type {readonly (import('esbuild').BuildOptions & { outfile: string })[]} */
const bundles = [
  {
    ...forNode,
    define: { ...forNode.define, global: 'globalThis' },
    stdin: { contents: serverOrCommandLine, resolveDir: repository, sourcefile: 'server-or-command-line.cjs' },
    outfile: 'dist/server.js',
    // The protocol's library tells apart what it has for browsers and for Node by these; both are here.
    conditions: ['node', 'browser', 'module'],
    mainFields: ['module', 'main'],
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
];

async function build() {
  await generateParser();
  rmSync(join(repository, 'dist'), { recursive: true, force: true });
  mkdirSync(join(repository, 'dist'));
  writeFileSync(join(repository, 'dist/cli.cjs'), commandLine);
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
