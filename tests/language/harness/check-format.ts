import { type LangiumDocument, URI } from 'langium';
import { expect } from 'vitest';
import { dedent } from './fixture.ts';
import { services, textAfter } from './workbench.ts';

/** Formatting turns `before` into `after`, and leaves `after` as it is. */
export async function checkFormat(before: string, after: string): Promise<void> {
  const expected = dedent(after);
  expect(await formatted(dedent(before))).toBe(expected);
  expect(await formatted(expected)).toBe(expected);
}

/** The text as the formatter leaves it. Formatting needs no more than the words, so nothing is built. */
export async function formatted(text: string): Promise<string> {
  const document = services.shared.workspace.LangiumDocumentFactory.fromString(
    text,
    URI.parse('file:///format.fettle'),
  );
  return textAfter(document, await formattingEdits(document));
}

export async function formattingEdits(document: LangiumDocument) {
  const edits = await services.lsp.Formatter?.formatDocument(document, {
    textDocument: { uri: document.uri.toString() },
    options: { tabSize: 4, insertSpaces: true },
  });
  return edits ?? [];
}
