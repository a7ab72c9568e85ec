import {
  type FrameState,
  type PageMemory,
  type PartView,
  type Picture,
  type PictureFinding,
  type PictureFrame,
  type PieceView,
  type SheetView,
  standsInFor,
  withFrame,
} from '@fettle/protocol';

/** What the page shows, as plain data, and how messages and choices change it. Knows nothing of the DOM. */
export interface PageState {
  /** Put together from the frames that have arrived; what is shown may be newer, never older. */
  readonly received?: FrameState;
  /** Absent until the first picture arrives. */
  readonly picture?: Picture;
  /** Key of the piece shown; when the picture has no such piece, its first one stands in. */
  readonly piece: string;
  /** The one piece the panel belongs to; empty when it shows them all. */
  readonly only: string;
  /** Id of the sheet shown; when the piece has no such sheet, its first one stands in. */
  readonly sheet: string;
  /** A multiple of the size at which the whole sheet fits; `fit`: what is drawn on it fits. */
  readonly zoom: number | 'fit';
  /** The part last chosen in the page, by id; empty for none. */
  readonly chosen: string;
  /** The parts whose words hold the caret. */
  readonly lit: readonly string[];
  /** There is a server; without one the picture no longer follows the text. */
  readonly served: boolean;
  /** What is being searched for; empty for nothing. */
  readonly query: string;
  /** A line that is being moved, and what is known of where it would go. */
  readonly move?: Move;
  /** Something that was done, or could not be, in words; for a while. */
  readonly told: string;
  /** The sheet that is wanted takes so long to come that this must be said. */
  readonly waited: boolean;
  /** The text has moved on, and its picture takes so long to come that this must be said. */
  readonly checking: boolean;
  /** What stands below the sheet has more room than it needs for a line or two. */
  readonly tall: boolean;
  /** The page is too narrow for tables with long words beside their figures. */
  readonly narrow: boolean;
}

export interface Move {
  readonly division: string;
  readonly steps: number;
  readonly sentence: string;
  readonly refused: boolean;
}

/** What was kept is shown at once, as the last good picture, until the first one arrives. */
export function stateFromMemory(memory: PageMemory): PageState {
  const { piece, sheet, zoom, chosen, only, last, uri, tall } = memory;
  const picture: Picture | undefined =
    last === undefined ? undefined : { uri, version: 0, readable: false, pieces: [last], findings: [], verdict: '' };
  return {
    ...(picture === undefined ? {} : { picture }),
    ...{ piece, sheet, zoom, chosen, only, lit: [], served: true, query: '', told: '', waited: false },
    ...{ checking: false, tall, narrow: false },
  };
}

/**
 * The state after a frame; `undefined` when it presumes one that never arrived. A picture of the same document that is
 * older than what is shown is noted and not shown, unless its versions count `anew`; the same version may be drawn
 * again, since a shop file it uses may have changed.
 */
export function withPicture(state: PageState, frame: PictureFrame, anew: boolean, only: string): PageState | undefined {
  const received = withFrame(state.received, frame);
  if (received === undefined) return undefined;
  const { picture } = received;
  const shown = state.picture;
  if (!anew && shown !== undefined && shown.uri === picture.uri && picture.version < shown.version) {
    return { ...state, received };
  }
  const { move: _, ...rest } = state;
  const moved = shown?.version !== picture.version || state.move === undefined ? {} : { move: state.move };
  const now = { received, picture, only, served: true, checking: false };
  const next = { ...rest, ...moved, ...now, ...(only === '' ? {} : { piece: only }) };
  if (shown !== undefined && shown.uri !== picture.uri) {
    return { ...next, piece: only, chosen: '', lit: [], query: '' };
  }
  const followed = followRename(state, next);
  const known = new Set(shownPiece(followed)?.parts.map(({ id }) => id));
  return { ...followed, lit: state.lit.filter((part) => known.has(part)) };
}

/** A piece that has another name now is still the one that is looked at: it stands where it stood. */
function followRename(before: PageState, next: PageState): PageState {
  const pieces = next.picture?.pieces ?? [];
  const shown = shownPiece(before);
  if (shown === undefined || pieces.some(({ key }) => key === shown.key)) return next;
  const now = pieces[Math.min(shownPlace(before), pieces.length - 1)];
  return now === undefined ? next : { ...next, piece: now.key };
}

