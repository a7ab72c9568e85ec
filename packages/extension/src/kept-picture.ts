import type { FromPage, PartView, Picture, PictureFinding, PieceView, TextSpan } from '@fettle/protocol';

/**
 * The picture of one document as the extension keeps it: the last good pieces while the text is broken, and every span
 * carried along with the edits made since, so that a click on an older picture still finds its words. Pure; knows
 * nothing of the editor.
 */

/** One edit: `removed` code units at `start` gave way to `inserted` ones. */
export interface SpanEdit {
  readonly start: number;
  readonly removed: number;
  readonly inserted: number;
}

/**
 * Where `span` lies after `edit`. Text put in at its very start or end stays outside; text that replaces one of its
 * ends belongs to it.
 */
export function moveSpan(span: TextSpan, edit: SpanEdit): TextSpan {
  const { start, inserted, removed } = edit;
  const oldEnd = start + removed;
  const shift = inserted - removed;
  const newStart = span.start >= oldEnd ? span.start + shift : Math.min(span.start, start);
  let newEnd = span.end;
  if (span.end > oldEnd || (span.end === oldEnd && removed > 0)) newEnd = span.end + shift;
  else if (span.end > start) newEnd = start + inserted;
  return { start: newStart, end: Math.max(newStart, newEnd) };
}

function moved<T extends { readonly span: TextSpan }>(thing: T, edits: readonly SpanEdit[]): T {
  return edits.length === 0 ? thing : { ...thing, span: edits.reduce(moveSpan, thing.span) };
}

function movedPiece(piece: PieceView, edits: readonly SpanEdit[]): PieceView {
  if (edits.length === 0) return piece;
  return { ...moved(piece, edits), parts: piece.parts.map((part: PartView) => moved(part, edits)) };
}

/** Bounds what is kept should the server fall silent; beyond it spans may be off, which a click then shows. */
const mostEditsKept = 2000;

export class KeptPicture {
  #shown: Picture | undefined;
  #edits: { readonly version: number; readonly edits: readonly SpanEdit[] }[] = [];
  #anew = false;

  /** What the page should show, its spans as the text stands now; absent until the first picture. */
  get shown(): Picture | undefined {
    return this.#shown;
  }

  /**
   * Takes a picture in; `undefined` when it is older than the one kept, or was made for an earlier opening of the text.
   * Otherwise tells whether versions count anew, which the page must know to accept it. `textVersion` is that of the
   * open text; without one, the text is closed and what comes last holds.
   */
  receive(picture: Picture, textVersion: number | undefined): { readonly anew: boolean } | undefined {
    if (textVersion !== undefined && picture.version > textVersion) return undefined;
    const anew = this.#anew || textVersion === undefined;
    if (!anew && this.#shown !== undefined && picture.version < this.#shown.version) return undefined;
    this.#anew = textVersion === undefined;
    this.#edits = this.#edits.filter((entry) => entry.version > picture.version);
    const since = this.#edits.flatMap((entry) => entry.edits);
    const lastGood = picture.readable ? [] : (this.#shown?.pieces ?? []);
    this.#shown = {
      ...picture,
      pieces: lastGood.length > 0 ? lastGood : picture.pieces.map((piece) => movedPiece(piece, since)),
      findings: picture.findings.map((finding: PictureFinding) => moved(finding, since)),
    };
    return { anew };
  }

  /** The text was edited; `version` is what it became. The edits apply one after another. */
  edited(version: number, edits: readonly SpanEdit[]): void {
    this.#edits.push({ version, edits });
    if (this.#edits.length > mostEditsKept) this.#edits.shift();
    if (this.#shown === undefined) return;
    this.#shown = {
      ...this.#shown,
      pieces: this.#shown.pieces.map((piece) => movedPiece(piece, edits)),
      findings: this.#shown.findings.map((finding) => moved(finding, edits)),
    };
  }

  /** The document was closed or opened: its versions count from the start. */
  countAnew(): void {
    this.#anew = true;
    this.#edits = [];
  }

  /** The words a message from the page speaks of; `undefined` when it was made for another picture than the one kept. */
  wordsOf(message: Exclude<FromPage, { kind: 'ready' }>): TextSpan | undefined {
    const shown = this.#shown;
    if (shown === undefined || message.uri !== shown.uri || message.version !== shown.version) return undefined;
    switch (message.kind) {
      case 'choose':
        return shown.pieces[message.piece]?.parts.find((part) => part.id === message.part)?.span;
      case 'choose-finding':
        return shown.findings[message.finding]?.span;
      default:
        return message satisfies never;
    }
  }

  /** The parts whose words hold `offset` most closely, and the piece they belong to; none outside every part. */
  partsAt(offset: number): { readonly piece: number; readonly parts: readonly string[] } {
    let best = { piece: 0, parts: [] as string[], size: Number.POSITIVE_INFINITY };
    this.#shown?.pieces.forEach((piece, place) => {
      for (const { id, span } of piece.parts) {
        if (offset < span.start || span.end < offset) continue;
        const size = span.end - span.start;
        if (size < best.size) best = { piece: place, parts: [id], size };
        else if (size === best.size && place === best.piece) best.parts.push(id);
      }
    });
    return { piece: best.piece, parts: best.parts };
  }
}
