import type { EvaluatedPiece } from '@fettle/language';
import type { SheetView } from '@fettle/protocol';

/** Makes one sheet of a piece's picture. */
export interface SheetMaker {
  /** Stable: the page remembers by it which sheet was open. */
  readonly id: string;
  /** Nothing when the piece lacks what the sheet shows. May throw: the other sheets are made all the same. */
  make(piece: EvaluatedPiece): SheetView | undefined;
}
