import { exportSheetRequest, keepOffcutsRequest, moveDivisionRequest, pieceAtRequest } from '@fettle/protocol';
import * as vscode from 'vscode';
import { type ExportHost, exportSheet } from './commands/export-sheet.ts';
import type { OffcutsHost } from './commands/keep-offcuts.ts';
import { type NewPieceHost, newPiece } from './commands/new-piece.ts';
import { openExample } from './commands/open-example.ts';
import { registerPictureCommands } from './commands/picture-commands.ts';
import { LanguageSession, type MakeClient } from './language-session.ts';
import { LanguageStatus } from './language-status.ts';
import { openPictureWithText } from './open-with-text.ts';
import { PreviewPanels } from './preview-panels.ts';
import { VerdictInStatusBar } from './verdict-in-status-bar.ts';

/** Puts the extension together, the same in every kind of editor; the entries only say how the server is reached. */
export function startExtension(context: vscode.ExtensionContext, makeClient: MakeClient): LanguageSession {
  const log = vscode.window.createOutputChannel('Fettle', { log: true });
  const status = new VerdictInStatusBar();
  const language = new LanguageStatus();
  const pieceAt = async (uri: vscode.Uri, offset: number) => {
    await begun;
    const answer = await session
      .request<string | null>(pieceAtRequest, { uri: uri.toString(), offset })
      // Without an answer the first piece stands in.
      .catch(() => null);
    return answer ?? '';
  };
  const exports: ExportHost & OffcutsHost = {
    askSheet: (params, token) => session.request(exportSheetRequest, params, token),
    askOffcuts: (params, token) => session.request(keepOffcutsRequest, params, token),
    pieceAt,
    log,
  };
  const panels = new PreviewPanels(context.extensionUri, {
    watch: (pictures) => session.watchPictures(pictures),
    stopPlanning: (uri, piece) => session.stopPlanning({ uri: uri.toString(), piece }),
    askDivision: (move) => session.request(moveDivisionRequest, move),
    pieceAt,
    exportSheet: (panel, what) => void exportSheet(panels, exports, { uri: panel.uri, ...what }, panel),
  });
  const session = new LanguageSession(makeClient, log, {
    picture: (frame) => panels.receive(frame),
    verdict: (verdict) => status.receive(verdict),
    started: () => {
      language.running();
      panels.watchVisible();
    },
    stopped: () => {
      language.stopped();
      status.forget();
      panels.serverRuns(false);
    },
  });
  const pieces: NewPieceHost = {
    // A new piece may be the very first thing that is asked for.
    request: async (method, params) => {
      await begun;
      return await session.request(method, params);
    },
    showPicture: (uri) => panels.show(uri, 0),
    log,
  };
  context.subscriptions.push(
    log,
    status,
    language,
    panels,
    registerPictureCommands(panels, exports),
    openPictureWithText((uri) => panels.show(uri, 0)),
    vscode.commands.registerCommand('fettle.newPiece', (folder?: unknown) => newPiece(pieces, folder)),
    vscode.commands.registerCommand('fettle.openExample', () => openExample((uri) => panels.show(uri, 0))),
    vscode.commands.registerCommand('fettle.restartServer', () => {
      begun = session.restart();
      return begun;
    }),
    vscode.commands.registerCommand('fettle.showLog', () => log.show()),
  );
  // Not awaited: the panel can open while the server is still starting.
  let begun = session.start();
  return session;
}
