import type { Block, Feature, Part } from '@fettle/engine';
import { realMm } from '../shown-lengths.ts';
import { boxCell, type ConvexCell, type Extent, lessConvex, type Plane } from './convex-cell.ts';
import { cross, dot, minus, unit, type Vector, vector } from './vectors.ts';

/** A part as it is cut: its blank less its features, as convex pieces; round holes apart from them. */

export interface Bore {
  readonly axis: 'x' | 'y' | 'z';
  readonly along: readonly [number, number];
  /** Its middle line, at zero along its axis; a slot runs from the first to the second. */
  readonly centres: readonly [Vector, Vector];
  readonly radius: number;
}

export interface PartCells {
  /** Empty for a part without a finite size. */
  readonly cells: readonly ConvexCell[];
  readonly bores: readonly Bore[];
}

type Solid = Feature['solid'];

/** Sides of the prism that stands for a round hole where a plane cuts it. */
const ROUND_SIDES = 24;

/** Every sheet of a piece asks for the same parts. */
const known = new WeakMap<Part, PartCells>();

export function partCells(part: Part): PartCells {
  const cells = known.get(part) ?? cellsOfPart(part);
  known.set(part, cells);
  return cells;
}

function cellsOfPart(part: Part): PartCells {
  const blank = extentOf(part.blank);
  if (blank === undefined) return { cells: [], bores: [] };
  let cells: readonly ConvexCell[] = [boxCell(blank)];
  const bores: Bore[] = [];
  for (const { solid } of part.features) {
    if (solid.kind === 'cylinder') bores.push(boreOf(solid));
    else {
      const planes = planesOf(solid);
      cells = cells.flatMap((cell) => lessConvex(cell, planes));
    }
  }
  return { cells, bores };
}

/** Undefined for what has no finite, positive size. */
export function extentOf(block: Block): Extent | undefined {
  const ends = (axis: 'x' | 'y' | 'z'): readonly [number, number] => [
    realMm(block[axis].start.length),
    realMm(block[axis].end.length),
  ];
  const extent = { x: ends('x'), y: ends('y'), z: ends('z') };
  const isSound = Object.values(extent).every(
    ([from, to]) => Number.isFinite(from) && Number.isFinite(to) && from < to,
  );
  return isSound ? extent : undefined;
}

function planesOf(solid: Exclude<Solid, { kind: 'cylinder' }>): readonly Plane[] {
  if (solid.kind === 'box') {
    return (['x', 'y', 'z'] as const).flatMap((axis) => {
      const { from, to } = solid[axis];
      const along = { x: 0, y: 0, z: 0, [axis]: 1 };
      const against = { x: 0, y: 0, z: 0, [axis]: -1 };
      return [
        { normal: along, offset: realMm(to) },
        { normal: against, offset: -realMm(from) },
      ];
    });
  }
  const corners = solid.corners.map((corner) => vector(realMm(corner.x), realMm(corner.y), realMm(corner.z)));
  const middle = corners.reduce((sum, corner) => vector(sum.x + corner.x, sum.y + corner.y, sum.z + corner.z), origin);
  const inside = vector(middle.x / corners.length, middle.y / corners.length, middle.z / corners.length);
  return solid.faces.flatMap((face) => {
    const [a, b, c] = face.map((at) => corners[at]);
    if (a === undefined || b === undefined || c === undefined) return [];
    const normal = unit(cross(minus(b, a), minus(c, b)));
    if (dot(normal, normal) === 0) return [];
    const outward = dot(minus(inside, a), normal) > 0 ? vector(-normal.x, -normal.y, -normal.z) : normal;
    return [{ normal: outward, offset: dot(outward, a) }];
  });
}

const origin = vector(0, 0, 0);

function boreOf(solid: Extract<Solid, { kind: 'cylinder' }>): Bore {
  const { axis, along, centre, sweptTo, radius } = solid;
  const place = ([u, v]: typeof centre): Vector => {
    const [a, b] = [realMm(u), realMm(v)];
    return axis === 'x' ? vector(0, a, b) : axis === 'y' ? vector(a, 0, b) : vector(a, b, 0);
  };
  return {
    axis,
    along: [realMm(along.from), realMm(along.to)],
    centres: [place(centre), place(sweptTo ?? centre)],
    radius: realMm(radius),
  };
}

/** The outline of a bore across its axis at `at` along it. */
export function boreOutline({ axis, centres, radius }: Bore, at: number): readonly Vector[] {
  const [one, other] = centres;
  const [u, v] = axis === 'x' ? (['y', 'z'] as const) : axis === 'y' ? (['x', 'z'] as const) : (['x', 'y'] as const);
  const isSlot = one.x !== other.x || one.y !== other.y || one.z !== other.z;
  const way = isSlot ? Math.atan2(other[v] - one[v], other[u] - one[u]) : 0;
  return Array.from({ length: ROUND_SIDES + (isSlot ? 2 : 0) }, (_, index) => {
    const half = ROUND_SIDES / 2;
    const isFar = isSlot && index <= half;
    const step = isSlot && index > half ? index - 1 : index;
    const angle = way - Math.PI / 2 + (step / ROUND_SIDES) * 2 * Math.PI;
    const centre = isFar ? other : one;
    const point = { x: centre.x, y: centre.y, z: centre.z };
    point[u] += radius * Math.cos(angle);
    point[v] += radius * Math.sin(angle);
    point[axis] = at;
    return point;
  });
}

/** The bore as a prism: the planes it lies behind. */
export function borePlanes(bore: Bore): readonly Plane[] {
  const [from, to] = bore.along;
  const along = vector(bore.axis === 'x' ? 1 : 0, bore.axis === 'y' ? 1 : 0, bore.axis === 'z' ? 1 : 0);
  const ring = boreOutline(bore, 0);
  const middle = scaledSum(ring);
  const sides = ring.flatMap((corner, index): Plane[] => {
    const next = ring[(index + 1) % ring.length] ?? corner;
    const normal = unit(cross(along, minus(next, corner)));
    if (dot(normal, normal) === 0) return [];
    const outward = dot(minus(middle, corner), normal) > 0 ? vector(-normal.x, -normal.y, -normal.z) : normal;
    return [{ normal: outward, offset: dot(outward, corner) }];
  });
  return [{ normal: along, offset: to }, { normal: vector(-along.x, -along.y, -along.z), offset: -from }, ...sides];
}

function scaledSum(points: readonly Vector[]): Vector {
  const sum = points.reduce((all, { x, y, z }) => vector(all.x + x, all.y + y, all.z + z), origin);
  return vector(sum.x / points.length, sum.y / points.length, sum.z / points.length);
}
