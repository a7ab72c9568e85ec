import type { Evaluation } from '@fettle/engine';
import { laneBoxes, layLanes } from '../dimension-lanes.ts';
import { laneGroups } from '../lane-groups.ts';
import { cleanName, fitText, LETTER_HEIGHTS_MM, linesOf, textBox, textWidth } from '../lettering.ts';
import type { LineRole } from '../line-types.ts';
import type { Projection } from '../parts-in-view.ts';
import {
  type Arrow,
  type Box,
  boxesOverlap,
  type Group,
  type Point,
  type Primitive,
  type Text,
} from '../primitives.ts';
import type { Scale } from '../scale.ts';
import { partCells } from '../shapes/part-cells.ts';
import type { Stretch } from '../shapes/seen-edges.ts';
import type { Flat, ViewDirection } from '../shapes/view-direction.ts';
import { figureOnSheet, isInch, realMm } from '../shown-lengths.ts';
import { paperLine } from '../views/composed-view.ts';
import { onPaper } from '../views/on-paper.ts';
import { type ViewedPart, viewedParts } from '../views/viewed-parts.ts';
import type { AlikeParts } from './alike-parts.ts';
import { boreLines } from './bore-lines.ts';
import { cutWords, edgingWords, fixingWords, headWords, sizeWords } from './cut-words.ts';
import { edgeDirection, faceDirection, type PartFrame } from './part-frame.ts';
import {
  nameOfBase,
  placesAlong,
  RUNNING_PITCH,
  roomForBase,
  runningBelow,
  runningFigures,
  runningLeft,
} from './running-dimensions.ts';

/** One part in its room on a sheet: head, face, edge, running dimensions from its end and its edge, and its cuts in words. */

export interface PartBlock {
  readonly group: Group;
  /** As wide as its room, as high as what stands in it. */
  readonly box: Box;
  readonly roles: ReadonlySet<LineRole>;
  readonly leftOut: number;
}

const HEIGHT = LETTER_HEIGHTS_MM.small;
const LINE = 4.1;
/** What does not fit into one line goes on in the next, so much further in. */
const HANGING = 3;
/** Above the face: the overall length; to its right: the overall width. */
const OVERALL = 8;
/** Where the figure of the length stands above its line because it is longer than the part. */
const OVERALL_FAR = 12;
/** Between face and edge. */
const BETWEEN = 5;

