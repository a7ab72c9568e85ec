import { Length, type LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';

/**
 * Limits of the trade, each with its source. Where no published figure was found it says so: such a limit makes a
 * warning or a note, never an error. Knows nothing of designs.
 */

/**
 * One limit as each system says it: a maker who measures in millimetres is told round figures of them. Of a published
 * limit the metric figure is rounded so that it demands no more and warns no later.
 */
export interface TradeLimit {
  readonly inches: Length;
  readonly metric: Length;
}

export function limitIn(limit: TradeLimit, unit: LengthUnit): Length {
  return isMetric(unit) ? limit.metric : limit.inches;
}

export function isMetric(unit: LengthUnit): boolean {
  return unit === 'mm' || unit === 'cm';
}

/** No source, common practice: what is thinner is veneer, what is thicker is a beam. */
export const THINNEST_PART: TradeLimit = { inches: Length.inches(1, 64), metric: Length.millimetres(2, 5) };
export const THICKEST_PART: TradeLimit = { inches: Length.inches(4), metric: Length.millimetres(100) };

/** No source: smaller or larger than any piece of casework, which is most often a slip of the unit. */
export const SMALLEST_PIECE: TradeLimit = { inches: Length.inches(1), metric: Length.millimetres(25) };
export const LARGEST_PIECE: TradeLimit = { inches: Length.inches(240), metric: Length.millimetres(6000) };

/** From memory, textbooks: a groove or dado is 1/3 as deep as the wood is thick, never more than 1/2. */
export const GROOVE_DEPTH = Rational.of(1, 3);
export const DEEPEST_GROOVE = Rational.of(1, 2);

/** The marks that makers set out by where no ruler is said. Common practice, no source. */
export const USUAL_MARK: TradeLimit = { inches: Length.inches(1, 32), metric: Length.millimetres(1, 2) };

/** Common practice, no source: what a screw must go into the wood that it holds to. */
export const LEAST_SCREW_HOLD: TradeLimit = { inches: Length.inches(1, 4), metric: Length.millimetres(6) };

/** Common practice, no source: less wood than this behind a groove breaks out. */
export const LEAST_BEHIND_GROOVE: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(3) };
/** Common practice, no source: where a back usually stands. */
export const USUAL_BEHIND_GROOVE: TradeLimit = { inches: Length.inches(1, 2), metric: Length.millimetres(12) };

/** Common practice, no source: a panel may be looser than this in its groove by no more. */
export const LOOSEST_GROOVE = Length.inches(1, 64);

/**
 * How far a sheet of unsanded, touch-sanded or overlaid plywood may be from its performance category: 1/32" up to
 * 13/16", 5 % above. Source: PS 1-19, as tabulated by APA; at 9 % moisture content. For 3/4 it gives 0.719" to 0.781".
 */
export function sheetRange(category: Length): { readonly least: Length; readonly most: Length } {
  const by = category.compare(Length.inches(13, 16)) <= 0 ? Length.inches(1, 32) : category.times(Rational.of(1, 20));
  return { least: category.minus(by), most: category.plus(by) };
}

/**
 * What is left of a rough board when both faces are surfaced: 3/16" less up to 6/4, 1/4" less above. Source: hardwood
 * grading minimums (NHLA practice), two independent reproductions.
 */
export function surfacedBoard(rough: Length): Length {
  return rough.minus(rough.compare(Length.inches(3, 2)) <= 0 ? Length.inches(3, 16) : Length.inches(1, 4));
}

/** Common practice, no source: a wider single door is heavy on its hinges and swings far into the room. */
export const WIDEST_DOOR: TradeLimit = { inches: Length.inches(24), metric: Length.millimetres(600) };

/** Common practice, no source: a drawer box more than twice as wide as it is deep racks and binds. */
export const WIDEST_DRAWER_BY_DEPTH = 2;

/** Common practice, no source: a lower front leaves no room for a box behind it or for a pull on it. */
export const LOWEST_FRONT: TradeLimit = { inches: Length.inches(2), metric: Length.millimetres(50) };

/** Common practice, no source: gaps around inset fronts are 1/16" to 1/8"; beyond these limits they are most often a slip. */
export const NARROWEST_GAP: TradeLimit = { inches: Length.inches(1, 32), metric: Length.millimetres(4, 5) };
export const WIDEST_GAP: TradeLimit = { inches: Length.inches(3, 16), metric: Length.millimetres(5) };
export const USUAL_GAP: TradeLimit = { inches: Length.inches(3, 32), metric: Length.millimetres(2) };

