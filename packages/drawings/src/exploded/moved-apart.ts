import { groupedBy, type Part, type PartRole } from '@fettle/engine';
import { FRONTS } from '../parts-in-view.ts';
import type { Extent } from '../shapes/convex-cell.ts';
import { extentOf } from '../shapes/part-cells.ts';
import { type Vector, vector } from '../shapes/vectors.ts';

/**
 * How far each part is moved so that the piece comes apart: along the axis on which it lies beside its neighbours, away
 * from them. What was apart on an axis stays in that order and apart, so no two parts meet on the way; drawers and other
 * fronts come out to the front. In real millimetres.
 */

/** How far neighbours come apart, as multiples of a share of the piece's largest size. */
export interface Spread {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Fronts and drawers from the case. */
  readonly out: number;
  /** The parts of a drawer, or of a frame that is glued up by itself. */
  readonly within: number;
}

type Axis = 'x' | 'y' | 'z';
const AXES: readonly Axis[] = ['x', 'y', 'z'];
const BOXES: readonly PartRole[] = ['drawer-side', 'drawer-end', 'drawer-bottom', 'drawer-partition'];

/** What is moved as one, and comes apart in itself by less. */
interface Unit {
  readonly parts: readonly Part[];
  /** Where it stands in the piece, and how far it reaches once it has come apart. */
  readonly before: Extent;
  readonly after: Extent;
  readonly comesOut: boolean;
  readonly thin?: Axis;
}

/** Neighbours closer than this move apart; farther ones only keep their order. */
const NEAR_MM = 40;
const TOUCHING_MM = 0.01;

const UNIT_SHARE = 0.09;

/** The moves for any spread; what two spreads have in common is worked out once. */
export function waysApart(parts: readonly Part[]): (spread: Spread) => ReadonlyMap<string, Vector> {
  const extents = new Map<string, Extent>();
  for (const part of parts) {
    const extent = extentOf(part.box);
    if (extent !== undefined) extents.set(part.id, extent);
  }
  const whole = around([...extents.values()]);
  if (whole === undefined) return () => new Map();
  const unit = UNIT_SHARE * Math.max(...AXES.map((axis) => whole[axis][1] - whole[axis][0]));
  const members = unitsOf(parts.filter(({ id }) => extents.has(id)));
  const taken = remembering((within: number) => takenApart(members, extents, unit * within));
  const along = remembering((key: string) => {
    const [axis, within, gap, out] = JSON.parse(key) as [Axis, number, number, number];
    return solvedAlong(taken(within).units, axis, unit * gap, unit * out);
  });
  return ({ x, y, z, out, within }) => {
    const { units, inner } = taken(within);
    const moves = {
      x: along(JSON.stringify(['x', within, x, 0])),
      y: along(JSON.stringify(['y', within, y, 0])),
      z: along(JSON.stringify(['z', within, z, out])),
    };
    const all = new Map<string, Vector>();
    units.forEach((each, at) => {
      for (const { id } of each.parts) {
        const own = inner.get(id) ?? NOWHERE;
        const moved = (axis: Axis): number => (moves[axis][at] ?? 0) + own[axis];
        all.set(id, vector(moved('x'), moved('y'), moved('z')));
      }
    });
    return all;
  };
}

function remembering<Key, Answer>(work: (key: Key) => Answer): (key: Key) => Answer {
  const known = new Map<Key, Answer>();
  return (key) => {
    const answer = known.get(key) ?? work(key);
    known.set(key, answer);
    return answer;
  };
}

/** Each drawer and each frame taken apart in itself. */
function takenApart(members: readonly (readonly Part[])[], extents: ReadonlyMap<string, Extent>, gap: number) {
  const inner = new Map<string, Vector>();
  const units = members.map((parts): Unit => {
    const single = parts.map((part) => unitOf([part], extents, undefined));
    const [x, y, z] = AXES.map((axis) => solvedAlong(single, axis, gap, gap * INNER_OUT));
    const moves = parts.map((_, at) => vector(x?.[at] ?? 0, y?.[at] ?? 0, z?.[at] ?? 0));
    for (const [at, part] of parts.entries()) inner.set(part.id, moves[at] ?? NOWHERE);
    return unitOf(parts, extents, moves);
  });
  return { units, inner };
}

const INNER_OUT = 1.5;
const NOWHERE = vector(0, 0, 0);

/** A drawer is one thing, and so is a frame that is glued up by itself. */
function unitsOf(parts: readonly Part[]): readonly (readonly Part[])[] {
  const units = groupedBy(parts, ({ id, role, cell, frame }) => {
    if (cell !== undefined && (BOXES.includes(role) || role === 'drawer-front')) return `drawer ${cell}`;
    return frame === undefined ? `part ${id}` : `frame ${frame}`;
  });
  return [...units.values()];
}

