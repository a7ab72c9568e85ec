import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length, type LengthUnit } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import {
  exactSource,
  marksFromBaseline,
  parseTradeLength,
  showLength,
  sizesBetweenMarks,
} from '../../../packages/engine/src/length/trade-formats.ts';
import { onRuler } from './arbitrary-lengths.ts';

const inches = (text: string): Length => Length.of(Rational.parse(text) ?? expect.fail(text), 'in');
const show = (length: Length, unit: LengthUnit, ruler: string) =>
  showLength(length, { unit, ruler: Rational.parse(ruler) ?? expect.fail(ruler) });

describe('shown on a ruler', () => {
  it.each([
    ['35/2', 'in', '1/32', '17-1/2"'],
    ['57', 'in', '1/32', '57"'],
    ['3/4', 'in', '1/32', '3/4"'],
    ['331/32', 'in', '1/32', '10-11/32"'],
    ['0', 'in', '1/32', '0"'],
    ['-35/2', 'in', '1/32', '−17-1/2"'],
    ['499/8', 'in', '1/32', '62-3/8"'],
    ['499/8', 'ft', '1/384', '5\'-2-3/8"'],
    ['60', 'ft', '1/384', "5'"],
    ['19/2', 'ft', '1/384', '9-1/2"'],
    ['95/127', 'mm', '1', '19 mm'],
    ['95/127', 'cm', '1/10', '1.9 cm'],
    ['5/2', 'mm', '1/2', '63.5 mm'],
  ] as const)('%s inches in %s to %s is %s', (exact, unit, ruler, expected) => {
    expect(show(inches(exact), unit, ruler)).toBe(expected);
  });

  it('says when a length is no mark, and loses nothing', () => {
    const door = inches('591/64');
    expect(show(door, 'in', '1/32')).toBe('9-7/32" + 1/64"');
    expect(show(door, 'in', '1/64')).toBe('9-15/64"');
    expect(show(inches('31/128').plus(Length.inches(9)), 'in', '1/32')).toBe('9-1/4" − 1/128"');
    expect(show(inches('1/64'), 'in', '1/32')).toBe('1/64"');
    expect(show(inches('29/3'), 'in', '1/32')).toBe('9-21/32" (exactly 9-2/3")');
    expect(show(Length.millimetres(19), 'in', '1/32')).toBe('3/4" (exactly 19 mm)');
    expect(show(inches('92283/10000'), 'in', '1/32')).toBe('9-7/32" (about 9.2283")');
    expect(show(inches('2007/272'), 'in', '1/32')).toBe('7-3/8" (about 7.3787")');
    expect(show(inches('29/127'), 'in', '1/32')).toBe('7/32" (exactly 5.8 mm)');
    expect(show(inches('29/129'), 'in', '1/32')).toBe('7/32" (about 0.2248")');
    expect(show(door.negated(), 'in', '1/32')).toBe('−(9-7/32" + 1/64")');
  });

  it.each([
    ['581.8', 'mm', '1/2', '581.8 mm'],
    ['18.2', 'mm', '1', '18.2 mm'],
    ['18.8', 'mm', '1', '18.8 mm'],
    ['535.0125', 'mm', '1/2', 'about 535.012 mm'],
    ['1160.425', 'mm', '1/2', '1160.425 mm'],
    ['3481/3', 'mm', '1/2', 'about 1160.333 mm'],
    ['3481/3', 'cm', '1/10', 'about 116.0333 cm'],
    ['18.2', 'cm', '1/10', '1.82 cm'],
    ['-18.2', 'mm', '1', '−18.2 mm'],
    ['0.2', 'mm', '0', '0.2 mm'],
    ['-3481/3', 'mm', '1', 'about −1160.333 mm'],
  ] as const)('%s mm in %s to %s is the decimal %s', (millimetres, unit, ruler, expected) => {
    const length = Length.of(Rational.parse(millimetres) ?? expect.fail(millimetres), 'mm');
    expect(show(length, unit, ruler)).toBe(expected);
  });

  it('shows an inch length in millimetres as a decimal', () => {
    expect(show(inches('591/64'), 'mm', '1')).toBe('about 234.553 mm');
    expect(show(inches('3/4'), 'mm', '1')).toBe('19.05 mm');
  });

  it('shows without a ruler what it can show exactly', () => {
    expect(show(inches('591/64'), 'in', '0')).toBe('9-15/64"');
    expect(show(inches('29/3'), 'in', '0')).toBe('9-2/3"');
    expect(show(inches('92283/10000'), 'in', '-1')).toBe('about 9.2283"');
  });

  it('what is shown as a mark is read back as the same length, in every unit', () => {
    const cases: readonly (readonly [LengthUnit, number])[] = [
      ['in', 16],
      ['in', 64],
      ['in', 3],
      ['mm', 1],
      ['mm', 10],
      ['cm', 10],
    ];
    for (const [unit, denominator] of cases) {
      fc.assert(
        fc.property(onRuler(denominator), (value) => {
          const length = Length.of(value, unit);
          const shown = showLength(length, { unit, ruler: Rational.of(1, denominator) });
          const read = parseTradeLength(shown);
          expect(read?.unit, shown).toBe(unit);
          expect(read?.unit !== undefined && read.length.equals(length), shown).toBe(true);
        }),
      );
    }
    fc.assert(
      fc.property(onRuler(32), (value) => {
        const shown = showLength(Length.of(value, 'in'), { unit: 'ft', ruler: Rational.of(1, 384) });
        const read = parseTradeLength(shown);
        expect(read?.unit !== undefined && read.length.equals(Length.of(value, 'in')), shown).toBe(true);
      }),
    );
  });

  it('two terms beside a mark add up to the length', () => {
    fc.assert(
      fc.property(onRuler(128), (value) => {
        const shown = showLength(Length.of(value, 'in'), { unit: 'in', ruler: Rational.of(1, 32) });
        const [first = '', sign = '+', second = '0"'] = shown.split(' ');
        const [a, b] = [parseTradeLength(first)?.value, parseTradeLength(second)?.value];
        const sum = a?.plus((sign === '+' ? b : b?.negated()) ?? Rational.zero);
        expect(sum?.toString(), shown).toBe(value.toString());
      }),
    );
  });
});

