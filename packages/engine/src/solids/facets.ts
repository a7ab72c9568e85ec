import { Rational } from '../length/rational.ts';
import type { Bore } from './bore.ts';
import { cutByAll } from './cut-polyhedron.ts';
import { outlineAround } from './flat.ts';
import type { FlatPoint, Point } from './points.ts';
import { BOX_FACES, edgesOf, type Plane, type Polyhedron, polyhedronFrom } from './polyhedron.ts';
import { type Axis, axesAcross } from './solid.ts';

/**
 * Two flat-sided solids with a bore between them: one whose edges lie on its wall, one whose faces touch it all
 * round. What no formula gives exactly is worked out with both, and the truth lies between the two answers; where they
 * agree, it is that. Their corners are fractions, and both share the four points furthest along the other two axes.
 * They differ from the bore by less than a five-hundredth of its radius.
 */
export interface Facetted {
  readonly inside: Polyhedron;
  readonly outside: Polyhedron;
}

const known = new WeakMap<Bore, Facetted>();

export function facettedBore(bore: Bore): Facetted {
  const kept = known.get(bore);
  if (kept !== undefined) return kept;
  const facetted = { inside: facetsInside(bore), outside: facetsOutside(bore) };
  known.set(bore, facetted);
  return facetted;
}

const FACETS_TO_A_QUARTER = 16;

/**
 * Directions of length one whose parts are fractions: ((1 - t²), 2t) / (1 + t²) for t from 0 to 1 is a quarter turn,
 * and each quarter is the one before, turned.
 */
const DIRECTIONS: readonly FlatPoint[] = quarterTurns(
  Array.from({ length: FACETS_TO_A_QUARTER }, (_, step) => {
    const t = Rational.of(step, FACETS_TO_A_QUARTER);
    const whole = Rational.one.plus(t.times(t));
    return { u: Rational.one.minus(t.times(t)).dividedBy(whole), v: t.times(2).dividedBy(whole) };
  }),
);

function quarterTurns(first: readonly FlatPoint[]): readonly FlatPoint[] {
  const turned = (points: readonly FlatPoint[]) => points.map(({ u, v }) => ({ u: v.negated(), v: u }));
  const second = turned(first);
  const third = turned(second);
  return [...first, ...second, ...third, ...turned(third)];
}

function facetsInside({ axis, from, to, spine, radius }: Bore): Polyhedron {
  const outline = outlineAround(
    spine.flatMap(({ u, v }) =>
      DIRECTIONS.map((direction) => ({
        u: u.plus(direction.u.times(radius)),
        v: v.plus(direction.v.times(radius)),
      })),
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

function facetsOutside(bore: Bore): Polyhedron {
  const { axis, from, to, spine, radius } = bore;
  const [u, v] = axesAcross(axis);
  const around = { x: [from, to], y: [from, to], z: [from, to] };
  around[u] = [...spine.map((point) => point.u.minus(radius)), ...spine.map((point) => point.u.plus(radius))];
  around[v] = [...spine.map((point) => point.v.minus(radius)), ...spine.map((point) => point.v.plus(radius))];
  const ends = (axisAround: Axis): readonly Rational[] => {
    const places = around[axisAround];
    return [places.reduce((least, place) => least.min(place)), places.reduce((most, place) => most.max(place))];
  };
  const corners = ends('x').flatMap((x) => ends('y').flatMap((y) => ends('z').map((z) => ({ x, y, z }))));
  const boxAround = polyhedronFrom(corners, BOX_FACES);
  return cutByAll(boxAround, tangentPlanes(bore)) ?? boxAround;
}

function tangentPlanes({ axis, spine, radius }: Bore): readonly Plane[] {
  return DIRECTIONS.map((direction) => {
    const reaches = spine.map(({ u, v }) => u.times(direction.u).plus(v.times(direction.v)));
    return {
      normal: pointAlong(axis, Rational.zero, direction.u, direction.v),
      offset: reaches.reduce((most, reach) => most.max(reach)).plus(radius),
    };
  });
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
