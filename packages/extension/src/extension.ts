import * as vscode from 'vscode';
import { showPicture } from './commands/show-picture.ts';
import { LanguageSession, type MakeClient } from './language-session.ts';
import { PreviewPanels } from './preview-panels.ts';
import { VerdictInStatusBar } from './verdict-in-status-bar.ts';

/** Puts the extension together, the same in every kind of editor; the entries only say how the server is reached. */
export function startExtension(context: vscode.ExtensionContext, makeClient: MakeClient): LanguageSession {
  const log = vscode.window.createOutputChannel('Fettle', { log: true });
  const status = new VerdictInStatusBar();
  const panels = new PreviewPanels(context.extensionUri, (uris) => session.watchPictures(uris));
  const session = new LanguageSession(makeClient, log, {
    picture: (picture) => panels.receive(picture),
    verdict: (verdict) => status.receive(verdict),
    started: () => panels.watchVisible(),
    stopped: () => status.forget(),
  });
  context.subscriptions.push(
    log,
    status,
    panels,
    vscode.commands.registerCommand('fettle.showPicture', (uri?: unknown) => showPicture(panels, uri)),
    vscode.commands.registerCommand('fettle.restartServer', () => session.restart()),
    vscode.commands.registerCommand('fettle.showLog', () => log.show()),
  );
  // Not awaited: the panel can open while the server is still starting.
  void session.start();
  return session;
}
