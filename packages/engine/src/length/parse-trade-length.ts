import { Length, type LengthUnit } from './length.ts';
import { Rational } from './rational.ts';

/**
 * Reads one number as the trade writes it. Knows nothing of sentences, arithmetic or signs: a minus belongs to the
 * expression around the number.
 */

/** A bare number has no unit: it may be a count, a factor, or a length in the piece's units. */
export type TradeNumber =
  | { readonly unit: LengthUnit; readonly value: Rational; readonly length: Length }
  | { readonly unit: undefined; readonly value: Rational };

/** More digits than any length needs; beyond this a slip of the keyboard could make sums as slow as one likes. */
const MOST_DIGITS = 40;
const MOST_CHARACTERS = 80;

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅐': '1/7',
  '⅑': '1/9',
  '⅒': '1/10',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * `3/4"`, `17-1/2"`, `17 1/2"`, `17½"`, `2.5"`, `.5`, `5'`, `5'-2-3/8"`, `5' 2"`, `5ft 2in`, `19mm`, `19 mm`, `4.5cm`.
 * Inch and foot marks may be straight, curly or primes. `value` counts `unit`s; feet with inches count as feet.
 * Undefined for everything else, for a zero denominator, and for more than 40 digits.
 */
export function parseTradeLength(text: string): TradeNumber | undefined {
  if (text.length > MOST_CHARACTERS) return undefined;
  const plain = plainMarks(text);
  if (plain.replace(/\D/g, '').length > MOST_DIGITS) return undefined;
  const feet = /^([^']+)'(?:[- ]?([^'"]+)"?)?$/.exec(plain);
  if (feet?.[1] !== undefined) return feetAndInches(feet[1], feet[2]);
  const simple = /^(.*?)(?:(")| ?(mm|cm))?$/.exec(plain);
  const value = simple?.[1] === undefined ? undefined : amount(simple[1]);
  if (value === undefined) return undefined;
  if (simple?.[2] !== undefined) return withUnit(value, 'in');
  const metric = simple?.[3];
  return metric === 'mm' || metric === 'cm' ? withUnit(value, metric) : { unit: undefined, value };
}

function feetAndInches(feetText: string, inchesText: string | undefined): TradeNumber | undefined {
  const feet = amount(feetText);
  if (feet === undefined) return undefined;
  if (inchesText === undefined) return withUnit(feet, 'ft');
  const inches = amount(inchesText);
  // 5-1/2'-3" and 5.5'-3" are not written by anyone who means them.
  if (inches === undefined || !feet.isWhole()) return undefined;
  return withUnit(feet.plus(inches.dividedBy(12)), 'ft');
}

function withUnit(value: Rational, unit: LengthUnit): TradeNumber {
  return { unit, value, length: Length.of(value, unit) };
}

/** One straight mark for each of the many ways to set it, and plain digits for the fraction characters. */
function plainMarks(text: string): string {
  return text
    .trim()
    .replace(/(\d?)[- ]?([¼½¾⅐-⅞])/g, (_, digit: string, fraction: string) => {
      const plain = VULGAR_FRACTIONS[fraction] ?? fraction;
      return digit === '' ? plain : `${digit}-${plain}`;
    })
    .replace(/⁄/g, '/')
    .replace(/[″“”]|''|′′|(?<=[\d.])in$/g, '"')
    .replace(/[′‘’]|(?<=[\d.])ft(?![A-Za-z])/g, "'");
}

/** A mixed number, a fraction or a decimal without a sign. */
function amount(text: string): Rational | undefined {
  const mixed = /^(?:(\d+)[- ])?(\d+)\/(\d+)$/.exec(text);
  if (mixed === null) return /^(\d+|\d*\.\d+)$/.test(text) ? Rational.parse(text) : undefined;
  const fraction = Rational.parse(`${mixed[2]}/${mixed[3]}`);
  return fraction?.plus(Rational.of(BigInt(mixed[1] ?? 0)));
}
