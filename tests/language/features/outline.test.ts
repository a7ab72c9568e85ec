import { describe, expect, test } from 'vitest';
import type { DocumentSymbol } from 'vscode-languageserver-types';
import { chest } from '../chest.ts';
import { readFixture } from '../harness/fixture.ts';
import { openFixture } from '../harness/workbench.ts';
import { shop, sideboard } from '../sideboard.ts';

async function outline(source: string): Promise<string[]> {
  const workbench = await openFixture(readFixture(source));
  const document = workbench.documents[0];
  if (document === undefined) throw new Error('no document');
  const symbols = await workbench.services.lsp.DocumentSymbolProvider?.getSymbols(document, {
    textDocument: { uri: document.uri.toString() },
  });
  for (const symbol of symbols ?? []) expectInside(symbol);
  return lines(symbols ?? [], '');
}

function lines(symbols: readonly DocumentSymbol[], indent: string): string[] {
  return symbols.flatMap((symbol) => [
    `${indent}${symbol.name}${symbol.detail === undefined ? '' : `: ${symbol.detail}`}`,
    ...lines(symbol.children ?? [], `${indent}  `),
  ]);
}

/** An editor refuses a whole outline when one of its ranges lies outside its parent's. */
function expectInside(symbol: DocumentSymbol): void {
  const before = (a: { line: number; character: number }, b: typeof a) =>
    a.line < b.line || (a.line === b.line && a.character <= b.character);
  const within = (inner: DocumentSymbol['range'], outer: DocumentSymbol['range']) =>
    before(outer.start, inner.start) && before(inner.end, outer.end);
  expect(within(symbol.selectionRange, symbol.range)).toBe(true);
  for (const child of symbol.children ?? []) {
    expect(within(child.range, symbol.range)).toBe(true);
    expectInside(child);
  }
}

describe('outline', () => {
  test("a piece's own tree, with the sizes it comes to", async () => {
    expect(await outline(chest('stack { drawer "top" front 5 high   drawer "low" rest }'))).toEqual([
      'piece "chest"',
      '  size',
      '  case',
      '    sides: 30" × 15" × 3/4"',
      '    bottom: 18-1/2" × 15" × 3/4"',
      '  face',
      '    stack: 18-1/2" × 29-1/4"',
      '      drawer "top": 18-1/4" × 5"',
      '      drawer "low": 18-1/4" × 23-7/8"',
      '    fronts',
    ]);
  });

  test('the drawers of the sideboard', async () => {
    const all = await outline(`${sideboard}\n// file: shop.fettle\n${shop}`);
    expect(all).toContain('        drawer "blankets": 17-13/16" × 10-5/32"');
  });

  test('the entries of a shop file', async () => {
    expect(await outline('sheet "ash" actual 3/4\nslide "short" 10 long\nlet "thin" be 3/32')).toEqual([
      'sheet "ash"',
      'slide "short"',
    ]);
  });

  test('a text that is not finished has an outline', async () => {
    expect(await outline('piece "a" {\n  size 20 wide\n  face {\n    drawer "top')).toEqual([
      'piece "a"',
      '  size',
      '  face',
      '    drawer "top"',
    ]);
  });
});
