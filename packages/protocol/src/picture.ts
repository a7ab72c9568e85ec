/**
 * What the server tells about a document: its picture and its verdict. Plain JSON, no inner type of another room.
 * Offsets are UTF-16 code units, as editors count, in the document as it stood at the message's version.
 */

export interface TextSpan {
  readonly start: number;
  readonly end: number;
}

export interface PictureFinding {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'note';
  readonly sentence: string;
  readonly span: TextSpan;
  /** Place of the piece whose words it stands on in the picture's list; absent for what stands outside every piece. */
  readonly piece?: number;
  /** Ids of the parts it concerns, as in `PartView.id`; they carry the finding's sign in the picture. */
  readonly parts: readonly string[];
}

/**
 * One sheet of the preview: a drawing as SVG, or a table. `later`: there is such a sheet, but nobody has looked at it
 * yet, so it was not drawn. More kinds of sheet are added by registering them. `group`: what it has in common with its
 * neighbours among the tabs, in a word ('Drawings').
 */
export type SheetView =
  | {
      readonly kind: 'drawing';
      readonly id: string;
      readonly title: string;
      readonly group?: string;
      readonly choice?: SheetChoice;
      readonly svg: string;
      readonly description: string;
      /** Where a boundary between two spaces can be taken hold of. */
      readonly divisions: readonly DivisionLine[];
    }
  | {
      readonly kind: 'table';
      readonly id: string;
      readonly title: string;
      readonly group?: string;
      readonly columns: readonly string[];
      readonly rows: readonly TableRow[];
    }
  | {
      readonly kind: 'later';
      readonly id: string;
      readonly title: string;
      readonly group?: string;
      readonly shows: 'drawing' | 'table';
      readonly choice?: SheetChoice;
    };

/**
 * Sheets of which one shows one at a time, such as sections through one opening or another: they stand side by side in
 * the list, have one tab together, and the reader chooses among them.
 */
export interface SheetChoice {
  /** The same for all of them; their ids are this, a colon and what tells them apart. */
  readonly of: string;
  /** On their tab. */
  readonly tab: string;
  /** What is chosen: 'Opening'. */
  readonly label: string;
  /** This one: '“cards”'. */
  readonly option: string;
}

export interface TableRow {
  /** What is no row like the others: words over those that follow, in its first cell, or what they come to. */
  readonly kind?: 'heading' | 'total';
  /** Ids of the parts the row stands for; the first is the one a click should find. None for a row of totals. */
  readonly parts: readonly string[];
  readonly cells: readonly string[];
}

/** The line between two neighbours of a row or stack, in the units of the drawing's own view box. */
export interface DivisionLine {
  /** Unique in its piece and stable while the text around it changes. */
  readonly id: string;
  /** In the maker's words: 'between "cards" and "dice"'. */
  readonly label: string;
  /** Which way it can be moved: along x (a line that stands upright) or along y. */
  readonly moves: 'x' | 'y';
  /** Its place on the axis along which it moves, and its ends on the other. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
  /** One mark of the piece's ruler, in the drawing's units. */
  readonly step: number;
  /** What lies on either side now, in words: '"cards" 5", "dice" 6"'. */
  readonly sizes: string;
}

/** Where a part (by id, as in the SVG's data-part) comes from, and how its sizes were derived. */
export interface PartView {
  readonly id: string;
  readonly label: string;
  readonly mark: string;
  /** Its finished length, width and thickness, in the piece's own units. */
  readonly sizes: readonly string[];
  /** Empty while none is chosen. */
  readonly material: string;
  /** Counted from the start of its piece, so that it holds while the text around the piece changes. */
  readonly span: TextSpan;
  /** Several lines; made for reading, never for parsing. Empty in a piece nobody looks at. */
  readonly derivation: string;
}

export interface PieceView {
  /** Unique in the document: its name, with its turn where the name is used again. */
  readonly key: string;
  readonly name: string;
  readonly span: TextSpan;
  readonly sheets: readonly SheetView[];
  readonly parts: readonly PartView[];
  /** The last good state of a piece that cannot be worked out just now. */
  readonly stale?: boolean;
  /** All pieces of the text as one. The ids of its parts begin with the turn of their piece: `12/case/top`. */
  readonly together?: true;
  /** How far the search for cutting plans is, 0 to 1; absent while nothing is searched for. */
  readonly planning?: number;
}

/** A document's picture, whole, as either end keeps it. It travels as a `PictureFrame`. */
export interface Picture {
  readonly uri: string;
  readonly version: number;
  /** `false` when the text cannot be read well enough: the last good pieces stay, marked stale. */
  readonly readable: boolean;
  readonly pieces: readonly PieceView[];
  readonly findings: readonly PictureFinding[];
  /** 'fits', or '2 findings: 3/16" too much'. */
  readonly verdict: string;
}

/** Server to extension, after each evaluation of any open document, watched or not: what the status bar says. */
export interface Verdict {
  readonly uri: string;
  readonly version: number;
  readonly readable: boolean;
  readonly verdict: string;
  readonly errors: number;
  readonly warnings: number;
}

export const verdictNotification = 'fettle/verdict';

/** Which sheet of which piece is looked at in one document; what is not known of yet is the first there is. */
export interface WatchedPicture {
  readonly uri: string;
  /** By key (`PieceView.key`); several panels may show several pieces of one document. */
  readonly shown: readonly { readonly piece: string; readonly sheet: string }[];
  /** The extension has lost what it was sent: the next frame must be a full one. */
  readonly afresh: boolean;
}

/** Extension to server: which documents want pictures. Replaces the list sent before. */
export interface WatchPictures {
  readonly pictures: readonly WatchedPicture[];
}

export const watchPicturesNotification = 'fettle/watchPictures';

/** The id of the sheet that is shown where `wanted` is: itself, else the first of the same choice, else the first. */
export function standsInFor(wanted: string, sheets: readonly string[]): string | undefined {
  if (sheets.includes(wanted)) return wanted;
  const [of = ''] = wanted.split(':', 1);
  return sheets.find((sheet) => sheet === of || sheet.startsWith(`${of}:`)) ?? sheets[0];
}
