import type { Extent } from '../shapes/convex-cell.ts';
import { type Vector, vector } from '../shapes/vectors.ts';

/**
 * Whether one sees enough of a block past many others, looking at them from the front, the right and above, all three
 * axes alike. In real millimetres.
 */

/** Points across a face that are looked at, each way. */
const GRID = 7;
const TOUCHING_MM = 0.01;

/** `least`: as a share of what one would see of the block alone. Looks at no more points than it must. */
export function showsEnough(block: Extent, others: readonly Extent[], least: number): boolean {
  const before = others.filter((other) => other !== block && mayCover(other, block));
  if (before.length === 0) return true;
  const faces = facesOf(block);
  const all = faces.reduce((sum, { area }) => sum + area, 0);
  let seen = 0;
  let left = all;
  for (const { area, at } of faces) {
    const each = area / (GRID * GRID);
    for (let step = 0; step < GRID * GRID; step++) {
      const point = at(((step % GRID) + 0.5) / GRID, (Math.floor(step / GRID) + 0.5) / GRID);
      left -= each;
      if (!before.some((other) => covers(other, point))) seen += each;
      if (seen >= least * all) return true;
      if (seen + left < least * all) return false;
    }
  }
  return false;
}

interface Face {
  readonly area: number;
  /** At shares of its two sides. */
  readonly at: (one: number, other: number) => Vector;
}

/** The three faces one could see. In an isometric picture all shrink alike. */
function facesOf({ x, y, z }: Extent): readonly Face[] {
  const along = ([from, to]: readonly [number, number], share: number): number => from + share * (to - from);
  const size = ([from, to]: readonly [number, number]): number => to - from;
  return [
    { area: size(x) * size(y), at: (one, other) => vector(along(x, one), along(y, other), z[0]) },
    { area: size(x) * size(z), at: (one, other) => vector(along(x, one), y[1], along(z, other)) },
    { area: size(y) * size(z), at: (one, other) => vector(x[1], along(y, one), along(z, other)) },
  ];
}

/** Something of it lies towards the viewer of something of the block. */
function mayCover(other: Extent, block: Extent): boolean {
  return other.x[1] > block.x[0] && other.y[1] > block.y[0] && other.z[0] < block.z[1];
}

/** Whether the way from a point to the viewer, to the right, up and forwards alike, goes through a block. */
function covers({ x, y, z }: Extent, point: Vector): boolean {
  const enters = Math.max(0, x[0] - point.x, y[0] - point.y, point.z - z[1]);
  const leaves = Math.min(x[1] - point.x, y[1] - point.y, point.z - z[0]);
  return leaves - enters > TOUCHING_MM;
}
