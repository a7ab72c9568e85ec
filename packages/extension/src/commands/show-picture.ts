import * as vscode from 'vscode';
import type { PreviewPanels } from '../preview-panels.ts';

/** `fettle.showPicture`: opens the picture of a text beside it; of the active one unless a uri is given. */
export function showPicture(panels: PreviewPanels, uri?: unknown): void {
  const chosen = uri instanceof vscode.Uri ? uri : activeText();
  if (chosen === undefined) {
    void vscode.window.showInformationMessage('Open a Fettle text first, then show its picture.');
    return;
  }
  panels.show(chosen);
}

function activeText(): vscode.Uri | undefined {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === 'fettle' ? document.uri : undefined;
}
