// @ts-check
/** `npm run package`: builds, and packs what .vscodeignore admits into out/fettle.vsix, ready to be installed. */
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled } from './installing.mjs';
import { giveUp, heading, repository, runNode } from './running.mjs';

const extensionPackage = 'out/fettle.vsix';

ensureInstalled();
heading('Building');
if (runNode('esbuild.mjs') !== 0) giveUp('not packaged');
heading('Packaging');
mkdirSync(join(repository, 'out'), { recursive: true });
const packed = runNode(
  'node_modules/@vscode/vsce/vsce',
  [
    'package',
    '--no-dependencies',
    '--allow-missing-repository',
    '--no-rewrite-relative-links',
    '--out',
    extensionPackage,
  ],
  // A fixed date inside, so that the same source gives the same bytes.
  { SOURCE_DATE_EPOCH: process.env['SOURCE_DATE_EPOCH'] ?? '1767225600' },
);
if (packed !== 0) giveUp('not packaged');
const kilobytes = Math.round(statSync(join(repository, extensionPackage)).size / 1000);
console.log(`${extensionPackage}: ${kilobytes} KB`);
