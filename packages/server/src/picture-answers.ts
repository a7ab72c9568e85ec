import { isTogether } from '@fettle/engine';
import { type EvaluatedPiece, evaluateDocument, type FettleServices } from '@fettle/language';
import {
  type DivisionAnswer,
  type ExportAnswer,
  type ExportSheet,
  exportSheetRequest,
  type KeepOffcuts,
  type KeepOffcutsAnswer,
  keepOffcutsRequest,
  type MoveDivision,
  moveDivisionRequest,
  type PieceAt,
  pieceAtRequest,
  type SheetFileFormat,
} from '@fettle/protocol';
import { DocumentState, type LangiumDocument, URI } from 'langium';
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { divisionAnswer } from './division-edits.ts';
import { describeError } from './guarded-connection.ts';
import { pieceKeys } from './picture-of-document.ts';
import { builtVersion } from './pictures.ts';
import { piecesToShow } from './pieces-to-show.ts';
import { offcutEdits } from './plans/offcut-edits.ts';
import type { PiecePlans } from './plans/piece-plans.ts';
import { sheetMakers } from './sheets/index.ts';
import { type FoundSheet, findSheet } from './sheets/sheet-ids.ts';

/**
 * Answers what is asked about a picture: where a line would go, what a sheet's file holds, which piece stands where. A
 * request that does not make sense is answered like one that cannot be met; none of them ends the server.
 */
export class PictureAnswers {
  readonly #connection: Connection;
  readonly #services: FettleServices;
  readonly #plans: PiecePlans;
  readonly #settled: () => Promise<void>;

  /** `settled` ends once earlier edits have been taken up. */
  constructor(connection: Connection, services: FettleServices, plans: PiecePlans, settled: () => Promise<void>) {
    this.#plans = plans;
    this.#connection = connection;
    this.#services = services;
    this.#settled = settled;
  }

  listen(): void {
    this.#answer(moveDivisionRequest, { kind: 'stale' }, (params: MoveDivision, token) => this.#move(params, token));
    this.#answer(
      exportSheetRequest,
      { kind: 'refused', sentence: 'The sheet could not be made: the log says why' },
      (params: ExportSheet, token) => this.#export(params, token),
    );
    this.#answer(
      keepOffcutsRequest,
      { kind: 'refused', sentence: 'The offcuts could not be worked out: the log says why' },
      (params: KeepOffcuts, token) => this.#keepOffcuts(params, token),
    );
    this.#answer(pieceAtRequest, null, (params: PieceAt, token) => this.#pieceAt(params, token));
  }

  #answer<Params, Answer>(
    method: string,
    failed: Answer,
    handle: (params: Params, token: CancellationToken) => Promise<Answer>,
  ): void {
    this.#connection.onRequest(method, async (params: Params, token: CancellationToken): Promise<Answer> => {
      try {
        await this.#settled();
        return await handle(params, token);
      } catch (error) {
        this.#connection.console.error(`${method} failed: ${describeError(error)}`);
        return failed;
      }
    });
  }

  async #document(uri: string, token: CancellationToken): Promise<LangiumDocument | undefined> {
    const { LangiumDocuments, DocumentBuilder } = this.#services.shared.workspace;
    const document = LangiumDocuments.getDocument(URI.parse(uri));
    if (document === undefined) return undefined;
    await DocumentBuilder.waitUntil(DocumentState.Linked, document.uri, token);
    return LangiumDocuments.getDocument(URI.parse(uri));
  }

  #pieces(document: LangiumDocument): ReadonlyMap<string, EvaluatedPiece> {
    const pieces = piecesToShow(evaluateDocument(this.#services, document));
    const keys = pieceKeys(pieces.map(({ name }) => name));
    return new Map(pieces.map((piece, at) => [keys[at] ?? piece.name, piece]));
  }

  async #move(
    { uri, version, piece, division, steps }: MoveDivision,
    token: CancellationToken,
  ): Promise<DivisionAnswer> {
    const document = await this.#document(uri, token);
    if (document === undefined || builtVersion(document) !== version) return { kind: 'stale' };
    const evaluated = this.#pieces(document).get(piece);
    if (evaluated === undefined || !Number.isSafeInteger(steps)) return { kind: 'stale' };
    const text = document.textDocument.getText();
    return divisionAnswer(evaluated, { uri: document.uri.toString(), text }, division, steps);
  }

  async #export({ uri, piece, sheet, format }: ExportSheet, token: CancellationToken): Promise<ExportAnswer> {
    const document = await this.#document(uri, token);
    const pieces = document === undefined ? new Map<string, EvaluatedPiece>() : this.#pieces(document);
    const evaluated = piece === '' ? [...pieces.values()][0] : pieces.get(piece);
    if (evaluated === undefined) return { kind: 'refused', sentence: 'There is no such piece in the text just now' };
    const found = sheet === '' ? firstWith(format) : findSheet(sheetMakers, sheet);
    if (found?.maker.files[format] === undefined) {
      return { kind: 'refused', sentence: `This sheet has no form as ${format.toUpperCase()}` };
    }
    const { maker, option } = found;
    if (!maker.suits(evaluated))
      return { kind: 'refused', sentence: `There is nothing in the ${maker.title.toLowerCase()} yet` };
    const words = maker.choice?.options(evaluated).find(({ id }) => id === option)?.words ?? '';
    const name = fileName(`${evaluated.name} ${maker.title.toLowerCase()} ${words}`);
    const text =
      maker.needs === undefined
        ? maker.files[format]?.(evaluated, option)
        : maker.files[format]?.(evaluated, await this.#plans.finished(evaluated.evaluation), option);
    return { kind: 'file', name, text: text ?? '' };
  }

  async #keepOffcuts({ uri, piece }: KeepOffcuts, token: CancellationToken): Promise<KeepOffcutsAnswer> {
    const document = await this.#document(uri, token);
    const pieces = document === undefined ? new Map<string, EvaluatedPiece>() : this.#pieces(document);
    const evaluated = piece === '' ? [...pieces.values()][0] : pieces.get(piece);
    if (evaluated === undefined) return { kind: 'refused', sentence: 'There is no such piece in the text just now' };
    const plan = await this.#plans.finished(evaluated.evaluation);
    const { LangiumDocuments } = this.#services.shared.workspace;
    return offcutEdits(evaluated, plan, (each) => LangiumDocuments.getDocument(URI.parse(each)));
  }

  async #pieceAt({ uri, offset }: PieceAt, token: CancellationToken): Promise<string | null> {
    const document = await this.#document(uri, token);
    if (document === undefined) return null;
    const pieces = [...this.#pieces(document)].filter(([, { evaluation }]) => !isTogether(evaluation));
    const [first] = pieces;
    return (pieces.findLast(([, piece]) => piece.range.start <= offset) ?? first)?.[0] ?? null;
  }
}

function firstWith(format: SheetFileFormat): FoundSheet | undefined {
  const maker = sheetMakers.find((each) => each.files[format] !== undefined);
  return maker === undefined ? undefined : { maker };
}

/** A name that every system takes: what one of them forbids becomes a space, and it is not too long. */
function fileName(words: string): string {
  const plain = words
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must go.
    .replace(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069\\/:*?"<>|]+/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s.]+/, '');
  return (
    Array.from(plain)
      .slice(0, 80)
      .join('')
      .replace(/[\s.]+$/, '') || 'piece'
  );
}
