import { evenly } from '../dimension-lanes.ts';
import type { Projection } from '../parts-in-view.ts';
import { type Box, boxAround, type Point } from '../primitives.ts';
import { isInside } from '../shapes/cut-face.ts';
import type { Flat, ViewDirection } from '../shapes/view-direction.ts';
import { onPaper } from './on-paper.ts';
import { partSeenAt, type ViewedPart } from './viewed-parts.ts';

/** Where on a part a mark or the dot of a leader may stand: on its cut face, else where one sees it. */

const SHARES = [0.5, 0.3, 0.7, 0.15, 0.85];
const GRID = 7;
const MOST_AREAS = 4;
const MOST_SPOTS = 12;
/** From a dot to the next outline, in mm on paper. */
const CLEAR_MM = 0.5;
const SLIVER_MM = 0.3;

/** The best first. */
export function spotsOf(
  viewed: ViewedPart,
  all: readonly ViewedPart[],
  from: ViewDirection,
  to: Projection,
): readonly Point[] {
  const { cut } = viewed;
  if (cut !== undefined) {
    const pieces = [...cut.pieces].sort((a, b) => areaOf(b) - areaOf(a)).slice(0, 3);
    return pieces
      .flatMap((piece) => {
        const box = boxAround(piece.map(({ u, v }) => ({ x: u, y: v })));
        return SHARES.map((share): Flat => along(box, share)).filter((spot) => isInside(spot, piece));
      })
      .map((spot) => onPaper(spot, to));
  }
  const isSeen = (spot: Flat): boolean => partSeenAt(all, spot, from) === viewed;
  const onGrid = gridOver(viewed).filter(isSeen);
  const seen = onGrid.length > 0 ? onGrid : besideEdges(viewed, SLIVER_MM / to.factor).filter(isSeen);
  if (seen.length === 0) return viewed.hidden.length === 0 ? [] : middles(viewed).map((spot) => onPaper(spot, to));
  const middle = {
    u: seen.reduce((sum, { u }) => sum + u, 0) / seen.length,
    v: seen.reduce((sum, { v }) => sum + v, 0) / seen.length,
  };
  // A dot on an outline would not tell to which side it belongs.
  const apart = CLEAR_MM / to.factor;
  const isClear = ({ u, v }: Flat): boolean =>
    [-apart, apart].every(
      (by) => partSeenAt(all, { u: u + by, v }, from) === viewed && partSeenAt(all, { u, v: v + by }, from) === viewed,
    );
  const distance = ({ u, v }: Flat): number => Math.hypot(u - middle.u, v - middle.v);
  const nearest = seen.sort((a, b) => distance(a) - distance(b));
  const clear = firstOf(nearest, isClear);
  return (clear.length === 0 ? nearest.slice(0, MOST_SPOTS) : clear).map((spot) => onPaper(spot, to));
}

/** All over the part, of the ends as well as of the middle: for a mark that has no room beside the best ones. */
export function otherSpotsOf(
  viewed: ViewedPart,
  all: readonly ViewedPart[],
  from: ViewDirection,
  to: Projection,
): readonly Point[] {
  const outlines = viewed.cut?.pieces;
  const apart = CLEAR_MM / to.factor;
  const isSeen = ({ u, v }: Flat): boolean =>
    outlines === undefined
      ? [-apart, 0, apart].every(
          (by) =>
            partSeenAt(all, { u: u + by, v }, from) === viewed && partSeenAt(all, { u, v: v + by }, from) === viewed,
        )
      : outlines.some((piece) => isInside({ u, v }, piece));
  return evenly(gridOver(viewed).filter(isSeen), MOST_SPOTS).map((spot) => onPaper(spot, to));
}

/** Whether one sees more of a part than its edges. */
export function isInSight(viewed: ViewedPart, all: readonly ViewedPart[], from: ViewDirection): boolean {
  return gridOver(viewed).some((spot) => partSeenAt(all, spot, from) === viewed);
}

/** On the middle line of the longer side. */
function along(box: Box, share: number): Flat {
  const wide = box.right - box.left;
  const high = box.bottom - box.top;
  return wide >= high
    ? { u: box.left + share * wide, v: box.top + high / 2 }
    : { u: box.left + wide / 2, v: box.top + share * high };
}

/** Over the largest of its outlines, as they may be far apart or lie across one another. */
function gridOver({ areas }: ViewedPart): Flat[] {
  const extent = ({ low, high }: ViewedPart['areas'][number]): number => (high.u - low.u) * (high.v - low.v);
  const largest = [...areas].sort((a, b) => extent(b) - extent(a)).slice(0, MOST_AREAS);
  return largest.flatMap(({ low, high }) =>
    Array.from({ length: GRID * GRID }, (_, at): Flat => {
      const [column, line] = [at % GRID, Math.floor(at / GRID)];
      return {
        u: low.u + ((column + 0.5) / GRID) * (high.u - low.u),
        v: low.v + ((line + 0.5) / GRID) * (high.v - low.v),
      };
    }),
  );
}

function firstOf(spots: readonly Flat[], isWanted: (spot: Flat) => boolean): readonly Flat[] {
  const found: Flat[] = [];
  for (const spot of spots) {
    if (isWanted(spot)) found.push(spot);
    if (found.length === MOST_SPOTS) break;
  }
  return found;
}

/** Of a part that is drawn dashed. */
function middles({ areas }: ViewedPart): Flat[] {
  return areas.map(({ low, high }) => ({ u: (low.u + high.u) / 2, v: (low.v + high.v) / 2 }));
}

/** Of a part that shows only slivers: just beside the middle of what one sees of its edges. */
function besideEdges({ seen }: ViewedPart, apart: number): Flat[] {
  return seen.flatMap(({ from, to }) => {
    const length = Math.hypot(to.u - from.u, to.v - from.v);
    const middle = { u: (from.u + to.u) / 2, v: (from.v + to.v) / 2 };
    const aside = { u: (-(to.v - from.v) / length) * apart, v: ((to.u - from.u) / length) * apart };
    return [
      { u: middle.u + aside.u, v: middle.v + aside.v },
      { u: middle.u - aside.u, v: middle.v - aside.v },
    ];
  });
}

function areaOf(outline: readonly Flat[]): number {
  return outline.reduce((sum, a, at) => {
    const b = outline[(at + 1) % outline.length] ?? a;
    return sum + (a.u * b.v - b.u * a.v) / 2;
  }, 0);
}

/** Whether a box of lettering would stand wholly on the part, as one sees it. */
export function standsOn(viewed: ViewedPart, all: readonly ViewedPart[], from: ViewDirection, to: Projection) {
  const wide = Math.max(...viewed.areas.map(({ high }) => high.u)) - Math.min(...viewed.areas.map(({ low }) => low.u));
  const high = Math.max(...viewed.areas.map((area) => area.high.v)) - Math.min(...viewed.areas.map(({ low }) => low.v));
  return (box: Box): boolean => {
    if (box.right - box.left > wide * to.factor || box.bottom - box.top > high * to.factor) return false;
    for (const x of [box.left, (box.left + box.right) / 2, box.right]) {
      for (const y of [box.top, (box.top + box.bottom) / 2, box.bottom]) {
        const spot = { u: (x - to.x) / to.factor, v: (to.y - y) / to.factor };
        if (partSeenAt(all, spot, from) !== viewed) return false;
        if (viewed.cut !== undefined && !viewed.cut.pieces.some((piece) => isInside(spot, piece))) return false;
      }
    }
    return true;
  };
}
