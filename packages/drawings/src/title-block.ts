import { cleanName, fitText, LETTER_HEIGHTS_MM, textWidth } from './lettering.ts';
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
const BLOCK_HEIGHT = 15;
const NOTE_PITCH = 4;
const WARNING_PITCH = 5;
const { small, normal, large } = LETTER_HEIGHTS_MM;

/** The room for the view on a sheet that carries so many lines of notes. */
export function roomForView(sheet: Sheet, noteLines: number): Box {
  const frame = frameOf(sheet);
  return {
    left: frame.left + 3,
    top: frame.top + 3,
    right: frame.right - 3,
    bottom: frame.bottom - BLOCK_HEIGHT - noteLines * NOTE_PITCH - WARNING_PITCH - 3.8,
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

function titleBlock(frame: Box, words: SheetWords): Primitive[] {
  const top = frame.bottom - BLOCK_HEIGHT;
  const width = frame.right - frame.left;
  const drawn: Primitive[] = [line('frame', frame.left, top, frame.right, top)];
  const cells: readonly (readonly [share: number, caption: string, value: string, height: number])[] = [
    [0.265, 'Piece', words.piece, large],
    [0.19, 'Drawing', words.drawing, normal],
    [0.23, 'Overall', words.overall, normal],
    [0.18, 'Scale', words.scale, normal],
    [0.135, words.projection === 'first' ? 'First angle' : 'Third angle', '', normal],
  ];
  let x = frame.left;
  cells.forEach(([share, caption, value, height], at) => {
    const cellWidth = share * width;
    if (at > 0) drawn.push(line('rule', x, top, x, frame.bottom));
    drawn.push(text('caption', caption, x + 2, top + 4.3, small));
    const written = fitted(value, height, cellWidth - 4);
    if (written !== undefined) drawn.push(text('heading', written[0], x + 2, frame.bottom - 3.6, written[1]));
    x += cellWidth;
  });
  drawn.push(...projectionSymbol(words.projection, x - 0.135 * width + 2, frame.bottom - 4.7));
  return drawn;
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
  const top = frame.bottom - BLOCK_HEIGHT - words.notes.length * NOTE_PITCH + 0.6;
  const written = words.notes.map((note, at) =>
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