/** No source: a plinth set back by less makes a shadow line and is not meant for toes. */
export const LEAST_MEANT_FOR_TOES: TradeLimit = { inches: Length.inches(1), metric: Length.millimetres(25) };

/** Source: ANSI/KCMA A161.1, requirement list: toe space at least 2" deep and 3" high. */
export const LEAST_TOE_DEPTH: TradeLimit = { inches: Length.inches(2), metric: Length.millimetres(50) };
export const LEAST_TOE_HEIGHT: TradeLimit = { inches: Length.inches(3), metric: Length.millimetres(75) };

/**
 * Source: scope of ASTM F2057-23, clause 1.1 (16 CFR 1261.2): free-standing clothing storage from 27" of height, with
 * further conditions on mass and volume that are not known here.
 */
export const HEIGHT_TO_ANCHOR: TradeLimit = { inches: Length.inches(27), metric: Length.millimetres(685) };

/** Common practice, no source: what is more than so many times as high as deep, or tall and shallow, tips easily. */
export const HIGHEST_BY_DEPTH = 4;
export const TALL_PIECE: TradeLimit = { inches: Length.inches(48), metric: Length.millimetres(1200) };
export const SHALLOW_FOR_TALL: TradeLimit = { inches: Length.inches(16), metric: Length.millimetres(400) };

/** Common practice, no source: less free height between shelves holds nothing. */
export const LEAST_BETWEEN_SHELVES: TradeLimit = { inches: Length.inches(1), metric: Length.millimetres(25) };

/**
 * What a shelf is screened as. Stiffness in psi: Douglas-fir plywood and northern red oak as the Architectural Woodwork
 * Standards (1st ed., 2009) 10-4.4.14.10 take them; MDF 0.52 million, Wood Handbook (FPL-GTR-190, 2010) table 12-1.
 */
export type ShelfMaterial = 'solid wood' | 'plywood' | 'MDF';
const STIFFNESS_PSI: Readonly<Record<ShelfMaterial, number>> = {
  'solid wood': 1_820_000,
  plywood: 950_000,
  MDF: 520_000,
};
/** Source: the same, 10-1.2.21: shelves for books, schools, hospitals and libraries; deflection up to span / 144. */
export const SHELF_LOAD_PSF = 50;

/** Longest adjustable shelf in inches at 50 psf, as printed there. */
const PRINTED_SPANS: Readonly<Record<ShelfMaterial, readonly { readonly thick: Length; readonly inches: number }[]>> = {
  'solid wood': [
    { thick: Length.inches(3, 4), inches: 46 },
    { thick: Length.inches(1), inches: 61 },
  ],
  plywood: [
    { thick: Length.inches(3, 4), inches: 37 },
    { thick: Length.inches(1), inches: 49 },
  ],
  MDF: [],
};

/** As `longestShelf`, in whole inches or whole millimetres. */
export function longestShelfIn(material: ShelfMaterial, thickness: Length, unit: LengthUnit): Length {
  const longest = longestShelf(material, thickness);
  return isMetric(unit) ? Length.of(longest.in('mm').floor(), 'mm') : longest;
}

/**
 * The longest shelf in whole inches. A thickness that is not printed follows the formula that the printed figures
 * follow, rounded down as they are: span = cube root of (384 E thickness^3 / 12 / (5 load)), ends simply supported.
 * Zero for a thickness that is not positive.
 */
export function longestShelf(material: ShelfMaterial, thickness: Length): Length {
  if (!thickness.isPositive()) return Length.zero;
  const printed = PRINTED_SPANS[material].find(({ thick }) => thick.equals(thickness));
  if (printed !== undefined) return Length.inches(printed.inches);
  const thick = thickness.in('in');
  const cube = thick
    .times(thick)
    .times(thick)
    .times(Rational.of(384 * STIFFNESS_PSI[material], 60 * SHELF_LOAD_PSF));
  if (isOver(1, cube)) return Length.zero;
  if (!isOver(LONGEST_SCREENED, cube)) return Length.inches(LONGEST_SCREENED);
  let inches = Math.floor(Math.cbrt(cube.toNumber()));
  // The cube root is only a first guess: whether it fits is decided exactly.
  while (inches > 0 && isOver(inches, cube)) inches -= 1;
  while (!isOver(inches + 1, cube)) inches += 1;
  return Length.inches(inches);
}

/** Inches beyond which no shelf is looked for. */
const LONGEST_SCREENED = 1000;

function isOver(inches: number, cube: Rational): boolean {
  const whole = Rational.of(inches);
  return whole.times(whole).times(whole).compare(cube) > 0;
}
