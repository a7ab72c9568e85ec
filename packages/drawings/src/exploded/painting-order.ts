import type { Extent } from '../shapes/convex-cell.ts';

/**
 * In which order blocks that stand apart are painted, seen from the front, the right and above: each after all that it
 * may cover. What is clicked is then what one sees. In real millimetres.
 */

const TOUCHING_MM = 0.01;

/** Places in `blocks`, the first to be painted first; as they stand there where it does not matter. */
export function paintingOrder(blocks: readonly Extent[]): readonly number[] {
  const over = blocks.map((): number[] => []);
  const under = blocks.map(() => 0);
  blocks.forEach((one, a) => {
    blocks.forEach((other, b) => {
      if (a === b || !mayCover(other, one)) return;
      over[a]?.push(b);
      under[b] = (under[b] ?? 0) + 1;
    });
  });
  const order: number[] = [];
  const waiting = new Set(blocks.keys());
  while (waiting.size > 0) {
    // Where each of several covers a bit of the next all round, any of them may begin.
    const next = [...waiting].find((at) => under[at] === 0) ?? Math.min(...waiting);
    waiting.delete(next);
    order.push(next);
    for (const at of over[next] ?? []) under[at] = (under[at] ?? 0) - 1;
  }
  return order;
}

/** Whether a block that stands apart from another lies before some of it, and nowhere behind. */
function mayCover(front: Extent, back: Extent): boolean {
  const isBehind =
    front.x[1] <= back.x[0] + TOUCHING_MM ||
    front.y[1] <= back.y[0] + TOUCHING_MM ||
    front.z[0] >= back.z[1] - TOUCHING_MM;
  if (isBehind) return false;
  const isBefore =
    back.x[1] <= front.x[0] + TOUCHING_MM ||
    back.y[1] <= front.y[0] + TOUCHING_MM ||
    back.z[0] >= front.z[1] - TOUCHING_MM;
  return isBefore && overlapsInPicture(front, back);
}

/** Along the three directions in which the corners of an isometric picture run apart. */
function overlapsInPicture(one: Extent, other: Extent): boolean {
  const meets = (a: readonly [number, number], b: readonly [number, number]): boolean => a[0] < b[1] && b[0] < a[1];
  const sum = (p: readonly [number, number], q: readonly [number, number]) => [p[0] + q[0], p[1] + q[1]] as const;
  const less = (p: readonly [number, number], q: readonly [number, number]) => [p[0] - q[1], p[1] - q[0]] as const;
  return (
    meets(sum(one.x, one.z), sum(other.x, other.z)) &&
    meets(sum(one.y, one.z), sum(other.y, other.z)) &&
    meets(less(one.y, one.x), less(other.y, other.x))
  );
}
