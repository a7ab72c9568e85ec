import type { Evaluation, Part } from '@fettle/engine';
import { cleanName, fitText, LETTER_HEIGHTS_MM, textWidth } from '../lettering.ts';
import { PEN_GROUPS } from '../line-types.ts';
import { type Box, boxAround, boxesOverlap, type Drawing, type Group, type Text } from '../primitives.ts';
import { INCH_SHEETS, METRIC_SHEETS, type Sheet } from '../scale.ts';
import { listed } from '../sections/describe-section.ts';
import type { ConvexCell } from '../shapes/convex-cell.ts';
import { extentOf, type PartCells } from '../shapes/part-cells.ts';
import { dot, plus, type Vector, vector } from '../shapes/vectors.ts';
import type { ViewDirection } from '../shapes/view-direction.ts';
import {
  capital,
  commonDrawing,
  commonWords,
  type DrawingName,
  errorWords,
  marksOf,
  messageSheet,
  overallWords,
  whyNotDrawn,
} from '../sheet-words.ts';
import { isInch } from '../shown-lengths.ts';
import { roomForView, type SheetWords, sheetFurniture } from '../title-block.ts';
import { composePlan, markView, movedPlan, type ViewPlan } from '../views/composed-view.ts';
import { onPaper } from '../views/on-paper.ts';
import { plainNotes } from '../views/plain-parts.ts';
import { viewedParts } from '../views/viewed-parts.ts';
import { movedExtent, movesThatShowAll } from './every-part-seen.ts';
import { explodedKey } from './exploded-key.ts';
import { paintingOrder } from './painting-order.ts';

/**
 * The piece come apart, seen from the front, the right and above; the same scale along all three axes (isometric, ISO
 * 5456-3, from memory). Never fails: what cannot be drawn is said on the sheet.
 */
export function explodedView(evaluation: Evaluation): Drawing {
  const inch = isInch(evaluation.design.units);
  const [small, large] = inch ? INCH_SHEETS : METRIC_SHEETS;
  if (small === undefined || large === undefined) throw new Error('two sheets are listed for either system of units');
  const piece = cleanName(evaluation.design.name);
  const { parts } = evaluation;
  const name: DrawingName = {
    id: 'exploded',
    words: 'Exploded view',
    description:
      parts.length === 0
        ? `Exploded view of ${piece}. Nothing is drawn yet.`
        : `Exploded view of ${piece === '' ? 'a piece without a name' : piece}, from the front, the right and above. Parts: ${listed(parts)}.`,
  };
  const lacking = whyNotDrawn(evaluation);
  if (lacking !== undefined) return messageSheet(evaluation, name, small, lacking);
  const apart = parts.filter(({ box }) => extentOf(box) !== undefined);
  if (apart.length === 0) return messageSheet(evaluation, name, small, ['Nothing is drawn yet: no part is known.']);
  const sheet = apart.length > FEW_PARTS ? large : small;
  const { left, right, top, bottom } = roomForView(sheet, 1);
  const moves = movesThatShowAll(apart, ISOMETRIC, { wide: right - left, high: bottom - top });
  return drawn(evaluation, name, sheet, apart, moves);
}

const FEW_PARTS = 14;
/** Around the parts, for their marks. */
const AROUND_MM = 9;
const HEIGHT = LETTER_HEIGHTS_MM.small;

const third = 1 / Math.sqrt(3);
const sixth = 1 / Math.sqrt(6);
const half = 1 / Math.sqrt(2);
const ISOMETRIC: ViewDirection = {
  right: vector(half, 0, half),
  up: vector(-sixth, 2 * sixth, sixth),
  towards: vector(third, third, -third),
};

