import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chest } from '../chest.ts';
import { cutAndSpliced } from '../cut-and-splice.ts';
import { checkComplete, checkTaken, completions } from '../harness/check-complete.ts';
import { services } from '../harness/workbench.ts';
import { parsed } from '../units-of-text.ts';

async function labels(source: string): Promise<string[]> {
  return (await completions(source)).items.map((item) => item.label);
}

describe('phrases', () => {
  test('what may follow a value', () => checkComplete('piece "a" { size 60 w<|> }', ['wide']));

  test('in a row a front is so wide, in a stack so high', async () => {
    expect(await labels(chest('row { drawer "x" fr<|> }'))).toEqual(['front … wide']);
    expect(await labels(chest('stack { drawer "x" fr<|> }'))).toEqual(['front … high']);
    expect(await labels(chest('drawer "x" front 5 <|>'))).toEqual(['high']);
  });

  test('a phrase that is said already is not offered again', async () => {
    const all = await labels('piece "a" {\n  size 60 wide, <|>\n}');
    expect(all.slice(0, 2)).toEqual(['… high', '… deep']);
    expect(all).not.toContain('… wide');
  });

  test('the rest of a phrase, and nothing else, once it has begun', () =>
    checkComplete('piece "a" { case { back in <|> } }', ['groove … deep', 'rabbet … deep']));

  test('taking one leaves places for its values', () =>
    checkTaken(
      chest('stack { drawer "x" fr<|> }'),
      'front … high',
      // biome-ignore lint/suspicious/noTemplateCurlyInString: the notation of places to fill in
      chest('stack { drawer "x" front ${1:length} high }'),
    ));

  test('the words behind a number', async () => {
    expect((await labels('piece "a" { case { plinth 3 <|> } }'))[0]).toBe('high');
  });
});

describe('statements', () => {
  test('those of the braces around the caret', async () => {
    expect(await labels('piece "a" {\n  s<|>\n}')).toEqual(['size', 'site', 'sequence']);
    expect(await labels('piece "a" {\n  case {\n    s<|>\n  }\n}')).toEqual(['sides', 'stretchers']);
  });

  test('after one that is complete, on its own line', async () => {
    const all = await labels('piece "a" {\n  size 60 wide, 30 high, 15 deep\n  <|>\n}');
    expect(all.slice(0, 3)).toContain('size');
    expect(all).toContain('case');
  });

  test('at the top of an empty file', async () => {
    const all = await labels('<|>');
    expect(all).toContain('piece');
    expect(all).toContain('use');
  });

  test('half-typed, in a text that is not finished', () =>
    checkComplete('piece "a" {\n  size 60 wide\n  face inset {\n    row {\n      parti<|>', ['partition']));

  test('with their braces where they say nothing without', () =>
    checkTaken('piece "a" {\n  cas<|>\n}', 'case', 'piece "a" {\n  case {\n  $0\n}\n}'));

  test('with a name where they declare one', () =>
    checkTaken(chest('stack { dra<|> }'), 'drawer', chest('stack { drawer "$1" $0 }')));

  test('with their doc', async () => {
    const { items } = await completions('piece "a" {\n  siz<|>\n}');
    expect(items[0]?.documentation).toEqual({ kind: 'markdown', value: 'The overall size of the piece.' });
  });
});

