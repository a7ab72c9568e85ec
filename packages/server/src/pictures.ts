import type { Evaluation } from '@fettle/engine';
import { evaluateDocument, type FettleServices, statementAround } from '@fettle/language';
import {
  type FrameState,
  frameOf,
  pictureNotification,
  readWatchPictures,
  type StopPlanning,
  stopPlanningNotification,
  verdictNotification,
  type WatchedPicture,
  type WatchPictures,
  watchPicturesNotification,
} from '@fettle/protocol';
import { DocumentState, interruptAndCheck, isOperationCancelled, type LangiumDocument, URI } from 'langium';
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { CancellationToken as Token } from 'vscode-languageserver';
import { DrawnPieces } from './drawn-pieces.ts';
import { describeError } from './guarded-connection.ts';
import { pictureOfDocument, pieceKeys, piecesToPlan, type ShownSheets } from './picture-of-document.ts';
import { piecesToShow } from './pieces-to-show.ts';
import type { PiecePlans } from './plans/piece-plans.ts';
import { sheetMakers } from './sheets/index.ts';
import { verdictOn } from './verdict.ts';

/**
 * Sends pictures of watched documents and verdicts on open ones, after each build. Nothing is drawn for a document that
 * nobody watches, no sheet that nobody looks at, nothing twice; and nothing is sent that was made for a text that has
 * moved on.
 */
export class Pictures {
  readonly #connection: Connection;
  readonly #services: FettleServices;
  readonly #drawn: DrawnPieces;
  readonly #plans: PiecePlans;
  #watched = new Map<string, WatchedPicture>();
  /** What the extension has of each watched document. */
  readonly #sent = new Map<string, FrameState>();

  constructor(connection: Connection, services: FettleServices, plans: PiecePlans) {
    this.#connection = connection;
    this.#services = services;
    this.#plans = plans;
    this.#drawn = new DrawnPieces(sheetMakers, plans, (sheet, error) =>
      connection.console.error(`the sheet ${sheet} failed: ${describeError(error)}`),
    );
  }

  /** To be called once, after the language server's own listeners are in place, so that squiggles come first. */
  listen(): void {
    const { DocumentBuilder } = this.#services.shared.workspace;
    DocumentBuilder.onDocumentPhase(DocumentState.Validated, (document, token) => this.#publish(document, token));
    this.#connection.onNotification(watchPicturesNotification, (wish: WatchPictures) => this.#watch(wish));
    this.#connection.onNotification(stopPlanningNotification, (wish: StopPlanning) => this.#stopPlanning(wish));
    this.#plans.listen((evaluation) => this.#betterPlans(evaluation));
  }

  #stopPlanning({ uri, piece }: StopPlanning): void {
    const document = this.#services.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
    if (document?.state !== DocumentState.Validated) return;
    const pieces = piecesToShow(evaluateDocument(this.#services, document));
    const at = pieceKeys(pieces.map(({ name }) => name)).indexOf(piece);
    const evaluation = pieces[at]?.evaluation;
    if (evaluation !== undefined) this.#plans.stop(evaluation);
  }

  /** A text that is being built is sent when its build ends, with whatever plans there are then. */
  #betterPlans(evaluation: Evaluation): void {
    for (const uri of this.#watched.keys()) {
      const document = this.#services.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
      if (document?.state !== DocumentState.Validated) continue;
      const pieces = piecesToShow(evaluateDocument(this.#services, document));
      if (pieces.some((piece) => piece.evaluation === evaluation)) void this.#publish(document, Token.None, false);
    }
  }

  /** Lengths are told in other units from now on. */
  tellAnew(): void {
    this.#drawn.forget();
    for (const uri of this.#watched.keys()) this.#publishBuilt(uri);
  }

  #watch(wish: WatchPictures): void {
    const before = this.#watched;
    const { pictures } = readWatchPictures(wish) ?? { pictures: [...before.values()] };
    this.#watched = new Map(pictures.map((each) => [URI.parse(each.uri).toString(), each]));
    for (const uri of before.keys()) if (!this.#watched.has(uri)) this.#plans.want(uri, []);
    for (const uri of this.#sent.keys()) {
      if (this.#watched.get(uri)?.afresh !== false) this.#sent.delete(uri);
    }
    for (const [uri, wish] of this.#watched) {
      if (!wish.afresh && JSON.stringify(before.get(uri)?.shown) === JSON.stringify(wish.shown)) continue;
      this.#publishBuilt(uri);
    }
  }

  #publishBuilt(uri: string): void {
    const document = this.#services.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
    // A document that is still being built is sent when its build ends.
    if (document?.state === DocumentState.Validated) void this.#publish(document, Token.None, false);
  }

  /** Never throws but for a cancellation: the build that calls it must go on whatever happens here. */
  async #publish(document: LangiumDocument, token: CancellationToken, built = true): Promise<void> {
    const uri = document.uri.toString();
    const isOpen = this.#services.shared.workspace.TextDocuments.get(document.uri) !== undefined;
    if (!isOpen && !this.#watched.has(uri)) return;
    try {
      await interruptAndCheck(token);
      const version = builtVersion(document);
      if (version === undefined) return;
      const evaluated = evaluateDocument(this.#services, document);
      if (isOpen && built) {
        await this.#connection.sendNotification(verdictNotification, verdictOn(uri, version, evaluated));
      }
      await interruptAndCheck(token);
      // Asked again only now: what is looked at may have changed meanwhile.
      const wish = this.#watched.get(uri);
      if (wish === undefined || builtVersion(document) !== version) return;
      const words = {
        uri,
        version,
        statementAround: (offset: number) => statementAround(document, offset),
        lineAt: (offset: number) => document.textDocument.positionAt(offset).line + 1,
      };
      const before = this.#sent.get(uri);
      const keys = pieceKeys(piecesToShow(evaluated).map(({ name }) => name));
      const shown = followRenames(wish.shown, before?.picture.pieces.map(({ key }) => key) ?? [], keys);
      this.#watched.set(uri, { ...wish, shown });
      this.#plans.want(
        uri,
        piecesToPlan(evaluated, this.#drawn, shown).map(({ evaluation }) => evaluation),
      );
      const picture = pictureOfDocument(words, evaluated, this.#drawn, shown);
      const frame = frameOf(picture, before);
      // Noted before it is on its way, so that the next one presumes it; messages keep their order.
      this.#sent.set(uri, { frame: frame.frame, picture });
      await this.#connection.sendNotification(pictureNotification, frame);
    } catch (error) {
      if (isOperationCancelled(error)) throw error;
      this.#connection.console.error(`the picture of ${uri} failed: ${describeError(error)}`);
    }
  }
}

/** A piece that has another name now is still looked at: it stands where it stood. */
function followRenames(shown: ShownSheets, before: readonly string[], now: readonly string[]): ShownSheets {
  if (before.length !== now.length) return shown;
  return shown.map((each) => {
    const renamed = now.includes(each.piece) ? undefined : now[before.indexOf(each.piece)];
    return renamed === undefined ? each : { ...each, piece: renamed };
  });
}

/** The version whose text was built; undefined when the open text has moved on, for then a newer build is coming. */
export function builtVersion(document: LangiumDocument): number | undefined {
  const built = document.parseResult.value.$cstNode?.root.fullText;
  const { textDocument } = document;
  return built === undefined || built === textDocument.getText() ? textDocument.version : undefined;
}
