import type { Rational } from '../length/rational.ts';
import { outlineAround } from './flat.ts';
import { type FlatPoint, flatDifference, flatDot } from './points.ts';
import { edgesOf } from './polyhedron.ts';
import { compareRoots, opposite, signWithRoot, type WithRoot, withoutRoot } from './roots.ts';

/** How far rounded outlines reach. Their rims are arcs, so what they reach is a fraction with a square root. */

/**
 * How far everything nearer than `radius` to a convex outline reaches in the direction u on the line at `v`;
 * undefined if that line passes it or only touches it. The outline is counter-clockwise; one or two corners will do.
 */
export function reachOnLine(
  outline: readonly FlatPoint[],
  radius: Rational,
  v: Rational,
): readonly [WithRoot, WithRoot] | undefined {
  const below = outline.some((corner) => corner.v.minus(radius).compare(v) < 0);
  const above = outline.some((corner) => corner.v.plus(radius).compare(v) > 0);
  if (!below || !above) return undefined;
  const mirrored = outlineAround(outline.map((corner) => ({ u: corner.u.negated(), v: corner.v })));
  const most = furthestOnLine(outline, radius, v);
  const least = furthestOnLine(mirrored, radius, v);
  return most === undefined || least === undefined ? undefined : [opposite(least), most];
}

/** The greatest u; each candidate is a point of the rounded outline, so the greatest of them is its rim. */
function furthestOnLine(outline: readonly FlatPoint[], radius: Rational, v: Rational): WithRoot | undefined {
  const squaredRadius = radius.times(radius);
  let furthest: WithRoot | undefined;
  const offer = (plain: Rational, squared: Rational): void => {
    const offered: WithRoot = { plain, sign: 1, squared };
    if (furthest === undefined || compareRoots(offered, furthest) > 0) furthest = offered;
  };
  for (const corner of outline) {
    const aside = v.minus(corner.v);
    const squared = squaredRadius.minus(aside.times(aside));
    if (squared.sign() >= 0) offer(corner.u, squared);
  }
  for (const [from, to] of edgesOf(outline)) {
    // Only edges that run upwards have their outer side in the direction of u.
    const way = flatDifference(to, from);
    if (way.v.sign() <= 0) continue;
    const squaredLength = flatDot(way, way);
    const aside = v.minus(from.v);
    const share = radius.times(way.u);
    // The foot of the rim on the edge lies at (aside + share / length) / way.v of it.
    const afterStart = signWithRoot(share, aside, squaredLength) >= 0;
    const beforeEnd = signWithRoot(share, aside.minus(way.v), squaredLength) <= 0;
    if (!afterStart || !beforeEnd) continue;
    const slope = way.u.dividedBy(way.v);
    offer(from.u.plus(aside.times(slope)), squaredRadius.times(squaredLength).dividedBy(way.v.times(way.v)));
  }
  return furthest;
}

/**
 * How far everything nearer than `radius` to `spine` reaches in the direction u between the lines v = `from` and
 * v = `to`; undefined if it does not pass between them.
 */
export function reachBetween(
  spine: readonly FlatPoint[],
  radius: Rational,
  from: Rational,
  to: Rational,
): readonly [WithRoot, WithRoot] | undefined {
  const above = spine.some((point) => point.v.plus(radius).compare(from) > 0);
  const below = spine.some((point) => point.v.minus(radius).compare(to) < 0);
  if (!above || !below || from.compare(to) >= 0) return undefined;
  const most = furthestBetween(spine, radius, from, to);
  const mirrored = spine.map((point) => ({ u: point.u.negated(), v: point.v }));
  const least = furthestBetween(mirrored, radius, from, to);
  return most === undefined || least === undefined ? undefined : [opposite(least), most];
}

function furthestBetween(
  spine: readonly FlatPoint[],
  radius: Rational,
  from: Rational,
  to: Rational,
): WithRoot | undefined {
  const [first] = spine;
  if (first === undefined) return undefined;
  const most = spine.reduce((furthest, point) => furthest.max(point.u), first.u);
  // Where it reaches furthest of all: at the points of the spine that lie furthest.
  const tips = spine.filter((point) => point.u.equals(most)).map((point) => point.v);
  const low = tips.reduce((least, v) => least.min(v));
  const high = tips.reduce((greatest, v) => greatest.max(v));
  if (high.compare(from) >= 0 && low.compare(to) <= 0) return withoutRoot(most.plus(radius));
  return furthestOnLine(spine, radius, high.compare(from) < 0 ? from : to);
}
