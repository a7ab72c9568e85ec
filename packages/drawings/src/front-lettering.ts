import { centredText, fitText, LETTER_HEIGHTS_MM, textBox, textDepth, textWidth } from './lettering.ts';
import { type Arrow, type Box, boxesOverlap, grown, type Text, type TextRole, unionOf } from './primitives.ts';

/**
 * Lettering inside the outline of a part: its name and mark as large as they fit, its grain arrow where there is room.
 * Knows paper only.
 */

export interface Lettering {
  readonly texts: readonly Text[];
  readonly box: Box;
}

interface Words {
  readonly role: TextRole;
  readonly text: string;
  readonly height: number;
}

const MARGIN = 0.7;
const BETWEEN_LINES = 0.6;
const { small, normal } = LETTER_HEIGHTS_MM;

/** An arrow shorter than this is hardly seen: lettering gives way to it if it can. */
const GOOD_ARROW = 4;

export interface Inside {
  /** Absent if not even the mark fits. */
  readonly lettering?: Lettering;
  /** Absent if no grain is asked for, or there is no room. */
  readonly arrow?: Arrow;
}

/**
 * Name, mark and grain arrow inside a box. Lettering is tried in turn: name over mark, both in one line, the same
 * upwards, a cut name, the mark alone; the first that leaves room for a good arrow, else the first that fits. It keeps
 * off the lines in `avoid` where it can, and off what is in `taken` if there is any place that does.
 */
export function letteringInside(
  box: Box,
  name: string,
  mark: string,
  grain: 'x' | 'y' | undefined,
  avoid: readonly Box[],
  taken: readonly Box[] = [],
): Inside {
  const room = grown(box, -MARGIN);
  let first: Inside | undefined;
  /** Of use only where nothing else fits. */
  let covering: Inside | undefined;
  for (const [lines, runs, isCut] of candidates(name, mark, room)) {
    const longest = Math.max(...lines.map((words) => textWidth(words.text, words.height)));
    const deep = lines.reduce((sum, words) => sum + textDepth(words.height), (lines.length - 1) * BETWEEN_LINES);
    const width = runs === 'across' ? longest : deep;
    const height = runs === 'across' ? deep : longest;
    if (width > room.right - room.left || height > room.bottom - room.top) continue;
    // A shorter name or none at all is too much to pay for a longer arrow.
    if (isCut && first !== undefined) break;
    const lettering = stacked(lines, runs, placeFor(room, height, width, avoid, taken), deep);
    const arrow = grain === undefined ? undefined : grainArrow(box, grain, [lettering.box, ...taken]);
    const inside: Inside = arrow === undefined ? { lettering } : { lettering, arrow };
    if (taken.some((other) => boxesOverlap(lettering.box, other))) {
      covering ??= inside;
      continue;
    }
    if (grain === undefined || (arrow !== undefined && arrowLength(arrow) >= GOOD_ARROW)) return inside;
    first ??= inside;
  }
  const best = first ?? covering;
  if (best !== undefined) return best;
  const arrow = grain === undefined ? undefined : grainArrow(box, grain, taken);
  return arrow === undefined ? {} : { arrow };
}

function* candidates(
  name: string,
  mark: string,
  room: Box,
): Generator<readonly [lines: readonly Words[], runs: Text['runs'], isCut: boolean]> {
  const width = room.right - room.left;
  const height = room.bottom - room.top;
  const both = [mark, name].filter((words) => words !== '').join('  ');
  const one = (text: string, size: number): Words[] => [{ role: 'name', text, height: size }];
  if (name !== '' && mark !== '') {
    for (const size of [normal, small]) {
      const under: Words = { role: 'mark', text: mark, height: small };
      yield [[{ role: 'name', text: name, height: size }, under], 'across', false];
    }
  }
  if (both !== '') {
    yield [one(both, normal), 'across', false];
    yield [one(both, small), 'across', false];
    if (width < height) {
      yield [one(both, normal), 'upwards', false];
      yield [one(both, small), 'upwards', false];
    }
    const least = Array.from(mark).length + 6;
    const along = fitText(both, small, width, least);
    const upwards = fitText(both, small, height, least);
    if (along !== undefined) yield [one(along, small), 'across', true];
    if (upwards !== undefined && width < height) yield [one(upwards, small), 'upwards', true];
  }
  if (mark !== '') {
    const alone: Words[] = [{ role: 'mark', text: mark, height: small }];
    yield [alone, 'across', true];
    yield [alone, 'upwards', true];
  }
}

/** Of the way from the middle to the upper or lower edge. */
const MIDDLING_SHARES = [0, -0.25, 0.25, -0.45, 0.45, -0.7, 0.7];

/**
 * The middle of the room, or the nearest height at which a block of this size touches nothing it should avoid; where
 * something is taken in the middle, beside it.
 */
