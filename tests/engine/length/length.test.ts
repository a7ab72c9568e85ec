import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import { anyLength } from './arbitrary-lengths.ts';

describe('units', () => {
  it('an inch is 25.4 mm exactly (NIST SP 811, appendix B)', () => {
    expect(Length.inches(1).in('mm').equals(Rational.of(254, 10))).toBe(true);
    expect(Length.inches(1).equals(Length.of(Rational.of(254, 100), 'cm'))).toBe(true);
    expect(Length.millimetres(254, 10).exactInches).toBe('1');
  });

  it('a foot is 304.8 mm exactly (NIST SP 811, appendix B)', () => {
    expect(Length.of(Rational.one, 'ft').in('mm').equals(Rational.of(3048, 10))).toBe(true);
    expect(Length.of(Rational.one, 'ft').equals(Length.inches(12))).toBe(true);
  });

  it('every unit comes back as it went in', () => {
    fc.assert(
      fc.property(anyLength, fc.constantFrom('in', 'mm', 'cm', 'ft' as const), (length, unit) =>
        Length.of(length.in(unit), unit).equals(length),
      ),
    );
  });

  it('19 mm and 3/4" are different lengths', () => {
    const difference = Length.inches(3, 4).minus(Length.millimetres(19));
    expect(difference.in('mm').equals(Rational.of(5, 100))).toBe(true);
    expect(Length.millimetres(19).equals(Length.inches(3, 4))).toBe(false);
  });
});

describe('arithmetic', () => {
  it('is that of exact inches', () => {
    fc.assert(
      fc.property(anyLength, anyLength, (a, b) => {
        expect(
          a
            .plus(b)
            .in('in')
            .equals(a.in('in').plus(b.in('in'))),
        ).toBe(true);
        expect(a.minus(b).plus(b).equals(a)).toBe(true);
        expect(a.compare(b)).toBe(a.in('in').compare(b.in('in')));
        expect(a.min(b).compare(a.max(b))).toBeLessThanOrEqual(0);
        expect(a.min(b).plus(a.max(b)).equals(a.plus(b))).toBe(true);
        if (!b.isZero()) expect(b.times(a.ratioTo(b)).equals(a)).toBe(true);
      }),
    );
  });

  it('adds four doors and five gaps without losing a 64th', () => {
    const door = Length.inches(591, 64);
    expect(Length.sum([door, door, Length.inches(3, 32)]).exactInches).toBe('297/16');
    expect(door.times(2).plus(Length.inches(3, 32)).dividedBy(3).exactInches).toBe('99/16');
  });
});

describe('as a measure of a finding', () => {
  it('is exact inches in lowest terms, and reads back', () => {
    expect(Length.inches(36, 8).exactInches).toBe('9/2');
    expect(Length.inches(57).exactInches).toBe('57');
    expect(JSON.stringify({ size: Length.inches(-5, 10) })).toBe('{"size":"-1/2"}');
    fc.assert(
      fc.property(
        anyLength,
        (length) => Length.fromMeasure({ exactInches: length.exactInches })?.equals(length) === true,
      ),
    );
    expect(Length.fromMeasure({ exactInches: 'wide' })).toBeUndefined();
  });
});
