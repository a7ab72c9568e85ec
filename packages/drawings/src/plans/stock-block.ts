import {
  byEachOther,
  type LaidArea,
  type LaidPiece,
  type LaidRun,
  type LaidStock,
  type NumberedCut,
  type Units,
} from '@fettle/engine';
import { centredText, cleanName, fitText, LETTER_HEIGHTS_MM, textBox, textWidth } from '../lettering.ts';
import { type Box, boxesOverlap, type Group, grown, type Point, type Primitive, type Text } from '../primitives.ts';
import { figureOnSheet, realMm } from '../shown-lengths.ts';
import { markOf, type Unsaid } from './beside-list.ts';

/** One sheet or board, its grain lying across the page: its pieces with mark and size, what is left over, and the cuts. */

/** Above the stock: its name and size. Below it: room for the numbers of cuts. */
export const BLOCK_HEAD = 8;
export const BLOCK_FOOT = 8;

const HEIGHT = LETTER_HEIGHTS_MM.small;
/** From one line of lettering to the next. */
const LINE = 4;
const RADIUS = 2.6;
const GRAIN_LONG = 22;
/** Above a short board the arrow stands beside the words, not on them. */
const BESIDE_HEAD = 4;
/** How far the outline of a blank lies outside it, so that it is seen beside the edges of its pieces. */
const RUN_OUTLINE = 0.35;

interface Place {
  readonly left: number;
  readonly top: number;
  /** Paper over real. */
  readonly factor: number;
}

export interface StockBlock {
  readonly group: Group;
  /** How far it reaches. */
  readonly box: Box;
  /** What has no room on it. */
  readonly unsaid: Unsaid;
}

export function stockBlock(laid: LaidStock, cuts: readonly NumberedCut[], units: Units, place: Place): StockBlock {
  const top = place.top + BLOCK_HEAD;
  const onPaper = ({ along, across, length, width }: LaidArea): Box => {
    const left = place.left + realMm(along) * place.factor;
    const upper = top + realMm(across) * place.factor;
    return {
      left,
      top: upper,
      right: left + realMm(length) * place.factor,
      bottom: upper + realMm(width) * place.factor,
    };
  };
  const whole = onPaper({
    along: laid.length.minus(laid.length),
    across: laid.length.minus(laid.length),
    length: laid.length,
    width: laid.width,
  });
  const pieces = laid.pieces.map((piece, at) => pieceGroup(piece, onPaper(piece), `${laid.number}-${at}`, units));
  const offcuts = laid.offcuts.flatMap((offcut) => offcutMarks(offcut, onPaper(offcut), units));
  const runs = laid.runs.map((run) => runOutline(run, onPaper(run), `${laid.number}-${run.name}`));
  const head = heading(laid, units, place, whole);
  const grainTo = Math.max(whole.right, textBox(head).right + BESIDE_HEAD + GRAIN_LONG);
  const grain = grainArrow(grainTo, place.top);
  const taken = [...pieces.flatMap(({ children }) => children), ...offcuts, head].flatMap((each) =>
    each.kind === 'text' ? [textBox(each)] : [],
  );
  taken.push({ left: grainTo - GRAIN_LONG, top: place.top + 3, right: grainTo, bottom: place.top + 6 });
  const named = new Set(laid.parted.map(({ name }) => name));
  const marked = cuts.map((each) => cutMark(each, named, onPaper, taken));
  const group: Group = {
    kind: 'group',
    id: `stock-${laid.number}`,
    name: 'stock',
    children: [
      { kind: 'rectangle', surface: 'outside', box: whole, outline: 'edge' },
      ...offcuts,
      ...pieces,
      ...runs,
      ...marked.flatMap(({ primitives }) => primitives),
      head,
      grain,
    ],
  };
  const unsized = laid.pieces.filter((_, at) => !saysSize(pieces[at]));
  const unsaid = {
    cuts: cuts.filter((_, at) => marked[at]?.isWhole === false),
    pieces: unsized,
    runs: laid.runs,
  };
  return { group, box: { ...whole, right: grainTo, top: place.top, bottom: whole.bottom + BLOCK_FOOT }, unsaid };
}

