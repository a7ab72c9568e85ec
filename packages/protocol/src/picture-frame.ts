import { type FindingsFrame, findingsAfter, findingsFrame } from './findings-frame.ts';
import { type PackedSvg, packedSvg, unpackedSvg } from './packed-svg.ts';
import type { PartView, Picture, PieceView, SheetView, TextSpan } from './picture.ts';
import { isSameData } from './same-data.ts';

/**
 * How a picture travels: only what changed since the last one sent. A piece whose content is the same is named and
 * placed, nothing more; of one that changed, the parts and sheets that did. Both ways (server to extension, extension to
 * page) use these two functions. That a piece is the same is known by identity, so whoever keeps pictures must keep its
 * parts and sheets as the same objects.
 */

type Drawing = Extract<SheetView, { kind: 'drawing' }>;

/** A sheet as it travels. */
export type SheetFrame = Exclude<SheetView, Drawing> | (Omit<Drawing, 'svg'> & { readonly svg: PackedSvg });

/** A piece as it travels; what is absent is as it was in the frame before. */
export interface PieceFrame {
  readonly key: string;
  readonly name: string;
  readonly span: TextSpan;
  readonly stale?: boolean;
  readonly together?: true;
  readonly planning?: number;
  /** All parts in their order; a text instead of a part: the one with this id is as it was. */
  readonly parts?: readonly (PartView | string)[];
  /** All sheets in their order; a text instead of a sheet: the one with this id is as it was. */
  readonly sheets?: readonly (SheetFrame | string)[];
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
  readonly findings?: FindingsFrame;
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
    ...(sameFindings ? {} : { findings: findingsFrame(picture.findings, known?.picture.findings ?? []) }),
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
    ...(before?.parts === parts ? {} : { parts: changed(parts, before?.parts ?? [], (part) => part) }),
    ...(before?.sheets === sheets ? {} : { sheets: changed(sheets, before?.sheets ?? [], sheetFrame) }),
  };
}

/** What is as it was travels as its id. */
function changed<Item extends { readonly id: string }, Travelling>(
  now: readonly Item[],
  before: readonly Item[],
  travelling: (item: Item) => Travelling,
): readonly (Travelling | string)[] {
  const known = byId(before);
  return now.map((item) => (isSameData(known.get(item.id), item) ? item.id : travelling(item)));
}

function byId<Item extends { readonly id: string }>(items: readonly Item[]): ReadonlyMap<string, Item> {
  return new Map(items.map((item) => [item.id, item]));
}

function sheetFrame(sheet: SheetView): SheetFrame {
  return sheet.kind === 'drawing' ? { ...sheet, svg: packedSvg(sheet.svg) } : sheet;
}

function sheetAfter(frame: SheetFrame): SheetView {
  return frame.kind === 'drawing' ? { ...frame, svg: unpackedSvg(frame.svg) } : frame;
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
  const told = presumed?.picture.findings;
  const findings = frame.findings === undefined ? told : findingsAfter(frame.findings, told ?? []);
  if (findings === undefined) return undefined;
  const { uri, version, readable, verdict } = frame;
  return { frame: frame.frame, picture: { uri, version, readable, verdict, pieces, findings } };
}

function pieceAfter(before: PieceView | undefined, frame: PieceFrame): PieceView | undefined {
  const { key, name, span, stale, together, planning } = frame;
  const parts = after(frame.parts, before?.parts, (part) => part);
  const sheets = after(frame.sheets, before?.sheets, sheetAfter);
  if (parts === undefined || sheets === undefined) return undefined;
  return {
    ...{ key, name, span, parts, sheets },
    ...(stale === true ? { stale } : {}),
    ...(together === true ? { together } : {}),
    ...(planning === undefined ? {} : { planning }),
  };
}

function after<Item extends { readonly id: string }, Travelling extends object>(
  frames: readonly (Travelling | string)[] | undefined,
  before: readonly Item[] | undefined,
  arrived: (frame: Travelling) => Item,
): readonly Item[] | undefined {
  if (frames === undefined) return before;
  const known = byId(before ?? []);
  const items = frames.map((frame) => (typeof frame === 'string' ? known.get(frame) : arrived(frame)));
  return items.every((item) => item !== undefined) ? items : undefined;
}
