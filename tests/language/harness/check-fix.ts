import { expect } from 'vitest';
import type { CodeAction, Diagnostic } from 'vscode-languageserver-types';
import { readFixture } from './fixture.ts';
import { filesAfter, openFixture } from './workbench.ts';

/**
 * With the caret (`<|>`) on a complaint, the light bulb offers `title`, and taking it turns the files of `before` into
 * those of `after`.
 */
export async function checkFix(before: string, title: string, after: string): Promise<void> {
  const { workbench, actions } = await lightBulb(before);
  const action = actions.find((each) => each.title === title);
  expect(actions.map((each) => each.title)).toContain(title);
  expect(action?.diagnostics, 'the fix is offered for the squiggle under the caret').not.toEqual([]);
  expect(filesAfter(workbench, action?.edit ?? {})).toEqual(readFixture(after).files);
}

/** The titles offered at the caret, in their order; the preferred one of each finding has a star. */
export async function titlesAtCaret(before: string): Promise<string[]> {
  const { actions } = await lightBulb(before);
  return actions.map((each) => `${each.isPreferred === true ? '* ' : ''}${each.title}`);
}

async function lightBulb(source: string) {
  const fixture = readFixture(source);
  if (fixture.caret === undefined) throw new Error('a fix needs a caret <|>');
  const { file, offset } = fixture.caret;
  const workbench = await openFixture(fixture);
  const document = workbench.document(file);
  const position = document.textDocument.positionAt(offset);
  const here = (document.diagnostics ?? []).filter((each) => isWithin(each, position));
  const actions = await workbench.services.lsp.CodeActionProvider?.getCodeActions(document, {
    textDocument: { uri: document.uri.toString() },
    range: { start: position, end: position },
    // What an editor hands back has been through JSON.
    context: { diagnostics: JSON.parse(JSON.stringify(here)) as Diagnostic[], only: ['quickfix'] },
  });
  return { workbench, actions: (actions ?? []) as CodeAction[] };
}

function isWithin({ range }: Diagnostic, { line, character }: { line: number; character: number }): boolean {
  const before = (a: typeof range.start, b: typeof range.start) =>
    a.line < b.line || (a.line === b.line && a.character <= b.character);
  return before(range.start, { line, character }) && before({ line, character }, range.end);
}
