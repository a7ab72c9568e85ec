/** What a search for cutting plans answers. Sizes and places are in the unit of the problem. */

interface Piece {
  /** Across the sheet, from its left edge, trim included. */
  readonly x: number;
  /** Along the sheet, from its near edge, trim included. */
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

/** A blank where it lies; `turned` means that its length lies across the grain of the sheet. */
export interface PlacedBlank extends Piece {
  readonly kind: 'blank';
  readonly blank: string;
  readonly turned: boolean;
}

/** What is left over, however small. */
export interface Offcut extends Piece {
  readonly kind: 'offcut';
}

/**
 * A piece cut from edge to edge into pieces that lie side by side (by rips) or behind each other (by crosscuts), with a
 * kerf between each two. If the pieces do not fill it, the last cut runs partly in the air: at most a kerf is missing.
 */
export interface CutPiece extends Piece {
  readonly kind: 'cut';
  readonly direction: 'rip' | 'crosscut';
  readonly pieces: readonly CuttingNode[];
}

export type CuttingNode = PlacedBlank | Offcut | CutPiece;

/** Sheets of one kind that are cut the same way, but for the names of blanks of the same size. */
export interface CutSheet {
  readonly sheet: string;
  /** What is inside the trim. */
  readonly root: CuttingNode;
}

/** Why a blank is in no sheet. */
export type WhyUnplaced =
  | 'no whole positive size or count'
  | 'larger than every sheet'
  | 'larger than every sheet unless turned'
  | 'narrower than the narrowest strip'
  | 'no cuts within the limits make it'
  | 'no sheets'
  | 'too many blanks'
  | 'no sheet is left';

export interface UnplacedBlank {
  readonly blank: string;
  readonly count: number;
  readonly why: WhyUnplaced;
}

/** A kind of sheet that no plan can use. */
export interface RefusedSheet {
  readonly sheet: string;
  readonly why: 'no whole positive size' | 'trimmed to nothing' | 'negative cost' | 'none available';
}

export interface SheetPlan {
  readonly sheets: readonly CutSheet[];
  readonly cost: number;
  readonly unplaced: readonly UnplacedBlank[];
  readonly refused: readonly RefusedSheet[];
}
