import { SIZE_OVER_CAPITAL } from './lettering.ts';
import { dashesMm, type LineRole, type Pens, penMm } from './line-types.ts';
import {
  type Box,
  type Drawing,
  type Group,
  type Line,
  type Point,
  type Primitive,
  paperNumber,
  type Rectangle,
  type SurfaceRole,
  type Text,
} from './primitives.ts';
import { colour, STANDALONE_STYLE } from './svg-colours.ts';
import { escapeAttribute, escapeText, idOf } from './svg-escape.ts';

/**
 * Writes a drawing down as SVG, with stable ids and attributes in a fixed order. Works out nothing: every coordinate
 * comes from the drawing. No inline styles, no scripts: it may enter a page under the strictest security policy.
 */

export interface SvgOptions {
  /**
   * `true`: a file that stands alone, with its size in millimetres, fixed colours and a style sheet of its own. Without
   * it, the page's custom properties give the colours.
   */
  readonly standalone?: boolean;
}

interface Writer {
  readonly drawing: Drawing;
  readonly pens: Pens;
  readonly standalone: boolean;
  readonly ids: Set<string>;
  readonly lines: string[];
  /** Faces of fronts so far: lettering on them lies on their ground. */
  readonly fronts: Box[];
  /** Written once for each role: half of a sheet is nothing else. */
  readonly inks: Map<LineRole, string>;
}

type Attributes = readonly (readonly [name: string, value: string | undefined])[];

export function toSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const standalone = options.standalone === true;
  const writer: Writer = {
    drawing,
    pens: drawing.pens,
    standalone,
    ids: new Set(),
    lines: [],
    fronts: [],
    inks: new Map(),
  };
  const width = paperNumber(drawing.width);
  const height = paperNumber(drawing.height);
  const root: Attributes = [
    ['xmlns', 'http://www.w3.org/2000/svg'],
    ['id', drawing.id],
    ['class', 'fettle-drawing'],
    ['width', standalone ? `${width}mm` : undefined],
    ['height', standalone ? `${height}mm` : undefined],
    ['viewBox', `0 0 ${width} ${height}`],
    ['role', 'group'],
    ['aria-labelledby', `${drawing.id}-title`],
    ['aria-describedby', `${drawing.id}-description`],
    ['data-focus', drawing.focus === undefined ? undefined : boxWords(drawing.focus)],
    ['data-items', drawing.items?.map(boxWords).join(', ')],
    ['data-dense', drawing.isDense === true ? 'true' : undefined],
    ['data-paper-per-real', drawing.paperPerReal === undefined ? undefined : `${drawing.paperPerReal}`],
    // Inherited by all lettering: its rim lies behind it.
    ['paint-order', 'stroke'],
    ['font-family', "Arial, Helvetica, 'Liberation Sans', sans-serif"],
  ];
  writer.lines.push(`<svg${attributes(root)}>`);
  writer.lines.push(`<title id="${drawing.id}-title">${escapeText(drawing.title)}</title>`);
  writer.lines.push(`<desc id="${drawing.id}-description">${escapeText(drawing.description)}</desc>`);
  if (standalone) writer.lines.push(`<style>${STANDALONE_STYLE}</style>`);
  for (const primitive of drawing.content) write(writer, primitive);
  writer.lines.push('</svg>');
  return `${writer.lines.join('\n')}\n`;
}

/** Left, top, width and height, as in a view box. */
function boxWords({ left, top, right, bottom }: Box): string {
  return [left, top, right - left, bottom - top].map(paperNumber).join(' ');
}