export function partBlock(alike: AlikeParts, evaluation: Evaluation, room: Box, scales: readonly Scale[]): PartBlock {
  const { frame } = alike;
  const { units } = evaluation.design;
  const { part } = frame;
  const edging = edgingWords(frame, units);
  const head = [...rowsOf(headWords(alike), room, 'name'), ...rowsOf(sizeWords(frame, units), room, 'note')];
  const rows = [
    ...cutWords(alike, evaluation),
    ...fixingWords(alike, evaluation),
    ...(edging === undefined ? [] : [edging]),
  ].flatMap((words) => rowsOf(words, room, 'note'));
  const along = placesAlong(frame, 'along');
  const across = placesAlong(frame, 'across');
  const figures = { along: runningFigures(along, units), across: runningFigures(across, units) };
  const size = {
    wide: realMm(frame.size.along),
    high: realMm(frame.size.across),
    thick: realMm(frame.size.thin),
  };
  // A maker marks out from the left: where the end that is measured from lies to the right, its name stands there.
  const startsLeft = faceDirection(frame).right[frame.along] > 0;
  const saysEnd = !startsLeft && along.length > 0;
  const endRoom = saysEnd ? roomForBase(frame.endWords) : 0;
  const margins = {
    left: across.length === 0 ? 4 : 8 + longestOf(figures.across),
    right: Math.max(
      endRoom + 2,
      8 + Math.max(...[frame.size.thin, frame.size.across].map((each) => longestOf([figureOnSheet(each, units)]))),
    ),
    top: (head.length + 1) * LINE + OVERALL,
    bottom: (along.length === 0 ? 3 : 7 + longestOf(figures.along)) + 5 + rows.length * LINE,
  };
  const free = {
    wide: room.right - room.left - margins.left - margins.right,
    high: room.bottom - room.top - margins.top - margins.bottom - BETWEEN,
  };
  const scale =
    scales.find(
      ({ denominator }) => size.wide / denominator <= free.wide && (size.high + size.thick) / denominator <= free.high,
    ) ?? scales[scales.length - 1];
  const factor = 1 / (scale?.denominator ?? 1);
  const isNarrow = textWidth(figureOnSheet(frame.size.along, units), HEIGHT) + 1.4 > size.wide * factor;
  // Seen from the edge at its foot, a face has that view below it in third angle and above it in first angle.
  const isThirdAngle = isInch(units);
  // Beside a low face with many figures there is room left over above it.
  const wantedHigh = across.length * RUNNING_PITCH;
  const spare = Math.max(0, free.high - (size.high + size.thick) * factor);
  const lowered = Math.min(spare, Math.max(0, wantedHigh - size.high * factor - 6)) / 2;
  const top = room.top + margins.top + (isNarrow ? OVERALL_FAR - OVERALL : 0) + lowered;
  const left = room.left + margins.left + (free.wide - size.wide * factor) / 2;
  const [high, thick] = [size.high * factor, size.thick * factor];
  const face = box(left, isThirdAngle ? top : top + thick + BETWEEN, size.wide * factor, high);
  const edge = box(left, isThirdAngle ? top + high + BETWEEN : top, size.wide * factor, thick);
  const foot = Math.max(face.bottom, edge.bottom);
  const faced = drawnView(frame, faceDirection(frame), face, factor);
  const edged = drawnView(frame, edgeDirection(frame), edge, factor);
  const base = startsLeft ? edge.left : edge.right;
  const below = runningBelow(along, figures.along, {
    edge: foot,
    base,
    way: startsLeft ? 1 : -1,
    factor,
    low: lowered > 0 ? Math.max(room.left + 2, face.left - 3) : room.left + 2,
    high: room.right - 2 - endRoom,
  });
  const beside = runningLeft(across, figures.across, {
    edge: face.left,
    base: face.bottom,
    way: -1,
    factor,
    low: face.top - 5 - lowered,
    high: foot + 1 + lowered,
  });
  const overall = overallLanes(frame, face, edge, top, units);
  const end = saysEnd ? [nameOfBase(frame.endWords, { edge: foot, base }, below.boxes, overall.boxes)] : [];
  const firstRow = foot + Math.max(along.length === 0 ? 3 : below.depth, lowered) + 5 + HEIGHT;
  const texts: Text[] = [
    ...head.map((row, at) => writtenRow(row, room, room.top + (at + 1) * LINE)),
    written(
      `${frame.faceWords}; measured from ${frame.endWords} and ${frame.edgeWords}; 1 : ${scale?.denominator ?? 1}`,
      room,
      room.top + (head.length + 1) * LINE,
      'caption',
    ),
    ...rows.map((row, at) => writtenRow(row, room, firstRow + at * LINE)),
  ];
  const lines = [...faced.lines, ...edged.lines];
  const arrow = grainArrow(frame, face, lines.filter(isLine));
  const children: Primitive[] = [
    ...[face, edge].map((area): Primitive => ({ kind: 'rectangle', surface: 'wood', box: area })),
    ...lines,
    ...(arrow === undefined ? [] : [arrow]),
    ...below.primitives,
    ...beside.primitives,
    ...overall.primitives,
    ...end,
    ...texts,
  ];
  return {
    group: {
      kind: 'group',
      id: `part-${part.id}`,
      name: `part ${part.role}`,
      part: { id: part.id, origin: part.origin, label: `${cleanName(part.label)}, mark ${cleanName(part.mark)}` },
      children,
    },
    box: { ...room, bottom: firstRow - HEIGHT + rows.length * LINE + 1 },
    roles: new Set([
      ...lines.filter(isLine).map(({ role }) => role),
      ...(arrow === undefined ? [] : ['grain' as const]),
    ]),
    leftOut: below.leftOut + beside.leftOut,
  };
}

function isLine(primitive: Primitive): primitive is Extract<Primitive, { kind: 'line' }> {
  return primitive.kind === 'line';
}

function longestOf(figures: readonly string[]): number {
  return Math.max(0, ...figures.map((text) => textBox(written(text, { left: 0, right: 999 }, 0, 'figure')).right));
}

function box(left: number, top: number, wide: number, high: number): Box {
  return { left, top, right: left + wide, bottom: top + high };
}

interface Row {
  readonly words: string;
  readonly role: Text['role'];
  readonly isHanging: boolean;
}

function rowsOf(words: string, room: Box, role: Text['role']): readonly Row[] {
  const lines = linesOf(words, HEIGHT, room.right - room.left, HANGING);
  return lines.map((line, at) => ({ words: line, role, isHanging: at > 0 }));
}

