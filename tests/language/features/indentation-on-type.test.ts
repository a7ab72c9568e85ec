import { expect, test } from 'vitest';
import { readFixture } from '../harness/fixture.ts';
import { openFixture, textAfter } from '../harness/workbench.ts';

/** The text after `ch` was typed right before the caret. */
async function typed(source: string, ch: string): Promise<string> {
  const fixture = readFixture(source);
  const workbench = await openFixture(fixture);
  const document = workbench.document(fixture.caret?.file ?? '');
  const edits = await workbench.services.lsp.Formatter?.formatDocumentOnType(document, {
    textDocument: { uri: document.uri.toString() },
    position: document.textDocument.positionAt(fixture.caret?.offset ?? 0),
    ch,
    options: { tabSize: 4, insertSpaces: true },
  });
  return textAfter(document, edits ?? []);
}

test('a new line stands as deep as its braces', async () => {
  expect(await typed('piece "a" {\n<|>', '\n')).toBe('piece "a" {\n  ');
  expect(await typed('piece "a" {\n  case {\n<|>\n  }\n}', '\n')).toBe('piece "a" {\n  case {\n    \n  }\n}');
  expect(await typed('piece "a" {\n      <|>size 3 wide\n}', '\n')).toBe('piece "a" {\n  size 3 wide\n}');
});

test('a brace that closes stands under the word that opened', async () => {
  expect(await typed('piece "a" {\n  case {\n    }<|>', '}')).toBe('piece "a" {\n  case {\n  }');
  expect(await typed('piece "a" {\n<|>}', '\n')).toBe('piece "a" {\n}');
});

test('a statement that goes on behind a comma stands deeper', async () => {
  expect(await typed('piece "a" {\n  size 3 wide,\n<|>', '\n')).toBe('piece "a" {\n  size 3 wide,\n      ');
});

test('nothing else is moved', async () => {
  const messy = 'piece "a" {\n  case {sides   thick 3/4 }<|>';
  expect(await typed(messy, '}')).toBe(messy.replace('<|>', ''));
});

test('braces in comments and names do not count', async () => {
  expect(await typed('// { { {\npiece "a" { // {\n<|>', '\n')).toBe('// { { {\npiece "a" { // {\n  ');
});
