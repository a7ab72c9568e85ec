import { Length } from '../length/length.ts';

/** Thicknesses and widths lumber is sold in, and what is left of them when they are surfaced. */

export interface LumberSize {
  /** What the yard calls it: '4/4', '2'. */
  readonly name: string;
  /** Of hardwood the rough thickness; of softwood the nominal one. */
  readonly nominal: Length;
  readonly surfaced: Length;
}

function size(name: string, nominal: readonly [number, number], surfaced: readonly [number, number]): LumberSize {
  return { name, nominal: Length.inches(...nominal), surfaced: Length.inches(...surfaced) };
}

/**
 * Hardwood, rough, and the least it has when both faces are surfaced. Source: hardwood grading minimums (NHLA practice),
 * two independent reproductions. Yards sell 3/4" to 15/16" as surfaced 4/4.
 */
export const HARDWOOD_THICKNESSES: readonly LumberSize[] = [
  size('3/8', [3, 8], [3, 16]),
  size('1/2', [1, 2], [5, 16]),
  size('5/8', [5, 8], [7, 16]),
  size('3/4', [3, 4], [9, 16]),
  size('4/4', [1, 1], [13, 16]),
  size('5/4', [5, 4], [17, 16]),
  size('6/4', [3, 2], [21, 16]),
  size('7/4', [7, 4], [3, 2]),
  size('8/4', [2, 1], [7, 4]),
  size('12/4', [3, 1], [11, 4]),
  size('14/4', [7, 2], [13, 4]),
  size('16/4', [4, 1], [15, 4]),
];

/** Softwood, dressed and dry. Source: PS 20 minimum sizes, second-hand from an engineering reference table. */
export const SOFTWOOD_THICKNESSES: readonly LumberSize[] = [
  size('1', [1, 1], [3, 4]),
  size('1-1/4', [5, 4], [1, 1]),
  size('1-1/2', [3, 2], [5, 4]),
  size('2', [2, 1], [3, 2]),
  size('2-1/2', [5, 2], [2, 1]),
  size('3', [3, 1], [5, 2]),
  size('4', [4, 1], [7, 2]),
];

/** Source: as for the thicknesses. */
export const SOFTWOOD_WIDTHS: readonly LumberSize[] = [
  size('2', [2, 1], [3, 2]),
  size('3', [3, 1], [5, 2]),
  size('4', [4, 1], [7, 2]),
  size('5', [5, 1], [9, 2]),
  size('6', [6, 1], [11, 2]),
  size('8', [8, 1], [29, 4]),
  size('10', [10, 1], [37, 4]),
  size('12', [12, 1], [45, 4]),
];
