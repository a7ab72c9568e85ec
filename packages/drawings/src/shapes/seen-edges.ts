import type { Edge } from './cell-edges.ts';
import { type ConvexCell, cornersOf, type Plane } from './convex-cell.ts';
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

/** All that lies behind a piece of wood, seen from one side. */
export interface Shadow {
  /** Counter-clockwise. */
  readonly outline: readonly Flat[];
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
const DEEP_MM = 0.05;

export function shadowOf(cell: ConvexCell, from: ViewDirection): Shadow {
  const corners = cornersOf(cell);
  const outline = hullOf(corners.map((corner) => flat(corner, from)));
  const us = outline.map(({ u }) => u);
  const vs = outline.map(({ v }) => v);
  return {
    outline,
    facing: cell.faces.filter(({ normal }) => dot(normal, from.towards) > 1e-6),
    low: { u: Math.min(...us), v: Math.min(...vs) },
    high: { u: Math.max(...us), v: Math.max(...vs) },
    nearest: Math.max(...corners.map((corner) => dot(corner, from.towards))),
  };
}

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

type Shares = readonly (readonly [number, number])[];

/** Apart from one another and in order, as shares of the edge. */
function coveredBeside(
  edge: Edge,
  start: Flat,
  end: Flat,
  aside: Flat,
  shadows: readonly Shadow[],
  from: ViewDirection,
  length: number,
): Shares {
  const by = plus(scaled(from.right, aside.u), scaled(from.up, aside.v));
  const moved = { from: plus(edge.from, by), to: plus(edge.to, by) };
  const [one, other] = [
    { u: start.u + aside.u, v: start.v + aside.v },
    { u: end.u + aside.u, v: end.v + aside.v },
  ];
  const found: (readonly [number, number])[] = [];
  for (const shadow of shadows) {
    const inside = stretchInside(moved, one, other, shadow, length);
    if (inside !== undefined) found.push(inside);
  }
  const apart: [number, number][] = [];
  for (const [low, high] of found.sort((a, b) => a[0] - b[0])) {
    const last = apart[apart.length - 1];
    if (last !== undefined && low <= last[1]) last[1] = Math.max(last[1], high);
    else apart.push([low, high]);
  }
  return apart;
}

function common(a: Shares, b: Shares): Shares {
  return a.flatMap(([low, high]) =>
    b.flatMap(([from, to]) => {
      const [start, end] = [Math.max(low, from), Math.min(high, to)];
      return start < end ? [[start, end] as const] : [];
    }),
  );
}

/** As shares of the edge. */
function stretchInside(
  edge: Edge,
  start: Flat,
  end: Flat,
  { outline, facing, low, high }: Shadow,
  length: number,
): readonly [number, number] | undefined {
  const isAside =
    Math.max(start.u, end.u) <= low.u + RIM_MM ||
    Math.min(start.u, end.u) >= high.u - RIM_MM ||
    Math.max(start.v, end.v) <= low.v + RIM_MM ||
    Math.min(start.v, end.v) >= high.v - RIM_MM;
  if (isAside) return undefined;
  let from = 0;
  let to = 1;
  /** Keeps where `a` at the start and `b` at the end are below nothing. */
  const keep = (a: number, b: number): boolean => {
    if (a >= 0 && b >= 0) return false;
    if (a < 0 && b < 0) return true;
    const crossing = a / (a - b);
    if (a < 0) to = Math.min(to, crossing);
    else from = Math.max(from, crossing);
    return from < to;
  };
  for (const plane of facing) {
    if (!keep(heightBehind(plane, edge.from), heightBehind(plane, edge.to))) return undefined;
  }
  for (let at = 0; at < outline.length; at++) {
    const a = outline[at];
    const b = outline[(at + 1) % outline.length];
    if (a === undefined || b === undefined) continue;
    const side = Math.hypot(b.u - a.u, b.v - a.v);
    const outside = (point: Flat): number =>
      ((point.u - a.u) * (b.v - a.v) - (point.v - a.v) * (b.u - a.u)) / side + RIM_MM;
    if (!keep(outside(start), outside(end))) return undefined;
  }
  return (to - from) * length > RIM_MM ? [from, to] : undefined;
}

function heightBehind({ normal, offset }: Plane, point: Vector): number {
  return dot(normal, point) - offset + DEEP_MM;
}
