import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { outlineAlong } from './beside-bore.ts';
import { type Bore, boreOf } from './bore.ts';
import { boundsOf } from './bounds.ts';
import { squaredDistance } from './flat.ts';
import { meets } from './meets.ts';
import { dot, type FlatPoint, type Point } from './points.ts';
import { type Plane, polyhedronOf } from './polyhedron.ts';
import { squaredDistanceOfPolyhedra } from './polyhedron-distance.ts';
import { type Between, isExact, rootBetween } from './roots.ts';
import { AXES, type Axis, axesAcross, type CylinderSolid, type Solid } from './solid.ts';
import { thinnestGap } from './walls.ts';

/** The wood between two solids where it is thinnest, in whatever direction that is. */
export interface Wall {
  /** Zero if they touch. Where it is not exact the wall may be thicker, never thinner. */
  readonly thickness: Length;
  readonly isExact: boolean;
}

/**
 * The thinnest wall between two solids; undefined if they meet. Exact but for roots that are no fractions, which are
 * told to 1/2^24 of an inch, for boxes, for convex solids, for bores side by side and for a bore and a box. For bores
 * that cross and for a bore beside a slanted face it is a bound: the thinnest that the wall can be as seen along an
 * axis or square to a face; it is called exact where it is the wall along an axis.
 */
export function wallBetween(a: Solid, b: Solid): Wall | undefined {
  if (meets(a, b)) return undefined;
  const thickness = thicknessBetween(a, b);
  if (thickness !== undefined) return { thickness: Length.of(thickness.least, 'in'), isExact: isExact(thickness) };
  const bound = Length.of(thinnestPossible(a, b), 'in');
  const gap = thinnestGap(a, b);
  return { thickness: bound, isExact: gap?.isExact === true && gap.wall.equals(bound) };
}

function thicknessBetween(a: Solid, b: Solid): Between | undefined {
  if (a.kind === 'box' && b.kind === 'box') return rootBetween(squaredGapOfBounds(a, b));
  if (a.kind !== 'cylinder' && b.kind !== 'cylinder') {
    return rootBetween(squaredDistanceOfPolyhedra(polyhedronOf(a), polyhedronOf(b)));
  }
  const [bore, other] = a.kind === 'cylinder' ? [a, b] : [b, a];
  if (bore.kind !== 'cylinder' || other.kind === 'convex') return undefined;
  if (other.kind === 'cylinder' && other.axis !== bore.axis) return undefined;
  // Both look the same all along the bore: so far apart across it, and so far along it.
  const across = distanceAcross(bore, other);
  const along = gapAlong(bore, other, bore.axis);
  if (along.isZero()) return across;
  const squared = (distance: Rational): Rational => distance.times(distance).plus(along.times(along));
  return { least: rootBetween(squared(across.least)).least, most: rootBetween(squared(across.most)).most };
}

/** As an eye sees it that looks along a bore; zero where the two seem to meet. */
function distanceAcross(solid: CylinderSolid, other: Solid): Between {
  const bore = boreOf(solid);
  const parallel = other.kind === 'cylinder' && other.axis === solid.axis ? boreOf(other) : undefined;
  const outline = parallel === undefined ? outlineOf(other, solid.axis) : parallel.spine;
  const radius = bore.radius.plus(parallel?.radius ?? Rational.zero);
  const { least, most } = rootBetween(squaredDistance(bore.spine, outline));
  return { least: least.minus(radius).max(Rational.zero), most: most.minus(radius).max(Rational.zero) };
}

/** A bore that is seen from the side is a rectangle. */
function outlineOf(solid: Solid, axis: Axis): readonly FlatPoint[] {
  if (solid.kind !== 'cylinder') return outlineAlong(solid, axis);
  const { x, y, z } = boundsOf(solid);
  return outlineAlong({ kind: 'box', x, y, z }, axis);
}

function gapAlong(a: Solid, b: Solid, axis: Axis): Rational {
  const [one, other] = [boundsOf(a)[axis], boundsOf(b)[axis]];
  return other.from.minus(one.to).max(one.from.minus(other.to)).max(Length.zero).in('in');
}

function squaredGapOfBounds(a: Solid, b: Solid): Rational {
  return AXES.map((axis) => gapAlong(a, b, axis)).reduce((sum, gap) => sum.plus(gap.times(gap)), Rational.zero);
}

function thinnestPossible(a: Solid, b: Solid): Rational {
  const bounds = [rootBetween(squaredGapOfBounds(a, b)).least];
  for (const [one, other] of [[a, b] as const, [b, a] as const]) {
    if (one.kind !== 'cylinder') continue;
    bounds.push(distanceAcross(one, other).least);
    if (other.kind !== 'convex') continue;
    for (const { plane } of polyhedronOf(other).faces) bounds.push(heightOfBore(boreOf(one), plane));
  }
  return bounds.reduce((most, bound) => most.max(bound));
}

/** How far a bore stays in front of a plane, or less; negative if it does not. */
function heightOfBore({ axis, from, to, spine, radius }: Bore, { normal, offset }: Plane): Rational {
  const [u, v] = axesAcross(axis);
  const heights = [from, to].flatMap((at) =>
    spine.map((on) => {
      const point: Record<Axis, Rational> = { x: at, y: at, z: at };
      point[u] = on.u;
      point[v] = on.v;
      return dot(normal, point satisfies Point).minus(offset);
    }),
  );
  const lowest = heights.reduce((least, height) => least.min(height));
  const acrossAxis = normal[u].times(normal[u]).plus(normal[v].times(normal[v]));
  const length = rootBetween(dot(normal, normal));
  const reach = radius.times(rootBetween(acrossAxis).most);
  const height = lowest.minus(reach);
  return height.dividedBy(height.sign() < 0 ? length.least : length.most);
}
