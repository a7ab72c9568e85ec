import { Length, type LengthUnit } from './length.ts';
import { Rational } from './rational.ts';

/**
 * Lengths as the trade writes them: on a drawing, where a ruler matters, and in the text, where nothing may be lost.
 * Rounds only what is shown and says so; never hands a rounded length back as if it were the real one, except as marks
 * of a ruler from one baseline.
 */

export { parseTradeLength, type TradeNumber } from './parse-trade-length.ts';

export interface ShowOptions {
  readonly unit: LengthUnit;
  /** The finest mark of the ruler, in `unit`; matters for inches and feet. Zero or less means no ruler. */
  readonly ruler: Rational;
  /** `source` is `exactSource`; the default is meant for reading. */
  readonly form?: 'typographic' | 'source';
}

/** The finest step of an inch that is worth naming beside a mark: below it the remainder is no longer readable. */
const FINEST_INCH_STEP = 128n;
/** Fractions of an inch with larger denominators than this are shown as decimals: nobody finds a 272nd on a rule. */
const LARGEST_READABLE_DENOMINATOR = 128n;
const ABOUT = 'about ';

/**
 * A length for reading, such as `17-1/2"`, `19 mm` or, when feet are asked for, `5'-2-3/8"`.
 *
 * In millimetres and centimetres one reads decimals: the length itself, to the thousandth of a millimetre whatever the
 * ruler (`581.8 mm`), and `about 1160.333 mm` where it does not end there.
 *
 * In inches and feet what is not a mark of the ruler never passes for one. In this order:
 * 1. smaller than the first mark, and a plain fraction: itself (`1/64"`);
 * 2. off by a plain step (128ths of an inch): nearest mark and remainder, `9-7/32" + 1/64"`; halfway between two marks
 *    the lower one is named;
 * 3. plain in millimetres: `3/4" (exactly 19 mm)`;
 * 4. a fraction one can still read, down to 128ths: `9-21/32" (exactly 9-2/3")`;
 * 5. otherwise `9-7/32" (about 9.2283")`.
 */
export function showLength(length: Length, options: ShowOptions): string {
  const { unit, ruler, form } = options;
  if (form === 'source') return exactSource(length, unit);
  if (length.isNegative()) {
    const positive = showLength(length.negated(), options);
    if (positive.startsWith(ABOUT)) return `${ABOUT}−${positive.slice(ABOUT.length)}`;
    return / [+−] /.test(positive) ? `−(${positive})` : `−${positive}`;
  }
  if (unit === 'mm' || unit === 'cm') {
    return isPlainStep(length, unit) ? shownPlainly(length, unit) : `${ABOUT}${decimalAbout(length, unit)}`;
  }
  const step = Length.of(ruler, unit);
  if (step.sign() <= 0) return shownExactly(length, unit) ?? `${ABOUT}${decimalAbout(length, unit)}`;
  const mark = nearestMark(length, step);
  if (mark.equals(length)) return shownPlainly(length, unit);
  const remainder = length.minus(mark);
  if (isPlainStep(length, unit) && length.compare(step) < 0) return shownPlainly(length, unit);
  const shownMark = shownPlainly(mark, unit);
  if (isPlainStep(remainder, unit)) {
    return `${shownMark} ${remainder.isNegative() ? '−' : '+'} ${shownPlainly(remainder.abs(), unit)}`;
  }
  const exactly = shownExactly(length, unit);
  return exactly === undefined
    ? `${shownMark} (about ${decimalAbout(length, unit)})`
    : `${shownMark} (exactly ${exactly})`;
}

/**
 * A length as it is written back into the text: one number of the language, never rounded, whatever the length.
 * Inches as a mixed fraction (`9-15/64"`), feet as `5'-2-3/8"`, millimetres and centimetres as a decimal where it ends
 * (`234.553125mm`) and as a mixed fraction where it does not (`9-2/3mm`). A negative length has a minus before it.
 */
export function exactSource(length: Length, unit: LengthUnit): string {
  if (length.isNegative()) return `-${exactSource(length.negated(), unit)}`;
  switch (unit) {
    case 'in':
      return `${mixedFraction(length.in('in'))}"`;
    case 'ft':
      return feetAndInches(length);
    case 'mm':
    case 'cm': {
      const value = length.in(unit);
      return `${terminatingDecimal(value, 12) ?? mixedFraction(value)}${unit}`;
    }
    default: {
      const unknown: never = unit;
      return unknown;
    }
  }
}

