import { expect, test } from 'vitest';
import { readFixture } from '../harness/fixture.ts';
import { openFixture } from '../harness/workbench.ts';

/** Each word with its kind and its modifiers, decoded from the numbers an editor is sent. */
async function kinds(source: string): Promise<string[]> {
  const workbench = await openFixture(readFixture(source));
  const [document] = workbench.documents;
  const provider = workbench.services.lsp.SemanticTokenProvider;
  if (document === undefined || provider === undefined) throw new Error('nothing to colour');
  const { tokenTypes, tokenModifiers } = provider.semanticTokensOptions.legend;
  const { data } = await provider.semanticHighlight(document, { textDocument: { uri: document.uri.toString() } });
  const lines = document.textDocument.getText().split('\n');
  let [line, character] = [0, 0];
  const found: string[] = [];
  for (let at = 0; at < data.length; at += 5) {
    const [down, along, length, type, modifiers] = data.slice(at, at + 5) as [number, number, number, number, number];
    line += down;
    character = down === 0 ? character + along : along;
    const words = lines[line]?.slice(character, character + length);
    const more = tokenModifiers.filter((_each, bit) => (modifiers & (1 << bit)) !== 0);
    found.push([`${words}:`, tokenTypes[type], ...more].join(' '));
  }
  return found;
}

test('words of statements and of phrases, names declared and used, numbers with their units', async () => {
  expect(
    await kinds(`
      use "shop.fettle"
      piece "a" { size 60mm wide   case { sides "ash" thick 3/4" } }
      // file: shop.fettle
      sheet "ash" actual 3/4
    `),
  ).toEqual([
    'use: keyword',
    '"shop.fettle": string',
    'piece: keyword',
    '"a": class declaration',
    'size: keyword',
    '60mm: number',
    'wide: property',
    'case: keyword',
    'sides: keyword',
    '"ash": variable',
    'thick: property',
    '3/4": number',
  ]);
});

test('what is understood and not computed yet says so', async () => {
  expect(await kinds('piece "a" { site { alcove 64 wide } }')).toEqual([
    'piece: keyword',
    '"a": class declaration',
    'site: keyword notChecked',
    'alcove: keyword notChecked',
    '64: number notChecked',
    'wide: property notChecked',
  ]);
});

test('numbers and names inside a sum', async () => {
  expect(await kinds('let "b" be 2\npiece "a" { size (60 - "b") * 2 wide }')).toEqual([
    'let: keyword',
    '"b": variable declaration',
    'be: property',
    '2: number',
    'piece: keyword',
    '"a": class declaration',
    'size: keyword',
    '60: number',
    '"b": variable',
    '2: number',
    'wide: property',
  ]);
});

test('a word that means nothing has no kind', async () => {
  expect(await kinds('piece "a" { size 60 wide, painted }')).not.toContain('painted: property');
});