describe('names', () => {
  const shop = [
    '// file: shop.fettle',
    'sheet "ash panel" nominal 3/4, actual 3/4, 96 long, 48 wide',
    'board "oak" any thickness',
    'slide "long" side mount, 20 long',
    'slide "fits" side mount, 14 long',
    'slide "short" side mount, 10 long',
  ].join('\n');

  test('stock of the shop', async () => {
    expect((await labels(`use "shop.fettle"\npiece "a" { case { sides <|> } }\n${shop}`)).slice(-2)).not.toEqual([]);
    const all = await labels(`use "shop.fettle"\npiece "a" { case { sides of <|> } }\n${shop}`);
    expect(all).toEqual(['"ash panel"', '"oak"']);
  });

  test('inside quotation marks that are open, closed or already full', async () => {
    const piece = (words: string) => `use "shop.fettle"\npiece "a" { case { sides ${words} } }\n${shop}`;
    for (const words of ['"<|>', '"<|>"', '"as<|>', '"as<|>"', '"as<|>h"']) {
      await checkTaken(piece(words), '"ash panel"', piece('"ash panel"'));
    }
  });

  test('a mark that opens the next name is left alone', () =>
    checkTaken(
      chest('row { door "a" rest   door "b" same as "<|>   door "c" rest }'),
      '"a"',
      chest('row { door "a" rest   door "b" same as "a"   door "c" rest }'),
    ));

  test('fronts of the same piece, without the one that is being written', () =>
    checkComplete(chest('row { door "a" rest   door "b" same as <|> }'), ['"a"']));

  test('slides that fit the depth come first, the longest of them at the top', async () => {
    const text = `use "shop.fettle"\n${chest('drawer "x" rest { slides "<|>" }')}\n${shop}`;
    const { items } = await completions(text);
    expect(items.map((item) => [item.label, item.detail])).toEqual([
      ['"fits"', 'fits, 1/2" to spare'],
      ['"short"', 'fits, 4-1/2" to spare'],
      ['"long"', 'too long by 5-1/2"'],
    ]);
  });

  test('names come before all else where the statement still wants one', async () => {
    const body = (words: string) => `use "shop.fettle"\n${chest(`drawer "x" rest { slides ${words} }`)}\n${shop}`;
    const wanted = await completions(body('<|>'));
    expect(wanted.items.slice(0, 3).map(({ label, labelDetails }) => [label, labelDetails?.description])).toEqual([
      ['"fits"', 'fits, 1/2" to spare'],
      ['"short"', 'fits, 4-1/2" to spare'],
      ['"long"', 'too long by 5-1/2"'],
    ]);
    expect((await labels(body('"fits" <|>')))[0]).not.toMatch(/^"/);
  });

  test('named lengths where a length may stand', async () => {
    expect(await labels('let "thin" be 3/32\npiece "a" { face inset, gap <|> }')).toEqual(['"thin"']);
  });

  test('files beside this one', async () => {
    expect(await labels('use "<|>"\n// file: shop.fettle\nboard "oak" any thickness')).toEqual(['"shop.fettle"']);
  });

  test('members of a sequence', async () => {
    const text = chest('row { door "a" rest   door "b" rest }').replace(/\}$/, '  sequence "s" { "a", "<|> }\n}');
    expect(await labels(text)).toEqual(['"a"', '"b"']);
  });
});

describe('nothing is offered', () => {
  test.each([
    ['in a line comment', 'piece "a" { // si<|>'],
    ['in a block comment', 'piece "a" { /* si<|> */ }'],
    ['inside a number', 'piece "a" { size 17-1/<|>2 wide }'],
    ['right behind a number', 'piece "a" { size 60<|> }'],
    ['right behind a name', 'piece "a"<|> { }'],
    ['for a name that is declared', 'piece "<|>" { }'],
  ])('%s', (_where, source) => checkComplete(source, []));
});

test('an editor that knows no places gets plain words', async () => {
  // As the server is told on start.
  const { LanguageServer } = services.shared.lsp;
  const start = (snippetSupport: boolean) =>
    LanguageServer.initialize({
      processId: null,
      rootUri: null,
      capabilities: { textDocument: { completion: { completionItem: { snippetSupport } } } },
    });
  try {
    await start(false);
    await checkTaken(
      chest('stack { drawer "x" fr<|> }'),
      'front … high',
      chest('stack { drawer "x" front length high }'),
    );
  } finally {
    await start(true);
  }
});

test('any text, any place: offers or none, and no throw', () =>
  fc.assert(
    fc.asyncProperty(cutAndSpliced(3), fc.nat(), async (text, place) => {
      const document = parsed(text);
      const position = document.textDocument.positionAt(place % (text.length + 1));
      const list = await services.lsp.CompletionProvider?.getCompletion(document, {
        textDocument: { uri: document.uri.toString() },
        position,
      });
      expect(Array.isArray(list?.items)).toBe(true);
    }),
    { numRuns: 150 },
  ));