/** What is cut out as one is drawn round once more, and followed by its pieces. */
function runOutline({ label, blanks }: LaidRun, box: Box, id: string): Group {
  const around = grown(box, RUN_OUTLINE);
  return {
    kind: 'group',
    id: `run-${id}`,
    name: `${cleanName(label)}, ${blanks.length} in their order`,
    children: [
      {
        kind: 'polyline',
        role: 'cut',
        closed: true,
        points: [
          { x: around.left, y: around.top },
          { x: around.right, y: around.top },
          { x: around.right, y: around.bottom },
          { x: around.left, y: around.bottom },
        ],
      },
    ],
  };
}

/** A piece says its mark and its size, or it says too little. */
function saysSize(group: Group | undefined): boolean {
  return group?.children.some((each) => each.kind === 'text' && each.text.includes(' × ')) === true;
}

function heading(laid: LaidStock, units: Units, { left, top }: Place, whole: Box): Text {
  const thick = laid.thickness === undefined ? [] : [laid.thickness];
  const size = byEachOther(...[laid.length, laid.width, ...thick].map((each) => figureOnSheet(each, units)));
  const what = laid.kind === 'sheet' ? 'Sheet' : 'Board';
  const there = laid.offcut === undefined ? '' : ', offcut on hand';
  const words = `${what} ${laid.number}: ${cleanName(laid.stock.name)}, ${size}${there}`;
  const room = Math.max(whole.right - left - 26, 60);
  return {
    kind: 'text',
    role: 'name',
    text: fitText(words, HEIGHT, room) ?? '',
    at: { x: left, y: top + 5.4 },
    height: HEIGHT,
    anchor: 'start',
    runs: 'across',
  };
}

function grainArrow(right: number, top: number): Primitive {
  return {
    kind: 'arrow',
    role: 'grain',
    from: { x: right - GRAIN_LONG, y: top + 4.4 },
    to: { x: right, y: top + 4.4 },
    heads: 'both',
    headLength: 2.5,
  };
}

function pieceGroup(laid: LaidPiece, box: Box, id: string, units: Units): Group {
  const { piece, stave } = laid;
  const mark = markOf(laid);
  const [length, width] = laid.turned ? [laid.width, laid.length] : [laid.length, laid.width];
  const size = byEachOther(figureOnSheet(length, units), figureOnSheet(width, units));
  const of = stave === undefined ? '' : `, stave ${stave.number} of ${stave.of}`;
  return {
    kind: 'group',
    id: `piece-${id}`,
    name: 'piece',
    part: {
      id: piece.part.id,
      origin: piece.part.origin,
      label: `${cleanName(piece.label)}, mark ${mark}${of}, ${size}`,
    },
    children: [
      { kind: 'rectangle', surface: 'wood', box, outline: 'edge' },
      ...lettering(box, mark, [...(laid.turned ? ['turned'] : []), size]),
    ],
  };
}

/** The mark, and below it what else there is room for; in one line where the piece is low, upwards where it is narrow. */
function lettering(box: Box, mark: string, more: readonly string[]): readonly Text[] {
  const wide = box.right - box.left - 1.2;
  const high = box.bottom - box.top - 1.2;
  for (const runs of ['across', 'upwards'] as const) {
    const [along, across] = runs === 'across' ? [wide, high] : [high, wide];
    for (const lines of [[mark, ...more], [[mark, ...more].join('  ')], [mark]]) {
      if (lines.length * LINE > across || lines.some((words) => textWidth(words, HEIGHT) > along)) continue;
      return lines.map((words, at) => lineOf(box, words, at - (lines.length - 1) / 2, runs, words === mark));
    }
  }
  return [];
}

function lineOf(box: Box, text: string, place: number, runs: Text['runs'], isMark: boolean): Text {
  const centre = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const moved =
    runs === 'across' ? { x: centre.x, y: centre.y + place * LINE } : { x: centre.x + place * LINE, y: centre.y };
  return centredText({ role: isMark ? 'mark' : 'figure', text, height: HEIGHT, runs }, moved);
}

