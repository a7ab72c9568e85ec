import { Rational } from '../length/rational.ts';
import { axisOfNeither, outlineAlong, outlineBeside, reachBeside, spineFacing } from './beside-bore.ts';
import { type Bore, boreOf, exchanged } from './bore.ts';
import { boundsOf, intervalsMeet } from './bounds.ts';
import { cutByAll } from './cut-polyhedron.ts';
import { facettedBore, sidePlanes } from './facets.ts';
import { isNearer, outlineAround } from './flat.ts';
import { partingDirections } from './meets.ts';
import { type FlatPoint, flatDifference } from './points.ts';
import { type Polyhedron, polyhedronOf, rangeAlong } from './polyhedron.ts';
import { reachOnLine } from './rim.ts';
import { type Between, between, exactly, isExact, lessBetween, negatedBetween } from './roots.ts';
import { AXES, type Axis, axesAcross, type BoxSolid, type ConvexSolid, type Solid } from './solid.ts';

/**
 * How far one solid may be moved along an axis before it begins to meet another, and before it has passed it. As both
 * are convex it meets the other all the way between. In inches; roots lie between their bounds.
 */
export interface Contact {
  readonly begins: Between;
  readonly ends: Between;
}

/** The moves of `b` along `axis`, towards the higher end, that make it meet `a`; undefined if none does. */
export function contactAlong(a: Solid, b: Solid, axis: Axis): Contact | undefined {
  if (!AXES.every((each) => each === axis || intervalsMeet(boundsOf(a)[each], boundsOf(b)[each]))) return undefined;
  if (a.kind === 'box' && b.kind === 'box') {
    return {
      begins: exactly(a[axis].from.minus(b[axis].to).in('in')),
      ends: exactly(a[axis].to.minus(b[axis].from).in('in')),
    };
  }
  if (a.kind === 'cylinder') {
    if (b.kind !== 'cylinder') return contactWithBore(boreOf(a), b, axis);
    if (a.axis === b.axis) return contactOfParallelBores(boreOf(a), boreOf(b), axis);
    return contactOfCrossingBores(boreOf(a), boreOf(b), axis);
  }
  if (b.kind === 'cylinder') return reversed(contactWithBore(boreOf(b), a, axis));
  return contactOfPolyhedra(polyhedronOf(a), polyhedronOf(b), axis);
}

/** The same with the other one moved. */
function reversed(contact: Contact | undefined): Contact | undefined {
  if (contact === undefined) return undefined;
  return { begins: negatedBetween(contact.ends), ends: negatedBetween(contact.begins) };
}

/** Each direction in which a plane may part the two bounds the move; where the last bounds leave nothing, none meets. */
function contactOfPolyhedra(a: Polyhedron, b: Polyhedron, axis: Axis): Contact | undefined {
  let begins: Rational | undefined;
  let ends: Rational | undefined;
  for (const direction of partingDirections(a, b)) {
    const [leastA, mostA] = rangeAlong(a, direction);
    const [leastB, mostB] = rangeAlong(b, direction);
    const step = direction[axis];
    const first = leastA.minus(mostB);
    const last = mostA.minus(leastB);
    if (step.isZero()) {
      if (first.sign() >= 0 || last.sign() <= 0) return undefined;
      continue;
    }
    const [from, to] = step.sign() > 0 ? [first, last] : [last, first];
    begins = begins?.max(from.dividedBy(step)) ?? from.dividedBy(step);
    ends = ends?.min(to.dividedBy(step)) ?? to.dividedBy(step);
  }
  if (begins === undefined || ends === undefined || begins.compare(ends) >= 0) return undefined;
  return { begins: exactly(begins), ends: exactly(ends) };
}

function contactWithBore(bore: Bore, moved: BoxSolid | ConvexSolid, axis: Axis): Contact | undefined {
  if (axis === bore.axis) {
    const reach = reachWithin(bore, moved);
    if (reach === undefined) return undefined;
    return { begins: lessBetween(exactly(bore.from), reach[1]), ends: lessBetween(exactly(bore.to), reach[0]) };
  }
  const outline = outlineBeside(bore, moved);
  return outline === undefined ? undefined : contactAcross(bore.spine, outline, bore.radius, bore.axis, axis);
}

/**
 * Where the move runs across an axis, for outlines seen along it: `moved` comes within `radius` of `resting`.
 */
