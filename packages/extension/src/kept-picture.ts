import {
  type FrameState,
  type FromPage,
  type PartView,
  type Picture,
  type PictureFinding,
  type PictureFrame,
  type PieceView,
  type TextSpan,
  withFrame,
} from '@fettle/protocol';
import { moveSpan, type SpanEdit } from './moved-spans.ts';

/**
 * The picture of one document as the extension keeps it: put together from frames, the last good pieces while the text
 * is broken, and every span carried along with the edits made since, so that a click on an older picture still finds its
 * words. Pure; knows nothing of the editor.
 */

/** Parts count from their piece's start; those that an edit leaves alone stay the same objects, and so does the list. */
function movedPiece(piece: PieceView, edits: readonly SpanEdit[]): PieceView {
  let moved = piece;
  for (const edit of edits) moved = movedByOne(moved, edit);
  return moved;
}

function movedByOne(piece: PieceView, edit: SpanEdit): PieceView {
  const span = moveSpan(piece.span, edit);
  let changed = false;
  const parts = piece.parts.map((part: PartView) => {
    const { start, end } = part.span;
    const words = moveSpan({ start: start + piece.span.start, end: end + piece.span.start }, edit);
    const within = { start: words.start - span.start, end: words.end - span.start };
    if (within.start === start && within.end === end) return part;
    changed = true;
    return { ...part, span: within };
  });
  return { ...piece, span, parts: changed ? parts : piece.parts };
}

function movedFinding(finding: PictureFinding, edits: readonly SpanEdit[]): PictureFinding {
  return edits.length === 0 ? finding : { ...finding, span: edits.reduce(moveSpan, finding.span) };
}

/** Bounds what is kept should the server fall silent; beyond it spans may be off, which a click then shows. */
const mostEditsKept = 2000;

/** Of so many versions a click may still be on its way when the picture has been made anew. */
const mostVersionsKept = 16;

export type Received =
  /** `anew`: versions count from the start, which the page must know to accept the picture. */
  | { readonly kind: 'taken'; readonly anew: boolean }
  /** Older than what is kept, or of an earlier opening of the text. */
  | { readonly kind: 'dropped' }
  /** It presumes a frame that never arrived: a full one must be asked for. */
  | { readonly kind: 'lost' };

export class KeptPicture {
  /** As the server knows it, its spans those of its own version. */
  #received: FrameState | undefined;
  #shown: Picture | undefined;
  #edits: { readonly version: number; readonly edits: readonly SpanEdit[] }[] = [];
  /** Keys of the pieces, in their order, by the version they were shown for. */
  readonly #keys = new Map<number, readonly string[]>();
  #anew = false;
  /** What is shown is one piece that was kept over a reload; the text may hold others. */
  #fromBefore = false;

  /** What the page should show, its spans as the text stands now; absent until the first picture. */
  get shown(): Picture | undefined {
    return this.#shown;
  }

