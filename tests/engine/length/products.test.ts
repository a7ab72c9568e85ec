import { asFactor, byEachOther, Length, Rational, showLength } from '@fettle/engine';
import { describe, expect, test } from 'vitest';

const shown = (inches: Rational): string =>
  showLength(Length.of(inches, 'in'), { unit: 'in', ruler: Rational.of(1, 32) });

describe('sizes next to a multiplication sign', () => {
  test('a size off the marks stands in brackets: twice 9-15/64" is not twice 9-7/32" and 1/64" more', () => {
    expect(byEachOther('2', shown(Rational.of(591, 64)))).toBe('2 × (9-7/32" + 1/64")');
  });

  test('only the size that is a sum has brackets', () => {
    const sizes = [Rational.of(17), Rational.of(273, 64), Rational.of(14)].map(shown);
    expect(byEachOther(...sizes)).toBe('17" × (4-1/4" + 1/64") × 14"');
  });

  test('a size that explains itself in brackets, or has them already, gets no more', () => {
    for (const words of [
      '3/4" (exactly 19 mm)',
      '9-7/32" (about 9.2283")',
      '−(9-7/32" + 1/64")',
      'about 9.333 mm',
      '5\'-2-3/8"',
    ]) {
      expect(asFactor(words)).toBe(words);
    }
  });

  test('a size without what it is multiplied by stays as it is', () => {
    expect(byEachOther('7/8"')).toBe('7/8"');
    expect(byEachOther()).toBe('');
  });
});
