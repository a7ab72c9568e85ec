import fc from 'fast-check';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
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
    const small = timesTheSize(Rational.of(1, 8), solid);
    const place = (axis: Axis): Length =>
      middleOf(large, axis).minus(middleOf(small, axis)).plus(off[axis].dividedBy(8));
    return [movedBy(small, { x: place('x'), y: place('y'), z: place('z') }), large];
  });

/** As many times its size, its middle staying where it is. */
export function grownBy(factor: Rational, solid: Solid): Solid {
  const grown = timesTheSize(factor, solid);
  const back = (axis: Axis): Length => middleOf(solid, axis).minus(middleOf(grown, axis));
  return movedBy(grown, { x: back('x'), y: back('y'), z: back('z') });
}

function middleOf(solid: Solid, axis: Axis): Length {
  const { from, to } = boundsOf(solid)[axis];
  return from.plus(to).dividedBy(2);
}

function timesTheSize(factor: Rational, solid: Solid): Solid {
  const sized = ({ from, to }: Interval): Interval => ({ from: from.times(factor), to: to.times(factor) });
  const place = ([u, v]: readonly [Length, Length]) => [u.times(factor), v.times(factor)] as const;
  if (solid.kind === 'box') return boxOf(sized(solid.x), sized(solid.y), sized(solid.z));
  if (solid.kind === 'convex') {
    const corners = solid.corners.map(({ x, y, z }) => ({
      x: x.times(factor),
      y: y.times(factor),
      z: z.times(factor),
    }));
    return { ...solid, corners };
  }
  const { axis, along, centre, sweptTo = centre, radius } = solid;
  return slotAlong(axis, sized(along), place(centre), place(sweptTo), radius.times(factor));
}
