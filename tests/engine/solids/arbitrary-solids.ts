import fc from 'fast-check';
import { Length } from '../../../packages/engine/src/length/length.ts';
import {
  AXES,
  type Axis,
  type BoxSolid,
  boreAlong,
  boundsOf,
  boxOf,
  type ConvexSolid,
  type CylinderSolid,
  convexAround,
  dovetailOf,
  type Interval,
  intervalOf,
  movedBy,
  type Point3,
  prismOf,
  type Solid,
  slotAlong,
  taperOf,
  wedgeOf,
  whyNotSolid,
} from '../../../packages/engine/src/solids/index.ts';

/** Solids of the size of joints, crowded into a cube of about four inches so that many of them meet or just touch. */

/** Coarse on purpose, so that faces fall together often; inches and millimetres, so that they just miss as often. */
export const anyPlace: fc.Arbitrary<Length> = fc.oneof(
  fc.integer({ min: 0, max: 16 }).map((n) => Length.inches(n, 4)),
  fc.integer({ min: 0, max: 64 }).map((n) => Length.inches(n, 16)),
  fc.integer({ min: 0, max: 200 }).map((n) => Length.millimetres(n, 2)),
);

export const anyPoint: fc.Arbitrary<Point3> = fc.record({ x: anyPlace, y: anyPlace, z: anyPlace });

export const anyInterval: fc.Arbitrary<Interval> = fc
  .tuple(anyPlace, anyPlace)
  .filter(([one, other]) => !one.equals(other))
  .map(([one, other]) => intervalOf(one, other));

export const anyAxis = fc.constantFrom(...AXES);

const anyRadius: fc.Arbitrary<Length> = fc.oneof(
  fc.integer({ min: 1, max: 16 }).map((n) => Length.inches(n, 16)),
  fc.integer({ min: 2, max: 20 }).map((n) => Length.millimetres(n)),
);

const anyCentre = fc.tuple(anyPlace, anyPlace);

export const anyBox: fc.Arbitrary<BoxSolid> = fc
  .tuple(anyInterval, anyInterval, anyInterval)
  .map(([x, y, z]) => boxOf(x, y, z));

export const anyCylinder: fc.Arbitrary<CylinderSolid> = fc.oneof(
  fc
    .tuple(anyAxis, anyInterval, anyCentre, anyRadius)
    .map(([axis, along, centre, radius]) => boreAlong(axis, along, centre, radius)),
  fc
    .tuple(anyAxis, anyInterval, anyCentre, anyCentre, anyRadius)
    .map(([axis, along, from, to, radius]) => slotAlong(axis, along, from, to, radius)),
);

const anyTaperEnd = fc.record({ at: anyPlace, sides: fc.tuple(anyInterval, anyInterval) });

/** The kinds that joinery makes, and convex solids of no kind at all. */
export const anyConvex: fc.Arbitrary<ConvexSolid> = fc
  .oneof(
    fc.array(anyPoint, { minLength: 4, maxLength: 9 }).map(convexAround),
    fc.tuple(anyAxis, anyInterval, fc.tuple(anyCentre, anyCentre, anyCentre)).map((given) => prismOf(...given)),
    fc
      .tuple(
        anyBox,
        anyAxis,
        fc.constantFrom('from' as const, 'to' as const),
        fc.constantFrom('from' as const, 'to' as const),
      )
      .map(([box, axis, one, other]) => wedgeOf(box, axis, [one, other])),
    fc.tuple(anyAxis, anyTaperEnd, anyTaperEnd).map((given) => taperOf(...given)),
    fc
      .tuple(anyAxis, anyAxis, anyInterval, anyPlace, anyInterval, anyRadius, anyRadius)
      .map(([axis, across, along, middle, { from, to }, one, other]) =>
        dovetailOf({
          axis,
          across,
          along,
          middle,
          narrow: { at: from, width: one },
          wide: { at: to, width: one.plus(other) },
        }),
      ),
  )
  .filter((solid) => whyNotSolid(solid) === undefined);

export const anySolid: fc.Arbitrary<Solid> = fc.oneof(anyBox, anyConvex, anyCylinder);

/** Two of them, the first of an eighth of the size and near the middle of the second, so that it often lies within. */
export const anySmallInLarge: fc.Arbitrary<readonly [Solid, Solid]> = fc
  .tuple(anySolid, fc.oneof(anyBox, anySolid), anyPoint)
  .map(([solid, large, off]) => {
    const small = eighthOf(solid);
    const toMiddle = (axis: Axis): Length => {
      const [of, into] = [boundsOf(small)[axis], boundsOf(large)[axis]];
      return into.from.plus(into.to).minus(of.from).minus(of.to).dividedBy(2).plus(off[axis].dividedBy(8));
    };
    return [movedBy(small, { x: toMiddle('x'), y: toMiddle('y'), z: toMiddle('z') }), large];
  });

function eighthOf(solid: Solid): Solid {
  const small = (interval: Interval): Interval => ({ from: interval.from.dividedBy(8), to: interval.to.dividedBy(8) });
  const near = ([u, v]: readonly [Length, Length]) => [u.dividedBy(8), v.dividedBy(8)] as const;
  if (solid.kind === 'box') return boxOf(small(solid.x), small(solid.y), small(solid.z));
  if (solid.kind === 'convex') {
    const corners = solid.corners.map(({ x, y, z }) => ({ x: x.dividedBy(8), y: y.dividedBy(8), z: z.dividedBy(8) }));
    return { ...solid, corners };
  }
  const { axis, along, centre, sweptTo = centre, radius } = solid;
  return slotAlong(axis, small(along), near(centre), near(sweptTo), radius.dividedBy(8));
}