function unitOf(
  parts: readonly Part[],
  extents: ReadonlyMap<string, Extent>,
  moves: readonly Vector[] | undefined,
): Unit {
  const places = parts.flatMap((part) => extents.get(part.id) ?? []);
  const moved = places.map((extent, at) => shifted(extent, moves?.[at] ?? NOWHERE));
  const before = around(places) ?? EMPTY;
  const [first] = parts;
  return {
    parts,
    before,
    after: around(moved) ?? EMPTY,
    comesOut: parts.some(({ role }) => FRONTS.includes(role) || BOXES.includes(role)),
    ...(parts.length === 1 && first !== undefined ? { thin: first.thin } : {}),
  };
}

const EMPTY: Extent = { x: [0, 0], y: [0, 0], z: [0, 0] };

function around(extents: readonly Extent[]): Extent | undefined {
  if (extents.length === 0) return undefined;
  const reach = (axis: Axis): readonly [number, number] => [
    Math.min(...extents.map((extent) => extent[axis][0])),
    Math.max(...extents.map((extent) => extent[axis][1])),
  ];
  return { x: reach('x'), y: reach('y'), z: reach('z') };
}

function shifted(extent: Extent, by: Vector): Extent {
  const along = (axis: Axis): readonly [number, number] => [extent[axis][0] + by[axis], extent[axis][1] + by[axis]];
  return { x: along('x'), y: along('y'), z: along('z') };
}

/** `later` moves at least `by` farther along the axis than `earlier`. */
interface Order {
  readonly earlier: number;
  readonly later: number;
  readonly by: number;
}

/** Halfway between the least and the greatest move that keep every order: what has room stays in the middle of it. */
function solvedAlong(units: readonly Unit[], axis: Axis, gap: number, out: number): readonly number[] {
  // In the order in which the units stand, so that one round settles nearly all.
  const place = (at: number): number => units[at]?.before[axis][0] ?? 0;
  const orders = [...ordersAlong(units, axis, gap, out)].sort((a, b) => place(a.earlier) - place(b.earlier));
  const least = units.map(() => 0);
  settle(orders, units.length, ({ earlier, later, by }) => {
    const wished = (least[earlier] ?? 0) + by;
    if (wished <= (least[later] ?? 0) + 1e-9) return false;
    least[later] = wished;
    return true;
  });
  const most = units.map(() => Math.max(0, ...least));
  settle(orders.toReversed(), units.length, ({ earlier, later, by }) => {
    const wished = (most[later] ?? 0) - by;
    if (wished >= (most[earlier] ?? 0) - 1e-9) return false;
    most[earlier] = wished;
    return true;
  });
  return units.map((_, at) => ((least[at] ?? 0) + (most[at] ?? 0)) / 2);
}

/** Until nothing changes; orders that contradict one another end it after as many rounds as there are units. */
function settle(orders: readonly Order[], rounds: number, apply: (order: Order) => boolean): void {
  for (let round = 0; round <= rounds; round++) {
    let hasChanged = false;
    for (const order of orders) if (apply(order)) hasChanged = true;
    if (!hasChanged) return;
  }
}

function ordersAlong(units: readonly Unit[], axis: Axis, gap: number, out: number): readonly Order[] {
  const orders: Order[] = [];
  const order = (earlier: number, later: number, apart: number): void => {
    const [one, other] = [units[earlier], units[later]];
    if (one !== undefined && other !== undefined) {
      orders.push({ earlier, later, by: one.after[axis][1] - other.after[axis][0] + apart });
    }
  };
  units.forEach((one, a) => {
    units.forEach((other, b) => {
      if (a >= b) return;
      if (one.comesOut !== other.comesOut) {
        if (axis === 'z') order(one.comesOut ? a : b, one.comesOut ? b : a, out);
        return;
      }
      const isBefore = one.before[axis][1] <= other.before[axis][0] + TOUCHING_MM;
      const isAfter = other.before[axis][1] <= one.before[axis][0] + TOUCHING_MM;
      if (isBefore || isAfter) {
        const [first, second] = isBefore ? [one, other] : [other, one];
        const isNear = second.before[axis][0] - first.before[axis][1] < NEAR_MM;
        const faces = AXES.every((across) => across === axis || overlaps(one.before[across], other.before[across]));
        order(isBefore ? a : b, isBefore ? b : a, isNear && faces ? gap : 0);
      } else if (
        AXES.every((each) => overlaps(one.before[each], other.before[each])) &&
        comesOutAlong(one, other) === axis
      ) {
        // One lies in a groove of the other: it comes out along its thickness.
        const isFirst = middle(one.before[axis]) <= middle(other.before[axis]);
        order(isFirst ? a : b, isFirst ? b : a, gap);
      }
    });
  });
  return orders;
}

function comesOutAlong(one: Unit, other: Unit): Axis {
  const thickness = ({ before, thin }: Unit): number =>
    thin === undefined ? Number.POSITIVE_INFINITY : before[thin][1] - before[thin][0];
  return (thickness(one) <= thickness(other) ? one.thin : other.thin) ?? 'z';
}

function overlaps(a: readonly [number, number], b: readonly [number, number]): boolean {
  return a[0] < b[1] - TOUCHING_MM && b[0] < a[1] - TOUCHING_MM;
}

function middle([from, to]: readonly [number, number]): number {
  return (from + to) / 2;
}
