import { centredText, LETTER_HEIGHTS_MM, textBox, textWidth } from '../lettering.ts';
import {
  type Box,
  boxesOverlap,
  grown,
  type Line,
  type Point,
  type Primitive,
  type Text,
  unionOf,
} from '../primitives.ts';

/**
 * Writes the marks of parts into a picture: on the part where it has room, else beside it with a short leader that ends
 * in a dot on the part and crosses as few lines as can be. Knows paper only.
 */

export interface CalloutWish {
  readonly id: string;
  /** In order of preference; the last is the shortest. */
  readonly words: readonly string[];
  /** Points of the part that one sees, the best first. */
  readonly spots: readonly Point[];
  /** More of them all over the part, asked for only where no leader from the best ones finds a way. */
  readonly otherSpots?: () => readonly Point[];
  /** Whether a text that fills this box would stand on the part alone. */
  readonly holds: (box: Box) => boolean;
  /** No leader leads to it: it goes without a mark where the mark has no room on it. */
  readonly mustStandOn?: boolean;
}

export interface Callout {
  readonly id: string;
  readonly text: Text;
  /** From the dot to the text; empty where the text stands on the part. */
  readonly leader: readonly Point[];
}

export interface CalloutRoom {
  /** Where lettering may stand. */
  readonly within: Box;
  readonly taken: readonly Box[];
  /** Lines that lettering must not touch, and those it may stand on, which are then broken. */
  readonly firm: readonly Line[];
  readonly soft: readonly Line[];
}

const HEIGHT = LETTER_HEIGHTS_MM.small;
const MARGIN = 0.5;
/** From the mark of one part to one that has no leader to tell which part it means. */
const APART = 3;
const REACHES = [4, 6, 8.5, 11.5, 15, 19, 24, 30];
const BEARINGS = 16;
const MOST_SPOTS = 4;
/** From a spot to the far end of its text. */
const FARTHEST = 80;
/** From a spot to the far end of a text around it. */
const ON_PART = 30;
/** With more marks than these on one sheet leaders would only be a thicket: what has no room goes without. */
const MOST_LEADERS = 120;
const DOT_MM = 0.5;
/** A leader that passes this near to another mark or dot might be taken for its own. */
const CLOSE = 0.8;
const CLOSE_COST = 3;
/** What a shorter text is worth in longer or crossing leaders. */
const SHORTER_COST = 6;

export function placeCallouts(
  wishes: readonly CalloutWish[],
  room: CalloutRoom,
): { readonly placed: readonly Callout[]; readonly leftOut: readonly string[] } {
  const taken: Box[] = [...room.taken];
  const leaders: Line[] = [];
  const placed: Callout[] = [];
  const leftOut: string[] = [];
  const isCrowded = wishes.length > MOST_LEADERS;
  const lines = { firm: room.firm.map(boxed), soft: room.soft.map(boxed) };
  const keep = (found: Callout): void => {
    placed.push(found);
    taken.push(textBox(found.text));
    leaders.push(...leaderLines(found));
    const [dot] = found.leader;
    if (dot !== undefined) taken.push(grown({ left: dot.x, right: dot.x, top: dot.y, bottom: dot.y }, DOT_MM));
  };
  // What stands on its part first, so that no other mark lies on a part that would hold its own; then what must have a
  // leader; last what may go without.
  const needed = wishes.filter(({ mustStandOn }) => mustStandOn !== true);
  const without = needed.filter((wish) => {
    const found = onThePart(wish, nearTo(wish, room.within, lines, ON_PART), taken, leaders);
    if (found !== undefined) keep(found);
    return found === undefined;
  });
  for (const wish of without) {
    const found = isCrowded ? undefined : fromAnySpot(wish, room.within, lines, taken, leaders);
    if (found === undefined) leftOut.push(wish.id);
    else keep(found);
  }
  for (const wish of wishes.filter(({ mustStandOn }) => mustStandOn === true)) {
    const near = nearTo(wish, room.within, lines, ON_PART);
    // Close under the mark of another part it would read as that one's second line.
    const apart = taken.map((other) => grown(other, APART));
    const found = onThePart(wish, near, apart, leaders) ?? onThePart(wish, near, taken, leaders);
    if (found !== undefined) keep(found);
  }
  return { placed, leftOut };
}

