import type { LengthJson } from './length-json.ts';

/** A place in a text. `line` and `column` count from 1, columns and `offset` in UTF-16 code units as editors do. */
export interface PositionJson {
  readonly line: number;
  readonly column: number;
  /** From the start of the file, from 0. */
  readonly offset: number;
}

export interface PlaceJson {
  /** As given on the command line; of a file that was reached by `use`, relative to where the command ran. */
  readonly file: string;
  readonly start: PositionJson;
  /** Behind the last character. */
  readonly end: PositionJson;
}

export interface RelatedJson extends PlaceJson {
  readonly sentence: string;
}

export interface EditJson extends PlaceJson {
  /** What stands there afterwards. Lengths in it are exact. */
  readonly text: string;
}

export interface MendJson {
  readonly title: string;
  /** The best of several. */
  readonly preferred: boolean;
  /** All of them together make the mend. */
  readonly edits: readonly EditJson[];
}

export type FactJson =
  | LengthJson
  | string
  | number
  | boolean
  | readonly FactJson[]
  | { readonly [name: string]: FactJson };

export interface FindingJson extends PlaceJson {
  /** Which finding of the catalogue it is. */
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'note';
  readonly sentence: string;
  /** The numbers and names behind the sentence; which there are depends on the code. */
  readonly facts: { readonly [name: string]: FactJson };
  /** The other words concerned. */
  readonly related: readonly RelatedJson[];
  /** Ways out, best first. */
  readonly mends: readonly MendJson[];
}

/** What `fettle check --format json` prints. */
export interface CheckJson {
  readonly format: 'fettle-check';
  readonly version: 1;
  /** Those that could be read, in the order given. */
  readonly files: readonly string[];
  readonly findings: readonly FindingJson[];
  /** Files that could not be read, and why. */
  readonly refused: readonly { readonly file: string; readonly why: string }[];
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
}
