import { Length } from '../length/length.ts';
import type { AxisCell, Blame } from './axis.ts';
import { type AxisPlan, deltaOf, type Face, faceMeant, faceOf, measuredOf } from './axis-plan.ts';

/**
 * Which written sizes could give when a row or stack does not come out, and how far. Judges sizes only; what is said
 * about them, and where in the text, is for others.
 */

export interface Sum {
  readonly tooMuch: boolean;
  /** By how much the sum misses the total; absent when no single exact size would mend it. */
  readonly difference?: Length;
}

/**
 * Every written size that takes part in the sum, those that can mend it alone first, then by slack, the greatest first.
 * A cell that copies another is not named: the size it copies is, and counts as often as it is copied. Measured and
 * copied-in sizes are facts here: they are named, and can give nothing.
 */
export function blameFor(axis: AxisPlan, sum: Sum): readonly Blame[] {
  const copies = new Map<AxisCell, number>();
  for (const plan of axis.plans) {
    if (plan.kind !== 'unknown') copies.set(plan.root, (copies.get(plan.root) ?? 0) + 1);
  }
  const blame = axis.plans.flatMap((plan): Blame[] => {
    if (plan.kind === 'unknown' || plan.root !== plan.cell) return [];
    const { cell } = plan;
    const face = faceMeant(cell);
    const times = copies.get(cell) ?? 1;
    if (plan.kind === 'set') {
      const by = plan.solved.by;
      if (by === 'fixed') return [blameOne(cell, 'fixed', face, faceOf(plan.solved, face), sum, times)];
      const basis = by === 'measured' ? (measuredOf(cell)?.face ?? 'opening') : face;
      const figure = faceOf(plan.solved, basis);
      return [
        {
          id: cell.id,
          label: cell.label,
          by: by === 'measured' ? 'measured' : 'same',
          basis,
          figure,
          slack: Length.zero,
        },
      ];
    }
    const limit = sum.tooMuch ? cell.atLeast : cell.atMost;
    if (limit === undefined) return [];
    return [blameOne(cell, sum.tooMuch ? 'at-least' : 'at-most', face, limit, sum, times)];
  });
  return blame.sort(bestMendFirst);
}

function blameOne(
  cell: AxisCell,
  by: 'fixed' | 'at-least' | 'at-most',
  basis: Face,
  figure: Blame['figure'],
  sum: Sum,
  times: number,
): Blame {
  const { id, label } = cell;
  const size = figure.length;
  const floor = nothingLeft(cell, basis);
  // A limit that is itself to blame is not the limit of its own change; its counterpart is.
  const least = by === 'at-least' ? undefined : cell.atLeast?.length;
  const most = by === 'at-most' ? undefined : cell.atMost?.length;
  const lowest = least === undefined ? floor : least.max(floor);
  const slack = sum.tooMuch ? size.minus(lowest).max(Length.zero) : most?.minus(size).max(Length.zero);
  const step = sum.difference?.dividedBy(sum.tooMuch ? -times : times);
  const mended = step === undefined ? undefined : size.plus(step);
  const isPossible =
    mended !== undefined &&
    mended.compare(floor) > 0 &&
    (least === undefined || mended.compare(least) >= 0) &&
    (most === undefined || mended.compare(most) <= 0);
  return {
    id,
    label,
    by,
    basis,
    figure,
    ...(slack === undefined ? {} : { slack }),
    ...(isPossible ? { mended } : {}),
  };
}

/** The size of this face at which the face itself, or the other one, is down to nothing. */
function nothingLeft(cell: AxisCell, face: Face): Length {
  const delta = deltaOf(cell);
  return Length.zero.max(face === 'front' ? delta : delta.negated());
}

function bestMendFirst(a: Blame, b: Blame): number {
  const byMend = Number(b.mended !== undefined) - Number(a.mended !== undefined);
  if (byMend !== 0) return byMend;
  if (a.slack !== undefined && b.slack !== undefined) return b.slack.compare(a.slack);
  if (a.slack === undefined && b.slack === undefined) return b.figure.length.compare(a.figure.length);
  return a.slack === undefined ? -1 : 1;
}