function contactAcross(
  resting: readonly FlatPoint[],
  moved: readonly FlatPoint[],
  radius: Rational,
  seenAlong: Axis,
  axis: Axis,
): Contact | undefined {
  const isFirst = axesAcross(seenAlong)[0] === axis;
  const apart = resting.flatMap((one) => moved.map((other) => flatDifference(one, other)));
  return contactOnLine(isFirst ? apart : apart.map(exchanged), radius);
}

/** `apart` are the moves that would lay a corner of the one on a corner of the other, with u along the move. */
function contactOnLine(apart: readonly FlatPoint[], radius: Rational): Contact | undefined {
  const reach = reachOnLine(outlineAround(apart), radius, Rational.zero);
  return reach === undefined ? undefined : { begins: between(reach[0]), ends: between(reach[1]) };
}

/** How far a solid reaches along a bore, within the walls that the bore would have if it were drilled on for ever. */
function reachWithin(bore: Bore, solid: BoxSolid | ConvexSolid): readonly [Between, Between] | undefined {
  if (!isNearer(outlineAlong(solid, bore.axis), bore.spine, bore.radius)) return undefined;
  if (solid.kind === 'box') return [exactly(solid[bore.axis].from.in('in')), exactly(solid[bore.axis].to.in('in'))];
  const polyhedron = polyhedronOf(solid);
  const { inside, outside } = facettedBore(bore);
  const [low, high] = endsWithin(polyhedron, outside, bore.axis) ?? endsOf(polyhedron, bore.axis);
  const [surelyLow, surelyHigh] = endsWithin(polyhedron, inside, bore.axis) ?? [high, low];
  return [
    { least: low, most: surelyLow },
    { least: surelyHigh, most: high },
  ];
}

function endsWithin(polyhedron: Polyhedron, facets: Polyhedron, axis: Axis): readonly [Rational, Rational] | undefined {
  const within = cutByAll(polyhedron, sidePlanes(facets, axis));
  return within === undefined ? undefined : endsOf(within, axis);
}

export function endsOf(polyhedron: Polyhedron, axis: Axis): readonly [Rational, Rational] {
  const along = { x: Rational.zero, y: Rational.zero, z: Rational.zero };
  along[axis] = Rational.one;
  return rangeAlong(polyhedron, along);
}

function contactOfParallelBores(a: Bore, b: Bore, axis: Axis): Contact | undefined {
  const radius = a.radius.plus(b.radius);
  if (axis !== a.axis) return contactAcross(a.spine, b.spine, radius, a.axis, axis);
  if (!isNearer(a.spine, b.spine, radius)) return undefined;
  return { begins: exactly(a.from.minus(b.to)), ends: exactly(a.to.minus(b.from)) };
}

/** On each plane across the axis of neither, both are rectangles: see where it is asked whether such bores meet. */
function contactOfCrossingBores(a: Bore, b: Bore, axis: Axis): Contact | undefined {
  if (axis === b.axis) return reversed(contactOfCrossingBores(b, a, axis));
  const ofA = reachBeside(a, b)?.map(between);
  if (ofA === undefined) return undefined;
  const [lowA, highA] = ofA;
  if (lowA === undefined || highA === undefined) return undefined;
  const neither = axisOfNeither(a, b);
  if (axis === neither) {
    const ofB = reachBeside(b, a);
    if (ofB === undefined) return undefined;
    return { begins: lessBetween(lowA, between(ofB[1])), ends: lessBetween(highA, between(ofB[0])) };
  }
  // Seen along b, what a has beside it is a rectangle, between its own ends and what it reaches there.
  const spine = spineFacing(b, axis);
  const rectangle = (low: Rational, high: Rational): readonly FlatPoint[] =>
    [a.from, a.to].flatMap((u) => [low, high].map((v) => ({ u, v })));
  const contactWith = (corners: readonly FlatPoint[]): Contact | undefined =>
    contactOnLine(
      corners.flatMap((corner) => spine.map((point) => flatDifference(corner, point))),
      b.radius,
    );
  const largest = contactWith(rectangle(lowA.least, highA.most));
  if (largest === undefined || (isExact(lowA) && isExact(highA))) return largest;
  const smallest = lowA.most.compare(highA.least) < 0 ? contactWith(rectangle(lowA.most, highA.least)) : undefined;
  return {
    begins: { least: largest.begins.least, most: smallest?.begins.most ?? largest.ends.most },
    ends: { least: smallest?.ends.least ?? largest.begins.least, most: largest.ends.most },
  };
}
