import { evenly } from './dimension-lanes.ts';
import { centredText, fitText, LETTER_HEIGHTS_MM, textBox, textDepth, textDescent, textWidth } from './lettering.ts';
import type { Box, Point, Text } from './primitives.ts';
import { spread } from './spread.ts';

/**
 * Labels of parts too small to hold them: in a row above the view or in a column beside it, each with a leader that
 * ends in a dot on its part. Knows paper only.
 */

export interface MovedLabel {
  readonly id: string;
  readonly mark: string;
  readonly name: string;
  /** The part on paper. */
  readonly box: Box;
}

export interface PlacedLabel {
  readonly id: string;
  readonly text: Text;
  /** From the dot on the part to the text. */
  readonly leader: readonly Point[];
}

export interface LabelZone {
  readonly placed: readonly PlacedLabel[];
  readonly boxes: readonly Box[];
  /** How far from the view the zone reaches; zero when it is empty. */
  readonly depth: number;
  /** Ids of those for which there was no room. */
  readonly leftOut: readonly string[];
}

const HEIGHT = LETTER_HEIGHTS_MM.small;
const DEPTH = textDepth(HEIGHT);
/** From the view to the bend of a leader, and on to the lettering. */
const BEND = 1.5;
const CLEAR = 4.5;
const LONGEST = 32;
/** Farther than this from its part a full label is shortened to its mark. */
const FARTHEST_MOVE = 30;

const NOTHING: LabelZone = { placed: [], boxes: [], depth: 0, leftOut: [] };

/** A column to the left or right of `view`, figures between `low` and `high`. */
export function labelColumn(
  labels: readonly MovedLabel[],
  side: 'left' | 'right',
  view: Box,
  low: number,
  high: number,
): LabelZone {
  if (labels.length === 0) return NOTHING;
  const sorted = [...labels].sort((a, b) => middleY(a.box) - middleY(b.box));
  const pitch = DEPTH + 0.4;
  const kept = evenly(sorted, Math.max(0, Math.floor((high - low) / pitch)));
  const middles = spread(
    kept.map((label) => ({ centre: middleY(label.box), size: pitch })),
    low,
    high,
  );
  const outward = side === 'right' ? 1 : -1;
  const edge = side === 'right' ? view.right : view.left;
  let widest = 0;
  const placed = kept.map((label, at): PlacedLabel => {
    const words = wordsOf(label);
    const y = middles[at] ?? 0;
    const width = textWidth(words, HEIGHT);
    widest = Math.max(widest, width);
    const text: Text = {
      ...centredText({ role: 'name', text: words, height: HEIGHT, runs: 'across' }, { x: edge + outward * CLEAR, y }),
      anchor: side === 'right' ? 'start' : 'end',
    };
    const inset = Math.min(3, (label.box.right - label.box.left) / 4);
    const dot = {
      x: side === 'right' ? label.box.right - inset : label.box.left + inset,
      y: middleY(label.box),
    };
    const bend = { x: edge + outward * BEND, y: dot.y };
    return { id: label.id, text, leader: [dot, bend, { x: edge + outward * (CLEAR - 0.7), y }] };
  });
  return zone(placed, sorted, CLEAR + widest + 1);
}

/** A row above `view`: full labels if they stay near, else marks, else marks turned upwards. */
export function labelRow(labels: readonly MovedLabel[], view: Box, top: number, low: number, high: number): LabelZone {
  if (labels.length === 0) return NOTHING;
  const sorted = [...labels].sort((a, b) => middleX(a.box) - middleX(b.box));
  for (const words of [wordsOf, (label: MovedLabel) => label.mark]) {
    const sizes = sorted.map((label) => textWidth(words(label), HEIGHT) + 1.6);
    if (sizes.reduce((sum, size) => sum + size, 0) > high - low) continue;
    const middles = spread(
      sorted.map((label, at) => ({ centre: middleX(label.box), size: sizes[at] ?? 0 })),
      low,
      high,
    );
    const farthest = Math.max(...sorted.map((label, at) => Math.abs((middles[at] ?? 0) - middleX(label.box))));
    if (farthest > FARTHEST_MOVE) continue;
    return zone(
      sorted.map((label, at) => rowLabel(label, words(label), middles[at] ?? 0, view, top, 'across')),
      sorted,
      view.top - top + CLEAR + DEPTH + 0.6,
    );
  }
  const pitch = DEPTH + 0.4;
  const kept = evenly(sorted, Math.max(0, Math.floor((high - low) / pitch)));
  const middles = spread(
    kept.map((label) => ({ centre: middleX(label.box), size: pitch })),
    low,
    high,
  );
  const deepest = Math.max(0, ...kept.map((label) => textWidth(label.mark, HEIGHT)));
  return zone(
    kept.map((label, at) => rowLabel(label, label.mark, middles[at] ?? 0, view, top, 'upwards')),
    sorted,
    view.top - top + CLEAR + deepest + 0.6,
  );
}

function rowLabel(
  label: MovedLabel,
  words: string,
  x: number,
  view: Box,
  top: number,
  runs: Text['runs'],
): PlacedLabel {
  const foot = top - CLEAR;
  const deep = runs === 'across' ? DEPTH : textWidth(words, HEIGHT);
  const text = centredText({ role: 'name', text: words, height: HEIGHT, runs }, { x, y: foot - deep / 2 });
  const dot = {
    x: middleX(label.box),
    y: label.box.top + Math.min(3, (label.box.bottom - label.box.top) / 4),
  };
  const end = { x, y: runs === 'across' ? foot - textDescent(HEIGHT) + 0.9 : foot + 0.5 };
  return { id: label.id, text, leader: [dot, { x: dot.x, y: Math.min(view.top, top) - BEND }, end] };
}

function zone(placed: readonly PlacedLabel[], all: readonly MovedLabel[], depth: number): LabelZone {
  const known = new Set(placed.map((label) => label.id));
  return {
    placed,
    boxes: placed.map((label) => textBox(label.text)),
    depth,
    leftOut: all.filter((label) => !known.has(label.id)).map((label) => label.id),
  };
}

function wordsOf(label: MovedLabel): string {
  const both = [label.mark, label.name].filter((words) => words !== '').join('  ');
  return fitText(both, HEIGHT, LONGEST) ?? label.mark;
}

function middleX(box: Box): number {
  return (box.left + box.right) / 2;
}

function middleY(box: Box): number {
  return (box.top + box.bottom) / 2;
}
