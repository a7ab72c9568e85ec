import { centredText, LETTER_HEIGHTS_MM, textBox, textDepth, textWidth } from './lettering.ts';
import type { LabelZone, MovedLabel, PlacedLabel } from './moved-labels.ts';
import { type Box, boxesOverlap, type Point } from './primitives.ts';

/**
 * Labels of parts deep inside a view, written beside the part with a short slanting leader: one that ran straight to the
 * edge of the view would be taken for an upright or a shelf. Knows paper only.
 */

/** Where such a label may stand: wholly inside one space, off everything else. */
export interface NearRoom {
  /** In order of preference. */
  readonly spaces: readonly { readonly space: Box; readonly avoid: readonly Box[] }[];
  /** Lettering that stands already. */
  readonly taken: readonly Box[];
}

const HEIGHT = LETTER_HEIGHTS_MM.small;
const DEPTH = textDepth(HEIGHT);
/** From the part to its lettering, along the leader's run and across it. */
const BESIDE = 3;
const SLANT = 3.2;
const MARGIN = 0.8;
const SHARES = [0.5, 0.3, 0.7, 0.15, 0.85, 0.07, 0.93];

export interface NearLabels {
  readonly zone: LabelZone;
  /** Those for which there was no room: they go to the edge of the view after all. */
  readonly rest: readonly MovedLabel[];
}

export function nearLabels(labels: readonly MovedLabel[], room: NearRoom): NearLabels {
  const placed: PlacedLabel[] = [];
  const taken = [...room.taken];
  const rest: MovedLabel[] = [];
  for (const label of labels) {
    const found = placeNear(label, room, taken);
    if (found === undefined) rest.push(label);
    else {
      placed.push(found);
      taken.push(textBox(found.text), leaderBox(found.leader));
    }
  }
  const boxes = placed.map(({ text }) => textBox(text));
  return { zone: { placed, boxes, depth: 0, leftOut: [] }, rest };
}

function placeNear(label: MovedLabel, room: NearRoom, taken: readonly Box[]): PlacedLabel | undefined {
  const both = [label.mark, label.name].filter((words) => words !== '').join('  ');
  for (const words of both === label.mark ? [both] : [both, label.mark]) {
    if (words === '') continue;
    for (const { space, avoid } of room.spaces) {
      for (const candidate of candidates(label, words)) {
        const box = textBox(candidate.text);
        const leader = leaderBox(candidate.leader);
        const free =
          isWithin(box, space) &&
          ![...taken, ...avoid].some((other) => boxesOverlap(box, other, MARGIN)) &&
          !taken.some((other) => boxesOverlap(leader, other));
        if (free) return candidate;
      }
    }
  }
  return undefined;
}

function* candidates({ id, box }: MovedLabel, words: string): Generator<PlacedLabel> {
  const half = textWidth(words, HEIGHT) / 2;
  const isUpright = box.right - box.left < box.bottom - box.top;
  for (const share of SHARES) {
    const dot = isUpright
      ? { x: (box.left + box.right) / 2, y: box.top + share * (box.bottom - box.top) }
      : { x: box.left + share * (box.right - box.left), y: (box.top + box.bottom) / 2 };
    for (const towards of [1, -1]) {
      for (const slant of [-1, 1]) {
        const edge = isUpright
          ? { x: (towards > 0 ? box.right : box.left) + towards * BESIDE, y: dot.y + slant * SLANT }
          : { x: dot.x + towards * BESIDE, y: (slant < 0 ? box.top : box.bottom) + slant * (DEPTH / 2 + 1.4) };
        const text = centredText(
          { role: 'name', text: words, height: HEIGHT, runs: 'across' },
          { x: edge.x + towards * half, y: edge.y },
        );
        yield { id, text, leader: [dot, { x: edge.x - towards * 0.6, y: edge.y }] };
      }
    }
  }
}

function leaderBox(points: readonly Point[]): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

function isWithin(inner: Box, outer: Box): boolean {
  return (
    outer.left + MARGIN <= inner.left &&
    inner.right + MARGIN <= outer.right &&
    outer.top + MARGIN <= inner.top &&
    inner.bottom + MARGIN <= outer.bottom
  );
}