describe('written back into the text', () => {
  it.each([
    ['591/64', '9-15/64"', '234.553125mm', '23.4553125cm', '9-15/64"'],
    ['29/3', '9-2/3"', '245-8/15mm', '24-83/150cm', '9-2/3"'],
    ['499/8', '62-3/8"', '1584.325mm', '158.4325cm', '5\'-2-3/8"'],
    ['-1/2', '-1/2"', '-12.7mm', '-1.27cm', '-1/2"'],
    ['57', '57"', '1447.8mm', '144.78cm', '4\'-9"'],
  ])('%s inches', (exact, inInches, inMillimetres, inCentimetres, inFeet) => {
    const length = inches(exact);
    expect(exactSource(length, 'in')).toBe(inInches);
    expect(exactSource(length, 'mm')).toBe(inMillimetres);
    expect(exactSource(length, 'cm')).toBe(inCentimetres);
    expect(exactSource(length, 'ft')).toBe(inFeet);
    expect(showLength(length, { unit: 'in', ruler: Rational.one, form: 'source' })).toBe(inInches);
  });

  it('is read back as the same length, whatever the length', () => {
    const positive = fc
      .tuple(fc.bigInt({ min: 0n, max: 10n ** 9n }), fc.bigInt({ min: 1n, max: 10n ** 8n }))
      .map(([n, d]) => Length.inches(n, d));
    fc.assert(
      fc.property(positive, fc.constantFrom('in', 'mm', 'cm', 'ft' as const), (length, unit) => {
        const text = exactSource(length, unit);
        const read = parseTradeLength(text);
        expect(read?.unit !== undefined && read.length.equals(length), text).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('read as the trade writes them', () => {
  it.each([
    ['3/4"', '3/4', 'in'],
    ['17-1/2"', '35/2', 'in'],
    ['17 1/2"', '35/2', 'in'],
    ['17½"', '35/2', 'in'],
    ['17-½″', '35/2', 'in'],
    ['½”', '1/2', 'in'],
    ['3⁄4“', '3/4', 'in'],
    ['2.5"', '5/2', 'in'],
    ['12in', '12', 'in'],
    ["5'", '60', 'ft'],
    ['5’', '60', 'ft'],
    ['5\'-2-3/8"', '499/8', 'ft'],
    ['5′ 2 3/8″', '499/8', 'ft'],
    ['5\'2"', '62', 'ft'],
    ['5ft 2in', '62', 'ft'],
    ['5\'-3/8"', '483/8', 'ft'],
    ["1/2'", '6', 'ft'],
    ['19mm', '95/127', 'mm'],
    ['19 mm', '95/127', 'mm'],
    ['4.5cm', '225/127', 'cm'],
    ['½mm', '5/254', 'mm'],
  ])('%s is %s inches, written in %s', (text, exact, unit) => {
    const read = parseTradeLength(text);
    expect(read?.unit).toBe(unit);
    expect(read?.unit !== undefined && read.length.exactInches).toBe(exact);
  });

  it.each([
    ['.5', '1/2'],
    ['17-1/2', '35/2'],
    ['17 1/2', '35/2'],
    ['⅞', '7/8'],
    ['42', '42'],
  ])('%s is the bare number %s', (text, value) => {
    const read = parseTradeLength(text);
    expect(read?.unit).toBeUndefined();
    expect(read?.value.toString()).toBe(value);
  });

  it.each([
    '',
    '"',
    'wide',
    '1/0',
    '1/0"',
    '-3"',
    '3 4"',
    '1e5',
    '5.',
    '1.5-1/2"',
    "5'-",
    "5'2'",
    '3/4/5',
    '5.5\'-2"',
    '19 m',
    '19inch',
    '1½½',
  ])('%j is no number', (text) => {
    expect(parseTradeLength(text)).toBeUndefined();
  });

  it('forty digits are read, more are refused at once', () => {
    expect(parseTradeLength(`${'9'.repeat(40)}"`)?.value.numerator).toBe(10n ** 40n - 1n);
    expect(parseTradeLength(`${'9'.repeat(41)}"`)).toBeUndefined();
    expect(parseTradeLength('9'.repeat(1_000_000))).toBeUndefined();
    expect(parseTradeLength(`1/${' '.repeat(1_000_000)}2`)).toBeUndefined();
  });

  it('never throws', () => {
    const token = fc.string({ unit: fc.constantFrom(...'0123456789-/. \'"½⅞″′“ mcftin'), maxLength: 14 });
    fc.assert(
      fc.property(token, (text) => {
        const read = parseTradeLength(text);
        expect(read === undefined || read.value.sign() >= 0).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });
});

/** Conversions worked out from 1 in = 25.4 mm; the errors in millimetres are those of the rounded inch size. */
describe('millimetre sizes on an inch ruler', () => {
  it.each([
    ['10a', '19', '3/4', '0.050', '3/4', '0.050'],
    ['10b', '18', '23/32', '0.256', '45/64', '-0.141'],
    ['10c', '16', '5/8', '-0.125', '5/8', '-0.125'],
    ['10d', '35', '1-3/8', '-0.075', '1-3/8', '-0.075'],
    ['10e', '37', '1-15/32', '0.306', '1-29/64', '-0.091'],
    ['10f', '32', '1-1/4', '-0.250', '1-17/64', '0.147'],
    ['10g', '12.7', '1/2', '0', '1/2', '0'],
  ])('%s: %s mm', (_, millimetres, to32, error32, to64, error64) => {
    const length = Length.of(Rational.parse(millimetres) ?? expect.fail(), 'mm');
    for (const [denominator, expected, error] of [
      [32, to32, error32],
      [64, to64, error64],
    ] as const) {
      const ruler = Length.inches(1, denominator);
      const [mark = Length.zero] = marksFromBaseline([length], ruler);
      expect(exactSource(mark, 'in')).toBe(`${expected}"`);
      const found = mark.minus(length).in('mm').toNumber();
      expect(found).toBeCloseTo(Number(error), 3);
      const shown = showLength(length, { unit: 'in', ruler: Rational.of(1, denominator) });
      expect(shown.split(' ')[0]).toBe(`${expected}"`);
    }
  });

  it('a row of 32 mm holes stepped off at 1-1/4" is 1 mm out after four', () => {
    const pitch = Length.millimetres(32);
    const stepped = Length.inches(5, 4).times(4);
    expect(pitch.times(4).minus(stepped).in('mm').toString()).toBe('1');
    expect(
      marksFromBaseline([pitch, pitch, pitch, pitch], Length.inches(1, 32)).map((mark) => exactSource(mark, 'in')),
    ).toEqual(['1-1/4"', '2-17/32"', '3-25/32"', '5-1/32"']);
  });
});

describe('marks from one baseline', () => {
  const sizes = fc.array(
    fc.tuple(fc.integer({ min: 0, max: 4000 }), fc.integer({ min: 1, max: 100 })).map(([n, d]) => Length.inches(n, d)),
    { maxLength: 30 },
  );

  it('add up: the rounded parts make the rounded total, and no mark is more than half a step off', () => {
    const ruler = Length.inches(1, 16);
    fc.assert(
      fc.property(sizes, (parts) => {
        const marks = marksFromBaseline(parts, ruler);
        const rounded = sizesBetweenMarks(parts, ruler);
        expect(marks.length).toBe(parts.length);
        let exactEnd = Length.zero;
        let shownEnd = Length.zero;
        marks.forEach((mark, at) => {
          exactEnd = exactEnd.plus(parts[at] ?? Length.zero);
          shownEnd = shownEnd.plus(rounded[at] ?? Length.zero);
          expect(shownEnd.equals(mark)).toBe(true);
          expect(mark.ratioTo(ruler).isWhole()).toBe(true);
          expect(mark.minus(exactEnd).abs().times(2).compare(ruler)).toBeLessThanOrEqual(0);
        });
      }),
    );
  });

  it('three thirds of an inch end on the inch, where three rounded thirds would not', () => {
    const third = Length.inches(1, 3);
    const rounded = sizesBetweenMarks([third, third, third], Length.inches(1, 16));
    expect(rounded.map((size) => size.exactInches)).toEqual(['5/16', '3/8', '5/16']);
  });

  it('without a ruler nothing is rounded', () => {
    expect(marksFromBaseline([Length.inches(1, 3)], Length.zero).map(String)).toEqual(['1/3 in']);
  });
});
