/**
 * Sizes next to a multiplication sign. What lies off the ruler's marks is shown as a sum (`9-7/32" + 1/64"`), and without
 * brackets a product would take only its first term.
 */

/** A shown length as one factor: a sum stands in brackets, everything else as it is. */
export function asFactor(shownLength: string): string {
  return /^[^(]* [+−] /.test(shownLength) ? `(${shownLength})` : shownLength;
}

/** Shown lengths by each other: `17" × (4-1/4" + 1/64") × 14"`. */
export function byEachOther(...shownLengths: readonly string[]): string {
  return shownLengths.map(asFactor).join(' × ');
}
