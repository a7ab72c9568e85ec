import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { evaluateTexts } from '../../packages/cli/src/evaluated-texts.ts';

/** On the command line no other file is loaded; the folder tells what was meant. */

const folder = mkdtempSync(join(tmpdir(), 'fettle-misnamed-'));
afterAll(() => rmSync(folder, { recursive: true }));

it('a misspelt file name is offered the one that lies beside the text', async () => {
  const path = join(folder, 'shelf.fettle');
  writeFileSync(path, 'use "shopp.fettle"\n');
  writeFileSync(join(folder, 'shop.fettle'), 'units inches\n');
  const { texts } = await evaluateTexts([{ name: path, path }]);
  const found = texts[0]?.evaluated.findings.map(({ code, fixes }) => [code, fixes.map(({ title }) => title)]);
  expect(found).toEqual([['file-not-found', ['Use "shop.fettle"']]]);
});
