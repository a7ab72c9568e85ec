import { expect } from 'vitest';
import type { Hover, MarkupContent } from 'vscode-languageserver-types';
import { dedent, readFixture } from './fixture.ts';
import { openFixture } from './workbench.ts';

/** The whole Markdown shown at the caret, or '' where nothing is shown. */
export async function checkHover(source: string, expected: string): Promise<void> {
  const { markdown } = await hoverAt(source);
  expect(markdown).toBe(dedent(expected).trimEnd());
}

/** What is shown at the caret, and the words it is shown for. */
export async function hoverAt(source: string): Promise<{ readonly markdown: string; readonly words: string }> {
  const fixture = readFixture(source);
  if (fixture.caret === undefined) throw new Error('a hover needs a caret <|>');
  const workbench = await openFixture(fixture);
  const document = workbench.document(fixture.caret.file);
  const hover: Hover | undefined = await workbench.services.lsp.HoverProvider?.getHoverContent(document, {
    textDocument: { uri: document.uri.toString() },
    position: document.textDocument.positionAt(fixture.caret.offset),
  });
  return {
    markdown: (hover?.contents as MarkupContent | undefined)?.value ?? '',
    words: hover?.range === undefined ? '' : document.textDocument.getText(hover.range),
  };
}
