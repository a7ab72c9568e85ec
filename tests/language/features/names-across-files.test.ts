import { describe, expect, test } from 'vitest';
import type { Location, LocationLink } from 'vscode-languageserver-types';
import { chest } from '../chest.ts';
import { readFixture } from '../harness/fixture.ts';
import { fileName, filesAfter, openFixture } from '../harness/workbench.ts';

/** Names lead to one another: definition, references, highlights and rename, in one file and across files. */

async function at(source: string) {
  const fixture = readFixture(source);
  if (fixture.caret === undefined) throw new Error('a caret is missing');
  const workbench = await openFixture(fixture);
  const document = workbench.document(fixture.caret.file);
  const params = {
    textDocument: { uri: document.uri.toString() },
    position: document.textDocument.positionAt(fixture.caret.offset),
  };
  const words = ({ uri, range }: Location) =>
    `${fileName(uri)}: ${workbench.document(fileName(uri)).textDocument.getText(range)} in line ${range.start.line}`;
  return { workbench, services: workbench.services, document, params, words };
}

async function renamed(source: string, newName: string) {
  const { workbench, services, document, params } = await at(source);
  const edit = await services.lsp.RenameProvider?.rename(document, { ...params, newName });
  return filesAfter(workbench, edit ?? {}).map((file) => file.text);
}

const twoFiles = (piece: string, shop: string) => `use "shop.fettle"\n${piece}\n// file: shop.fettle\n${shop}`;
const doors = (left: string, right: string) =>
  chest(`row { doors ${left} rest   doors "b" same opening as ${right} }`).replace(
    /\}$/,
    `  sequence "across" { ${right}, "b" }\n}`,
  );

describe('rename', () => {
  test('a front, where others follow it and where a sequence names it', async () => {
    const [after] = await renamed(doors('"le<|>ft"', '"left"'), 'west');
    expect(after).toBe(doors('"west"', '"west"'));
  });

  test('from a place that refers to it', async () => {
    const [after] = await renamed(
      chest('row { doors “left” rest   doors "b" same opening as "le<|>ft" }'),
      '"west side"',
    );
    expect(after).toBe(chest('row { doors “west side” rest   doors "b" same opening as "west side" }'));
  });

  test('a stock of the shop from the piece edits both files', async () => {
    const [piece, shop] = await renamed(
      twoFiles('piece "a" { case { sides "a<|>sh"   bottom "ash" } }', 'sheet "ash" actual 3/4'),
      'white ash',
    );
    expect(piece).toContain('{ sides "white ash"   bottom "white ash" }');
    expect(shop).toBe('sheet "white ash" actual 3/4');
  });

  test('a stock of the shop from the shop edits both files', async () => {
    const [piece, shop] = await renamed(
      twoFiles('piece "a" { case { sides "ash" } }', 'sheet "as<|>h" actual 3/4'),
      'oak',
    );
    expect(piece).toContain('sides "oak"');
    expect(shop).toBe('sheet "oak" actual 3/4');
  });

  test('a front of one piece leaves its namesake in another alone', async () => {
    const [after] = await renamed(
      'piece "a" { face { door "x<|>" rest } }\npiece "b" { face { row { door "x" rest   door same as "x" } } }',
      'y',
    );
    expect(after).toBe(
      'piece "a" { face { door "y" rest } }\npiece "b" { face { row { door "x" rest   door same as "x" } } }',
    );
  });

  test('a named length, also inside a sum', async () => {
    const [after] = await renamed(
      'let "th<|>in" be 3/32\npiece "a" { face inset, gap "thin" * 2 { open rest } }',
      'gap',
    );
    expect(after).toBe('let "gap" be 3/32\npiece "a" { face inset, gap "gap" * 2 { open rest } }');
  });

  test('the box shows the name without its marks', async () => {
    const { services, document, params } = await at('sheet "white a<|>sh" actual 3/4');
    const range = await services.lsp.RenameProvider?.prepareRename(document, params);
    expect(range && document.textDocument.getText(range)).toBe('white ash');
  });

  test.each(['use "sh<|>op.fettle"', 'piece "a" { si<|>ze 20 wide }', 'piece "a" { case { sides "no<|>ne" } }'])(
    'nothing to rename in %s',
    async (source) => {
      const { services, document, params } = await at(source);
      expect(await services.lsp.RenameProvider?.prepareRename(document, params)).toBeUndefined();
    },
  );

  test.each([
    ['b', 'there is a front or opening called "b" already'],
    ['', 'at least one letter'],
    ['a {b}', 'no quotation marks, braces'],
  ])('refuses %j', async (newName, why) => {
    await expect(renamed(doors('"le<|>ft"', '"left"'), newName)).rejects.toThrow(why);
  });
});

describe('where a name leads', () => {
  test('definition in another file', async () => {
    const { services, document, params } = await at(
      twoFiles('piece "a" { case { sides "a<|>sh" } }', 'board "oak"\nsheet "ash" actual 3/4'),
    );
    const links = (await services.lsp.DefinitionProvider?.getDefinition(document, params)) as LocationLink[];
    expect(links.map((link) => [fileName(link.targetUri), link.targetSelectionRange.start.line])).toEqual([
      ['shop.fettle', 1],
    ]);
  });

  test('references from another file', async () => {
    const { services, document, params, words } = await at(
      twoFiles('piece "a" { case { sides "ash"\nbottom "ash" } }', 'sheet "a<|>sh" actual 3/4'),
    );
    const found = await services.lsp.ReferencesProvider?.findReferences(document, {
      ...params,
      context: { includeDeclaration: true },
    });
    expect(found?.map(words).sort()).toEqual([
      'piece.fettle: "ash" in line 1',
      'piece.fettle: "ash" in line 2',
      'shop.fettle: "ash" in line 0',
    ]);
  });

  test('highlights in the same file', async () => {
    const { services, document, params } = await at(doors('"le<|>ft"', '"left"'));
    const found = await services.lsp.DocumentHighlightProvider?.getDocumentHighlight(document, params);
    expect(found?.map((each) => document.textDocument.getText(each.range))).toEqual(['"left"', '"left"', '"left"']);
  });

  test('the path of a use opens its file', async () => {
    const { services, document } = await at(`${twoFiles('piece "a" { }', 'sheet "ash" actual 3/4')}<|>`);
    const piece = document.uri.toString().replace('shop.fettle', 'piece.fettle');
    const home = services.shared.workspace.LangiumDocuments.all.find((each) => each.uri.toString() === piece);
    if (home === undefined) throw new Error('no piece');
    const links = await services.lsp.DocumentLinkProvider?.getDocumentLinks(home, { textDocument: { uri: piece } });
    expect(links?.map((link) => [home.textDocument.getText(link.range), fileName(link.target ?? '')])).toEqual([
      ['"shop.fettle"', 'shop.fettle'],
    ]);
  });
});

test('bodies and long comments fold', async () => {
  const { services, document } = await at(`/* one\n two\n three */\n${chest('drawer rest')}<|>`);
  const folds = await services.lsp.FoldingRangeProvider?.getFoldingRanges(document, {
    textDocument: { uri: document.uri.toString() },
  });
  const lines = document.textDocument.getText().split('\n');
  expect(folds?.map((fold) => [lines[fold.startLine]?.trim(), lines[fold.endLine]?.trim()])).toEqual([
    ['piece "chest" {', '}'],
    ['face inset, gap 1/8 {', 'fronts thick 1/2'],
    ['/* one', 'two'],
  ]);
});
