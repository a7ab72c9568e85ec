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
  /** Ids of the parts it concerns, as in `PartView.id`; they carry the finding's sign in the picture. */
  readonly parts: readonly string[];
}

/** One sheet of the preview: a drawing as SVG, or a table. More kinds of sheet are added by registering them. */
export type SheetView =
  | {
      readonly kind: 'drawing';
      readonly id: string;
      readonly title: string;
      readonly svg: string;
      readonly description: string;
    }
  | {
      readonly kind: 'table';
      readonly id: string;
      readonly title: string;
      readonly columns: readonly string[];
      readonly rows: readonly TableRow[];
    };

export interface TableRow {
  /** Ids of the parts the row stands for; the first is the one a click should find. None for a row of totals. */
  readonly parts: readonly string[];
  readonly cells: readonly string[];
}

/** Where a part (by id, as in the SVG's data-part) comes from, and how its sizes were derived. */
export interface PartView {
  readonly id: string;
  readonly label: string;
  readonly span: TextSpan;
  /** Several lines; made for reading, never for parsing. */
  readonly derivation: string;
}

export interface PieceView {
  readonly name: string;
  readonly span: TextSpan;
  readonly sheets: readonly SheetView[];
  readonly parts: readonly PartView[];
}

/** Server to extension, as notification `fettle/picture`, after each evaluation of a watched document. */
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

export const pictureNotification = 'fettle/picture';

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

/** Extension to server: which documents want pictures. Replaces the list sent before. */
export interface WatchPictures {
  readonly uris: readonly string[];
}

export const watchPicturesNotification = 'fettle/watchPictures';
