import { Rational } from '../length/rational.ts';
import { type FlatPoint, flatCross, flatDifference, flatDot } from './points.ts';
import { edgesOf } from './polyhedron.ts';
import { areRoughlyNearer } from './rough.ts';

/** Outlines and distances across an axis, exact: distances stay squared. */

/** The corners of the smallest convex outline around `points`, counter-clockwise; one or two where they have no area. */
export function outlineAround(points: readonly FlatPoint[]): readonly FlatPoint[] {
  const sorted = [...points].sort((a, b) => a.u.compare(b.u) || a.v.compare(b.v));
  const different = sorted.filter((point, index) => {
    const before = sorted[index - 1];
    return before === undefined || !before.u.equals(point.u) || !before.v.equals(point.v);
  });
  if (different.length < 3) return different;
  return [...halfOutline(different), ...halfOutline([...different].reverse())];
}

/** Without its last corner, which begins the other half. */
function halfOutline(sorted: readonly FlatPoint[]): readonly FlatPoint[] {
  const kept: FlatPoint[] = [];
  for (const point of sorted) {
    while (kept.length >= 2) {
      const [before, last] = kept.slice(-2);
      if (before === undefined || last === undefined) break;
      const turn = flatCross(flatDifference(last, before), flatDifference(point, last)).sign();
      if (turn > 0) break;
      kept.pop();
    }
    kept.push(point);
  }
  return kept.slice(0, -1);
}

/** Zero where the two touch or overlap. Both are convex outlines, counter-clockwise; one or two corners will do. */
export function squaredDistance(a: readonly FlatPoint[], b: readonly FlatPoint[]): Rational {
  if (a.some((point) => isWithinOutline(point, b)) || b.some((point) => isWithinOutline(point, a)))
    return Rational.zero;
  let least: Rational | undefined;
  for (const [p, q] of edgesOf(a)) {
    for (const [r, s] of edgesOf(b)) {
      if (segmentsCross(p, q, r, s)) return Rational.zero;
      for (const squared of [squaredDistanceToSegment(p, r, s), squaredDistanceToSegment(r, p, q)]) {
        if (least === undefined || squared.compare(least) < 0) least = squared;
      }
    }
  }
  return least ?? Rational.zero;
}

/** Whether the two come nearer to each other than `than`, exactly. */
export function isNearer(a: readonly FlatPoint[], b: readonly FlatPoint[], than: Rational): boolean {
  return areRoughlyNearer(a, b, than.toNumber()) ?? squaredDistance(a, b).compare(than.times(than)) < 0;
}

function isWithinOutline(point: FlatPoint, outline: readonly FlatPoint[]): boolean {
  if (outline.length < 3) return false;
  return edgesOf(outline).every(
    ([from, to]) => flatCross(flatDifference(to, from), flatDifference(point, from)).sign() >= 0,
  );
}

/** Ends that touch the other segment do not count: their distance is zero anyway. */
function segmentsCross(p: FlatPoint, q: FlatPoint, r: FlatPoint, s: FlatPoint): boolean {
  const side = (from: FlatPoint, to: FlatPoint, point: FlatPoint): number =>
    flatCross(flatDifference(to, from), flatDifference(point, from)).sign();
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
}

/** From `point` to the nearest point between `from` and `to`, which may be the same. */
export function squaredDistanceToSegment(point: FlatPoint, from: FlatPoint, to: FlatPoint): Rational {
  const way = flatDifference(to, from);
  const out = flatDifference(point, from);
  const squaredLength = flatDot(way, way);
  const share = flatDot(out, way);
  if (share.sign() <= 0) return flatDot(out, out);
  if (share.compare(squaredLength) >= 0) {
    const back = flatDifference(point, to);
    return flatDot(back, back);
  }
  const aside = flatCross(way, out);
  return aside.times(aside).dividedBy(squaredLength);
}