function write(writer: Writer, primitive: Primitive): void {
  switch (primitive.kind) {
    case 'group':
      writeGroup(writer, primitive);
      return;
    case 'line':
      writeLine(writer, primitive);
      return;
    case 'polyline':
      element(
        writer,
        primitive.closed ? 'polygon' : 'polyline',
        plain('class', primitive.role),
        plain('points', primitive.points.map(pair).join(' ')),
        inked(writer, primitive.role),
      );
      return;
    case 'rectangle':
      writeRectangle(writer, primitive);
      return;
    case 'area':
      element(
        writer,
        'polygon',
        plain('class', `surface ${primitive.surface}`),
        plain('points', primitive.points.map(pair).join(' ')),
        surfaceWords(writer, primitive.surface),
      );
      return;
    case 'circle': {
      const ink = colour('ink', writer.standalone);
      element(
        writer,
        'circle',
        plain('class', primitive.filled ? `${primitive.role} dot` : primitive.role),
        plain('cx', paperNumber(primitive.centre.x)),
        plain('cy', paperNumber(primitive.centre.y)),
        plain('r', paperNumber(primitive.radius)),
        primitive.filled ? plain('fill', ink) : inked(writer, primitive.role),
      );
      return;
    }
    case 'text':
      writeText(writer, primitive);
      return;
    case 'arrow': {
      const { from, to, headLength } = primitive;
      writeLine(writer, { kind: 'line', role: primitive.role, from, to });
      writeHead(writer, primitive.role, from, to, headLength);
      if (primitive.heads === 'both') writeHead(writer, primitive.role, to, from, headLength);
      return;
    }
    case 'dimension':
      writer.lines.push(`<g${plain('class', `measure ${primitive.along}`)}>`);
      writeLine(writer, primitive.line);
      for (const tick of primitive.ticks) writeLine(writer, tick);
      if (primitive.leader !== undefined) write(writer, primitive.leader);
      if (primitive.figure !== undefined) writeText(writer, primitive.figure);
      writer.lines.push('</g>');
      return;
    default: {
      const unknown: never = primitive;
      unknown satisfies never;
    }
  }
}

function writeGroup(writer: Writer, group: Group): void {
  const { part } = group;
  writer.lines.push(
    `<g${attributes([
      ['id', freshId(writer, `${writer.drawing.id}-${idOf(group.id)}`)],
      ['class', group.name],
      ['data-part', part?.id],
      ['tabindex', part === undefined ? undefined : '0'],
      ['role', part === undefined ? undefined : 'button'],
      ['aria-label', part?.label],
    ])}>`,
  );
  // A part that is only dashed lines needs something broader to click on.
  if (part !== undefined && !group.children.some(isSurface)) {
    for (const child of group.children) if (child.kind === 'line') writeReach(writer, child);
  }
  for (const child of group.children) write(writer, child);
  writer.lines.push('</g>');
}

function isSurface({ kind }: Primitive): boolean {
  return kind === 'rectangle' || kind === 'area';
}

/** Two parts may, by somebody's mistake, have the same id; two elements may not. */
function freshId(writer: Writer, wished: string): string {
  let id = wished;
  for (let count = 2; writer.ids.has(id); count++) id = `${wished}.${count}`;
  writer.ids.add(id);
  return id;
}

function writeLine(writer: Writer, { role, from, to }: Line): void {
  element(writer, 'line', plain('class', role), ends(from, to), inked(writer, role));
}

function writeReach(writer: Writer, { from, to }: Line): void {
  element(
    writer,
    'line',
    plain('class', 'reach'),
    ends(from, to),
    plain('stroke', 'none'),
    plain('stroke-width', '2.4'),
    plain('pointer-events', 'stroke'),
  );
}

function writeRectangle(writer: Writer, { box, surface, outline }: Rectangle): void {
  const area = (inset: number): string =>
    plain('x', paperNumber(box.left + inset)) +
    plain('y', paperNumber(box.top + inset)) +
    plain('width', paperNumber(box.right - box.left - 2 * inset)) +
    plain('height', paperNumber(box.bottom - box.top - 2 * inset));
  if (surface === 'front') writer.fronts.push(box);
  element(writer, 'rect', plain('class', `surface ${surface}`), area(0), surfaceWords(writer, surface));
  if (outline === undefined) return;
  const pen = penMm(outline, writer.pens);
  const inset = Math.min(pen / 2, (box.right - box.left) / 2, (box.bottom - box.top) / 2);
  element(writer, 'rect', plain('class', outline), area(inset), inked(writer, outline));
}

function surfaceWords(writer: Writer, surface: SurfaceRole): string {
  return plain('fill', surfaceFill(writer, surface)) + plain('pointer-events', takesPointer(surface));
}