function onThePart(
  { id, words, spots, holds }: CalloutWish,
  room: NearLines,
  taken: readonly Box[],
  leaders: readonly Line[],
): Callout | undefined {
  for (const text of words) {
    let best: Text | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const spot of spots) {
      const written = centredText({ role: 'mark', text, height: HEIGHT, runs: 'across' }, spot);
      const box = grown(textBox(written), MARGIN);
      const isFree =
        !taken.some((other) => boxesOverlap(box, other)) &&
        holds(box) &&
        !touchesAny(box, room.firm) &&
        !touchesAny(box, leaders);
      if (!isFree) continue;
      const cost = countTouched(box, room.soft);
      if (cost < least) [best, least] = [written, cost];
      if (cost === 0) break;
    }
    if (best !== undefined) return { id, text: best, leader: [] };
  }
  return undefined;
}

/** From one of the best spots; else from any. */
function fromAnySpot(
  wish: CalloutWish,
  within: Box,
  lines: BoxedLines,
  taken: readonly Box[],
  leaders: readonly Line[],
): Callout | undefined {
  const found = withLeader(wish, nearTo(wish, within, lines, FARTHEST), taken, leaders);
  if (found !== undefined || wish.otherSpots === undefined) return found;
  for (const spot of wish.otherSpots()) {
    const from = { ...wish, spots: [spot] };
    const other = withLeader(from, nearTo(from, within, lines, FARTHEST), taken, leaders);
    if (other !== undefined) return other;
  }
  return undefined;
}

/** Off all wide lines, or across them where there is no such place. */
function withLeader(
  wish: CalloutWish,
  room: NearLines,
  taken: readonly Box[],
  leaders: readonly Line[],
): Callout | undefined {
  const { firm, soft } = room;
  return (
    besideThePart(wish, room, taken, leaders) ??
    besideThePart(wish, { ...room, firm: [], soft: [...firm, ...soft] }, taken, leaders)
  );
}

interface BoxedLine {
  readonly line: Line;
  readonly box: Box;
}

interface BoxedLines {
  readonly firm: readonly BoxedLine[];
  readonly soft: readonly BoxedLine[];
}

function boxed(line: Line): BoxedLine {
  const { from, to } = line;
  const box = {
    left: Math.min(from.x, to.x),
    right: Math.max(from.x, to.x),
    top: Math.min(from.y, to.y),
    bottom: Math.max(from.y, to.y),
  };
  return { line, box };
}

interface NearLines {
  readonly within: Box;
  readonly firm: readonly Line[];
  readonly soft: readonly Line[];
}

/** Without the lines that lie farther than that from all spots. */
function nearTo({ spots }: CalloutWish, within: Box, { firm, soft }: BoxedLines, reach: number): NearLines {
  const around = spots.map(({ x, y }) => grown({ left: x, right: x, top: y, bottom: y }, reach));
  const whole = unionOf(around);
  if (whole === undefined) return { within, firm: [], soft: [] };
  const near = (lines: readonly BoxedLine[]): readonly Line[] =>
    lines
      .filter(({ box }) => boxesOverlap(box, whole, 0.01) && around.some((each) => boxesOverlap(box, each, 0.01)))
      .map(({ line }) => line);
  return { within, firm: near(firm), soft: near(soft) };
}

function besideThePart(
  { id, words, spots }: CalloutWish,
  room: NearLines,
  taken: readonly Box[],
  leaders: readonly Line[],
): Callout | undefined {
  let best: Callout | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const { text, spot, reach, extra } of tries(words, spots)) {
    // A farther one costs at least its length.
    if (reach + extra >= least) continue;
    const half = textWidth(text, HEIGHT) / 2;
    for (let step = 0; step < BEARINGS; step++) {
      const angle = ((step + 0.5) / BEARINGS) * 2 * Math.PI;
      const centre = {
        x: spot.x + Math.cos(angle) * (reach + half * Math.abs(Math.cos(angle))),
        y: spot.y + Math.sin(angle) * reach,
      };
      const written = centredText({ role: 'mark', text, height: HEIGHT, runs: 'across' }, centre);
      const box = grown(textBox(written), MARGIN);
      if (!isWithin(box, room.within) || taken.some((other) => boxesOverlap(box, other))) continue;
      if (touchesAny(box, room.firm) || touchesAny(box, leaders)) continue;
      const end = rimOf(box, centre, spot);
      const leader: Line = { kind: 'line', role: 'leader', from: spot, to: end };
      if (taken.some((other) => crosses(leader, other)) || leaders.some((other) => linesCross(leader, other))) continue;
      const cost =
        reach +
        extra +
        4 * countCrossed(leader, room.firm) +
        1.5 * countCrossed(leader, room.soft) +
        3 * countTouched(box, room.soft) +
        CLOSE_COST * taken.filter((other) => crosses(leader, grown(other, CLOSE))).length;
      if (cost < least) {
        least = cost;
        best = { id, text: written, leader: [spot, end] };
      }
    }
  }
  return best;
}

