import type { KeepOffcuts, KeepOffcutsAnswer } from '@fettle/protocol';
import * as vscode from 'vscode';
import type { PreviewPanels } from '../preview-panels.ts';
import { activeText, caretIn } from './show-picture.ts';

/** Writes what is left over of a piece into the shop files it was cut from: one step that can be undone, not yet saved. */

export interface OffcutsHost {
  askOffcuts(params: KeepOffcuts, token: vscode.CancellationToken): Promise<KeepOffcutsAnswer>;
  pieceAt(uri: vscode.Uri, offset: number): Promise<string>;
  readonly log: vscode.LogOutputChannel;
}

export async function keepOffcuts(panels: PreviewPanels, host: OffcutsHost): Promise<void> {
  const text = activeText();
  const panel = panels.current(text) ?? (text === undefined ? panels.current() : undefined);
  const uri = text ?? panel?.uri;
  if (uri === undefined) {
    void vscode.window.showInformationMessage('Open a Fettle text or its picture first.');
    return;
  }
  const shown = panel?.looking.piece ?? '';
  const piece = shown !== '' ? shown : await host.pieceAt(uri, caretIn(uri));
  const options = {
    location: vscode.ProgressLocation.Notification,
    title: 'Fettle: looking for the best plans',
    cancellable: true,
  };
  try {
    const sentence = await vscode.window.withProgress(options, async (_, token) => {
      const answer = await host.askOffcuts({ uri: uri.toString(), piece }, token);
      if (token.isCancellationRequested) return 'Nothing was written';
      return answer.kind === 'refused' ? answer.sentence : await written(answer);
    });
    // Told where the reader looks, and only there.
    if (panel?.tell(sentence) !== true) void vscode.window.showInformationMessage(`Fettle: ${sentence}`);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    host.log.error(`Keeping the offcuts of ${uri.toString()} failed`, why);
    void vscode.window.showErrorMessage(`Fettle wrote nothing: ${why}`);
  }
}

/** None of the edits where one of the files has moved on, or may not be changed. */
async function written({ files, sentence }: Extract<KeepOffcutsAnswer, { kind: 'edits' }>): Promise<string> {
  const change = new vscode.WorkspaceEdit();
  for (const { uri, text: before, edits } of files) {
    const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(uri));
    if (document.getText() !== before) return 'Nothing was written: the shop file has changed meanwhile';
    for (const { span, text } of edits) {
      change.replace(
        document.uri,
        new vscode.Range(document.positionAt(span.start), document.positionAt(span.end)),
        text,
      );
    }
  }
  return (await vscode.workspace.applyEdit(change)) ? sentence : 'Nothing was written: the shop file cannot be changed';
}
