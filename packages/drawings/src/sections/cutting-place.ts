import { type Evaluation, type LaidCell, Length, type Part } from '@fettle/engine';
import { realMm } from '../shown-lengths.ts';
import type { OpeningToCut } from './openings.ts';

/**
 * Where inside an opening the plane of a section goes: off every face and gap, through a front wherever it passes one
 * that could be cut, and through as few boards in their whole breadth as can be.
 */

/** As shares of the opening; the middle is what one expects. */
const SHARES = [50, 46, 54, 42, 58, 37, 63, 31, 69, 25, 75, 20, 80, 13, 87] as const;
/** A plane closer to a face than this, in real millimetres, would neither cut the part nor pass it. */
const CLEAR_MM = 0.3;

export function cuttingPlace(evaluation: Evaluation, { laid }: OpeningToCut, axis: 'x' | 'y'): Length {
  const { start, size } = laid.opening[axis];
  // Between the two leaves of a pair there is nothing to cut: the right one is cut in its middle.
  const isPair = axis === 'x' && laid.leaves.length === 2;
  const shares = isPair ? [75, 71, 79, 67, 83, 63, 87, ...SHARES] : SHARES;
  const places = shares.map((share) => start.length.plus(size.length.times(share).dividedBy(100)));
  let best = places[0] ?? Length.zero;
  let least = Number.POSITIVE_INFINITY;
  for (const place of places) {
    const root = evaluation.layout.face;
    const missed = root === undefined ? 0 : frontsMissed(root, axis, place);
    const faults = faultsAt(evaluation.parts, axis, realMm(place)) + 2 * missed;
    if (faults < least) {
      least = faults;
      best = place;
    }
    if (least === 0) break;
  }
  return best;
}

/** In how many openings that have fronts the plane passes between two leaves or beside them. */
function frontsMissed(laid: LaidCell, axis: 'x' | 'y', at: Length): number {
  if (!isWithin(laid.opening[axis], at)) return 0;
  const isMissed = laid.leaves.length > 0 && !laid.leaves.some((leaf) => isWithin(leaf[axis], at));
  return (isMissed ? 1 : 0) + laid.cells.reduce((sum, cell) => sum + frontsMissed(cell, axis, at), 0);
}

function isWithin({ start, end }: LaidCell['opening']['x'], at: Length): boolean {
  return at.compare(start.length) > 0 && at.compare(end.length) < 0;
}

function faultsAt(parts: readonly Part[], axis: 'x' | 'y', at: number): number {
  return parts.reduce((faults, part) => {
    const { start, end } = part.blank[axis];
    const [from, to] = [realMm(start.length), realMm(end.length)];
    if (Math.abs(from - at) < CLEAR_MM || Math.abs(to - at) < CLEAR_MM) return faults + 3;
    const isLaidOpen = part.thin === axis && from < at && at < to;
    return faults + (isLaidOpen ? 1 : 0);
  }, 0);
}
