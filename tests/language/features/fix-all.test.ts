import { expect, test } from 'vitest';
import type { CodeAction } from 'vscode-languageserver-types';
import { readFixture } from '../harness/fixture.ts';
import { filesAfter, openFixture } from '../harness/workbench.ts';

async function sourceActions(source: string, only: readonly string[] | 'everything' = ['source.fixAll']) {
  const fixture = readFixture(source);
  const workbench = await openFixture(fixture);
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('no file');
  const start = { line: 0, character: 0 };
  const actions = (await workbench.services.lsp.CodeActionProvider?.getCodeActions(document, {
    textDocument: { uri: document.uri.toString() },
    range: { start, end: document.textDocument.positionAt(document.textDocument.getText().length) },
    context: { diagnostics: [], ...(only === 'everything' ? {} : { only: [...only] }) },
  })) as CodeAction[];
  return { workbench, actions: actions.filter(({ kind }) => kind?.startsWith('source.')) };
}

/** All safe fixes together turn `before` into `after`. */
async function checkAll(before: string, title: string, after: string): Promise<void> {
  const { workbench, actions } = await sourceActions(before);
  expect(actions.map((each) => each.title)).toEqual([title]);
  expect(actions[0]?.kind).toBe('source.fixAll.fettle');
  expect(filesAfter(workbench, actions[0]?.edit ?? {})).toEqual(readFixture(after).files);
}

test('misspelt words and what is said twice, at one stroke', () =>
  checkAll(
    'pece "a" {\n  size 60 wide, 34 hihg, 17 deep\n  case { sides thick 3/4, thick 3/4 }\n}',
    'Apply 3 safe fixes',
    'piece "a" {\n  size 60 wide, 34 high, 17 deep\n  case { sides thick 3/4 }\n}',
  ));

test('a missing quotation mark', () =>
  checkAll('piece "a {\n  size 60 wide\n}\n', 'Apply the one safe fix', 'piece "a" {\n  size 60 wide\n}\n'));

test('a missing brace', () =>
  checkAll('piece "a" {\n  size 60 wide\n', 'Apply the one safe fix', 'piece "a" {\n  size 60 wide\n}\n'));

test('a name and a file with one near candidate', () =>
  checkAll(
    'use "shp.fettle"\npiece "a" { size 60 wide }\n// file: shop.fettle\nsheet "ash" actual 3/4',
    'Apply the one safe fix',
    'use "shop.fettle"\npiece "a" { size 60 wide }\n// file: shop.fettle\nsheet "ash" actual 3/4',
  ));

test('of two near candidates somebody has to choose', async () => {
  const { actions } = await sourceActions(
    'use "shop.fettle"\npiece "a" { case { sides "oak 3" } }\n// file: shop.fettle\nsheet "oak 1" actual 1\nsheet "oak 2" actual 2',
  );
  expect(actions).toEqual([]);
});

test('what changes a size is never among them', async () => {
  const { actions } = await sourceActions(
    'piece "a" {\n  size 20 wide, 30 high, 15 deep\n  case { sides thick 3/4   bottom thick 3/4, between sides }\n  face inset, gap 1/8 { stack { drawer front 20 high   drawer front 20 high }   fronts thick 1/2 }\n}',
  );
  expect(actions).toEqual([]);
});

test('it is not in the light bulb of everything', async () => {
  const { actions } = await sourceActions('pece "a" { size 60 wide }', 'everything');
  expect(actions).toEqual([]);
});
