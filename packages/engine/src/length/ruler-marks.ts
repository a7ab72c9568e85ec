import type { Length } from './length.ts';

/** The next mark of a ruler that is not less than the length; the length itself where the ruler has no marks. */
export function upToMark(length: Length, mark: Length): Length {
  if (!mark.isPositive()) return length;
  return mark.times(length.ratioTo(mark).negated().floor().negated());
}

/** The last mark of a ruler that is not beyond the length; the length itself where it is less than one mark. */
export function downToMark(length: Length, mark: Length): Length {
  if (!mark.isPositive()) return length;
  const marks = length.ratioTo(mark).floor();
  return marks.sign() > 0 ? mark.times(marks) : length;
}
