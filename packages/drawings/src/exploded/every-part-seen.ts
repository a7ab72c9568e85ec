import type { Part } from '@fettle/engine';
import type { Extent } from '../shapes/convex-cell.ts';
import { extentOf } from '../shapes/part-cells.ts';
import type { Vector } from '../shapes/vectors.ts';
import type { ViewDirection } from '../shapes/view-direction.ts';
import { type Spread, waysApart } from './moved-apart.ts';
import { showsEnough } from './shows-enough.ts';

/**
 * How far a piece comes apart: as little as lets one see something of every part past the others, since what comes
 * farther apart is drawn smaller. Parts are taken for plain blocks here.
 */

/** So much of each part is to be seen, as a share of what one would see of it alone. */
const LEAST_SEEN = 0.1;
/** With more parts than this the search would be felt while one types; they come apart by one fixed measure. */
const MOST_PARTS = 200;
const FIXED: Spread = { x: 1, y: 1.5, z: 1, out: 4.5, within: 0.5 };
/** Where no spread shows every part, so many are looked at for the one that shows most. */
const LAST_TRIALS = 12;

const SPREADS: readonly Spread[] = [0.5, 1].flatMap((within) =>
  [1, 2].flatMap((x) =>
    [1, 1.5, 2].flatMap((y) =>
      [1, 2].flatMap((z) => [1.5, 3, 4.5, 6].map((out): Spread => ({ x, y, z, out, within }))),
    ),
  ),
);

interface Trial {
  readonly moves: ReadonlyMap<string, Vector>;
  readonly blocks: readonly Extent[];
  /** How large the picture is for the room it has. */
  readonly size: number;
}

/** In real millimetres; for the parts that have a place and a size. `room`: what the picture may take up on paper. */
export function movesThatShowAll(
  parts: readonly Part[],
  from: ViewDirection,
  room: { readonly wide: number; readonly high: number },
): ReadonlyMap<string, Vector> {
  const apart = waysApart(parts);
  if (parts.length > MOST_PARTS) return apart(FIXED);
  const trials = SPREADS.map((spread): Trial => {
    const moves = apart(spread);
    const blocks = parts.flatMap((part) => movedExtent(part, moves.get(part.id)) ?? []);
    return { moves, blocks, size: sizeOf(blocks, from, room) };
  }).sort((a, b) => a.size - b.size);
  let lastUnseen = 0;
  for (const { moves, blocks } of trials) {
    // What was hidden in the trial before is most likely hidden in this one, too.
    const order = [lastUnseen, ...blocks.keys()];
    const unseen = order.find((at) => !showsEnough(blocks[at] ?? NOTHING, blocks, LEAST_SEEN));
    if (unseen === undefined) return moves;
    lastUnseen = unseen;
  }
  return mostSeen(trials)?.moves ?? new Map();
}

const NOTHING: Extent = { x: [0, 0], y: [0, 0], z: [0, 0] };

/** The smallest of those in which most parts are to be seen. */
function mostSeen(trials: readonly Trial[]): Trial | undefined {
  let best: { readonly trial: Trial; readonly seen: number } | undefined;
  for (let at = 0; at < LAST_TRIALS; at++) {
    const trial = trials[Math.floor((at * trials.length) / LAST_TRIALS)];
    if (trial === undefined) continue;
    const seen = trial.blocks.filter((block) => showsEnough(block, trial.blocks, LEAST_SEEN)).length;
    if (seen > (best?.seen ?? -1)) best = { trial, seen };
  }
  return best?.trial;
}

/** The block that a part takes up once it is moved. */
export function movedExtent(part: Part, by: Vector | undefined): Extent | undefined {
  const extent = extentOf(part.box);
  if (extent === undefined || by === undefined) return undefined;
  const along = (axis: 'x' | 'y' | 'z'): readonly [number, number] => [
    extent[axis][0] + by[axis],
    extent[axis][1] + by[axis],
  ];
  return { x: along('x'), y: along('y'), z: along('z') };
}

function sizeOf(
  blocks: readonly Extent[],
  { right, up }: ViewDirection,
  room: { readonly wide: number; readonly high: number },
): number {
  return Math.max(reachAlong(blocks, right) / room.wide, reachAlong(blocks, up) / room.high);
}

function reachAlong(blocks: readonly Extent[], way: Vector): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const block of blocks) {
    let [low, high] = [0, 0];
    for (const axis of ['x', 'y', 'z'] as const) {
      const [from, to] = block[axis];
      low += Math.min(way[axis] * from, way[axis] * to);
      high += Math.max(way[axis] * from, way[axis] * to);
    }
    least = Math.min(least, low);
    most = Math.max(most, high);
  }
  return most - least;
}
