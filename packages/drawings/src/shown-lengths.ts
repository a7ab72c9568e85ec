import { type Length, Rational, showLength, type Units } from '@fettle/engine';

/** The one place where a length becomes words on a sheet or in a table, and where it becomes millimetres. */

/** In the piece's units, on its ruler. */
export function shown(length: Length, units: Units): string {
  return showLength(length, { unit: units.unit, ruler: units.ruler });
}

/**
 * For a dimension on a sheet, where room is short: without a unit where the sheet is in millimetres throughout (ISO
 * 129-1, from memory), and with the nearest mark alone, after a sign that says so, where the exact size has no short
 * form.
 */
export function figureOnSheet(length: Length, units: Units): string {
  if (!isInch(units))
    return shown(length, units)
      .replace('about', NEARLY)
      .replace(units.unit === 'mm' ? ' mm' : '', '');
  const [mark, ...explained] = shown(length, units).split(' (');
  return explained.length === 0 ? (mark ?? '') : `${NEARLY} ${mark}`;
}

/** Before a figure that is only the nearest mark, or in metric units the nearest thousandth. */
export const NEARLY = '≈';

/** What the sign means on this sheet. */
export function nearlyWords(units: Units): string {
  return isInch(units) ? 'nearest mark, closer in the cut list' : 'to the nearest thousandth of a millimetre';
}

/** For coordinates only; not finite for lengths beyond all measure. */
export function realMm(length: Length): number {
  return length.approximateInches * 25.4;
}

/** 'inches, ruler 1/32"'. */
export function unitWords(units: Units): string {
  const names = { in: 'inches', mm: 'millimetres', cm: 'centimetres', ft: 'feet and inches' } as const;
  const name = names[units.unit];
  if (units.ruler.compare(Rational.zero) <= 0) return name;
  const inches = units.unit === 'in' || units.unit === 'ft';
  return `${name}, ruler ${units.ruler}${inches && units.unit === 'in' ? '"' : ` ${units.unit}`}`;
}

export function isInch(units: Units): boolean {
  return units.unit === 'in' || units.unit === 'ft';
}
