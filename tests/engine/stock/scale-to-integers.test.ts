import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import { scaleToIntegers } from '../../../packages/engine/src/stock/scale-to-integers.ts';
import { anyLength } from '../length/arbitrary-lengths.ts';

/** No stock is a thousand feet long. */
const isStockLength = (length: Length) => length.abs().compare(Length.inches(12_000)) < 0;

describe('whole numbers of one unit', () => {
  it('inches to 1/64 and whole millimetres share a unit of 1/8128 in', () => {
    const scale = scaleToIntegers([Length.inches(1519, 64), Length.millimetres(2440), Length.inches(96)]);
    expect(scale.perInch).toBe(8128n);
    expect(scale.exact).toBe(true);
    expect(scale.up(Length.inches(1519, 64))).toBe(192_913);
    expect(scale.down(Length.inches(1519, 64))).toBe(192_913);
  });

  it('lengths without a common unit are rounded to the safe side: parts up, stock down', () => {
    const part = Length.inches(1, 999_983);
    const scale = scaleToIntegers([part, Length.inches(1, 999_979), Length.inches(96)]);
    expect(scale.exact).toBe(false);
    const unit = Length.of(Rational.one.dividedBy(Rational.of(scale.perInch)), 'in');
    expect(unit.times(scale.up(part)).compare(part)).toBeGreaterThanOrEqual(0);
    expect(unit.times(scale.down(part)).compare(part)).toBeLessThanOrEqual(0);
    expect(scale.down(Length.inches(96))).toBeLessThanOrEqual(2 ** 24);
  });

  it('never makes a part smaller or stock larger, and loses less than a unit', () => {
    fc.assert(
      fc.property(fc.array(anyLength.filter(isStockLength), { minLength: 1, maxLength: 6 }), (lengths) => {
        const scale = scaleToIntegers(lengths);
        const perUnit = Rational.one.dividedBy(Rational.of(scale.perInch));
        for (const length of lengths.filter((one) => one.isPositive())) {
          const up = perUnit.times(Rational.of(BigInt(scale.up(length))));
          const down = perUnit.times(Rational.of(BigInt(scale.down(length))));
          expect(up.compare(length.in('in'))).toBeGreaterThanOrEqual(0);
          expect(down.compare(length.in('in'))).toBeLessThanOrEqual(0);
          if (scale.exact) expect(up.equals(down)).toBe(true);
          else expect(up.minus(down).compare(perUnit)).toBeLessThanOrEqual(0);
        }
      }),
    );
  });
});
