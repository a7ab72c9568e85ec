import type { TextSpan } from './picture.ts';

/** What the extension asks the server about a picture, and what it is answered. */

/** Where a line between two spaces would go. Answers a `DivisionAnswer`. */
export const moveDivisionRequest = 'fettle/moveDivision';

export interface MoveDivision {
  readonly uri: string;
  /** Of the picture in which the line was taken hold of. */
  readonly version: number;
  readonly piece: string;
  readonly division: string;
  /** Marks of the piece's ruler, to the right or downwards; less than nothing for the other way. */
  readonly steps: number;
}

export type DivisionAnswer =
  /** The edits belong together and lie apart; `sentence` tells what they come to. */
  | {
      readonly kind: 'edits';
      readonly edits: readonly { readonly span: TextSpan; readonly text: string }[];
      readonly sentence: string;
    }
  /** Nothing in the text can be changed so that the line moves. */
  | { readonly kind: 'refused'; readonly sentence: string }
  /** The text has moved on since that version. */
  | { readonly kind: 'stale' };

/** A sheet as the text of a file. Answers an `ExportAnswer`. */
export const exportSheetRequest = 'fettle/exportSheet';

export type SheetFileFormat = 'svg' | 'csv';

export interface ExportSheet {
  readonly uri: string;
  readonly piece: string;
  /** Empty: the first sheet that has such a format. */
  readonly sheet: string;
  readonly format: SheetFileFormat;
}

export type ExportAnswer =
  /** `name` is a proposal for the file, without its ending. */
  | { readonly kind: 'file'; readonly name: string; readonly text: string }
  | { readonly kind: 'refused'; readonly sentence: string };

/** The key of the piece whose words hold an offset, or come last before it. Answers a string, or null for none. */
export const pieceAtRequest = 'fettle/pieceAt';

export interface PieceAt {
  readonly uri: string;
  readonly offset: number;
}

/** The plans that were found for a piece are good enough: nothing better is to be looked for. */
export const stopPlanningNotification = 'fettle/stopPlanning';

export interface StopPlanning {
  readonly uri: string;
  readonly piece: string;
}

/** What the shop files have to say once a piece is cut as planned. Answers a `KeepOffcutsAnswer`. */
export const keepOffcutsRequest = 'fettle/keepOffcuts';

export interface KeepOffcuts {
  readonly uri: string;
  /** Empty: the first piece. */
  readonly piece: string;
}

export interface ChangedFile {
  readonly uri: string;
  /** The whole text that the edits are of: a file that says anything else by then has moved on. */
  readonly text: string;
  readonly edits: readonly { readonly span: TextSpan; readonly text: string }[];
}

export type KeepOffcutsAnswer =
  | { readonly kind: 'edits'; readonly files: readonly ChangedFile[]; readonly sentence: string }
  | { readonly kind: 'refused'; readonly sentence: string };