function drawn(
  evaluation: Evaluation,
  name: DrawingName,
  sheet: Sheet,
  parts: readonly Part[],
  moves: ReadonlyMap<string, Vector>,
): Drawing {
  const farthestFirst = viewedParts({
    parts,
    from: ISOMETRIC,
    showsHidden: (_, isUnseen) => isUnseen,
    moved: (part, cells) => movedCells(cells, moves.get(part.id) ?? vector(0, 0, 0)),
  });
  const viewed = paintingOrder(
    farthestFirst.map(({ part }) => movedExtent(part, moves.get(part.id)) ?? { x: [0, 0], y: [0, 0], z: [0, 0] }),
  ).flatMap((at) => farthestFirst[at] ?? []);
  const areas = viewed.flatMap((each) => each.areas);
  const plan: ViewPlan = {
    viewed,
    from: ISOMETRIC,
    low: { u: Math.min(...areas.map(({ low }) => low.u)), v: Math.min(...areas.map(({ low }) => low.v)) },
    high: { u: Math.max(...areas.map(({ high }) => high.u)), v: Math.max(...areas.map(({ high }) => high.v)) },
    seenAs: 'edge',
    chains: { left: [], right: [], above: [], below: [] },
    standsOnFloor: false,
    wordsOf: (part) => [cleanName(part.mark)],
    mayGoWithout: () => false,
  };
  const room = roomForView(sheet, 1);
  const key = keyAt(explodedKey(parts), room.left, room.top + 3, (room.right - room.left) * 0.3);
  const { factor, left } = roomBeside(plan, room, key.box);
  const [, fine] = PEN_GROUPS;
  const pens = fine ?? { wide: 0.25, narrow: 0.13 };
  const marked = markView(plan, factor);
  const wishes = { roomWide: 0, roomHigh: 0, mostLanes: 0, figures: 'along' } as const;
  const composed = composePlan(plan, evaluation.design.units, factor, pens, wishes, marked);
  const { extent } = composed;
  const placed = movedPlan(
    composed,
    (left + room.right - extent.left - extent.right) / 2,
    (room.top + room.bottom - extent.top - extent.bottom) / 2,
  );
  const unseen = viewed.filter(({ seen }) => seen.length === 0).map(({ part }) => part);
  const errors = errorWords(evaluation);
  const words: SheetWords = {
    ...commonWords(evaluation, name),
    scale: 'none',
    overall: overallWords(evaluation),
    notes: [
      [
        'Isometric, not to scale.',
        ...(unseen.length === 0 ? [] : [`Dashed, behind other parts: ${marksOf(unseen)}.`]),
        ...plainNotes(parts),
        ...composed.notes,
      ].join(' '),
    ],
    warnings: errors === undefined ? [] : [`${capital(errors)}.`],
  };
  const [frame, ...rest] = sheetFurniture(sheet, words);
  return {
    ...commonDrawing(evaluation, name, sheet),
    pens,
    focus: placed.extent,
    isDense: true,
    content: [...(frame === undefined ? [] : [frame]), ...placed.groups, key.group, ...rest],
  };
}

/** The view begins as far to the left as it can without coming under the key. */
function roomBeside(plan: ViewPlan, room: Box, key: Box): { readonly factor: number; readonly left: number } {
  const outlines = plan.viewed.flatMap(({ areas }) => areas.map(({ outline }) => outline));
  const [wide, high] = [plan.high.u - plan.low.u, plan.high.v - plan.low.v];
  for (let left = room.left; ; left += 5) {
    const isBeside = left > key.right + 3;
    const factor = Math.min(
      (room.right - left - 2 * AROUND_MM) / wide,
      (room.bottom - room.top - 2 * AROUND_MM) / high,
    );
    const x = (left + room.right) / 2 - ((plan.low.u + plan.high.u) / 2) * factor;
    const y = (room.top + room.bottom) / 2 + ((plan.low.v + plan.high.v) / 2) * factor;
    const isClear = outlines.every((outline) => {
      const box = boxAround(outline.map((point) => onPaper(point, { factor, x, y })));
      return !boxesOverlap(box, key, AROUND_MM);
    });
    if (isBeside || isClear) return { factor, left };
  }
}

function movedCells({ cells, bores }: PartCells, by: Vector): PartCells {
  return {
    cells: cells.map(
      ({ faces }): ConvexCell => ({
        faces: faces.map(({ normal, offset, ring }) => ({
          normal,
          offset: offset + dot(normal, by),
          ring: ring.map((corner) => plus(corner, by)),
        })),
      }),
    ),
    bores,
  };
}

function keyAt(lines: readonly string[], left: number, top: number, widest: number) {
  const cut = lines.map((words) => fitText(words, HEIGHT, widest) ?? '');
  const children = cut.map(
    (text, at): Text => ({
      kind: 'text',
      role: 'note',
      text,
      at: { x: left, y: top + at * 4.2 },
      height: HEIGHT,
      anchor: 'start',
      runs: 'across',
    }),
  );
  const group: Group = { kind: 'group', id: 'key', name: 'key', children };
  const width = Math.max(0, ...cut.map((words) => textWidth(words, HEIGHT)));
  return { group, box: { left, right: left + width, top: top - 3, bottom: top + cut.length * 4.2 } };
}
