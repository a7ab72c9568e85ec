import * as vscode from 'vscode';
import type { PreviewPanels } from '../preview-panels.ts';

/**
 * `fettle.showPicture`: opens the picture of a text beside it; of the active one unless a place is given. The line above
 * a piece gives the place in words, and the key of its piece.
 */
export async function showPicture(panels: PreviewPanels, uri?: unknown, piece?: unknown): Promise<void> {
  const chosen = placeOf(uri) ?? activeText();
  if (chosen === undefined) {
    void vscode.window.showInformationMessage('Open a Fettle text first, then show its picture.');
    return;
  }
  await panels.show(chosen, caretIn(chosen), typeof piece === 'string' ? piece : '');
}

/** Menus give a place, other commands its words. */
function placeOf(uri: unknown): vscode.Uri | undefined {
  if (uri instanceof vscode.Uri) return uri;
  return typeof uri === 'string' && uri !== '' ? vscode.Uri.parse(uri) : undefined;
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
