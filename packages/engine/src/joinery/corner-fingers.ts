import type { Length } from '../length/length.ts';
import { type BoxSolid, boxOf, type End, type Solid } from '../solids/index.ts';
import { BOX_FACES } from '../solids/polyhedron.ts';

/**
 * What is cut where two boards of a drawer box cross at a corner: `side` runs from front to back, `end` from left to
 * right, and both fill the corner. What one keeps the other loses, so the two together fill it exactly.
 */
export interface CornerCuts {
  readonly side: readonly Solid[];
  readonly end: readonly Solid[];
}

/** More fingers than this are no joint but a slip of the unit. */
const MOST = 60;

/** Straight fingers, all of one width from the lower edge up; the topmost takes what is left. The side has the lowest. */
export function fingers(corner: BoxSolid, width: Length): CornerCuts {
  const cuts: { side: Solid[]; end: Solid[] } = { side: [], end: [] };
  if (!width.isPositive()) return cuts;
  let from = corner.y.from;
  for (let nth = 0; from.compare(corner.y.to) < 0 && nth < MOST; nth++) {
    const to = nth === MOST - 1 ? corner.y.to : from.plus(width).min(corner.y.to);
    (nth % 2 === 0 ? cuts.end : cuts.side).push(boxOf(corner.x, { from, to }, corner.z));
    from = to;
  }
  return cuts;
}

export interface TailLayout {
  /** Of the pins, where they are narrow: at the end of the side. */
  readonly pin: Length;
  /** From one pin to the next, about. */
  readonly pitch: Length;
  /** 8 for a slope of one in eight. */
  readonly slope: number;
  /** At which end of z the side ends. */
  readonly outer: End;
}

/**
 * Dovetails: the tails are on the side and widen towards its end, with half a pin at either edge. Tails that would be
 * narrower than a pin are made fewer; a side too low for one gets none, and the two boards butt.
 */
export function tails(corner: BoxSolid, { pin, pitch, slope, outer }: TailLayout): CornerCuts {
  const height = corner.y.to.minus(corner.y.from);
  const long = corner.z.to.minus(corner.z.from);
  const flare = long.dividedBy(slope);
  let count = Math.min(Math.max(Math.round(height.ratioTo(pitch).toNumber()), 1), MOST);
  const wideOf = (of: number) => height.dividedBy(of).minus(pin);
  while (count > 1 && wideOf(count).minus(flare.times(2)).compare(pin) < 0) count -= 1;
  const wide = wideOf(count);
  const narrow = wide.minus(flare.times(2));
  if (!narrow.isPositive()) return { side: [], end: [boxOf(corner.x, corner.y, corner.z)] };
  const step = height.dividedBy(count);
  const middles = Array.from({ length: count }, (_, at) => corner.y.from.plus(step.times(at)).plus(step.dividedBy(2)));
  const trapezoid = (low: readonly [Length, Length], high: readonly [Length, Length]): Solid =>
    throughSide(corner, low, high, outer);
  const half = wide.dividedBy(2);
  const halfAtBase = narrow.dividedBy(2);
  // Between the tails, and under the lowest and over the topmost one.
  const edges = [undefined, ...middles, undefined];
  const spaces = edges.slice(0, -1).map((below, at) => {
    const above = edges[at + 1];
    const low: readonly [Length, Length] =
      below === undefined ? [corner.y.from, corner.y.from] : [below.plus(half), below.plus(halfAtBase)];
    const high: readonly [Length, Length] =
      above === undefined ? [corner.y.to, corner.y.to] : [above.minus(half), above.minus(halfAtBase)];
    return trapezoid(low, high);
  });
  return {
    side: spaces,
    end: middles.map((middle) =>
      trapezoid([middle.minus(half), middle.minus(halfAtBase)], [middle.plus(half), middle.plus(halfAtBase)]),
    ),
  };
}

/**
 * Through the thickness of the side, between a lower and an upper flank, each given at the end of the side and at its
 * base line. Listed as the corners of a box are, so that its faces need no turning: a chest has hundreds of these.
 */
function throughSide(
  corner: BoxSolid,
  low: readonly [Length, Length],
  high: readonly [Length, Length],
  outer: End,
): Solid {
  const flanks = outer === 'from' ? [low, high] : [low, high].map(([atEnd, atBase]) => [atBase, atEnd] as const);
  const corners = [corner.x.from, corner.x.to].flatMap((x) =>
    flanks.flatMap(([before, after]) => [
      { x, y: before, z: corner.z.from },
      { x, y: after, z: corner.z.to },
    ]),
  );
  return { kind: 'convex', corners, faces: BOX_FACES };
}
