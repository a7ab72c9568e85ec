import type { Length } from '../length/length.ts';

/**
 * Exact volumes in the coordinates of a piece: x to the right, y up from the floor, z from the front to the back.
 * Solids are plain data and are never changed; what is worked out about one is kept with it, so hand the same object
 * on rather than a copy.
 */

export type Axis = 'x' | 'y' | 'z';

/** from < to. */
export interface Interval {
  readonly from: Length;
  readonly to: Length;
}

/** Which end of an interval. */
export type End = 'from' | 'to';

export interface Point3 {
  readonly x: Length;
  readonly y: Length;
  readonly z: Length;
}

export interface BoxSolid {
  readonly kind: 'box';
  readonly x: Interval;
  readonly y: Interval;
  readonly z: Interval;
}

/** A convex polyhedron. The makers build these; `whyNotSolid` judges one that was put together by hand. */
export interface ConvexSolid {
  readonly kind: 'convex';
  readonly corners: readonly Point3[];
  /**
   * Indices of corners, so ordered that (b - a) x (c - b), worked out by components, points out of the solid. That is
   * counter-clockwise from outside when x, y, z are drawn right-handed; as z runs away from whoever faces the piece,
   * it is clockwise to an eye in front of the wood.
   */
  readonly faces: readonly (readonly number[])[];
}

/** A bore, or with `sweptTo` a slot with round ends. */
export interface CylinderSolid {
  readonly kind: 'cylinder';
  readonly axis: Axis;
  readonly along: Interval;
  /** On the other two axes, in alphabetical order. */
  readonly centre: readonly [Length, Length];
  /** Positive. */
  readonly radius: Length;
  /** The slot reaches from the one centre to this one, in a straight line in any direction across the axis. */
  readonly sweptTo?: readonly [Length, Length];
}

export type Solid = BoxSolid | ConvexSolid | CylinderSolid;

export const AXES: readonly Axis[] = ['x', 'y', 'z'];

/** The other two axes, in alphabetical order. */
export function axesAcross(axis: Axis): readonly [Axis, Axis] {
  switch (axis) {
    case 'x':
      return ['y', 'z'];
    case 'y':
      return ['x', 'z'];
    case 'z':
      return ['x', 'y'];
    default: {
      const never: never = axis;
      return never;
    }
  }
}
