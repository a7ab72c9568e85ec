import { evaluateDocument, type FettleServices, statementAround } from '@fettle/language';
import {
  pictureNotification,
  verdictNotification,
  type WatchPictures,
  watchPicturesNotification,
} from '@fettle/protocol';
import { DocumentState, interruptAndCheck, isOperationCancelled, type LangiumDocument, URI } from 'langium';
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { CancellationToken as Token } from 'vscode-languageserver';
import { describeError } from './guarded-connection.ts';
import { pictureOfDocument } from './picture-of-document.ts';
import { sheetMakers } from './sheets/index.ts';
import { verdictOn } from './verdict.ts';

/**
 * Sends pictures of watched documents and verdicts on open ones, after each build. Nothing is drawn for a document that
 * nobody watches, and nothing is sent that was made for a text that has moved on.
 */
export class Pictures {
  readonly #connection: Connection;
  readonly #services: FettleServices;
  #watched: ReadonlySet<string> = new Set();

  constructor(connection: Connection, services: FettleServices) {
    this.#connection = connection;
    this.#services = services;
  }

  /** To be called once, after the language server's own listeners are in place, so that squiggles come first. */
  listen(): void {
    const { DocumentBuilder, LangiumDocuments } = this.#services.shared.workspace;
    DocumentBuilder.onDocumentPhase(DocumentState.Validated, (document, token) => this.#publish(document, token));
    this.#connection.onNotification(watchPicturesNotification, ({ uris }: WatchPictures) => {
      const before = this.#watched;
      this.#watched = new Set(uris.map((uri) => URI.parse(uri).toString()));
      for (const uri of this.#watched) {
        const document = before.has(uri) ? undefined : LangiumDocuments.getDocument(URI.parse(uri));
        // A document that is still being built is sent when its build ends.
        if (document?.state === DocumentState.Validated) void this.#publish(document, Token.None);
      }
    });
  }

  /** Never throws but for a cancellation: the build that calls it must go on whatever happens here. */
  async #publish(document: LangiumDocument, token: CancellationToken): Promise<void> {
    const uri = document.uri.toString();
    const isOpen = this.#services.shared.workspace.TextDocuments.get(document.uri) !== undefined;
    const isWatched = this.#watched.has(uri);
    if (!isOpen && !isWatched) return;
    try {
      await interruptAndCheck(token);
      const version = builtVersion(document);
      if (version === undefined) return;
      const evaluated = evaluateDocument(this.#services, document);
      if (isOpen) await this.#connection.sendNotification(verdictNotification, verdictOn(uri, version, evaluated));
      if (!isWatched) return;
      await interruptAndCheck(token);
      const words = { uri, version, statementAround: (offset: number) => statementAround(document, offset) };
      const picture = pictureOfDocument(words, evaluated, sheetMakers, (sheet, error) =>
        this.#connection.console.error(`the sheet ${sheet} of ${uri} failed: ${describeError(error)}`),
      );
      await this.#connection.sendNotification(pictureNotification, picture);
    } catch (error) {
      if (isOperationCancelled(error)) throw error;
      this.#connection.console.error(`the picture of ${uri} failed: ${describeError(error)}`);
    }
  }
}

/** The version whose text was built; undefined when the open text has moved on, for then a newer build is coming. */
function builtVersion(document: LangiumDocument): number | undefined {
  const built = document.parseResult.value.$cstNode?.root.fullText;
  const { textDocument } = document;
  return built === undefined || built === textDocument.getText() ? textDocument.version : undefined;
}
