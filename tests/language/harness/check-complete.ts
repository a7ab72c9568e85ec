import { expect } from 'vitest';
import type { CompletionItem, TextEdit } from 'vscode-languageserver-types';
import { readFixture } from './fixture.ts';
import { openFixture, textAfter } from './workbench.ts';

/** The labels offered at the caret: exactly these, in this order. Only those that go on from the letters typed count. */
export async function checkComplete(source: string, expected: readonly string[]): Promise<void> {
  expect((await completions(source)).items.map((item) => item.label)).toEqual(expected);
}

/** Taking `label` turns the text into `after`, in which places to fill in read `${1:length}`. */
export async function checkTaken(source: string, label: string, after: string): Promise<void> {
  const { items, document } = await completions(source);
  const item = items.find((each) => each.label === label);
  expect(items.map((each) => each.label)).toContain(label);
  expect(textAfter(document, [item?.textEdit as TextEdit])).toBe(readFixture(after).files[0]?.text);
}

export async function completions(source: string) {
  const fixture = readFixture(source);
  if (fixture.caret === undefined) throw new Error('completion needs a caret <|>');
  const workbench = await openFixture(fixture);
  const document = workbench.document(fixture.caret.file);
  const { offset } = fixture.caret;
  const list = await workbench.services.lsp.CompletionProvider?.getCompletion(document, {
    textDocument: { uri: document.uri.toString() },
    position: document.textDocument.positionAt(offset),
  });
  const text = document.textDocument.getText();
  const items = (list?.items ?? []).filter((item) => {
    const { range } = item.textEdit as TextEdit;
    const typed = text.slice(document.textDocument.offsetAt(range.start), offset).toLowerCase();
    return (item.filterText ?? item.label).toLowerCase().startsWith(typed);
  });
  return { items: items as CompletionItem[], document };
}
