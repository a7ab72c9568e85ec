/**
 * Which edges of upright boxes one sees from the front, which are behind something, and which fall on the edge of
 * something nearer and need no line of their own. Plain numbers in any one unit, y upwards; knows nothing of parts,
 * paper or pens.
 */

export interface Slab {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  /** Distance of its front from the viewer; of two alike the one with the lower `order` counts as nearer. */
  readonly depth: number;
  readonly order: number;
}

export type Side = 'left' | 'right' | 'bottom' | 'top';

/** A stretch of one side of a slab, from `from` to `to` along it. */
export interface EdgeStretch {
  readonly side: Side;
  readonly from: number;
  readonly to: number;
}

export interface SeenEdges {
  readonly seen: readonly EdgeStretch[];
  readonly hidden: readonly EdgeStretch[];
}

type Interval = readonly [number, number];

/** Edges of `slab` among `others`; `tolerance` is the distance below which two edges are the same. */
export function edgesOf(slab: Slab, others: readonly Slab[], tolerance: number): SeenEdges {
  const seen: EdgeStretch[] = [];
  const hidden: EdgeStretch[] = [];
  const nearer = others.filter((other) => isNearer(other, slab) && touches(other, slab, tolerance));
  for (const side of ['left', 'right', 'bottom', 'top'] as const) {
    const upright = side === 'left' || side === 'right';
    const at = side === 'left' ? slab.x0 : side === 'right' ? slab.x1 : side === 'bottom' ? slab.y0 : slab.y1;
    const whole: Interval = upright ? [slab.y0, slab.y1] : [slab.x0, slab.x1];
    const doubled: Interval[] = [];
    const behind: Interval[] = [];
    for (const other of nearer) {
      const across: Interval = upright ? [other.x0, other.x1] : [other.y0, other.y1];
      const along: Interval = upright ? [other.y0, other.y1] : [other.x0, other.x1];
      const overlap: Interval = [Math.max(whole[0], along[0]), Math.min(whole[1], along[1])];
      if (overlap[1] - overlap[0] <= tolerance) continue;
      if (Math.abs(at - across[0]) <= tolerance || Math.abs(at - across[1]) <= tolerance) doubled.push(overlap);
      else if (across[0] < at && at < across[1]) behind.push(overlap);
    }
    const single = without([whole], doubled, tolerance);
    const open = without(single, behind, tolerance);
    for (const [from, to] of open) seen.push({ side, from, to });
    for (const [from, to] of without(single, open, tolerance)) hidden.push({ side, from, to });
  }
  return { seen, hidden };
}

/** Whether any of the slab's face is seen at all. */
export function isSeen(slab: Slab, others: readonly Slab[], tolerance: number): boolean {
  const covers = others.filter((other) => isNearer(other, slab) && touches(other, slab, tolerance));
  const cuts = [slab.x0, slab.x1];
  for (const cover of covers) {
    for (const x of [cover.x0, cover.x1]) if (slab.x0 < x && x < slab.x1) cuts.push(x);
  }
  cuts.sort((a, b) => a - b);
  for (let at = 1; at < cuts.length; at++) {
    const left = cuts[at - 1] ?? 0;
    const right = cuts[at] ?? 0;
    if (right - left <= tolerance) continue;
    const middle = (left + right) / 2;
    const covered = covers
      .filter((cover) => cover.x0 < middle && middle < cover.x1)
      .map((cover): Interval => [cover.y0, cover.y1]);
    if (without([[slab.y0, slab.y1]], covered, tolerance).length > 0) return true;
  }
  return false;
}

function isNearer(other: Slab, slab: Slab): boolean {
  if (other === slab) return false;
  return other.depth === slab.depth ? other.order < slab.order : other.depth < slab.depth;
}

function touches(a: Slab, b: Slab, tolerance: number): boolean {
  return a.x0 <= b.x1 + tolerance && b.x0 <= a.x1 + tolerance && a.y0 <= b.y1 + tolerance && b.y0 <= a.y1 + tolerance;
}

/** What remains of some intervals when others are taken out; remains no longer than `tolerance` are dropped. */
function without(intervals: readonly Interval[], taken: readonly Interval[], tolerance: number): Interval[] {
  const sorted = [...taken].sort((a, b) => a[0] - b[0]);
  const rest: Interval[] = [];
  for (const [start, end] of intervals) {
    let cursor = start;
    for (const [from, to] of sorted) {
      if (to <= cursor || end <= from) continue;
      if (from - cursor > tolerance) rest.push([cursor, from]);
      cursor = Math.max(cursor, to);
    }
    if (end - cursor > tolerance) rest.push([cursor, end]);
  }
  return rest;
}