  /**
   * Before the first picture of a text that was shown before: its last good state, for the case that the text is broken
   * just now. What it shows holds for no version.
   */
  startFrom(uri: string, piece: PieceView): void {
    if (this.#shown !== undefined) return;
    this.#shown = { uri, version: 0, readable: false, pieces: [piece], findings: [], verdict: '' };
    this.#anew = true;
    this.#fromBefore = true;
  }

  /** Takes a frame in. `textVersion` is that of the open text; without one, it is closed and what comes last holds. */
  receive(frame: PictureFrame, textVersion: number | undefined): Received {
    const after = withFrame(this.#received, frame);
    if (after === undefined) return { kind: 'lost' };
    this.#received = after;
    const { picture } = after;
    if (textVersion !== undefined && picture.version > textVersion) return { kind: 'dropped' };
    const anew = this.#anew || textVersion === undefined;
    if (!anew && this.#shown !== undefined && picture.version < this.#shown.version) return { kind: 'dropped' };
    this.#anew = textVersion === undefined;
    this.#edits = this.#edits.filter((entry) => entry.version > picture.version);
    const since = this.#edits.flatMap((entry) => entry.edits);
    const now = {
      ...picture,
      pieces: picture.pieces.map((piece) => movedPiece(piece, since)),
      findings: picture.findings.map((finding) => movedFinding(finding, since)),
    };
    this.#shown = withLastGood(now, this.#shown?.pieces ?? [], this.#fromBefore);
    if (now.readable) this.#fromBefore = false;
    this.#keys.delete(picture.version);
    this.#keys.set(
      picture.version,
      this.#shown.pieces.map(({ key }) => key),
    );
    for (const version of this.#keys.keys()) if (this.#keys.size > mostVersionsKept) this.#keys.delete(version);
    return { kind: 'taken', anew };
  }

  /** The text was edited; `version` is what it became. The edits apply one after another. */
  edited(version: number, edits: readonly SpanEdit[]): void {
    this.#edits.push({ version, edits });
    if (this.#edits.length > mostEditsKept) this.#edits.shift();
    if (this.#shown === undefined) return;
    this.#shown = {
      ...this.#shown,
      pieces: this.#shown.pieces.map((piece) => movedPiece(piece, edits)),
      findings: this.#shown.findings.map((finding) => movedFinding(finding, edits)),
    };
  }

  /** The document was closed or opened: its versions count from the start. */
  countAnew(): void {
    this.#anew = true;
    this.#edits = [];
    this.#keys.clear();
  }

  /**
   * The words a message from the page speaks of. A part is known by its id, so that a click made just before the picture
   * was made anew still finds it, as long as the part is there; a finding only by its place, in the very picture kept.
   * `undefined` where there is no such thing.
   */
  wordsOf(message: Extract<FromPage, { kind: 'choose' | 'choose-finding' }>): TextSpan | undefined {
    const shown = this.#shown;
    if (shown === undefined || message.uri !== shown.uri) return undefined;
    switch (message.kind) {
      case 'choose': {
        const key = this.#keys.get(message.version)?.[message.piece];
        const piece =
          message.version === shown.version
            ? shown.pieces[message.piece]
            : shown.pieces.find((each) => each.key === key);
        const part = piece?.parts.find(({ id }) => id === message.part);
        return piece === undefined || part === undefined ? undefined : wordsOfPart(piece, part);
      }
      case 'choose-finding':
        return message.version === shown.version ? shown.findings[message.finding]?.span : undefined;
      default:
        return message satisfies never;
    }
  }

  /** The piece a message from the page speaks of, under the same condition. */
  pieceOf(message: { readonly uri: string; readonly version: number; readonly piece: number }): PieceView | undefined {
    const shown = this.#shown;
    if (shown === undefined || message.uri !== shown.uri || message.version !== shown.version) return undefined;
    return shown.pieces[message.piece];
  }

  /** The parts whose words hold `offset` most closely, and the piece they belong to; none outside every part. */
  partsAt(offset: number): { readonly piece: number; readonly parts: readonly string[] } {
    let best = { piece: 0, parts: [] as string[], size: Number.POSITIVE_INFINITY };
    this.#shown?.pieces.forEach((piece, place) => {
      for (const part of piece.parts) {
        const words = wordsOfPart(piece, part);
        if (offset < words.start || words.end < offset) continue;
        const size = words.end - words.start;
        if (size < best.size) best = { piece: place, parts: [part.id], size };
        else if (size === best.size && place === best.piece) best.parts.push(part.id);
      }
    });
    return { piece: best.piece, parts: best.parts };
  }
}

function wordsOfPart({ span }: PieceView, part: PartView): TextSpan {
  return { start: span.start + part.span.start, end: span.start + part.span.end };
}

/**
 * While the text cannot be read, the pieces there were. While it can, a piece that is wrong and has lost all its parts
 * (a brace that is missing takes them away) keeps those it had, too. What has changed since is marked as stale.
 */
function withLastGood(now: Picture, before: readonly PieceView[], mayBeMore: boolean): Picture {
  if (!now.readable) {
    if (before.length === 0) return now;
    if (!mayBeMore) return withFindingsFor(now, before);
    const known = new Set(before.map(({ key }) => key));
    const others = now.pieces.filter(({ key, parts }) => !known.has(key) && parts.length > 0);
    return withFindingsFor(now, [...before, ...others]);
  }
  const isWrong = (piece: PieceView) =>
    now.findings.some(
      ({ severity, span }) => severity === 'error' && span.start <= piece.span.end && piece.span.start <= span.end,
    );
  const pieces = now.pieces.map((piece) => {
    if (piece.parts.length > 0 || !isWrong(piece)) return piece;
    const good = before.find(({ key, parts }) => key === piece.key && parts.length > 0);
    return good === undefined ? piece : { ...good, stale: true };
  });
  return { ...now, pieces };
}

/** Findings name their piece by its place in a list, which has become another list. */
function withFindingsFor(now: Picture, pieces: readonly PieceView[]): Picture {
  const findings = now.findings.map((finding): PictureFinding => {
    if (finding.piece === undefined) return finding;
    const { piece, ...rest } = finding;
    const place = pieces.findIndex(({ key }) => key === now.pieces[piece]?.key);
    if (place >= 0) return { ...rest, piece: place };
    // A piece under another name stands where it stood.
    return now.pieces.length === pieces.length ? finding : rest;
  });
  return { ...now, pieces, findings };
}
