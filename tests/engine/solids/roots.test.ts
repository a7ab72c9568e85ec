import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import {
  between,
  compareRoots,
  rootBetween,
  signWithRoot,
  type WithRoot,
} from '../../../packages/engine/src/solids/roots.ts';

const anyFraction = fc
  .tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: 1, max: 12 }))
  .map(([n, d]) => Rational.of(n, d));
const anySquare = anyFraction.map((value) => value.abs());
const anyRoot: fc.Arbitrary<WithRoot> = fc.record({
  plain: anyFraction,
  sign: fc.constantFrom(1 as const, -1 as const),
  squared: anySquare,
});

const worked = ({ plain, sign, squared }: WithRoot) => plain.toNumber() + sign * Math.sqrt(squared.toNumber());

describe('square roots compared without working them out', () => {
  it('agree with doubles wherever those can tell', () => {
    let told = 0;
    fc.assert(
      fc.property(anyRoot, anyRoot, (a, b) => {
        const difference = worked(a) - worked(b);
        if (Math.abs(difference) < 1e-9) return;
        told += 1;
        expect(compareRoots(a, b)).toBe(Math.sign(difference));
        expect(compareRoots(b, a)).toBe(-Math.sign(difference));
      }),
      { numRuns: 3000 },
    );
    expect(told).toBeGreaterThan(2000);
  });

  it('know equal ones: 1 + sqrt(8) is 1 + 2 sqrt(2), sqrt(9/4) is 3/2, and 2 - sqrt(4) nothing', () => {
    const root = (plain: number, sign: 1 | -1, squared: Rational): WithRoot => ({
      plain: Rational.of(plain),
      sign,
      squared,
    });
    expect(
      compareRoots(root(0, 1, Rational.of(9, 4)), { plain: Rational.of(3, 2), sign: 1, squared: Rational.zero }),
    ).toBe(0);
    expect(compareRoots(root(2, -1, Rational.of(4)), root(0, 1, Rational.zero))).toBe(0);
    expect(compareRoots(root(0, 1, Rational.of(8)), root(0, 1, Rational.of(8)))).toBe(0);
    // sqrt(18) - 1 against sqrt(8) + 1/2: their difference is sqrt(2) - 3/2.
    expect(
      compareRoots(root(-1, 1, Rational.of(18)), { plain: Rational.of(1, 2), sign: 1, squared: Rational.of(8) }),
    ).toBe(-1);
  });

  it('tell what no double can: sqrt(n² + 1) from n, n being ten thousand million', () => {
    const n = Rational.of(10_000_000_000);
    const above: WithRoot = { plain: Rational.zero, sign: 1, squared: n.times(n).plus(Rational.one) };
    expect(worked(above)).toBe(1e10);
    expect(compareRoots(above, { plain: n, sign: 1, squared: Rational.zero })).toBe(1);
    expect(signWithRoot(n, Rational.of(-1), above.squared)).toBe(-1);
    expect(signWithRoot(n, Rational.of(-1), n.times(n))).toBe(0);
  });

  it('lie between their bounds, which are one where the root is a fraction', () => {
    fc.assert(
      fc.property(anySquare, (squared) => {
        const { least, most } = rootBetween(squared);
        expect(least.times(least).compare(squared)).toBeLessThanOrEqual(0);
        expect(most.times(most).compare(squared)).toBeGreaterThanOrEqual(0);
        expect(most.minus(least).compare(Rational.of(1, 2 ** 24))).toBeLessThanOrEqual(0);
        const whole = rootBetween(squared.times(squared));
        expect([whole.least, whole.most].every((bound) => bound.equals(squared))).toBe(true);
      }),
    );
    const minus = between({ plain: Rational.one, sign: -1, squared: Rational.of(2) });
    expect(minus.least.toNumber()).toBeLessThan(1 - Math.SQRT2);
    expect(minus.most.toNumber()).toBeGreaterThan(1 - Math.SQRT2);
  });
});
