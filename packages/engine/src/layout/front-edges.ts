import { less, plus } from '../design/derive.ts';
import type { FrontFit, GroupCell } from '../design/design.ts';
import type { Operand } from '../design/figure.ts';
import { Rational } from '../length/rational.ts';
import { dividerLabel } from './cell-names.ts';

/**
 * What makes a front longer or shorter than its opening at each of its edges.
 *
 * Against the case and against a shown divider an inset front stays one gap away. Over a covered divider two fronts
 * meet with one gap between them; `anchor` says where that gap sits:
 * - `centre`: the middle of the gap lies on the middle of the divider, and either front laps half the thickness less
 *   half a gap over it;
 * - `start`: the middle of the gap lies on the face that comes first (left in a row, upper in a stack): the front
 *   before stays half a gap short of its opening, the front after laps the whole thickness less half a gap;
 * - `end`: the same with the face that comes last.
 * Where nothing stands between two spaces the divider counts as covered and has no thickness.
 */
export interface FrontEdges {
  readonly left: readonly Operand[];
  readonly right: readonly Operand[];
  readonly top: readonly Operand[];
  readonly bottom: readonly Operand[];
}

const half = Rational.of(1, 2);

export function edgesAgainstCase(fit: FrontFit): FrontEdges {
  const edge = [less('gap', fit.gap)];
  return { left: edge, right: edge, top: edge, bottom: edge };
}

/** At the divider after cell `at`: for the front before it (at its end) and for the front after it (at its start). */
export function edgesAtDivider(
  group: GroupCell,
  at: number,
  fit: FrontFit,
): { readonly before: readonly Operand[]; readonly after: readonly Operand[] } {
  const divider = group.dividers[at];
  const halfGap = less('gap', fit.gap, half);
  if (divider === undefined || divider.form === 'none') return { before: [halfGap], after: [halfGap] };
  if (divider.mode === 'shown') {
    const edge = [less('gap', fit.gap)];
    return { before: edge, after: edge };
  }
  // Labelled as the boundary is, so that in a sum over the whole row or stack the two cancel.
  const label = dividerLabel(group, at);
  const whole = plus(label, divider.material.thickness);
  const middle = plus(label, divider.material.thickness, half);
  switch (divider.anchor) {
    case 'centre':
      return { before: [middle, halfGap], after: [middle, halfGap] };
    case 'start':
      return { before: [halfGap], after: [whole, halfGap] };
    case 'end':
      return { before: [whole, halfGap], after: [halfGap] };
    default: {
      const unknown: never = divider.anchor;
      return unknown;
    }
  }
}

/** The same edge, seen from the front towards the opening. */
export function turned(edge: readonly Operand[]): readonly Operand[] {
  return edge.map((operand) =>
    operand.sign === '' ? operand : { ...operand, sign: operand.sign === '+' ? '-' : '+' },
  );
}
