import type { Edge } from './cell-edges.ts';
import { type ConvexCell, cornersOf, type Plane } from './convex-cell.ts';
import { joined, type Spans } from './joined-spans.ts';
import { dot, plus, scaled, type Vector } from './vectors.ts';
import { type Flat, flat, hullOf, type ViewDirection } from './view-direction.ts';

/**
 * Which stretches of an edge one sees from a side, and which lie behind wood. Every edge is held against the shadow of
 * every convex piece, so the answer is right for any number of parts in any places, also where they touch.
 */

export interface Stretch {
  readonly from: Flat;
  readonly to: Flat;
}

export interface SeenStretches {
  readonly seen: readonly Stretch[];
  readonly hidden: readonly Stretch[];
}

interface Rim {
  readonly u: number;
  readonly v: number;
  readonly offset: number;
}

/** All that lies behind a piece of wood, seen from one side. */
export interface Shadow {
  /** Counter-clockwise. */
  readonly outline: readonly Flat[];
  /** Half planes that hold the outline, each less a rim: what is inside has across · point < offset. */
  readonly rims: readonly Rim[];
  readonly facing: readonly Plane[];
  readonly low: Flat;
  readonly high: Flat;
  /** Its nearest point, along the view. */
  readonly nearest: number;
}

/**
 * An edge is looked at just beside itself, on both sides, so that one behind the seam of two pieces is hidden by both of
 * them; a rim is narrower than that and a surface that lies less deep than `DEEP_MM` behind another lies on it. All in
 * real millimetres.
 */
const BESIDE_MM = 0.02;
const RIM_MM = 0.01;
export const DEEP_MM = 0.05;

export function shadowOf(cell: ConvexCell, from: ViewDirection): Shadow {
  const corners = cornersOf(cell);
  const outline = hullOf(corners.map((corner) => flat(corner, from)));
  const us = outline.map(({ u }) => u);
  const vs = outline.map(({ v }) => v);
  return {
    outline,
    rims: rimsOf(outline),
    facing: cell.faces.filter(({ normal }) => dot(normal, from.towards) > 1e-6),
    low: { u: Math.min(...us), v: Math.min(...vs) },
    high: { u: Math.max(...us), v: Math.max(...vs) },
    nearest: Math.max(...corners.map((corner) => dot(corner, from.towards))),
  };
}

function rimsOf(outline: readonly Flat[]): readonly Rim[] {
  return outline.map((a, at) => {
    const b = outline[(at + 1) % outline.length] ?? a;
    const side = Math.hypot(b.u - a.u, b.v - a.v);
    const [u, v] = [(b.v - a.v) / side, -(b.u - a.u) / side];
    return { u, v, offset: a.u * u + a.v * v - RIM_MM };
  });
}

/** The shadows nearest first: the search ends with the first that lies behind the edge, or once all of it is covered. */
export function seenStretches(edge: Edge, shadows: readonly Shadow[], from: ViewDirection): SeenStretches {
  const start = flat(edge.from, from);
  const end = flat(edge.to, from);
  const length = Math.hypot(end.u - start.u, end.v - start.v);
  if (length < RIM_MM) return { seen: [], hidden: [] };
  const aside = { u: (-(end.v - start.v) / length) * BESIDE_MM, v: ((end.u - start.u) / length) * BESIDE_MM };
  const covered = common(
    coveredBeside(edge, start, end, aside, shadows, from, length),
    coveredBeside(edge, start, end, { u: -aside.u, v: -aside.v }, shadows, from, length),
  );
  const at = (share: number): Flat => ({
    u: start.u + share * (end.u - start.u),
    v: start.v + share * (end.v - start.v),
  });
  const seen: Stretch[] = [];
  const hidden: Stretch[] = [];
  let cursor = 0;
  const tell = (list: Stretch[], low: number, high: number): void => {
    if ((high - low) * length > DEEP_MM) list.push({ from: at(low), to: at(high) });
  };
  for (const [low, high] of covered) {
    tell(seen, cursor, low);
    tell(hidden, Math.max(cursor, low), high);
    cursor = Math.max(cursor, high);
  }
  tell(seen, cursor, 1);
  return { seen, hidden };
}

/** As shares of the edge. */
function coveredBeside(
  edge: Edge,
  start: Flat,
  end: Flat,
  aside: Flat,
  shadows: readonly Shadow[],
  from: ViewDirection,
  length: number,
): Spans {
  const by = plus(scaled(from.right, aside.u), scaled(from.up, aside.v));
  const moved = { from: plus(edge.from, by), to: plus(edge.to, by) };
  const [one, other] = [
    { u: start.u + aside.u, v: start.v + aside.v },
    { u: end.u + aside.u, v: end.v + aside.v },
  ];
  const depth = Math.min(dot(moved.from, from.towards), dot(moved.to, from.towards));
  let apart: Spans = [];
  for (const shadow of shadows) {
    if (shadow.nearest <= depth) break;
    const inside = stretchInside(moved, one, other, shadow, length);
    if (inside === undefined) continue;
    apart = joined(apart, inside);
    const [first] = apart;
    if (first !== undefined && first[0] <= 0 && first[1] >= 1) break;
  }
  return apart;
}

function common(a: Spans, b: Spans): Spans {
  return a.flatMap(([low, high]) =>
    b.flatMap(([from, to]) => {
      const [start, end] = [Math.max(low, from), Math.min(high, to)];
      return start < end ? [[start, end] as const] : [];
    }),
  );
}

/** As shares of the edge. Asked for every edge and every shadow over it: it makes nothing but its answer. */
function stretchInside(
  edge: Edge,
  start: Flat,
  end: Flat,
  { rims, facing, low, high }: Shadow,
  length: number,
): readonly [number, number] | undefined {
  const isAside =
    (start.u <= low.u + RIM_MM && end.u <= low.u + RIM_MM) ||
    (start.u >= high.u - RIM_MM && end.u >= high.u - RIM_MM) ||
    (start.v <= low.v + RIM_MM && end.v <= low.v + RIM_MM) ||
    (start.v >= high.v - RIM_MM && end.v >= high.v - RIM_MM);
  if (isAside) return undefined;
  let from = 0;
  let to = 1;
  const sides = facing.length + rims.length;
  for (let at = 0; at < sides; at++) {
    // Keeps where `a` at the start and `b` at the end are below nothing.
    let a = 0;
    let b = 0;
    const plane = facing[at];
    const rim = rims[at - facing.length];
    if (plane !== undefined) {
      a = heightBehind(plane, edge.from);
      b = heightBehind(plane, edge.to);
    } else if (rim !== undefined) {
      a = start.u * rim.u + start.v * rim.v - rim.offset;
      b = end.u * rim.u + end.v * rim.v - rim.offset;
    }
    if (a >= 0 && b >= 0) return undefined;
    if (a < 0 && b < 0) continue;
    const crossing = a / (a - b);
    if (a < 0) to = Math.min(to, crossing);
    else from = Math.max(from, crossing);
    if (from >= to) return undefined;
  }
  return (to - from) * length > RIM_MM ? [from, to] : undefined;
}

function heightBehind({ normal, offset }: Plane, point: Vector): number {
  return normal.x * point.x + normal.y * point.y + normal.z * point.z - offset + DEEP_MM;
}