function writtenRow({ words, role, isHanging }: Row, { left, right }: Box, y: number): Text {
  return written(words, { left: isHanging ? left + HANGING : left, right }, y, role);
}

function written(words: string, room: Pick<Box, 'left' | 'right'>, y: number, role: Text['role']): Text {
  const text = fitText(words, HEIGHT, room.right - room.left) ?? '';
  return { kind: 'text', role, text, at: { x: room.left, y }, height: HEIGHT, anchor: 'start', runs: 'across' };
}

/** The part alone, as wide lines and dashes, filling a box on paper. */
function drawnView(frame: PartFrame, from: ViewDirection, on: Box, factor: number) {
  const [viewed] = viewedParts({ parts: [frame.part], from, showsHidden: () => true });
  if (viewed === undefined || viewed.areas.length === 0) return { lines: [] };
  const low = lowOf(viewed);
  const to: Projection = { factor, x: on.left - low.u * factor, y: on.bottom + low.v * factor };
  const drawn = (list: readonly Stretch[], role: LineRole): Primitive[] =>
    list.map((stretch) => paperLine(stretch, role, to));
  const bores = boreLines(partCells(frame.part).bores, frame.part, from).map((bore): Primitive => {
    if (bore.kind === 'line') return paperLine(bore, bore.role, to);
    const centre: Point = onPaper(bore.centre, to);
    return { kind: 'circle', role: bore.role, centre, radius: bore.radius * factor, filled: false };
  });
  return { lines: [...drawn(viewed.hidden, 'hidden'), ...drawn(viewed.seen, 'edge'), ...bores] };
}

function lowOf({ areas }: ViewedPart): Flat {
  return { u: Math.min(...areas.map(({ low }) => low.u)), v: Math.min(...areas.map(({ low }) => low.v)) };
}

function overallLanes(
  frame: PartFrame,
  face: Box,
  edge: Box,
  top: number,
  units: Evaluation['design']['units'],
): { readonly primitives: readonly Primitive[]; readonly boxes: readonly Box[] } {
  const lane = (side: 'above' | 'right', of: Box, id: string, length: PartFrame['size']['along']) => {
    const isLying = side === 'above';
    const [from, to] = isLying ? [of.left, of.right] : [of.top, of.bottom];
    const lanes = layLanes([{ id, caption: '', stretches: [{ from, to, figure: figureOnSheet(length, units) }] }], {
      side,
      edge: isLying ? of.top : of.right,
      clear: 1.2,
      low: from - 12,
      high: to + 12,
      figures: isLying ? 'along' : 'lying',
    });
    const boxes = laneBoxes(lanes);
    return { primitives: laneGroups(side, lanes, boxes).flatMap(({ children }) => children), boxes };
  };
  const lanes = [
    lane('above', { ...face, top }, 'length', frame.size.along),
    lane('right', face, 'width', frame.size.across),
    lane('right', edge, 'thickness', frame.size.thin),
  ];
  return {
    primitives: lanes.flatMap(({ primitives }) => primitives),
    boxes: lanes.flatMap(({ boxes }) => boxes),
  };
}

const ARROW_MM = 12;
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8];

/** Where it crosses no line, if there is such a place. */
function grainArrow(
  { part }: PartFrame,
  face: Box,
  lines: readonly Extract<Primitive, { kind: 'line' }>[],
): Arrow | undefined {
  const length = Math.min(ARROW_MM, (face.right - face.left) * 0.4);
  if (part.grain === 'none' || length < 3 || face.bottom - face.top < 2) return undefined;
  for (const down of SHARES) {
    for (const over of SHARES) {
      const x = face.left + over * (face.right - face.left);
      const y = face.top + down * (face.bottom - face.top);
      const area = { left: x - length / 2 - 0.5, right: x + length / 2 + 0.5, top: y - 1, bottom: y + 1 };
      const isFree = !lines.some(({ from, to }) =>
        boxesOverlap(area, {
          left: Math.min(from.x, to.x),
          right: Math.max(from.x, to.x) + 0.01,
          top: Math.min(from.y, to.y),
          bottom: Math.max(from.y, to.y) + 0.01,
        }),
      );
      if (isFree) {
        return {
          kind: 'arrow',
          role: 'grain',
          from: { x: x - length / 2, y },
          to: { x: x + length / 2, y },
          heads: 'both',
          headLength: 1.6,
        };
      }
    }
  }
  return undefined;
}