function surfaceFill(writer: Writer, surface: SurfaceRole): string {
  if (surface === 'paper') return colour('paper', writer.standalone);
  return surface === 'front' ? colour('front', writer.standalone) : 'none';
}

function takesPointer(surface: SurfaceRole): string {
  return surface === 'front' || surface === 'wood' ? 'all' : 'none';
}

/** Width of the rim over the height of a capital; half of it lies under the letter itself. */
const RIM = 0.35;

function groundAt({ fronts }: Writer, { x, y }: Point): 'front' | 'paper' {
  const isOnFront = fronts.some(({ left, right, top, bottom }) => left <= x && x <= right && top <= y && y <= bottom);
  return isOnFront ? 'front' : 'paper';
}

function writeText(writer: Writer, { text, role, at, height, anchor, runs }: Text): void {
  const x = paperNumber(at.x);
  const y = paperNumber(at.y);
  const tint = role === 'warning' ? 'warning' : role === 'caption' || role === 'mark' ? 'quiet' : 'ink';
  writer.lines.push(
    [
      '<text',
      plain('class', `lettering ${role}`),
      plain('x', x),
      plain('y', y),
      plain('font-size', paperNumber(height * SIZE_OVER_CAPITAL)),
      plain('text-anchor', anchor),
      runs === 'upwards' ? plain('transform', `rotate(-90 ${x} ${y})`) : '',
      plain('fill', colour(tint, writer.standalone)),
      role === 'warning' ? plain('font-weight', '700') : '',
      // Whatever runs through lettering gives way to it: a rim of its ground lies behind each letter.
      plain('stroke', colour(groundAt(writer, at), writer.standalone)),
      plain('stroke-width', paperNumber(height * RIM)),
      plain('stroke-linejoin', 'round'),
      `>${escapeText(text)}</text>`,
    ].join(''),
  );
}

function writeHead(writer: Writer, role: LineRole, from: Point, to: Point, length: number): void {
  const distance = Math.hypot(to.x - from.x, to.y - from.y);
  if (distance === 0) return;
  const ux = (to.x - from.x) / distance;
  const uy = (to.y - from.y) / distance;
  const foot = { x: to.x - ux * length, y: to.y - uy * length };
  const half = length / 4;
  const corners = [
    to,
    { x: foot.x - uy * half, y: foot.y + ux * half },
    { x: foot.x + uy * half, y: foot.y - ux * half },
  ];
  element(
    writer,
    'polygon',
    plain('class', `${role} head`),
    plain('points', corners.map(pair).join(' ')),
    plain('fill', colour('ink', writer.standalone)),
  );
}

const QUIET: ReadonlySet<LineRole> = new Set<LineRole>(['hidden', 'swing', 'before', 'extension', 'hatch']);

function inked(writer: Writer, role: LineRole): string {
  let words = writer.inks.get(role);
  if (words === undefined) {
    const dashes = dashesMm(role, writer.pens);
    words =
      plain('fill', 'none') +
      plain('stroke', colour(QUIET.has(role) ? 'quiet' : 'ink', writer.standalone)) +
      plain('stroke-width', paperNumber(penMm(role, writer.pens))) +
      (dashes === undefined ? '' : plain('stroke-dasharray', dashes.map(paperNumber).join(' ')));
    writer.inks.set(role, words);
  }
  return words;
}

function ends(from: Point, to: Point): string {
  return (
    plain('x1', paperNumber(from.x)) +
    plain('y1', paperNumber(from.y)) +
    plain('x2', paperNumber(to.x)) +
    plain('y2', paperNumber(to.y))
  );
}

/** The words are attributes, written down. */
function element(writer: Writer, name: string, ...words: readonly string[]): void {
  writer.lines.push(`<${name}${words.join('')}/>`);
}

/** Of our own words and numbers, in which there is nothing to escape. */
function plain(name: string, value: string): string {
  return ` ${name}="${value}"`;
}

function attributes(list: Attributes): string {
  return list.map(([name, value]) => (value === undefined ? '' : ` ${name}="${escapeAttribute(value)}"`)).join('');
}

function pair(point: Point): string {
  return `${paperNumber(point.x)},${paperNumber(point.y)}`;
}
