import type { PageMemory, PartView, Picture, PictureFinding, PieceView, SheetView } from '@fettle/protocol';

/** What the page shows, as plain data, and how messages and choices change it. Knows nothing of the DOM. */
export interface PageState {
  /** Absent until the first picture arrives. */
  readonly picture?: Picture;
  /** Key of the piece shown (`pieceKeys`); when the picture has no such piece, its first one stands in. */
  readonly piece: string;
  /** Id of the sheet shown; when the piece has no such sheet, its first one stands in. */
  readonly sheet: string;
  /** A multiple of the size at which the whole sheet fits. */
  readonly zoom: number | 'fit';
  /** The part last chosen in the page, by id; empty for none. */
  readonly chosen: string;
  /** The parts whose words hold the caret. */
  readonly lit: readonly string[];
}

export function stateFromMemory(memory: PageMemory): PageState {
  return { piece: memory.piece, sheet: memory.sheet, zoom: memory.zoom, chosen: memory.chosen, lit: [] };
}

/**
 * A picture of the same document that is older than what is shown is dropped, unless its versions count `anew`; the
 * same version may be drawn again, since a shop file it uses may have changed.
 */
export function withPicture(state: PageState, picture: Picture, anew: boolean): PageState {
  const shown = state.picture;
  if (!anew && shown !== undefined && shown.uri === picture.uri && picture.version < shown.version) return state;
  const known = new Set(picture.pieces.flatMap((piece) => piece.parts.map((part) => part.id)));
  return { ...state, picture, lit: state.lit.filter((part) => known.has(part)) };
}

/** A caret that belongs to another text than the picture shown is dropped. */
export function withCaret(
  state: PageState,
  caret: {
    readonly uri: string;
    readonly version: number;
    readonly piece: number;
    readonly parts: readonly string[];
  },
): PageState {
  const shown = state.picture;
  if (shown === undefined || shown.uri !== caret.uri || shown.version !== caret.version) return state;
  const follows = caret.parts.length === 0 ? undefined : pieceKeys(shown)[caret.piece];
  return { ...state, lit: caret.parts, piece: follows ?? state.piece };
}

/** One key a piece, its name; a name that is used again carries its turn. */
export function pieceKeys(picture: Picture): readonly string[] {
  const turns = new Map<string, number>();
  return picture.pieces.map(({ name }) => {
    const turn = (turns.get(name) ?? 0) + 1;
    turns.set(name, turn);
    return turn === 1 ? name : `${name} (${turn})`;
  });
}

/** The shown piece's place in the picture's list; 0 when there is none. */
export function shownPlace(state: PageState): number {
  if (state.picture === undefined) return 0;
  return Math.max(0, pieceKeys(state.picture).indexOf(state.piece));
}

export function shownPiece(state: PageState): PieceView | undefined {
  return state.picture?.pieces[shownPlace(state)];
}

export function shownSheet(state: PageState): SheetView | undefined {
  const sheets = shownPiece(state)?.sheets ?? [];
  return sheets.find((sheet) => sheet.id === state.sheet) ?? sheets[0];
}

export function partView(state: PageState, id: string): PartView | undefined {
  return shownPiece(state)?.parts.find((part) => part.id === id);
}

export interface NumberedFinding {
  readonly finding: PictureFinding;
  /** Its place in the picture's list, by which it is chosen. */
  readonly place: number;
  /** What its sign and its line in the list show: the gravest first. */
  readonly number: number;
}

const gravity: Readonly<Record<PictureFinding['severity'], number>> = { error: 0, warning: 1, note: 2 };

export function numberedFindings(picture: Picture | undefined): readonly NumberedFinding[] {
  return (picture?.findings ?? [])
    .map((finding, place) => ({ finding, place }))
    .sort((one, other) => gravity[one.finding.severity] - gravity[other.finding.severity])
    .map((each, at) => ({ ...each, number: at + 1 }));
}

/** What keeps the piece from being as it should. Notes are left out: nothing is wrong where they stand. */
export function graveFindings(picture: Picture | undefined): readonly NumberedFinding[] {
  return numberedFindings(picture).filter(({ finding }) => finding.severity !== 'note');
}

/** Steps of a quarter, from a quarter to sixteen times the fitting size; once through 1 the sheet fits again. */
export function zoomed(zoom: number | 'fit', direction: 'in' | 'out'): number | 'fit' {
  const now = zoom === 'fit' ? 1 : zoom;
  const next = Math.min(16, Math.max(0.25, direction === 'in' ? now * 1.25 : now / 1.25));
  return Math.abs(next - 1) < 0.01 ? 'fit' : next;
}
