/**
 * What is asked of a cutting plan for sheets, in whole numbers of one small unit (`scaleToIntegers` finds it). The width
 * runs across the grain of the sheet, the length along it; a rip is a cut along the length, a crosscut one along the
 * width.
 */

/** What is cut away from the four edges of a sheet before anything else, each with the blade that cuts it away. */
export interface EdgeTrim {
  readonly left: number;
  readonly right: number;
  /** At the end where the length begins. */
  readonly near: number;
  readonly far: number;
}

/** One size of sheet, bought or on hand. */
export interface SheetKind {
  readonly id: string;
  readonly width: number;
  readonly length: number;
  /** How many there are; as many as wanted if left out. */
  readonly available?: number;
  /** Of one sheet, in any unit, not negative. An offcut on hand costs nothing, so it is taken first. */
  readonly cost: number;
  readonly trim?: EdgeTrim;
}

/** One size of blank. */
export interface SheetBlank {
  readonly id: string;
  readonly width: number;
  readonly length: number;
  readonly count: number;
  /** Whether its length may lie across the grain of the sheet. */
  readonly mayTurn: boolean;
}

/** What the shop's machines can do. */
export interface CuttingLimits {
  /** The longest cut along the length of a sheet. */
  readonly longestRip?: number;
  /** The longest cut along the width of a sheet. */
  readonly longestCrosscut?: number;
  /** The narrowest piece that is cut and kept. */
  readonly narrowestStrip?: number;
  /** How often the direction of the cuts may change, and one: rips and then crosscuts are two stages. */
  readonly stages?: number;
}

export interface SheetProblem {
  readonly sheets: readonly SheetKind[];
  readonly blanks: readonly SheetBlank[];
  /**
   * What a cut turns to dust: a piece L is cut into L1 and L2 if L = L1 + kerf + L2. A piece that ends flush with the
   * edge needs no cut, and one that ends less than the kerf from it is cut with part of the blade in the air.
   */
  readonly kerf: number;
  readonly limits?: CuttingLimits;
}
