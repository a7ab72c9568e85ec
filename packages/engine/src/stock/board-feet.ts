import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';

/**
 * How lumber is measured: one board foot is 144 cubic inches of nominal size, and what is thinner than an inch counts as an
 * inch.
 */

export interface BoardSize {
  /** The nominal, rough thickness: 5/4 for a board that is sold as 5/4. */
  readonly thickness: Length;
  readonly width: Length;
  readonly length: Length;
}

const HALF = Rational.of(1, 2);

/** Without any rounding. Negative sizes count as none. */
export function exactBoardFeet({ thickness, width, length }: BoardSize): Rational {
  return inches(width).times(inches(length)).dividedBy(144).times(countedThickness(thickness));
}

/**
 * As hardwood is tallied, board for board: the length in whole feet, cut down; width in inches by length in feet, divided
 * by 12 and rounded to a whole number, is the surface measure; times the nominal thickness. Source: NHLA practice,
 * second-hand; that an exact half is rounded up is from memory.
 */
export function talliedBoardFeet(board: BoardSize): Rational {
  return surfaceMeasure(board).times(countedThickness(board.thickness));
}

/** Square feet of one face, whole, as in `talliedBoardFeet`. */
export function surfaceMeasure({ width, length }: Pick<BoardSize, 'width' | 'length'>): Rational {
  const wholeFeet = inches(length).dividedBy(12).floor();
  return inches(width).times(wholeFeet).dividedBy(12).plus(HALF).floor();
}

function countedThickness(thickness: Length): Rational {
  return thickness.in('in').max(Rational.one);
}

function inches(length: Length): Rational {
  return length.in('in').max(Rational.zero);
}
