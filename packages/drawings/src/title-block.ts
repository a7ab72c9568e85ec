import { cleanName, fitText, LETTER_HEIGHTS_MM, linesOf, textWidth } from './lettering.ts';
import { type Box, type Group, line, type Primitive, type Text } from './primitives.ts';
import type { Sheet } from './scale.ts';

/**
 * Frame, title block and notes of a sheet. Frame: 20 mm at the filing edge, 10 mm elsewhere (ISO 5457, from memory).
 * Knows nothing of what is drawn inside.
 */

export interface SheetWords {
  readonly piece: string;
  readonly drawing: string;
  readonly overall: string;
  readonly scale: string;
  /** First angle in Europe, third angle in the USA (ISO 5456-2, ASME Y14.3, from memory). */
  readonly projection: 'first' | 'third';
  readonly notes: readonly string[];
  /** Why not to build from this sheet, or not yet: in a box of their own, above everything else that is noted. */
  readonly warnings: readonly string[];
}

const FILING_EDGE = 20;
const OTHER_EDGES = 10;
/** Of one row of the title block. */
const ROW_HEIGHT = 15;
/** A narrower frame has its title block in two rows. */
const TWO_ROWS_BELOW = 200;
const NOTE_PITCH = 4;
const WARNING_PITCH = 5;
const { small, normal, large } = LETTER_HEIGHTS_MM;

/** The room for the view on a sheet that carries so many lines of notes. */
export function roomForView(sheet: Sheet, noteLines: number): Box {
  const frame = frameOf(sheet);
  // Notes are broken into more lines where the frame is narrow.
  const lines = isInTwoRows(frame) ? noteLines + 2 : noteLines;
  return {
    left: frame.left + 3,
    top: frame.top + 3,
    right: frame.right - 3,
    bottom: frame.bottom - blockHeight(frame) - lines * NOTE_PITCH - WARNING_PITCH - 3.8,
  };
}

function frameOf(sheet: Sheet): Box {
  return {
    left: FILING_EDGE,
    top: OTHER_EDGES,
    right: sheet.width - OTHER_EDGES,
    bottom: sheet.height - OTHER_EDGES,
  };
}

export function sheetFurniture(sheet: Sheet, words: SheetWords): readonly Group[] {
  const frame = frameOf(sheet);
  return [
    {
      kind: 'group',
      id: 'frame',
      name: 'frame',
      children: [
        { kind: 'rectangle', surface: 'paper', box: { left: 0, top: 0, right: sheet.width, bottom: sheet.height } },
        {
          kind: 'polyline',
          role: 'frame',
          closed: true,
          points: [
            { x: frame.left, y: frame.top },
            { x: frame.right, y: frame.top },
            { x: frame.right, y: frame.bottom },
            { x: frame.left, y: frame.bottom },
          ],
        },
      ],
    },
    { kind: 'group', id: 'title-block', name: 'title-block', children: titleBlock(frame, words) },
    { kind: 'group', id: 'notes', name: 'notes', children: notes(frame, words) },
  ];
}

interface Cell {
  /** Of the width of its row, where all words fit that way. */
  readonly share: number;
  readonly caption: string;
  readonly value: string;
  readonly height: number;
}

const PADDING = 2;
const SYMBOL_WIDE = 18;

function rowsOf(frame: Box, words: SheetWords): readonly (readonly Cell[])[] {
  const piece = { caption: 'Piece', value: words.piece, height: large };
  const drawing = { caption: 'Drawing', value: words.drawing, height: normal };
  const overall = { caption: 'Overall', value: words.overall, height: normal };
  const scale = { caption: 'Scale', value: words.scale, height: normal };
  const angle = { caption: words.projection === 'first' ? 'First angle' : 'Third angle', value: '', height: normal };
  return isInTwoRows(frame)
    ? [
        [
          { share: 0.55, ...piece },
          { share: 0.45, ...drawing },
        ],
        [
          { share: 0.44, ...overall },
          { share: 0.38, ...scale },
          { share: 0.18, ...angle },
        ],
      ]
    : [
        [
          { share: 0.265, ...piece },
          { share: 0.19, ...drawing },
          { share: 0.23, ...overall },
          { share: 0.18, ...scale },
          { share: 0.135, ...angle },
        ],
      ];
}

function isInTwoRows(frame: Box): boolean {
  return frame.right - frame.left < TWO_ROWS_BELOW;
}

function blockHeight(frame: Box): number {
  return (isInTwoRows(frame) ? 2 : 1) * ROW_HEIGHT;
}

function titleBlock(frame: Box, words: SheetWords): Primitive[] {
  const drawn: Primitive[] = [];
  const rows = rowsOf(frame, words);
  rows.forEach((cells, row) => {
    const top = frame.bottom - (rows.length - row) * ROW_HEIGHT;
    const bottom = top + ROW_HEIGHT;
    drawn.push(line('frame', frame.left, top, frame.right, top));
    const widths = widthsOf(cells, frame.right - frame.left);
    let x = frame.left;
    cells.forEach(({ caption, value, height }, at) => {
      const width = widths[at] ?? 0;
      if (at > 0) drawn.push(line('rule', x, top, x, bottom));
      drawn.push(text('caption', caption, x + PADDING, top + 4.3, small));
      const written = fitted(value, height, width - 2 * PADDING);
      if (written !== undefined) drawn.push(text('heading', written[0], x + PADDING, bottom - 3.6, written[1]));
      x += width;
    });
    const last = widths[widths.length - 1] ?? 0;
    if (row === rows.length - 1) {
      drawn.push(...projectionSymbol(words.projection, frame.right - last + PADDING, bottom - 4.7));
    }
  });
  return drawn;
}

