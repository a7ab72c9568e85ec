import { Rational } from '../length/rational.ts';

/**
 * Square roots that are compared without being worked out: squaring both sides until no root is left keeps every
 * verdict exact. Where a number has to be shown, bounds are given instead.
 */

/** `plain` plus or minus the square root of `squared`, which is not negative. */
export interface WithRoot {
  readonly plain: Rational;
  readonly sign: 1 | -1;
  readonly squared: Rational;
}

export function withoutRoot(plain: Rational): WithRoot {
  return { plain, sign: 1, squared: Rational.zero };
}

export function opposite(value: WithRoot): WithRoot {
  return { plain: value.plain.negated(), sign: value.sign === 1 ? -1 : 1, squared: value.squared };
}

/** The sign of `plain + factor * sqrt(squared)`. */
export function signWithRoot(plain: Rational, factor: Rational, squared: Rational): -1 | 0 | 1 {
  const root = squared.isZero() ? 0 : factor.sign();
  const sign = plain.sign();
  if (root === 0 || sign === root) return sign;
  if (sign === 0) return root === 1 ? 1 : -1;
  const compared = plain.times(plain).compare(factor.times(factor).times(squared));
  if (compared === 0) return 0;
  return compared > 0 ? sign : root === 1 ? 1 : -1;
}

/** Negative if `a` is less than `b`, zero if equal, positive if greater. */
export function compareRoots(a: WithRoot, b: WithRoot): -1 | 0 | 1 {
  // The sign of plain + p - q, p and q being roots with their signs.
  const plain = a.plain.minus(b.plain);
  const p = a.squared.isZero() ? 0 : a.sign;
  const q = b.squared.isZero() ? 0 : -b.sign;
  if (p === 0) return signWithRoot(plain, Rational.of(q), b.squared);
  if (q === 0) return signWithRoot(plain, Rational.of(p), a.squared);
  const bySize = a.squared.compare(b.squared);
  const roots = p === q ? p : bySize * p;
  const sign = plain.sign();
  if (roots === 0 || sign === roots) return sign;
  const signOfRoots = roots > 0 ? 1 : -1;
  if (sign === 0) return signOfRoots;
  // plain² against a² + b² + 2pq·ab, the last of which is again a root.
  const rest = plain.times(plain).minus(a.squared).minus(b.squared);
  const compared = signWithRoot(rest, Rational.of(-2 * p * q), a.squared.times(b.squared));
  if (compared === 0) return 0;
  return compared > 0 ? sign : signOfRoots;
}

/** A value between two fractions, which are equal where it is one itself. */
export interface Between {
  readonly least: Rational;
  readonly most: Rational;
}

/** How finely a root that is no fraction is told, in parts of an inch: finer than any ruler by far. */
const PARTS_OF_ROOT = 2n ** 24n;

/** The root of `squared`, exact if it is a fraction, else to the next 1/2^24 on either side. */
export function rootBetween(squared: Rational): Between {
  const top = wholeRoot(squared.numerator);
  const bottom = wholeRoot(squared.denominator);
  if (top * top === squared.numerator && bottom * bottom === squared.denominator) {
    const root = Rational.of(top, bottom);
    return { least: root, most: root };
  }
  const parts = wholeRoot((squared.numerator * PARTS_OF_ROOT * PARTS_OF_ROOT) / squared.denominator);
  return { least: Rational.of(parts, PARTS_OF_ROOT), most: Rational.of(parts + 1n, PARTS_OF_ROOT) };
}

export function between({ plain, sign, squared }: WithRoot): Between {
  const root = rootBetween(squared);
  if (sign === 1) return { least: plain.plus(root.least), most: plain.plus(root.most) };
  return { least: plain.minus(root.most), most: plain.minus(root.least) };
}

export function exactly(value: Rational): Between {
  return { least: value, most: value };
}

export function isExact({ least, most }: Between): boolean {
  return least.equals(most);
}

export function lessBetween(a: Between, b: Between): Between {
  return { least: a.least.minus(b.most), most: a.most.minus(b.least) };
}

export function negatedBetween({ least, most }: Between): Between {
  return { least: most.negated(), most: least.negated() };
}

/** The greatest whole number whose square is not greater; zero for what is negative. */
function wholeRoot(value: bigint): bigint {
  if (value < 2n) return value < 0n ? 0n : value;
  // Newton's steps from above fall until they reach the root.
  let root = 2n ** BigInt(Math.ceil(value.toString(2).length / 2));
  for (;;) {
    const next = (root + value / root) / 2n;
    if (next >= root) return root;
    root = next;
  }
}
