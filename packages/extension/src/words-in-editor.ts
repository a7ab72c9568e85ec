import type { DivisionAnswer, TextSpan } from '@fettle/protocol';
import * as vscode from 'vscode';

/** What a picture does to the text it was made from: select words, change sizes. */

/** Shows the words in the text's own editor, where one is open, and puts the reader there. */
export async function selectWords(uri: vscode.Uri, words: TextSpan): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri);
  const open = vscode.window.visibleTextEditors.find((editor) => editor.document === document);
  const selection = rangeOf(document, words);
  const editor = await vscode.window.showTextDocument(document, {
    viewColumn: open?.viewColumn ?? vscode.ViewColumn.One,
    selection,
  });
  editor.revealRange(selection, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}

/** All edits as one step that can be undone; none of them when the text has moved on or may not be changed. */
export async function changeText(
  uri: vscode.Uri,
  version: number,
  edits: Extract<DivisionAnswer, { kind: 'edits' }>['edits'],
): Promise<boolean> {
  const document = await vscode.workspace.openTextDocument(uri);
  if (document.version !== version) return false;
  const change = new vscode.WorkspaceEdit();
  for (const { span, text } of edits) change.replace(uri, rangeOf(document, span), text);
  return await vscode.workspace.applyEdit(change);
}

function rangeOf(document: vscode.TextDocument, { start, end }: TextSpan): vscode.Range {
  return new vscode.Range(document.positionAt(start), document.positionAt(end));
}
