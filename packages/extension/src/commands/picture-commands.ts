import * as vscode from 'vscode';
import type { PreviewPanels } from '../preview-panels.ts';
import { type ExportHost, exportCurrent } from './export-sheet.ts';
import { keepOffcuts, type OffcutsHost } from './keep-offcuts.ts';
import { showPicture } from './show-picture.ts';

/** Every command that has to do with the picture, by its name in the manifest. */
export function registerPictureCommands(panels: PreviewPanels, host: ExportHost & OffcutsHost): vscode.Disposable {
  const { registerCommand } = vscode.commands;
  return vscode.Disposable.from(
    registerCommand('fettle.showPicture', (uri?: unknown, piece?: unknown) => showPicture(panels, uri, piece)),
    registerCommand('fettle.exportSvg', (given?: unknown) => exportCurrent(panels, host, 'svg', given)),
    registerCommand('fettle.exportPng', (given?: unknown) => exportCurrent(panels, host, 'png', given)),
    registerCommand('fettle.exportCsv', (given?: unknown) => exportCurrent(panels, host, 'csv', given)),
    registerCommand('fettle.copyTable', () => copyTable(panels)),
    registerCommand('fettle.keepOffcuts', () => keepOffcuts(panels, host)),
  );
}

/** The table that is shown; without one on the screen it says where to find one. */
async function copyTable(panels: PreviewPanels): Promise<void> {
  const panel = panels.current();
  const table = panel?.tableShown();
  if (table === undefined) {
    void vscode.window.showInformationMessage('Show a table in the picture first: choose its tab there.');
    return;
  }
  await vscode.env.clipboard.writeText(table);
  panel?.tell('The table is on the clipboard');
}
