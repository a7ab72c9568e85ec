import type { Mend, Origin } from '@fettle/findings';
import type { Figure } from '../design/figure.ts';
import type { Length } from '../length/length.ts';

/** Where a figure can be changed by changing one number of the text; undefined where it cannot. */
export function givenAt(figure: Figure | undefined): Origin | undefined {
  let current = figure;
  while (current !== undefined) {
    const reason = current.reason;
    if (reason.kind === 'given') return reason.origin;
    if (reason.kind !== 'derived') return undefined;
    // A figure that only passes another one on is changed where that one is.
    const counted = reason.operands.filter((operand) => operand.sign !== '');
    const only = counted.length === 1 ? counted[0] : undefined;
    if (only === undefined || only.sign !== '+' || only.times !== undefined) return undefined;
    current = only.figure;
  }
  return undefined;
}

/** Another number at that place; none where there is no such place, or nothing would be left. */
export function sizeMend(how: string, at: Origin | undefined, size: Length): readonly Mend[] {
  if (at === undefined || !size.isPositive()) return [];
  return [{ how, values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
}

export function isSameOrigin(a: Origin, b: Origin): boolean {
  return a.unit === b.unit && a.start === b.start && a.end === b.end;
}