/**
 * Where each part ends on a ruler laid along them all: parts are summed exactly from one baseline and each sum goes to
 * its nearest mark (halfway, the lower). `ruler` is the distance between two marks; zero or less rounds nothing.
 */
export function marksFromBaseline(sizes: readonly Length[], ruler: Length): readonly Length[] {
  let end = Length.zero;
  return sizes.map((size) => {
    end = end.plus(size);
    return ruler.sign() <= 0 ? end : nearestMark(end, ruler);
  });
}

/**
 * The sizes one reads between those marks. Unlike parts rounded one by one they add up to the rounded total, and each
 * is less than one step off, or exactly one when both its ends lay halfway.
 */
export function sizesBetweenMarks(sizes: readonly Length[], ruler: Length): readonly Length[] {
  let start = Length.zero;
  return marksFromBaseline(sizes, ruler).map((mark) => {
    const size = mark.minus(start);
    start = mark;
    return size;
  });
}

/** Halfway between two marks the lower one. `step` is positive. */
function nearestMark(length: Length, step: Length): Length {
  const steps = length.ratioTo(step);
  const below = steps.floor();
  const isNearerAbove = steps.minus(below).compare(Rational.of(1, 2)) > 0;
  return step.times(isNearerAbove ? below.plus(Rational.one) : below);
}

function isPlainStep(length: Length, unit: LengthUnit): boolean {
  if (unit === 'in' || unit === 'ft') return FINEST_INCH_STEP % length.in('in').denominator === 0n;
  return 1000n % length.in('mm').denominator === 0n;
}

/** For lengths known to be readable in this unit. */
function shownPlainly(length: Length, unit: LengthUnit): string {
  if (unit === 'ft') return feetAndInches(length);
  const value = length.in(unit);
  if (unit === 'in') return `${mixedFraction(value)}"`;
  return `${terminatingDecimal(value, 6) ?? mixedFraction(value)} ${unit}`;
}

/** For inches and feet: in whichever system the length is plain; undefined when it is plain in none. */
function shownExactly(length: Length, unit: 'in' | 'ft'): string | undefined {
  if (isPlainStep(length, unit)) return shownPlainly(length, unit);
  if (isPlainStep(length, 'mm')) return shownPlainly(length, 'mm');
  const readable = length.in('in').denominator <= LARGEST_READABLE_DENOMINATOR;
  return readable ? shownPlainly(length, unit) : undefined;
}

/** Four places in inches and feet, thousandths of a millimetre in metric units; halfway the lower. */
function decimalAbout(length: Length, unit: LengthUnit): string {
  const isMetric = unit === 'mm' || unit === 'cm';
  const rounded = nearestMark(length, Length.of(Rational.of(1, isMetric ? 1000 : 10000), isMetric ? 'mm' : 'in'));
  if (isMetric) return `${terminatingDecimal(rounded.in(unit), 4)} ${unit}`;
  return `${terminatingDecimal(rounded.in('in'), 4)}"`;
}

function feetAndInches(length: Length): string {
  const feet = length.in('ft').floor();
  const inches = length.minus(Length.of(feet, 'ft')).in('in');
  if (feet.isZero()) return `${mixedFraction(inches)}"`;
  return inches.isZero() ? `${feet}'` : `${feet}'-${mixedFraction(inches)}"`;
}

/** `17-1/2`, `3/4` or `17`; not for negative values. */
function mixedFraction(value: Rational): string {
  const whole = value.floor();
  const fraction = value.minus(whole);
  if (fraction.isZero()) return `${whole}`;
  return whole.isZero() ? `${fraction}` : `${whole}-${fraction}`;
}

/** Undefined when the decimal does not end within `most` places; not for negative values. */
function terminatingDecimal(value: Rational, most: number): string | undefined {
  const scaled = value.times(Rational.of(10n ** BigInt(most)));
  if (!scaled.isWhole()) return undefined;
  const digits = scaled.numerator.toString().padStart(most + 1, '0');
  const places = digits.slice(digits.length - most).replace(/0+$/, '');
  const whole = digits.slice(0, digits.length - most);
  return places === '' ? whole : `${whole}.${places}`;
}