/** By their shares; but words that would be cut take room from cells that have more than they need. */
function widthsOf(cells: readonly Cell[], whole: number): readonly number[] {
  const needs = cells.map(
    ({ caption, value }) =>
      Math.max(textWidth(caption, small), textWidth(cleanName(value), small), value === '' ? SYMBOL_WIDE : 0) +
      2 * PADDING,
  );
  const wanted = cells.map(({ share }) => share * whole);
  const short = wanted.map((width, at) => Math.max(0, (needs[at] ?? 0) - width));
  const spare = wanted.map((width, at) => Math.max(0, width - (needs[at] ?? 0)));
  const [lack, room] = [short, spare].map((list) => list.reduce((sum, each) => sum + each, 0));
  if (lack === undefined || room === undefined || lack === 0 || room === 0) return wanted;
  const given = Math.min(1, room / lack);
  const taken = Math.min(1, lack / room);
  return wanted.map((width, at) => width + given * (short[at] ?? 0) - taken * (spare[at] ?? 0));
}

/** As large as fits down to the smallest lettering, then cut. */
function fitted(value: string, height: number, width: number): readonly [string, number] | undefined {
  const clean = cleanName(value);
  if (clean === '') return undefined;
  for (const size of [height, normal, small]) {
    if (size <= height && textWidth(clean, size) <= width) return [clean, size];
  }
  const cut = fitText(clean, small, width);
  return cut === undefined ? undefined : [cut, small];
}

/**
 * A cone without its point in two views; in third angle the circles stand at the small end, in first angle at the
 * large one (ISO 5456-2, from memory).
 */
function projectionSymbol(projection: 'first' | 'third', x: number, y: number): Primitive[] {
  const coneAt = projection === 'third' ? x + 10 : x + 1;
  const circlesAt = projection === 'third' ? x + 4.5 : x + 13.5;
  return [
    {
      kind: 'polyline',
      role: 'symbol',
      closed: true,
      points: [
        { x: coneAt, y: y - 1.4 },
        { x: coneAt + 7, y: y - 2.8 },
        { x: coneAt + 7, y: y + 2.8 },
        { x: coneAt, y: y + 1.4 },
      ],
    },
    { kind: 'circle', role: 'symbol', centre: { x: circlesAt, y }, radius: 1.4, filled: false },
    { kind: 'circle', role: 'symbol', centre: { x: circlesAt, y }, radius: 2.8, filled: false },
    line('centre', x, y, x + 18, y),
    line('centre', circlesAt, y - 3.6, circlesAt, y + 3.6),
  ];
}

const WARNING_SIGN = 5;
/** Heavy letters are wider than those that are measured, by at most so much. */
const BOLD = 1.2;

/** A box with a sign, heavy and larger than any note: seen without its colour, and from farther away than it is read. */
function warningBox(warnings: readonly string[], left: number, foot: number, room: number): Primitive[] {
  const beside = WARNING_SIGN + 6;
  const most = (room - beside) / BOLD;
  const lines = warnings.map((words): readonly [string, number] => {
    const size = textWidth(words, normal) <= most ? normal : small;
    return [fitText(words, size, most) ?? '', size];
  });
  const right = left + beside + Math.max(...lines.map(([words, size]) => textWidth(words, size))) * BOLD;
  const top = foot - lines.length * WARNING_PITCH - 2;
  const middle = (top + foot) / 2;
  const tip = { x: left + 2 + WARNING_SIGN / 2, y: middle - 2.3 };
  const corners = (box: Box) => [
    { x: box.left, y: box.top },
    { x: box.right, y: box.top },
    { x: box.right, y: box.bottom },
    { x: box.left, y: box.bottom },
  ];
  return [
    { kind: 'polyline', role: 'frame', closed: true, points: corners({ left, top, right, bottom: foot }) },
    {
      kind: 'polyline',
      role: 'frame',
      closed: true,
      points: [tip, { x: left + 2 + WARNING_SIGN, y: middle + 2.2 }, { x: left + 2, y: middle + 2.2 }],
    },
    line('frame', tip.x, middle - 0.9, tip.x, middle + 0.6),
    line('frame', tip.x, middle + 1.2, tip.x, middle + 1.5),
    ...lines.map(([words, size], at) =>
      text('warning', words, left + beside - 2, top + 1 + (at + 0.5) * WARNING_PITCH + size / 2, size),
    ),
  ];
}

/** Lines of notes from the bottom up, warnings above them. */
function notes(frame: Box, words: SheetWords): Primitive[] {
  const room = frame.right - frame.left - 6;
  const lines = words.notes.flatMap((note) => linesOf(note, small, room));
  const top = frame.bottom - blockHeight(frame) - lines.length * NOTE_PITCH + 0.6;
  const written = lines.map((note, at) =>
    text('note', fitText(note, small, room) ?? '', frame.left + 3, top + at * NOTE_PITCH + 1.2, small),
  );
  return words.warnings.length === 0
    ? written
    : [...warningBox(words.warnings, frame.left + 3, top - 2.4, room), ...written];
}

function text(role: Text['role'], words: string, x: number, y: number, height: number): Text {
  return { kind: 'text', role, text: words, at: { x, y }, height, anchor: 'start', runs: 'across' };
}

/** A sheet that says in words why nothing is drawn. */
export function messageLines(room: Box, messages: readonly string[]): readonly Text[] {
  const middle = (room.top + room.bottom) / 2;
  return messages.map((message, at): Text => {
    const words = fitText(message, normal, room.right - room.left) ?? '';
    const y = middle + (at - (messages.length - 1) / 2) * 8;
    return {
      kind: 'text',
      role: 'note',
      text: words,
      at: { x: (room.left + room.right) / 2, y },
      height: normal,
      anchor: 'middle',
      runs: 'across',
    };
  });
}
