import { Length, type LengthUnit, parseTradeLength, Rational } from '@fettle/engine';

/**
 * What one is asked before a new piece is written, and what may be answered. Plain data, for answers come from another
 * process; knows nothing of how they are asked.
 */

export const rulers = ['inches-32', 'inches-64', 'inches-16', 'mm-1', 'mm-half'] as const;
export type Ruler = (typeof rulers)[number];
export const contents = ['papers', 'clothes', 'boxes', 'books'] as const;
export type Content = (typeof contents)[number];
export const households = ['adults', 'children', 'seated'] as const;
export type Household = (typeof households)[number];
export const statures = ['low', 'side', 'chest', 'tall', 'full'] as const;
export type Stature = (typeof statures)[number];

/** As they come from outside, not checked yet. Lengths are in the maker's words; a bare number takes the ruler's unit. */
export interface NewPieceAnswers {
  readonly name?: unknown;
  readonly ruler?: unknown;
  readonly holds?: unknown;
  readonly width?: unknown;
  readonly height?: unknown;
  readonly depth?: unknown;
  readonly people?: unknown;
  readonly stature?: unknown;
}

/** The habits of one measuring system. */
export interface System {
  readonly unit: LengthUnit;
  /** As the text says it: `inches to 1/32`. */
  readonly unitsWords: string;
  /** Overall sizes are whole multiples of this. */
  readonly grid: Length;
  of(inches: Length, millimetres: number): Length;
}

export function systemOf(ruler: Ruler): System {
  const inches = ruler.startsWith('inches');
  const words = {
    'inches-32': 'inches to 1/32',
    'inches-64': 'inches to 1/64',
    'inches-16': 'inches to 1/16',
    'mm-1': 'mm to 1',
    'mm-half': 'mm to 0.5',
  };
  return {
    unit: inches ? 'in' : 'mm',
    unitsWords: words[ruler],
    grid: inches ? Length.inches(1, 4) : Length.millimetres(5),
    of: (imperial, millimetres) => (inches ? imperial : Length.millimetres(millimetres)),
  };
}

export function isRuler(value: unknown): value is Ruler {
  return rulers.some((each) => each === value);
}
export function isHousehold(value: unknown): value is Household {
  return households.some((each) => each === value);
}
export function isStature(value: unknown): value is Stature {
  return statures.some((each) => each === value);
}
/** At least one, each known; in the order of `contents`, so that the order of choosing makes no difference. */
export function readContents(value: unknown): readonly Content[] | undefined {
  if (!Array.isArray(value) || value.length === 0) return undefined;
  if (!value.every((each) => contents.some((known) => known === each))) return undefined;
  return contents.filter((each) => value.includes(each));
}

/** Undefined for what is no length. */
export function readLength(words: unknown, unit: LengthUnit): Length | undefined {
  if (typeof words !== 'string') return undefined;
  const read = parseTradeLength(words.trim());
  if (read === undefined) return undefined;
  return read.unit === undefined ? Length.of(read.value, unit) : read.length;
}

/** The greatest multiple of `grid` that is not greater. */
export function downTo(grid: Length, length: Length): Length {
  return grid.times(length.ratioTo(grid).floor());
}

export function wholeNumberOf(length: Length, by: Length): number {
  return length.ratioTo(by).floor().toNumber();
}

export const half = Rational.of(1, 2);
