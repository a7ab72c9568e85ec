import { Length } from '../length/length.ts';
import { boreOf } from './bore.ts';
import { boundsOf, sharedInterval } from './bounds.ts';
import { contactAlong, endsOf } from './contact.ts';
import { cutByAll, planesOf } from './cut-polyhedron.ts';
import { facettedBore } from './facets.ts';
import { meets } from './meets.ts';
import { type Polyhedron, polyhedronOf } from './polyhedron.ts';
import { isExact } from './roots.ts';
import { AXES, type Axis, type Interval, type Solid } from './solid.ts';

/** What both solids occupy, along one axis. Where it is not exact, the true stretch lies within this one. */
export interface SharedStretch extends Interval {
  readonly isExact: boolean;
}

/** A move of the second solid along one axis after which the two do not meet. */
export interface Parting {
  readonly axis: Axis;
  /** Towards the lower or the higher end of the axis. */
  readonly towards: 'lower' | 'higher';
  /** Positive. It surely parts them; where it is not exact, a little less may do. */
  readonly by: Length;
  readonly isExact: boolean;
}

export interface Overlap {
  readonly shared: Readonly<Record<Axis, SharedStretch>>;
  /** The shorter of the two ways along each axis. */
  readonly parting: Readonly<Record<Axis, Parting>>;
  /** The shortest of those; the first of equal ones. */
  readonly leastParting: Parting;
}

/**
 * By how much two solids meet, for a finding's numbers; undefined if they do not. Exact for boxes and convex solids,
 * and for bores wherever no root and no slanted face comes in between.
 */
export function overlapOf(a: Solid, b: Solid): Overlap | undefined {
  if (!meets(a, b)) return undefined;
  const parting = { x: partingAlong(a, b, 'x'), y: partingAlong(a, b, 'y'), z: partingAlong(a, b, 'z') };
  return {
    shared: sharedOf(a, b),
    parting,
    leastParting: AXES.map((axis) => parting[axis]).reduce((least, other) =>
      other.by.compare(least.by) < 0 ? other : least,
    ),
  };
}

function partingAlong(a: Solid, b: Solid, axis: Axis): Parting {
  const contact = contactAlong(a, b, axis);
  if (contact === undefined) return partingOfBounds(a, b, axis);
  const lower = { towards: 'lower', by: contact.begins.least.negated(), isExact: isExact(contact.begins) } as const;
  const higher = { towards: 'higher', by: contact.ends.most, isExact: isExact(contact.ends) } as const;
  const { towards, by, isExact: exact } = lower.by.compare(higher.by) <= 0 ? lower : higher;
  return { axis, towards, by: Length.of(by, 'in'), isExact: exact };
}

/** For solids that are none: sound ones that meet have a contact along each axis. */
function partingOfBounds(a: Solid, b: Solid, axis: Axis): Parting {
  const by = boundsOf(a)[axis].to.minus(boundsOf(b)[axis].from);
  return { axis, towards: 'higher', by, isExact: false };
}

function sharedOf(a: Solid, b: Solid): Overlap['shared'] {
  if (a.kind !== 'box' || b.kind !== 'box') {
    const { inside, outside } = sharedPolyhedra(a, b);
    if (outside !== undefined) {
      const along = (axis: Axis): SharedStretch => {
        const [from, to] = endsOf(outside, axis);
        const [surelyFrom, surelyTo] = inside === undefined ? [to, from] : endsOf(inside, axis);
        const exact = from.equals(surelyFrom) && to.equals(surelyTo);
        return { from: Length.of(from, 'in'), to: Length.of(to, 'in'), isExact: exact };
      };
      return { x: along('x'), y: along('y'), z: along('z') };
    }
  }
  const along = (axis: Axis): SharedStretch => {
    const [one, other] = [boundsOf(a)[axis], boundsOf(b)[axis]];
    return { ...(sharedInterval(one, other) ?? one), isExact: a.kind === 'box' && b.kind === 'box' };
  };
  return { x: along('x'), y: along('y'), z: along('z') };
}

/** What the two share, from inside and from outside; the same twice where neither is round. */
export function sharedPolyhedra(
  a: Solid,
  b: Solid,
): { readonly inside: Polyhedron | undefined; readonly outside: Polyhedron | undefined } {
  const [facetsOfA, facetsOfB] = [facetted(a), facetted(b)];
  const outside = cutByAll(facetsOfA.outside, planesOf(facetsOfB.outside));
  if (a.kind !== 'cylinder' && b.kind !== 'cylinder') return { inside: outside, outside };
  return { inside: cutByAll(facetsOfA.inside, planesOf(facetsOfB.inside)), outside };
}

function facetted(solid: Solid): { readonly inside: Polyhedron; readonly outside: Polyhedron } {
  if (solid.kind === 'cylinder') return facettedBore(boreOf(solid));
  const polyhedron = polyhedronOf(solid);
  return { inside: polyhedron, outside: polyhedron };
}
