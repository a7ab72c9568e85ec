import type { EvaluatedPiece } from '@fettle/language';
import type { SheetFileFormat, SheetView } from '@fettle/protocol';

/** Makes one sheet of a piece's picture. */
export interface SheetMaker {
  /** Stable: the page remembers by it which sheet was open. */
  readonly id: string;
  /** On its tab. */
  readonly title: string;
  readonly shows: 'drawing' | 'table';
  /** Whether the piece has what the sheet shows; asked for every piece after every edit, so it must be cheap. */
  suits(piece: EvaluatedPiece): boolean;
  /** Asked only for a sheet that somebody looks at. May throw: the other sheets are made all the same. */
  make(piece: EvaluatedPiece): Exclude<SheetView, { kind: 'later' }>;
  /** The sheet as the text of a file, in each format it has. May throw. */
  readonly files: Partial<Readonly<Record<SheetFileFormat, (piece: EvaluatedPiece) => string>>>;
}