/** A caret that belongs to another text than the picture shown, or another piece than the panel, is dropped. */
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
  const onShown = shownPiece(state);
  if (onShown?.together === true && state.only === '') {
    // Whoever looks at all pieces goes on doing so; the part is one of theirs.
    const ids = new Set(caret.parts.map((part) => `${caret.piece + 1}/${part}`));
    return { ...state, lit: onShown.parts.flatMap(({ id }) => (ids.has(id) ? [id] : [])) };
  }
  const follows = caret.parts.length === 0 ? undefined : shown.pieces[caret.piece]?.key;
  if (state.only !== '' && follows !== undefined && follows !== state.only) return { ...state, lit: [] };
  return { ...state, lit: caret.parts, piece: follows ?? state.piece };
}

/** The shown piece's place in the picture's list; 0 when there is none. */
export function shownPlace(state: PageState): number {
  const place = state.picture?.pieces.findIndex(({ key }) => key === state.piece) ?? 0;
  return Math.max(0, place);
}

export function shownPiece(state: PageState): PieceView | undefined {
  return state.picture?.pieces[shownPlace(state)];
}

export function shownSheet(state: PageState): SheetView | undefined {
  const sheets = shownPiece(state)?.sheets ?? [];
  const id = standsInFor(
    state.sheet,
    sheets.map((sheet) => sheet.id),
  );
  return sheets.find((sheet) => sheet.id === id);
}

export function partView(state: PageState, id: string): PartView | undefined {
  return shownPiece(state)?.parts.find((part) => part.id === id);
}

/** Why the picture may not be what the text says now; undefined when it is. */
export function whyStale(state: PageState): string | undefined {
  const piece = shownPiece(state);
  const { picture } = state;
  const last = piece === undefined ? '' : ' This is the last picture that could be drawn.';
  if (!state.served) return `Nothing is checked just now: the language server has ended.${last}`;
  if (picture !== undefined && !picture.readable) return `The text cannot be read just now.${last}`;
  return piece?.stale === true ? `This piece cannot be read just now.${last}` : undefined;
}

export interface NumberedFinding {
  readonly finding: PictureFinding;
  /** Its place in the picture's list, by which it is chosen. */
  readonly place: number;
  /** What its sign and its line in the list show: the gravest first. */
  readonly number: number;
}

const gravity: Readonly<Record<PictureFinding['severity'], number>> = { error: 0, warning: 1, note: 2 };

/** Those of the piece shown, and those that belong to no piece. */
export function numberedFindings(state: PageState): readonly NumberedFinding[] {
  const shown = shownPlace(state);
  return (state.picture?.findings ?? [])
    .map((finding, place) => ({ finding, place }))
    .filter(({ finding }) => finding.piece === undefined || finding.piece === shown)
    .sort((one, other) => gravity[one.finding.severity] - gravity[other.finding.severity])
    .map((each, at) => ({ ...each, number: at + 1 }));
}

/** What keeps the piece from being as it should. Notes are left out: nothing is wrong where they stand. */
export function graveFindings(state: PageState): readonly NumberedFinding[] {
  return numberedFindings(state).filter(({ finding }) => finding.severity !== 'note');
}

/** Other pieces of the text in which something is wrong, with how much, in their order. */
export function otherTroubles(state: PageState): readonly { readonly key: string; readonly count: number }[] {
  const shown = shownPlace(state);
  const counts = new Map<number, number>();
  for (const { piece, severity } of state.picture?.findings ?? []) {
    if (piece !== undefined && piece !== shown && severity !== 'note') counts.set(piece, (counts.get(piece) ?? 0) + 1);
  }
  return [...counts]
    .sort(([one], [other]) => one - other)
    .flatMap(([place, count]) => {
      const key = state.picture?.pieces[place]?.key;
      return key === undefined ? [] : [{ key, count }];
    });
}

/** Parts that hold every word of the search in their mark, name or material, whatever the case. */
export function foundParts(state: PageState): readonly PartView[] {
  const words = state.query.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  return (shownPiece(state)?.parts ?? []).filter((part) => {
    const all = `${part.label} ${part.mark} ${part.material}`.toLowerCase();
    return words.every((word) => all.includes(word));
  });
}

/** Steps of a quarter, from a quarter to sixteen times the size at which the whole sheet is seen. */
export function zoomed(now: number, direction: 'in' | 'out'): number {
  const next = Math.min(mostZoom, Math.max(0.25, direction === 'in' ? now * 1.25 : now / 1.25));
  return Math.abs(next - 1) < 0.01 ? 1 : next;
}

/** Errors of the piece shown: as long as there are any, nobody should build from its sheets. */
export function shownErrors(state: PageState): number {
  return numberedFindings(state).filter(({ finding }) => finding.severity === 'error').length;
}

export const mostZoom = 16;
