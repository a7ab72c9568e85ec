import * as vscode from 'vscode';
import type { PreviewPanels } from '../preview-panels.ts';

/** `fettle.showPicture`: opens the picture of a text beside it; of the active one unless a uri is given. */
export async function showPicture(panels: PreviewPanels, uri?: unknown): Promise<void> {
  const chosen = uri instanceof vscode.Uri ? uri : activeText();
  if (chosen === undefined) {
    void vscode.window.showInformationMessage('Open a Fettle text first, then show its picture.');
    return;
  }
  await panels.show(chosen, caretIn(chosen));
}

/** The offset of the caret in an editor that shows the text; 0 without one. */
export function caretIn(uri: vscode.Uri): number {
  const editors = [vscode.window.activeTextEditor, ...vscode.window.visibleTextEditors];
  const editor = editors.find((each) => each?.document.uri.toString() === uri.toString());
  return editor?.document.offsetAt(editor.selection.active) ?? 0;
}

export function activeText(): vscode.Uri | undefined {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === 'fettle' ? document.uri : undefined;
}
