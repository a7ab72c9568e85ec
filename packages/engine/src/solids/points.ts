import { Rational } from '../length/rational.ts';
import type { Axis, Point3 } from './solid.ts';

/** Points and directions in exact inches, in space and across an axis. */

export type Point = Readonly<Record<Axis, Rational>>;

/** A point across an axis: u and v are the other two axes in alphabetical order. */
export interface FlatPoint {
  readonly u: Rational;
  readonly v: Rational;
}

export function pointOf(point: Point3): Point {
  return { x: point.x.in('in'), y: point.y.in('in'), z: point.z.in('in') };
}

export function difference(to: Point, from: Point): Point {
  return { x: to.x.minus(from.x), y: to.y.minus(from.y), z: to.z.minus(from.z) };
}

export function dot(a: Point, b: Point): Rational {
  return a.x.times(b.x).plus(a.y.times(b.y)).plus(a.z.times(b.z));
}

export function cross(a: Point, b: Point): Point {
  return {
    x: a.y.times(b.z).minus(a.z.times(b.y)),
    y: a.z.times(b.x).minus(a.x.times(b.z)),
    z: a.x.times(b.y).minus(a.y.times(b.x)),
  };
}

export function sum(a: Point, b: Point): Point {
  return { x: a.x.plus(b.x), y: a.y.plus(b.y), z: a.z.plus(b.z) };
}

export function isNowhere(direction: Point): boolean {
  return direction.x.isZero() && direction.y.isZero() && direction.z.isZero();
}

/**
 * The same direction in the smallest whole numbers: what is multiplied with it afterwards stays small, and equal
 * directions are equal. The zero vector stays as it is.
 */
export function inWholeNumbers(direction: Point): Point {
  const { x, y, z } = direction;
  // One that runs along an axis, as nearly all do.
  const across = [x, y, z].filter((value) => !value.isZero());
  const [only] = across;
  if (only === undefined) return direction;
  if (across.length === 1) {
    const one = Rational.of(only.sign());
    return {
      x: x.isZero() ? Rational.zero : one,
      y: y.isZero() ? Rational.zero : one,
      z: z.isZero() ? Rational.zero : one,
    };
  }
  const multiple = leastCommonMultiple(leastCommonMultiple(x.denominator, y.denominator), z.denominator);
  const whole = [x, y, z].map((value) => (value.numerator * multiple) / value.denominator);
  const [a = 0n, b = 0n, c = 0n] = whole;
  const divisor = greatestCommonDivisor(greatestCommonDivisor(a, b), c);
  if (divisor === 0n) return direction;
  return { x: Rational.of(a / divisor), y: Rational.of(b / divisor), z: Rational.of(c / divisor) };
}

/** Of a direction and its opposite always the same one: the first part that is not zero is positive. */
export function eitherWay(direction: Point): Point {
  const sign = direction.x.sign() || direction.y.sign() || direction.z.sign();
  if (sign >= 0) return direction;
  return { x: direction.x.negated(), y: direction.y.negated(), z: direction.z.negated() };
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [left, right] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (right !== 0n) [left, right] = [right, left % right];
  return left;
}

function leastCommonMultiple(a: bigint, b: bigint): bigint {
  return (a / greatestCommonDivisor(a, b)) * b;
}

export function flatDifference(to: FlatPoint, from: FlatPoint): FlatPoint {
  return { u: to.u.minus(from.u), v: to.v.minus(from.v) };
}

/** Positive if `b` is to the left of `a`, u to the right and v upwards. */
export function flatCross(a: FlatPoint, b: FlatPoint): Rational {
  return a.u.times(b.v).minus(a.v.times(b.u));
}

export function flatDot(a: FlatPoint, b: FlatPoint): Rational {
  return a.u.times(b.u).plus(a.v.times(b.v));
}