function placeFor(room: Box, height: number, width: number, avoid: readonly Box[], taken: readonly Box[]) {
  const spare = { x: (room.right - room.left - width) / 2, y: (room.bottom - room.top - height) / 2 };
  const middle = { x: (room.left + room.right) / 2, y: (room.top + room.bottom) / 2 };
  for (const kept of [[...avoid, ...taken], taken]) {
    // Close to the outline only where there is no other place.
    for (const shares of [MIDDLING_SHARES, [-1, 1]]) {
      for (const across of taken.length === 0 ? [0] : [0, -0.5, 0.5, -0.9, 0.9]) {
        for (const share of shares) {
          const x = middle.x + across * spare.x;
          const y = middle.y + share * spare.y;
          const block = { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
          if (!kept.some((other) => boxesOverlap(block, other, MARGIN))) return { x, y };
        }
      }
    }
  }
  return middle;
}

function arrowLength(arrow: Arrow): number {
  return Math.hypot(arrow.to.x - arrow.from.x, arrow.to.y - arrow.from.y);
}

function stacked(
  lines: readonly Words[],
  runs: Text['runs'],
  centre: { readonly x: number; readonly y: number },
  deep: number,
): Lettering {
  let cursor = (runs === 'across' ? centre.y : centre.x) - deep / 2;
  const texts = lines.map((words) => {
    const middle = cursor + textDepth(words.height) / 2;
    cursor += textDepth(words.height) + BETWEEN_LINES;
    return centredText({ ...words, runs }, runs === 'across' ? { x: centre.x, y: middle } : { x: middle, y: centre.y });
  });
  return { texts, box: unionOf(texts.map(textBox)) ?? { left: 0, top: 0, right: 0, bottom: 0 } };
}

const ARROW_LENGTHS = [12, 9, 6, 4, 2.6, 1.8];
const HEAD = 1.5;

/**
 * A double arrow along the grain, below its lettering, else beside it or above it, as long as fits up to 12 mm;
 * undefined if there is no room for 1.8 mm.
 */
function grainArrow(box: Box, along: 'x' | 'y', taken: readonly Box[]): Arrow | undefined {
  const room = grown(box, -MARGIN);
  for (const length of ARROW_LENGTHS) {
    const head = Math.min(HEAD, length / 3);
    const halfX = along === 'x' ? length / 2 : head / 2;
    const halfY = along === 'y' ? length / 2 : head / 2;
    const deep = along === 'y' ? length : head;
    // Below the lettering first: what else is taken may lie far from it.
    const [below, ...besides] = arrowPlaces(room, taken[0], deep);
    const places = [...(below === undefined ? [] : [below]), ...arrowPlaces(room, unionOf(taken), deep), ...besides];
    for (const centre of places) {
      const arrowBox = {
        left: centre.x - halfX,
        right: centre.x + halfX,
        top: centre.y - halfY,
        bottom: centre.y + halfY,
      };
      const inside =
        room.left <= arrowBox.left &&
        arrowBox.right <= room.right &&
        room.top <= arrowBox.top &&
        arrowBox.bottom <= room.bottom;
      if (!inside || taken.some((other) => boxesOverlap(arrowBox, other, MARGIN))) continue;
      return {
        kind: 'arrow',
        role: 'grain',
        from: along === 'x' ? { x: arrowBox.left, y: centre.y } : { x: centre.x, y: arrowBox.bottom },
        to: along === 'x' ? { x: arrowBox.right, y: centre.y } : { x: centre.x, y: arrowBox.top },
        heads: 'both',
        headLength: head,
      };
    }
  }
  return undefined;
}

export function arrowBox(arrow: Arrow): Box {
  const half = arrow.headLength / 2;
  return {
    left: Math.min(arrow.from.x, arrow.to.x) - (arrow.from.y === arrow.to.y ? 0 : half),
    right: Math.max(arrow.from.x, arrow.to.x) + (arrow.from.y === arrow.to.y ? 0 : half),
    top: Math.min(arrow.from.y, arrow.to.y) - (arrow.from.x === arrow.to.x ? 0 : half),
    bottom: Math.max(arrow.from.y, arrow.to.y) + (arrow.from.x === arrow.to.x ? 0 : half),
  };
}

function* arrowPlaces(
  room: Box,
  lettering: Box | undefined,
  height: number,
): Generator<{ readonly x: number; readonly y: number }> {
  const x = (room.left + room.right) / 2;
  const y = (room.top + room.bottom) / 2;
  if (lettering === undefined) {
    yield { x, y };
    return;
  }
  yield { x, y: Math.min((lettering.bottom + room.bottom) / 2, lettering.bottom + 3 + height / 2) };
  yield { x: (lettering.right + room.right) / 2, y: (lettering.top + lettering.bottom) / 2 };
  yield { x: (room.left + lettering.left) / 2, y: (lettering.top + lettering.bottom) / 2 };
  yield { x, y: (room.top + lettering.top) / 2 };
}