function offcutMarks(offcut: LaidArea, box: Box, units: Units): readonly Primitive[] {
  const inner = grown(box, -0.3);
  if (inner.right - inner.left < 1 || inner.bottom - inner.top < 1) return [];
  const size = byEachOther(figureOnSheet(offcut.length, units), figureOnSheet(offcut.width, units));
  return [
    {
      kind: 'polyline',
      role: 'hidden',
      closed: true,
      points: [
        { x: inner.left, y: inner.top },
        { x: inner.right, y: inner.top },
        { x: inner.right, y: inner.bottom },
        { x: inner.left, y: inner.bottom },
      ],
    },
    ...lettering(box, size, []),
  ];
}

interface CutMark {
  readonly primitives: readonly Primitive[];
  /** The number stands there, and beside it the name of what comes off where that is cut further. */
  readonly isWhole: boolean;
}

/**
 * Its number on the cut, as near to where the cut begins as no lettering stands, with the name that it gives; the number
 * alone where there is no room for both, and nothing where there is none for that either.
 */
function cutMark(
  { number, cut }: NumberedCut,
  named: ReadonlySet<string>,
  onPaper: (area: LaidArea) => Box,
  taken: Box[],
): CutMark {
  const nothing = cut.at.minus(cut.at);
  const span = cut.to.minus(cut.from);
  const isRip = cut.direction === 'rip';
  const line = isRip
    ? onPaper({ along: cut.from, across: cut.at, length: span, width: nothing })
    : onPaper({ along: cut.at, across: cut.from, length: nothing, width: span });
  const reach = isRip ? line.right - line.left : line.bottom - line.top;
  const words = `${number}`;
  const radius = Math.max(RADIUS, textWidth(words, HEIGHT) / 2 + 0.7);
  const isNamed = cut.gives !== undefined && (named.has(cut.gives) || cut.run !== undefined);
  const name = isNamed ? cut.gives : undefined;
  const wide = name === undefined ? 0 : textWidth(name, HEIGHT);
  const centres = placesOn(reach, radius).map((along) =>
    isRip ? { x: line.left + along, y: line.top } : { x: line.left, y: line.top + along },
  );
  // What comes off lies above a rip and to the left of a crosscut: there its name stands.
  const nameAt = ({ x, y }: Point): Point =>
    isRip ? { x: x + radius + 0.6 + wide / 2, y: y - LINE / 2 } : { x: x - radius - 0.6 - wide / 2, y };
  const isFree = (box: Box) => !taken.some((other) => boxesOverlap(box, other, 0.3));
  const around = ({ x, y }: Point) => grown({ left: x, right: x, top: y, bottom: y }, radius);
  const nameBox = (centre: Point): Box => textBox(nameText(name ?? '', nameAt(centre)));
  const both = centres.find((centre) => isFree(around(centre)) && isFree(nameBox(centre)));
  const centre = (name === undefined ? undefined : both) ?? centres.find((each) => isFree(around(each)));
  if (centre === undefined) return { primitives: [], isWhole: false };
  taken.push(around(centre));
  const withName = name !== undefined && both !== undefined;
  if (withName) taken.push(nameBox(centre));
  return {
    primitives: [
      { kind: 'circle', role: 'symbol', centre, radius, filled: false },
      centredText({ role: 'figure', text: words, height: HEIGHT, runs: 'across' }, centre),
      ...(withName ? [nameText(name, nameAt(centre))] : []),
    ],
    isWhole: name === undefined || withName,
  };
}

function nameText(name: string, centre: Point): Text {
  return centredText({ role: 'caption', text: name, height: HEIGHT, runs: 'across' }, centre);
}

/** From the beginning of a cut to its end; then beyond its ends, where a short cut has no room between lettering. */
function placesOn(reach: number, radius: number): readonly number[] {
  const places: number[] = [];
  for (let along = radius + 0.5; along <= reach - radius; along += radius / 2) places.push(along);
  return [...places, reach / 2, reach + radius + 0.3, -radius - 0.3];
}
