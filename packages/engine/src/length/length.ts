import type { Measure } from '@fettle/findings';
import { Rational, type WholeOrRational } from './rational.ts';

/**
 * A length, exact. Knows how big its units are and nothing about rulers, rounding or how lengths are written: that is
 * the trade formats' business.
 */

export type LengthUnit = 'in' | 'mm' | 'cm' | 'ft';

/** One inch is 25.4 mm exactly and one foot 12 inches (NIST SP 811, appendix B). */
const INCHES_IN: Readonly<Record<LengthUnit, Rational>> = {
  in: Rational.one,
  ft: Rational.of(12),
  mm: Rational.of(5, 127),
  cm: Rational.of(50, 127),
};

/** An exact, immutable length; it may be zero or negative. The unit it was written in is not part of it. */
export class Length implements Measure {
  static readonly zero = new Length(Rational.zero);

  private readonly inches: Rational;

  private constructor(inches: Rational) {
    this.inches = inches;
  }

  /** `n` over `d` inches; whole numbers only, like `Rational.of`. */
  static inches(n: number | bigint, d: number | bigint = 1): Length {
    return new Length(Rational.of(n, d));
  }

  /** `n` over `d` millimetres; whole numbers only, like `Rational.of`. */
  static millimetres(n: number | bigint, d: number | bigint = 1): Length {
    return Length.of(Rational.of(n, d), 'mm');
  }

  static of(value: Rational, unit: LengthUnit): Length {
    return new Length(unit === 'in' ? value : value.times(INCHES_IN[unit]));
  }

  /** Reads back `exactInches`; undefined if the text is not a fraction. */
  static fromMeasure(measure: Measure): Length | undefined {
    if (measure instanceof Length) return measure;
    const inches = Rational.parse(measure.exactInches);
    return inches === undefined ? undefined : new Length(inches);
  }

  static sum(lengths: Iterable<Length>): Length {
    let total = Length.zero;
    for (const length of lengths) total = total.plus(length);
    return total;
  }

  /** Exact inches in lowest terms, such as `591/64` or `57`. */
  get exactInches(): string {
    return this.inches.toString();
  }

  /** For drawing on a screen, never to calculate on. */
  get approximateInches(): number {
    return this.inches.toNumber();
  }

  /** How many of `unit` this length is. */
  in(unit: LengthUnit): Rational {
    return unit === 'in' ? this.inches : this.inches.dividedBy(INCHES_IN[unit]);
  }

  plus(other: Length): Length {
    return new Length(this.inches.plus(other.inches));
  }

  minus(other: Length): Length {
    return new Length(this.inches.minus(other.inches));
  }

  times(factor: WholeOrRational): Length {
    return new Length(this.inches.times(factor));
  }

  /** Throws a RangeError on zero. */
  dividedBy(divisor: WholeOrRational): Length {
    return new Length(this.inches.dividedBy(divisor));
  }

  /** Throws a RangeError if `other` is zero. */
  ratioTo(other: Length): Rational {
    return this.inches.dividedBy(other.inches);
  }

  negated(): Length {
    return new Length(this.inches.negated());
  }

  abs(): Length {
    return this.isNegative() ? this.negated() : this;
  }

  sign(): -1 | 0 | 1 {
    return this.inches.sign();
  }

  isZero(): boolean {
    return this.inches.isZero();
  }

  isNegative(): boolean {
    return this.inches.sign() < 0;
  }

  isPositive(): boolean {
    return this.inches.sign() > 0;
  }

  /** Negative if this is shorter than `other`, zero if equal, positive if longer. */
  compare(other: Length): -1 | 0 | 1 {
    return this.inches.compare(other.inches);
  }

  equals(other: Length): boolean {
    return this.inches.equals(other.inches);
  }

  min(other: Length): Length {
    return this.compare(other) <= 0 ? this : other;
  }

  max(other: Length): Length {
    return this.compare(other) >= 0 ? this : other;
  }

  toString(): string {
    return `${this.exactInches} in`;
  }

  toJSON(): string {
    return this.exactInches;
  }
}
