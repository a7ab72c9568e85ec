import type { PartView, Picture, PictureFinding, PieceView, SheetView, TextSpan } from './picture.ts';

/**
 * How a picture travels: only what changed since the last one sent. A piece whose content is the same is named and
 * placed, nothing more. Both ways (server to extension, extension to page) use these two functions. What is the same
 * is known by identity, so whoever keeps pictures must keep unchanged parts and sheets as the same objects.
 */

/** A piece as it travels; what is absent is as it was in the frame before. */
export interface PieceFrame {
  readonly key: string;
  readonly name: string;
  readonly span: TextSpan;
  readonly stale?: boolean;
  readonly together?: true;
  readonly planning?: number;
  readonly parts?: readonly PartView[];
  /** All sheets in their order; a text instead of a sheet: the one with this id is as it was. */
  readonly sheets?: readonly (SheetView | string)[];
}

/** Server to extension, as notification `fettle/picture`, after each evaluation of a watched document. */
export interface PictureFrame {
  readonly uri: string;
  readonly version: number;
  readonly readable: boolean;
  readonly verdict: string;
  /** Number of this frame among those sent of the document. */
  readonly frame: number;
  /** The frame this one presumes; absent for a full one. */
  readonly since?: number;
  readonly pieces: readonly PieceFrame[];
  /** Absent: as before. */
  readonly findings?: readonly PictureFinding[];
}

export const pictureNotification = 'fettle/picture';

/** What one end has sent, or the other has received. */
export interface FrameState {
  readonly frame: number;
  readonly picture: Picture;
}

/** What to send so that an end that has `before` comes to have `picture`. */
export function frameOf(picture: Picture, before: FrameState | undefined): PictureFrame {
  const { uri, version, readable, verdict } = picture;
  const known = before?.picture.uri === uri ? before : undefined;
  const pieces = new Map(known?.picture.pieces.map((piece) => [piece.key, piece]));
  const sameFindings = known !== undefined && known.picture.findings === picture.findings;
  return {
    uri,
    version,
    readable,
    verdict,
    frame: (before?.frame ?? 0) + 1,
    ...(known === undefined ? {} : { since: known.frame }),
    pieces: picture.pieces.map((piece) => pieceFrame(piece, pieces.get(piece.key))),
    ...(sameFindings ? {} : { findings: picture.findings }),
  };
}

function pieceFrame(piece: PieceView, before: PieceView | undefined): PieceFrame {
  const { key, name, span, stale, together, planning, parts, sheets } = piece;
  return {
    key,
    name,
    span,
    ...(stale === true ? { stale } : {}),
    ...(together === true ? { together } : {}),
    ...(planning === undefined ? {} : { planning }),
    ...(before?.parts === parts ? {} : { parts }),
    ...(before?.sheets === sheets ? {} : { sheets: sheets.map((sheet) => sheetFrame(sheet, before)) }),
  };
}

function sheetFrame(sheet: SheetView, before: PieceView | undefined): SheetView | string {
  return before?.sheets.includes(sheet) === true ? sheet.id : sheet;
}

/** The picture after `frame`; undefined when the frame presumes what this end does not have: ask for a full one. */
export function withFrame(before: FrameState | undefined, frame: PictureFrame): FrameState | undefined {
  const presumed = frame.since === undefined ? undefined : before;
  if (frame.since !== undefined && (presumed?.frame !== frame.since || presumed.picture.uri !== frame.uri)) {
    return undefined;
  }
  const known = new Map(presumed?.picture.pieces.map((piece) => [piece.key, piece]));
  const pieces: PieceView[] = [];
  for (const each of frame.pieces) {
    const piece = pieceAfter(known.get(each.key), each);
    if (piece === undefined) return undefined;
    pieces.push(piece);
  }
  const findings = frame.findings ?? presumed?.picture.findings;
  if (findings === undefined) return undefined;
  const { uri, version, readable, verdict } = frame;
  return { frame: frame.frame, picture: { uri, version, readable, verdict, pieces, findings } };
}

function pieceAfter(before: PieceView | undefined, frame: PieceFrame): PieceView | undefined {
  const { key, name, span, stale, together, planning } = frame;
  const parts = frame.parts ?? before?.parts;
  const sheets = frame.sheets === undefined ? before?.sheets : sheetsAfter(before, frame.sheets);
  if (parts === undefined || sheets === undefined) return undefined;
  return {
    ...{ key, name, span, parts, sheets },
    ...(stale === true ? { stale } : {}),
    ...(together === true ? { together } : {}),
    ...(planning === undefined ? {} : { planning }),
  };
}

function sheetsAfter(
  before: PieceView | undefined,
  frames: readonly (SheetView | string)[],
): readonly SheetView[] | undefined {
  const sheets = frames.map((frame) =>
    typeof frame === 'string' ? before?.sheets.find((sheet) => sheet.id === frame) : frame,
  );
  return sheets.every((sheet) => sheet !== undefined) ? sheets : undefined;
}
