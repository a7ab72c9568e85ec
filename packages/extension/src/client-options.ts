import type * as vscode from 'vscode';
import { CloseAction, ErrorAction, type ErrorHandler, type LanguageClientOptions } from 'vscode-languageclient';

/** How the language client behaves in every kind of editor. Knows nothing of how the server is started. */

/**
 * Old copies of a text, as in a comparison with an earlier state, are not part of the work: the server never hears of
 * them, so that nothing in them is found twice.
 */
function isOldCopy(document: vscode.TextDocument): boolean {
  return document.uri.scheme === 'git';
}

/** A crash is told once, with the way out. */
class CrashReport implements ErrorHandler {
  readonly #report: () => void;

  constructor(report: () => void) {
    this.#report = report;
  }

  error(_error: Error, _message: unknown, count: number | undefined) {
    // Single garbled messages are logged by the client and survived; an endless stream of them is a dead connection.
    if (count !== undefined && count <= 3) return { action: ErrorAction.Continue, handled: true };
    // A server killed while edits are on their way breaks every one of them. The client then shuts down by itself and
    // never says that the connection closed.
    this.#report();
    return { action: ErrorAction.Shutdown, handled: true };
  }

  closed() {
    this.#report();
    return { action: CloseAction.DoNotRestart, handled: true };
  }
}

export function clientOptions(outputChannel: vscode.LogOutputChannel, onCrash: () => void): LanguageClientOptions {
  return {
    // No scheme: unsaved texts and those in folders of other machines are texts all the same.
    documentSelector: [{ language: 'fettle' }],
    outputChannel,
    // The same as the problem matcher's owner: what the task finds replaces what the server said, and never doubles it.
    diagnosticCollectionName: 'fettle',
    errorHandler: new CrashReport(onCrash),
    middleware: {
      didOpen: (document, next) => (isOldCopy(document) ? Promise.resolve() : next(document)),
      didChange: (event, next) => (isOldCopy(event.document) ? Promise.resolve() : next(event)),
      didClose: (document, next) => (isOldCopy(document) ? Promise.resolve() : next(document)),
    },
  };
}
