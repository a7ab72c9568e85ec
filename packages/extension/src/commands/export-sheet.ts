import type { ExportAnswer, ExportSheet, SheetFileFormat } from '@fettle/protocol';
import * as vscode from 'vscode';
import type { PreviewPanel } from '../preview-panel.ts';
import type { PreviewPanels } from '../preview-panels.ts';
import { activeText, caretIn } from './show-picture.ts';
import { writeWhole } from './write-whole.ts';

/**
 * Sheets as files: made by the server, a PNG rendered from its drawing by the page; written where the reader says, with
 * progress and a way to stop. Says at the end what came of it, in the editor and in the page.
 */

export type ExportFormat = SheetFileFormat | 'png';

export interface ExportHost {
  askSheet(params: ExportSheet, token: vscode.CancellationToken): Promise<ExportAnswer>;
  pieceAt(uri: vscode.Uri, offset: number): Promise<string>;
  readonly log: vscode.LogOutputChannel;
}

export interface SheetToExport {
  readonly uri: vscode.Uri;
  readonly piece: string;
  readonly sheet: string;
  readonly format: ExportFormat;
}

const kinds: Readonly<Record<ExportFormat, string>> = {
  svg: 'Scalable drawing',
  png: 'Picture',
  csv: 'Table',
};

const dotsPerInch = 200;
const mostPixels = 8000;

/**
 * A file named by whoever runs the command by hand of a program. It must be said by name: menus hand a command the text
 * they were opened on, which is the last file to be written over.
 */
function targetOf(given: unknown): vscode.Uri | undefined {
  const target = typeof given === 'object' && given !== null ? (given as { target?: unknown }).target : undefined;
  return target instanceof vscode.Uri ? target : undefined;
}

/**
 * `fettle.exportSvg` and its like: of the picture last used, else of the text in the active editor. `given` may be
 * `{ target: Uri }`, which saves the question where to.
 */
export async function exportCurrent(
  panels: PreviewPanels,
  host: ExportHost,
  format: ExportFormat,
  given?: unknown,
): Promise<vscode.Uri | undefined> {
  const text = activeText();
  const panel = panels.current(text) ?? (text === undefined ? panels.current() : undefined);
  const uri = text ?? panel?.uri;
  if (uri === undefined) {
    void vscode.window.showInformationMessage('Open a Fettle text or its picture first.');
    return undefined;
  }
  const shown = panel?.looking.piece ?? '';
  const piece = shown !== '' ? shown : await host.pieceAt(uri, caretIn(uri));
  // A table has no drawing and a drawing no table: the first sheet that has the format is meant.
  return await exportSheet(panels, host, { uri, piece, sheet: '', format }, panel, targetOf(given));
}

export async function exportSheet(
  panels: PreviewPanels,
  host: ExportHost,
  what: SheetToExport,
  panel: PreviewPanel | undefined,
  target?: vscode.Uri,
): Promise<vscode.Uri | undefined> {
  const options = {
    location: vscode.ProgressLocation.Notification,
    title: `Fettle: exporting as ${what.format.toUpperCase()}`,
    cancellable: true,
  };
  try {
    const saved = await vscode.window.withProgress(options, (progress, token) =>
      makeAndSave(panels, host, what, panel, target, progress, token),
    );
    const words = saved === undefined ? 'Nothing was exported' : `Saved as ${saved.path.split('/').at(-1)}`;
    // Told where the reader looks, and only there.
    if (panel?.tell(words) !== true && saved !== undefined)
      void vscode.window.showInformationMessage(`Fettle: ${words}`);
    return saved;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    host.log.error(`Exporting ${what.uri.toString()} failed`, why);
    void vscode.window.showErrorMessage(`Fettle exported nothing: ${why}`);
    return undefined;
  }
}

/** Undefined when the reader thought better of it; throws with a sentence when it cannot be done. */
async function makeAndSave(
  panels: PreviewPanels,
  host: ExportHost,
  { uri, piece, sheet, format }: SheetToExport,
  panel: PreviewPanel | undefined,
  chosen: vscode.Uri | undefined,
  progress: vscode.Progress<{ readonly message: string }>,
  token: vscode.CancellationToken,
): Promise<vscode.Uri | undefined> {
  progress.report({ message: 'making the sheet' });
  const made = format === 'png' ? 'svg' : format;
  const answer = await host.askSheet({ uri: uri.toString(), piece, sheet, format: made }, token);
  if (token.isCancellationRequested) return undefined;
  if (answer.kind === 'refused') throw new Error(answer.sentence);
  let bytes: Uint8Array = new TextEncoder().encode(answer.text);
  if (format === 'png') {
    progress.report({ message: 'drawing the picture' });
    const page = panel ?? (await openPage(panels, uri));
    try {
      bytes = await page.drawPng(answer.text, pixelsAcross(answer.text), token);
    } catch (error) {
      if (token.isCancellationRequested) return undefined;
      throw error;
    }
  }
  const target = chosen ?? (await askWhere(uri, answer.name, format));
  if (target === undefined || token.isCancellationRequested) return undefined;
  progress.report({ message: 'writing the file' });
  await writeWhole(target, bytes);
  return target;
}

/** A picture that is rendered needs a page on the screen; one is opened, and given time to load. */
async function openPage(panels: PreviewPanels, uri: vscode.Uri): Promise<PreviewPanel> {
  const panel = await panels.show(uri, caretIn(uri));
  await panel.loaded();
  return panel;
}

function askWhere(uri: vscode.Uri, name: string, format: ExportFormat): Thenable<vscode.Uri | undefined> {
  const folder =
    uri.scheme === 'untitled' ? vscode.workspace.workspaceFolders?.[0]?.uri : vscode.Uri.joinPath(uri, '..');
  return vscode.window.showSaveDialog({
    title: `Save as ${format.toUpperCase()}`,
    filters: { [kinds[format]]: [format] },
    ...(folder === undefined ? {} : { defaultUri: vscode.Uri.joinPath(folder, `${name}.${format}`) }),
  });
}

/** As fine as a good printer needs it, by the width the drawing says it has. */
function pixelsAcross(svg: string): number {
  const millimetres = Number(/<svg[^>]*\swidth="([\d.]+)mm"/.exec(svg)?.[1] ?? 280);
  return Math.min(mostPixels, Math.round((millimetres / 25.4) * dotsPerInch));
}
