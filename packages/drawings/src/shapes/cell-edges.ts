import type { ConvexCell } from './convex-cell.ts';
import { dot, minus, scaled, unit, type Vector } from './vectors.ts';

/**
 * The edges of a part that consists of convex pieces side by side: where two pieces meet in one flat face there is no
 * edge, however the part was divided.
 */

export interface Edge {
  readonly from: Vector;
  readonly to: Vector;
}

/** Numbers closer than this, in real millimetres, are one; no fraction of an inch lies on its half. */
const GRAIN = 0.0013;

/** An edge line in space and what happens along it. */
interface LineOfEdges {
  readonly way: Vector;
  /** The point of the line nearest to the origin. */
  readonly foot: Vector;
  readonly turns: { readonly at: number; readonly by: 1 | -1 }[];
}

/** Of the parts of a piece, for every view of it. */
const known = new WeakMap<readonly ConvexCell[], readonly Edge[]>();

export function edgesOfCells(cells: readonly ConvexCell[]): readonly Edge[] {
  const edges = known.get(cells) ?? edgesLeft(cells);
  known.set(cells, edges);
  return edges;
}

function edgesLeft(cells: readonly ConvexCell[]): readonly Edge[] {
  // Around each plane every ring runs one way as seen from its own side, so rims that are shared cancel out.
  const planes = new Map<string, Map<string, LineOfEdges>>();
  for (const { faces } of cells) {
    for (const { normal, offset, ring } of faces) {
      const lines = entry(planes, planeKey(normal, offset), () => new Map<string, LineOfEdges>());
      for (const [at, from] of ring.entries()) addSide(lines, from, ring[(at + 1) % ring.length] ?? from);
    }
  }
  const remaining = new Map<string, LineOfEdges>();
  for (const lines of planes.values()) {
    for (const [key, line] of lines) {
      const whole = entry(remaining, key, () => ({ way: line.way, foot: line.foot, turns: [] }));
      for (const [from, to] of stretchesNotZero(line)) whole.turns.push({ at: from, by: 1 }, { at: to, by: -1 });
    }
  }
  return [...remaining.values()].flatMap((line) =>
    stretchesNotZero(line).map(([from, to]): Edge => ({ from: along(line, from), to: along(line, to) })),
  );
}

function addSide(lines: Map<string, LineOfEdges>, from: Vector, to: Vector): void {
  const side = minus(to, from);
  if (dot(side, side) < GRAIN * GRAIN) return;
  const forward = unit(side);
  const isForward = firstNotZero(forward) > 0;
  const way = isForward ? forward : scaled(forward, -1);
  const foot = minus(from, scaled(way, dot(from, way)));
  const line = entry(lines, `${rounded(way, 1e-4)} ${rounded(foot, GRAIN)}`, () => ({ way, foot, turns: [] }));
  const sign = isForward ? 1 : -1;
  const [low, high] = isForward ? [from, to] : [to, from];
  line.turns.push({ at: dot(low, way), by: sign }, { at: dot(high, way), by: sign === 1 ? -1 : 1 });
}

/** Where more rims run one way than the other. */
function stretchesNotZero({ turns }: LineOfEdges): readonly (readonly [number, number])[] {
  const sorted = [...turns].sort((a, b) => a.at - b.at);
  const found: [number, number][] = [];
  let sum = 0;
  let since = 0;
  for (const { at, by } of sorted) {
    const last = found[found.length - 1];
    if (sum !== 0 && at - since > GRAIN) {
      if (last !== undefined && since - last[1] <= GRAIN) last[1] = at;
      else found.push([since, at]);
    }
    sum += by;
    since = at;
  }
  return found;
}

function along({ foot, way }: LineOfEdges, at: number): Vector {
  return { x: foot.x + way.x * at, y: foot.y + way.y * at, z: foot.z + way.z * at };
}

/** Both sides of a plane have one key. */
function planeKey(normal: Vector, offset: number): string {
  const sign = firstNotZero(normal) < 0 ? -1 : 1;
  return `${rounded(scaled(normal, sign), 1e-4)} ${Math.round((offset * sign) / GRAIN)}`;
}

function rounded({ x, y, z }: Vector, grain: number): string {
  // Adding zero makes one of the two zeros.
  return `${Math.round(x / grain) + 0} ${Math.round(y / grain) + 0} ${Math.round(z / grain) + 0}`;
}

function firstNotZero({ x, y, z }: Vector): number {
  return Math.abs(x) > 1e-4 ? x : Math.abs(y) > 1e-4 ? y : Math.abs(z) > 1e-4 ? z : 1;
}

function entry<Value>(map: Map<string, Value>, key: string, make: () => Value): Value {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}
