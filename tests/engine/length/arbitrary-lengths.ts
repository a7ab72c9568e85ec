import fc from 'fast-check';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';

/** Random exact fractions and lengths: mostly small, now and then far beyond the safe integers. */

export const smallRational: fc.Arbitrary<Rational> = fc
  .tuple(fc.integer({ min: -5000, max: 5000 }), fc.integer({ min: 1, max: 400 }))
  .map(([n, d]) => Rational.of(n, d));

const hugeRational: fc.Arbitrary<Rational> = fc
  .tuple(fc.bigInt({ min: -(2n ** 90n), max: 2n ** 90n }), fc.bigInt({ min: 1n, max: 2n ** 90n }))
  .map(([n, d]) => Rational.of(n, d));

/** Around the edge where the small representation ends. */
const edgeRational: fc.Arbitrary<Rational> = fc
  .tuple(fc.bigInt({ min: -40n, max: 40n }), fc.constantFrom(1n, 2n, 3n, 7n, 2n ** 53n - 1n, 2n ** 53n, 2n ** 53n + 1n))
  .map(([offset, d]) => Rational.of(2n ** 53n + offset, d));

export const anyRational = fc.oneof({ weight: 5, arbitrary: smallRational }, hugeRational, edgeRational);

/** On a ruler whose marks are 1/`denominator` of a unit: 0 to 200 units. */
export function onRuler(denominator: number): fc.Arbitrary<Rational> {
  return fc.integer({ min: 0, max: 200 * denominator }).map((marks) => Rational.of(marks, denominator));
}

export const anyLength: fc.Arbitrary<Length> = anyRational.map((value) => Length.of(value, 'in'));
