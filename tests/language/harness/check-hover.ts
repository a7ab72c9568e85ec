import { expect } from 'vitest';
import type { Hover, MarkupContent } from 'vscode-languageserver-types';
import { dedent, readFixture } from './fixture.ts';
import { openFixture } from './workbench.ts';

/** The whole Markdown shown at the caret, or '' where nothing is shown. */
export async function checkHover(source: string, expected: string): Promise<void> {
  const { read } = await hoverAt(source);
  expect(read).toBe(dedent(expected).trimEnd());
}

export interface Told {
  readonly markdown: string;
  /** The Markdown as one reads it: its signs without their guards, its links without their addresses. */
  readonly read: string;
  /** The words it is shown for. */
  readonly words: string;
}

/** What is shown at the caret. */
export async function hoverAt(source: string): Promise<Told> {
  const fixture = readFixture(source);
  if (fixture.caret === undefined) throw new Error('a hover needs a caret <|>');
  const workbench = await openFixture(fixture);
  const document = workbench.document(fixture.caret.file);
  const hover: Hover | undefined = await workbench.services.lsp.HoverProvider?.getHoverContent(document, {
    textDocument: { uri: document.uri.toString() },
    position: document.textDocument.positionAt(fixture.caret.offset),
  });
  const markdown = (hover?.contents as MarkupContent | undefined)?.value ?? '';
  return {
    markdown,
    read: markdown.replaceAll(/(?<!\\)\[([^\]\\]*)\]\([^)\s]*\)/g, '$1').replaceAll(/\\([^A-Za-z0-9\s])/g, '$1'),
    words: hover?.range === undefined ? '' : document.textDocument.getText(hover.range),
  };
}
