/**
 * What is asked of a cutting plan for boards, in whole numbers of one small unit, and what it answers. The grain runs along
 * the length of boards and blanks, so no blank ever turns. All boards of one problem have one thickness. Knows nothing of
 * parts, prices in money or clocks.
 */

/** A part of a board to cut around: a knot, a check, sapwood. From the board's near end and its left edge. */
export interface Defect {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
}

/** A size of board that can be bought, or one board that is there. */
export interface BoardKind {
  readonly id: string;
  readonly width: number;
  readonly length: number;
  /** How many there are; as many as wanted if left out. */
  readonly available?: number;
  /** Whole, not negative. */
  readonly cost: number;
  readonly defects?: readonly Defect[];
}

/** A rectangle to be cut, with what is planed or jointed off it later. */
export interface BoardBlank {
  readonly id: string;
  readonly width: number;
  readonly length: number;
  readonly count: number;
}

export interface BoardProblem {
  readonly boards: readonly BoardKind[];
  readonly blanks: readonly BoardBlank[];
  /** What a cut along the board takes. As with sheets, an edge that ends flush needs no cut. */
  readonly ripKerf: number;
  /** What a cut across the board takes. */
  readonly crosscutKerf: number;
  /** What is cut off each end of a board, with its cut, before anything else. */
  readonly endTrim: number;
  /** What is cut or jointed off each edge of a board, with its cut, before anything else. */
  readonly edgeTrim: number;
}

/** Whether a board is first cut to lengths and these are ripped, or first ripped to widths and these are cut to lengths. */
export type CuttingOrder = 'crosscut first' | 'rip first';

/** A blank in a band, and where it begins along it, from the board's near end or left edge. */
export interface BlankInBand {
  readonly blank: string;
  readonly at: number;
}

/** What the first cuts part off: of 'crosscut first' a length of the whole board, of 'rip first' a strip of it. */
export interface Band {
  /** From the board's near end or its left edge. */
  readonly at: number;
  readonly size: number;
  /** Side by side in the band, in order. What is smaller than the band is trimmed to its size by a last cut. */
  readonly blanks: readonly BlankInBand[];
}

export interface CutBoard {
  readonly board: string;
  readonly order: CuttingOrder;
  readonly bands: readonly Band[];
}

export interface BlanksLeft {
  readonly blank: string;
  readonly count: number;
}

export interface BoardPlan {
  readonly boards: readonly CutBoard[];
  /** What no board can give, or for which there are not boards enough. */
  readonly unplaced: readonly BlanksLeft[];
  readonly cost: number;
}

/** What is known after a little more thinking. */
export interface BoardStep {
  /** A plan, when it is better than all before it. */
  readonly plan?: BoardPlan;
  /** No plan that places all blanks can cost less. */
  readonly bound: number;
  /** The same by area alone; never above `bound`. */
  readonly areaBound: number;
  readonly done: boolean;
  /** It is one of several small steps of one; only large orders take more than one. */
  readonly isPartial?: true;
  /** 0 to 1, never falling; a guess. */
  readonly progress: number;
}
