import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import { type BoxSolid, boxOf, type Interval, intervalOf } from '../../../packages/engine/src/solids/index.ts';

/** Millimetres as they are written: '19.05'. */
export function mm(text: string | number): Length {
  const value = Rational.parse(`${text}`);
  if (value === undefined) throw new Error(`not a number: ${text}`);
  return Length.of(value, 'mm');
}

export function inMillimetres(length: Length): string {
  return length.in('mm').toString();
}

export function span(from: string | number, to: string | number): Interval {
  return intervalOf(mm(from), mm(to));
}

type Ends = readonly [string | number, string | number];

/** A box in millimetres: x, y and z from and to. */
export function box(x: Ends, y: Ends, z: Ends): BoxSolid {
  return boxOf(span(...x), span(...y), span(...z));
}

export function at(u: string | number, v: string | number): readonly [Length, Length] {
  return [mm(u), mm(v)];
}
