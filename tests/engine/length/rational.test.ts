import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import { anyRational } from './arbitrary-lengths.ts';

/** The plainest possible fraction, on big integers alone: what every operation is compared with. */
type Plain = readonly [bigint, bigint];

const plain = (value: Rational): Plain => [value.numerator, value.denominator];
const equal = ([a, b]: Plain, [c, d]: Plain) => a * d === c * b;
const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b));

function expectValue(found: Rational, expected: Plain): void {
  expect(equal(plain(found), expected), `${found} should be ${expected[0]}/${expected[1]}`).toBe(true);
  expect(found.denominator > 0n).toBe(true);
  expect(gcd(found.numerator, found.denominator)).toBe(1n);
}

describe('fractions agree with plain big-integer arithmetic', () => {
  it('in sums, differences, products and quotients, small and huge', () => {
    fc.assert(
      fc.property(anyRational, anyRational, (a, b) => {
        const [an, ad] = plain(a);
        const [bn, bd] = plain(b);
        expectValue(a.plus(b), [an * bd + bn * ad, ad * bd]);
        expectValue(a.minus(b), [an * bd - bn * ad, ad * bd]);
        expectValue(a.times(b), [an * bn, ad * bd]);
        if (!b.isZero()) expectValue(a.dividedBy(b), bn < 0n ? [-an * bd, -ad * bn] : [an * bd, ad * bn]);
        expectValue(a.negated(), [-an, ad]);
        expectValue(a.abs(), [an < 0n ? -an : an, ad]);
      }),
      { numRuns: 2000 },
    );
  });

  it('in order, sign, equality and whole part', () => {
    fc.assert(
      fc.property(anyRational, anyRational, (a, b) => {
        const difference = a.numerator * b.denominator - b.numerator * a.denominator;
        expect(a.compare(b)).toBe(difference < 0n ? -1 : difference > 0n ? 1 : 0);
        expect(a.equals(b)).toBe(difference === 0n);
        expect(a.min(b).equals(difference <= 0n ? a : b)).toBe(true);
        expect(a.max(b).equals(difference >= 0n ? a : b)).toBe(true);
        expect(a.sign()).toBe(a.numerator < 0n ? -1 : a.numerator > 0n ? 1 : 0);
        const whole = a.floor();
        expect(whole.isWhole()).toBe(true);
        const rest = a.minus(whole);
        expect(rest.sign() >= 0 && rest.compare(Rational.one) < 0).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('in order also where the products differ by one beyond the safe integers', () => {
    for (let n = 94_906_260; n < 94_906_300; n++) {
      // n / (n - 1) falls as n grows; the cross products are n * n - 1 and n * n, about 2^53.
      expect(Rational.of(n + 1, n).compare(Rational.of(n, n - 1))).toBe(-1);
      expect(Rational.of(n, n - 1).compare(Rational.of(n + 1, n))).toBe(1);
    }
  });
});

describe('field laws', () => {
  it('hold exactly', () => {
    fc.assert(
      fc.property(anyRational, anyRational, anyRational, (a, b, c) => {
        expect(a.plus(b).equals(b.plus(a))).toBe(true);
        expect(
          a
            .plus(b)
            .plus(c)
            .equals(a.plus(b.plus(c))),
        ).toBe(true);
        expect(
          a
            .times(b)
            .times(c)
            .equals(a.times(b.times(c))),
        ).toBe(true);
        expect(a.times(b.plus(c)).equals(a.times(b).plus(a.times(c)))).toBe(true);
        expect(a.plus(Rational.zero).equals(a)).toBe(true);
        expect(a.times(1).equals(a)).toBe(true);
        expect(a.minus(a).equals(Rational.zero)).toBe(true);
        if (!a.isZero()) expect(a.dividedBy(a).equals(Rational.one)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('come back from huge values to the same small ones', () => {
    const huge = Rational.of(10n ** 40n);
    expect(Rational.of(3, 4).plus(huge).minus(huge).equals(Rational.of(3, 4))).toBe(true);
    expect(Rational.of(3, 4).times(huge).dividedBy(huge).toString()).toBe('3/4');
  });
});

describe('reading and writing', () => {
  it('toString is read back as the same value', () => {
    fc.assert(fc.property(anyRational, (a) => Rational.parse(a.toString())?.equals(a) === true));
  });

  it.each([
    ['6/8', '3/4'],
    ['-6/8', '-3/4'],
    ['12', '12'],
    ['-3.75', '-15/4'],
    ['+.5', '1/2'],
    ['0.10', '1/10'],
    ['0/5', '0'],
    ['25.4', '127/5'],
  ])('%s is %s', (text, expected) => {
    expect(Rational.parse(text)?.toString()).toBe(expected);
  });

  it.each(['', '.', '-', '1/0', '1/-2', '1e5', '0x10', 'three', '1 1/2', '--1', '9'.repeat(401)])(
    '%j is no fraction',
    (text) => {
      expect(Rational.parse(text)).toBeUndefined();
    },
  );

  it('has the sign above and no minus zero', () => {
    expect(Rational.of(1, -2).toString()).toBe('-1/2');
    expect(Rational.of(-0).toString()).toBe('0');
    expect(Object.is(Rational.of(0, -7).negated().toNumber(), 0)).toBe(true);
  });
});

describe('mistakes of a caller', () => {
  it('are refused with a RangeError', () => {
    expect(() => Rational.of(1, 0)).toThrow(RangeError);
    expect(() => Rational.of(1n, 0n)).toThrow(RangeError);
    expect(() => Rational.of(0.5)).toThrow(RangeError);
    expect(() => Rational.of(2 ** 60)).toThrow(RangeError);
    expect(() => Rational.one.dividedBy(0)).toThrow(RangeError);
    expect(() => Rational.one.times(0.5)).toThrow(RangeError);
  });
});
