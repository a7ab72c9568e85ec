import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';

/** How lengths become whole numbers of one small unit. */
export interface IntegerScale {
  /** How many units an inch has. */
  readonly perInch: bigint;
  /** Whether every length given is a whole number of units. If not, parts are to be rounded up and stock down. */
  readonly exact: boolean;
  /** For stock, and for limits that are the most there may be. */
  down(length: Length): number;
  /** For parts, kerfs and trims, and for limits that are the least there may be. */
  up(length: Length): number;
}

/** Sizes up to this have areas that a double holds exactly. */
const LARGEST = 2 ** 24;

/**
 * The coarsest unit in which all lengths are whole: the least common multiple of their denominators. If the longest
 * of them came out longer than 16,777,216 units, the finest unit is taken in which it does not, and plans are on the safe
 * side: a part may get up to one unit more than it needs, stock may lose up to one unit. Lengths that are not positive
 * do not count. A length of more than 16,777,216 in comes out larger than the searches accept; they say so.
 */
export function scaleToIntegers(lengths: Iterable<Length>): IntegerScale {
  let perInch = 1n;
  let longest: Rational = Rational.one;
  let exact = true;
  for (const length of lengths) {
    if (!length.isPositive()) continue;
    const inches = length.in('in');
    longest = longest.max(inches);
    if (exact) perInch = leastCommonMultiple(perInch, inches.denominator);
    // Beyond this no multiple can be small enough: it would only grow.
    if (perInch > BigInt(LARGEST)) exact = false;
  }
  const most = longest.inverse().times(LARGEST).floor().numerator;
  if (perInch > most) {
    exact = false;
    // A length of sixteen million inches is nobody's, but it must not divide by zero.
    perInch = most > 0n ? most : 1n;
  }
  const units = (length: Length) => length.in('in').times(Rational.of(perInch));
  return {
    perInch,
    exact,
    down: (length) => Number(units(length).floor().numerator),
    up: (length) => -Number(units(length).negated().floor().numerator),
  };
}

function leastCommonMultiple(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return (a / x) * b;
}
