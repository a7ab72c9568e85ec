import type { Mend } from '@fettle/findings';
import type { Figure } from '../../design/figure.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { exactSource } from '../../length/trade-formats.ts';
import { givenAt } from '../written-sizes.ts';

/** The unit a number was probably meant in: the one of the other system that is used for such sizes. */
const meant: Readonly<Record<LengthUnit, LengthUnit>> = { in: 'mm', mm: 'in', cm: 'mm', ft: 'in' };

/** Offers the same number in the other unit, where it makes a usual size. */
export function otherUnitMends(
  figure: Figure,
  unit: LengthUnit,
  isUsual: (length: Length) => boolean,
): readonly Mend[] {
  const at = givenAt(figure);
  const other = meant[unit];
  const length = Length.of(figure.length.in(unit), other);
  if (at === undefined || !isUsual(length)) return [];
  const words = exactSource(length, other);
  return [{ how: 'other-unit', values: { words }, changes: [{ kind: 'set-words', at, words }] }];
}
