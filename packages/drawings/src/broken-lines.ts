import { type Box, boxAround, grown, type Line, type Point } from './primitives.ts';

/** Interrupts lines where lettering stands on them, as a draughtsman leaves a line open around a figure. */

const ROOM_MM = 0.5;
/** Shorter remains than this are not worth drawing. */
const SHORTEST_MM = 0.4;

/** The pieces of a line that lie outside all boxes. */
export function brokenAround(whole: Line, boxes: readonly Box[]): Line[] {
  const { from, to } = whole;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) return [];
  const reach = boxAround([from, to]);
  const covered: (readonly [number, number])[] = [];
  for (const box of boxes) {
    // Every line is asked of all that is written, most of which is far away.
    const stretch = isNear(box, reach) ? insideStretch(from, to, grown(box, ROOM_MM)) : undefined;
    if (stretch !== undefined) covered.push(stretch);
  }
  if (covered.length === 0) return [whole];
  covered.sort((a, b) => a[0] - b[0]);
  const at = (t: number): Point => ({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) });
  const pieces: Line[] = [];
  let cursor = 0;
  const keep = (start: number, end: number): void => {
    if ((end - start) * length >= SHORTEST_MM) pieces.push({ ...whole, from: at(start), to: at(end) });
  };
  for (const [start, end] of covered) {
    keep(cursor, start);
    cursor = Math.max(cursor, end);
  }
  keep(cursor, 1);
  return pieces;
}

function isNear(box: Box, reach: Box): boolean {
  return (
    box.left - ROOM_MM <= reach.right &&
    reach.left <= box.right + ROOM_MM &&
    box.top - ROOM_MM <= reach.bottom &&
    reach.top <= box.bottom + ROOM_MM
  );
}

/** The stretch of a line inside a box as fractions of the line (clipping after Liang and Barsky). */
function insideStretch(from: Point, to: Point, box: Box): readonly [number, number] | undefined {
  let start = 0;
  let end = 1;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  for (const [p, q] of [
    [-dx, from.x - box.left],
    [dx, box.right - from.x],
    [-dy, from.y - box.top],
    [dy, box.bottom - from.y],
  ] as const) {
    if (p === 0) {
      if (q <= 0) return undefined;
    } else if (p < 0) start = Math.max(start, q / p);
    else end = Math.min(end, q / p);
  }
  return start < end ? [start, end] : undefined;
}
