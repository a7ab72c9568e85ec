/**
 * Requests from extension to server about a new piece. The server knows what is asked and what is written; the extension
 * only asks, and keeps the answers, so that one can always go back.
 */

export interface NewPieceParams {
  /** By the id of each question. Whatever is missing, or cannot be used, is asked next. */
  readonly answers: Readonly<Record<string, unknown>>;
  /** What stands chosen as measure before one chooses; from the settings. */
  readonly usualMeasure: string;
  /** The texts in the folder where it will stand; `text` only of those that may serve as its shop file. */
  readonly beside: readonly { readonly name: string; readonly text?: string }[];
}

export interface NewPieceOption {
  readonly id: string;
  readonly label: string;
  readonly detail: string;
}

export type NewPieceQuestion =
  | { readonly kind: 'words'; readonly id: string; readonly prompt: string; readonly suggestion: string }
  | {
      readonly kind: 'one' | 'several';
      readonly id: string;
      readonly prompt: string;
      readonly options: readonly NewPieceOption[];
      /** What stands chosen before one chooses. */
      readonly chosen: readonly string[];
    };

export interface NewFile {
  readonly name: string;
  readonly text: string;
}

export type NewPieceStep =
  | { readonly kind: 'ask'; readonly question: NewPieceQuestion; readonly step: number; readonly steps: number }
  /** Everything is known: what to write. */
  | {
      readonly kind: 'made';
      readonly piece: NewFile;
      /** Absent when a file that is there already serves. */
      readonly shop?: NewFile;
      /** Sentences its maker has to know. */
      readonly cautions: readonly string[];
    };

export const newPieceRequest = 'fettle/newPiece';

/** Asked while one writes: why the answer to `question` cannot be used, or null. */
export interface NewPieceProblemParams extends NewPieceParams {
  readonly question: string;
  readonly answer: unknown;
}

export const newPieceProblemRequest = 'fettle/newPieceProblem';

/** Files of these names may serve as shop file of a new piece. */
export function mayBeShopOfNewPiece(name: string): boolean {
  return /^(first-)?shop(-\d+)?\.fettle$/.test(name);
}
