import { Rational } from '../length/rational.ts';
import type { Bore } from './bore.ts';
import { outlineAround } from './flat.ts';
import { type FlatPoint, flatDot, type Point } from './points.ts';
import { edgesOf, type Plane, type Polyhedron, polyhedronFrom } from './polyhedron.ts';
import { type Axis, axesAcross } from './solid.ts';

/**
 * Two flat-sided solids with a bore between them: one whose edges lie on its wall, one whose faces touch it all
 * round. What no formula gives exactly is worked out with both, and the truth lies between the two answers; where they
 * agree, it is that. Their corners are fractions, and both reach as far as the bore along the axes across it. They
 * differ from it by about a hundredth of its radius where they differ most.
 */
export interface Facetted {
  readonly inside: Polyhedron;
  readonly outside: Polyhedron;
}

const known = new WeakMap<Bore, Facetted>();

export function facettedBore(bore: Bore): Facetted {
  const kept = known.get(bore);
  if (kept !== undefined) return kept;
  const facetted = { inside: facetsThrough(bore, DIRECTIONS), outside: facetsThrough(bore, TANGENT_CORNERS) };
  known.set(bore, facetted);
  return facetted;
}

/** Right triangles with whole sides give directions of length one whose parts are fractions, and small ones at that. */
const TRIANGLES: readonly (readonly [number, number, number])[] = [
  [1, 0, 1],
  [24, 7, 25],
  [12, 5, 13],
  [4, 3, 5],
  [3, 4, 5],
  [5, 12, 13],
  [7, 24, 25],
];

/** All round, counter-clockwise: each quarter is the one before, turned. */
const DIRECTIONS: readonly FlatPoint[] = [0, 1, 2, 3].flatMap((quarters) =>
  TRIANGLES.map(([u, v, length]) => turned({ u: Rational.of(u, length), v: Rational.of(v, length) }, quarters)),
);

function turned(point: FlatPoint, quarters: number): FlatPoint {
  return quarters === 0 ? point : turned({ u: point.v.negated(), v: point.u }, quarters - 1);
}

/** Where the lines meet that touch the circle of radius one at neighbouring directions. */
const TANGENT_CORNERS: readonly FlatPoint[] = edgesOf(DIRECTIONS).map(([one, next]) => {
  const share = Rational.one.plus(flatDot(one, next)).inverse();
  return { u: one.u.plus(next.u).times(share), v: one.v.plus(next.v).times(share) };
});

/** The prism around `corners`, which are given for a radius of one, laid on each end of the spine. */
function facetsThrough({ axis, from, to, spine, radius }: Bore, corners: readonly FlatPoint[]): Polyhedron {
  const outline = outlineAround(
    spine.flatMap(({ u, v }) =>
      corners.map((corner) => ({ u: u.plus(corner.u.times(radius)), v: v.plus(corner.v.times(radius)) })),
    ),
  );
  const count = outline.length;
  const around = outline.map((_, index) => index);
  // Along y the other two axes, x and z, are turned the other way round.
  const facing = (ring: readonly number[]): readonly number[] => (axis === 'y' ? ring.toReversed() : ring);
  return polyhedronFrom(
    [from, to].flatMap((at) => outline.map(({ u, v }) => pointAlong(axis, at, u, v))),
    [
      facing(around.toReversed()),
      facing(around.map((index) => count + index)),
      ...edgesOf(around).map(([index, next]) => facing([index, next, count + next, count + index])),
    ],
  );
}

function pointAlong(axis: Axis, at: Rational, alongU: Rational, alongV: Rational): Point {
  const [u, v] = axesAcross(axis);
  const point = { x: at, y: at, z: at };
  point[u] = alongU;
  point[v] = alongV;
  return point;
}

/** The planes of the sides alone: those of a bore that is drilled on for ever. */
export function sidePlanes(facets: Polyhedron, axis: Axis): readonly Plane[] {
  return facets.faces.map((face) => face.plane).filter((plane) => plane.normal[axis].isZero());
}
