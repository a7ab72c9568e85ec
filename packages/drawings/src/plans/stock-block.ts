import type { LaidArea, LaidPiece, LaidStock, NumberedCut, Units } from '@fettle/engine';
import { centredText, cleanName, fitText, LETTER_HEIGHTS_MM, textBox, textWidth } from '../lettering.ts';
import { type Box, boxesOverlap, type Group, grown, type Primitive, type Text } from '../primitives.ts';
import { figureOnSheet, realMm } from '../shown-lengths.ts';

/** One sheet or board, its grain lying across the page: its pieces with mark and size, what is left over, and the cuts. */

/** Above the stock: its name and size. Below it: room for the numbers of cuts. */
export const BLOCK_HEAD = 8;
export const BLOCK_FOOT = 8;

const HEIGHT = LETTER_HEIGHTS_MM.small;
/** From one line of lettering to the next. */
const LINE = 4;
const RADIUS = 2.6;

interface Place {
  readonly left: number;
  readonly top: number;
  /** Paper over real. */
  readonly factor: number;
}

export interface StockBlock {
  readonly group: Group;
  /** Numbers of cuts for which there is no room. */
  readonly leftOut: number;
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
  const head = heading(laid, units, place, whole);
  const taken = [...pieces.flatMap(({ children }) => children), ...offcuts, head].flatMap((each) =>
    each.kind === 'text' ? [textBox(each)] : [],
  );
  const numbers = cuts.map((each) => cutMark(each, onPaper, taken));
  const group: Group = {
    kind: 'group',
    id: `stock-${laid.number}`,
    name: 'stock',
    children: [
      { kind: 'rectangle', surface: 'outside', box: whole, outline: 'edge' },
      ...offcuts,
      ...pieces,
      ...numbers.flat(),
      head,
      grainArrow(whole, place.top),
    ],
  };
  return { group, leftOut: numbers.filter(({ length }) => length === 0).length };
}

function heading(laid: LaidStock, units: Units, { left, top }: Place, whole: Box): Text {
  const thick = laid.thickness === undefined ? '' : ` × ${figureOnSheet(laid.thickness, units)}`;
  const size = `${figureOnSheet(laid.length, units)} × ${figureOnSheet(laid.width, units)}${thick}`;
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

function grainArrow({ right }: Box, top: number): Primitive {
  return {
    kind: 'arrow',
    role: 'grain',
    from: { x: right - 22, y: top + 4.4 },
    to: { x: right, y: top + 4.4 },
    heads: 'both',
    headLength: 2.5,
  };
}

function pieceGroup(laid: LaidPiece, box: Box, id: string, units: Units): Group {
  const { piece, stave } = laid;
  const mark = cleanName(piece.mark) + (stave === undefined ? '' : `.${stave.number}`);
  const [length, width] = laid.turned ? [laid.width, laid.length] : [laid.length, laid.width];
  const size = `${figureOnSheet(length, units)} × ${figureOnSheet(width, units)}`;
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
  const size = `${figureOnSheet(offcut.length, units)} × ${figureOnSheet(offcut.width, units)}`;
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

/** Its number on the cut, as near to where the cut begins as no lettering stands; left out where there is no room. */
function cutMark({ number, cut }: NumberedCut, onPaper: (area: LaidArea) => Box, taken: Box[]): readonly Primitive[] {
  const nothing = cut.at.minus(cut.at);
  const span = cut.to.minus(cut.from);
  const line =
    cut.direction === 'rip'
      ? onPaper({ along: cut.from, across: cut.at, length: span, width: nothing })
      : onPaper({ along: cut.at, across: cut.from, length: nothing, width: span });
  const isRip = cut.direction === 'rip';
  const reach = isRip ? line.right - line.left : line.bottom - line.top;
  const words = `${number}`;
  const radius = Math.max(RADIUS, textWidth(words, HEIGHT) / 2 + 0.7);
  for (const along of placesOn(reach, radius)) {
    const centre = isRip ? { x: line.left + along, y: line.top } : { x: line.left, y: line.top + along };
    const box = grown({ left: centre.x, right: centre.x, top: centre.y, bottom: centre.y }, radius);
    if (taken.some((other) => boxesOverlap(box, other, 0.3))) continue;
    taken.push(box);
    return [
      { kind: 'circle', role: 'symbol', centre, radius, filled: false },
      centredText({ role: 'figure', text: words, height: HEIGHT, runs: 'across' }, centre),
    ];
  }
  return [];
}

/** From the beginning of a cut to its end; then beyond its ends, where a short cut has no room between lettering. */
function placesOn(reach: number, radius: number): readonly number[] {
  const places: number[] = [];
  for (let along = radius + 0.5; along <= reach - radius; along += radius / 2) places.push(along);
  return [...places, reach / 2, reach + radius + 0.3, -radius - 0.3];
}