function* tries(words: readonly string[], spots: readonly Point[]) {
  for (const [turn, spot] of spots.slice(0, MOST_SPOTS).entries()) {
    for (const [shorter, text] of words.entries()) {
      for (const reach of REACHES) yield { text, spot, reach, extra: turn + SHORTER_COST * shorter };
    }
  }
}

export function calloutPrimitives({ text, leader }: Callout): readonly Primitive[] {
  const [dot, end] = leader;
  if (dot === undefined || end === undefined) return [text];
  return [
    { kind: 'circle', role: 'leader', centre: dot, radius: DOT_MM, filled: true },
    { kind: 'line', role: 'leader', from: dot, to: end },
    text,
  ];
}

function leaderLines({ leader }: Callout): readonly Line[] {
  const [from, to] = leader;
  return from === undefined || to === undefined ? [] : [{ kind: 'line', role: 'leader', from, to }];
}

/** Where the way from the middle of a box to a point leaves it. */
function rimOf(box: Box, centre: Point, towards: Point): Point {
  const dx = towards.x - centre.x;
  const dy = towards.y - centre.y;
  const share = Math.min(
    dx === 0 ? 1 : (box.right - box.left) / 2 / Math.abs(dx),
    dy === 0 ? 1 : (box.bottom - box.top) / 2 / Math.abs(dy),
    1,
  );
  return { x: centre.x + dx * share, y: centre.y + dy * share };
}

function isWithin(inner: Box, outer: Box): boolean {
  return (
    outer.left <= inner.left && inner.right <= outer.right && outer.top <= inner.top && inner.bottom <= outer.bottom
  );
}

function touchesAny(box: Box, lines: readonly Line[]): boolean {
  return lines.some((each) => crosses(each, box));
}

function countTouched(box: Box, lines: readonly Line[]): number {
  return lines.reduce((count, each) => count + (crosses(each, box) ? 1 : 0), 0);
}

function countCrossed(leader: Line, lines: readonly Line[]): number {
  return lines.reduce((count, each) => count + (linesCross(leader, each) ? 1 : 0), 0);
}

function crosses({ from, to }: Line, box: Box): boolean {
  if (Math.max(from.x, to.x) <= box.left || Math.min(from.x, to.x) >= box.right) return false;
  if (Math.max(from.y, to.y) <= box.top || Math.min(from.y, to.y) >= box.bottom) return false;
  if (from.x === to.x || from.y === to.y) return true;
  // It passes the box where all corners lie on one side of it.
  const side = (x: number, y: number): number => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x);
  const corners = [
    side(box.left, box.top),
    side(box.right, box.top),
    side(box.left, box.bottom),
    side(box.right, box.bottom),
  ];
  return corners.some((each) => each > 0) && corners.some((each) => each < 0);
}

function linesCross(one: Line, other: Line): boolean {
  const side = (a: Point, b: Point, p: Point): number => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
  const isApart =
    Math.max(one.from.x, one.to.x) < Math.min(other.from.x, other.to.x) ||
    Math.max(other.from.x, other.to.x) < Math.min(one.from.x, one.to.x) ||
    Math.max(one.from.y, one.to.y) < Math.min(other.from.y, other.to.y) ||
    Math.max(other.from.y, other.to.y) < Math.min(one.from.y, one.to.y);
  if (isApart) return false;
  return (
    side(one.from, one.to, other.from) * side(one.from, one.to, other.to) < 0 &&
    side(other.from, other.to, one.from) * side(other.from, other.to, one.to) < 0
  );
}
