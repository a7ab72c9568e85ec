import type { Origin } from '@fettle/findings';
import type { LineRole, Pens } from './line-types.ts';

/**
 * The drawing language: a few primitives in millimetres on paper, x to the right and y downwards from the sheet's top
 * left corner. Whoever draws a piece works out every coordinate; a back end only writes them down and re-derives
 * nothing. Knows nothing of pieces, of SVG or of any other format.
 */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** left < right, top < bottom; y grows downwards. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Line {
  readonly kind: 'line';
  readonly role: LineRole;
  readonly from: Point;
  readonly to: Point;
}

export interface Polyline {
  readonly kind: 'polyline';
  readonly role: LineRole;
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/**
 * Exactly the area of something. `outline` adds a line whose pen stays wholly inside the area, so that the outer
 * border of the ink is the true edge and a narrow gap between two areas stays clear.
 */
export interface Rectangle {
  readonly kind: 'rectangle';
  readonly surface: SurfaceRole;
  readonly box: Box;
  readonly outline?: LineRole;
}

/** A surface of any outline, to be pointed at: it carries no line of its own. */
export interface Area {
  readonly kind: 'area';
  readonly surface: SurfaceRole;
  readonly points: readonly Point[];
}

/** `paper`: the sheet. `outside`: the space the whole piece takes up. `front`, `wood`: the face of a part. */
export type SurfaceRole = 'paper' | 'outside' | 'front' | 'wood';

export interface Circle {
  readonly kind: 'circle';
  readonly role: LineRole;
  readonly centre: Point;
  readonly radius: number;
  /** A filled dot, such as the end of a leader. */
  readonly filled: boolean;
}

export type TextRole = 'name' | 'mark' | 'figure' | 'heading' | 'caption' | 'note' | 'warning';

export interface Text {
  readonly kind: 'text';
  readonly role: TextRole;
  readonly text: string;
  /** On the baseline. */
  readonly at: Point;
  /** Height of a capital, in mm. */
  readonly height: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** `upwards` is read from the right-hand side of the sheet. */
  readonly runs: 'across' | 'upwards';
}

export interface Arrow {
  readonly kind: 'arrow';
  readonly role: LineRole;
  readonly from: Point;
  readonly to: Point;
  readonly heads: 'end' | 'both';
  readonly headLength: number;
}

/** A dimension with everything about it resolved; a format with dimensions of its own may use the three parts apart. */
export interface Dimension {
  readonly kind: 'dimension';
  readonly along: 'x' | 'y';
  readonly line: Line;
  /** The oblique strokes that end it. */
  readonly ticks: readonly Line[];
  /** Absent when the figure had to be left out; the sheet says so in a note. */
  readonly figure?: Text;
  /** From the line to a figure that had to move. */
  readonly leader?: Polyline;
}

/** Which part a group is, so that a click can find its words. */
export interface PartTag {
  readonly id: string;
  readonly origin: Origin;
  /** For people and screen readers: 'drawer front "cards", mark D1'. */
  readonly label: string;
}

export interface Group {
  readonly kind: 'group';
  /** Unique in the drawing, stable while other things change. */
  readonly id: string;
  readonly name: string;
  readonly part?: PartTag;
  readonly children: readonly Primitive[];
}

export type Primitive = Line | Polyline | Rectangle | Area | Circle | Text | Arrow | Dimension | Group;

export interface Drawing {
  /** Prefix of every id in the output, so that several drawings can stand on one page. */
  readonly id: string;
  readonly title: string;
  /** The drawing in words, for those who do not see it. */
  readonly description: string;
  /** Sheet size in mm. */
  readonly width: number;
  readonly height: number;
  readonly pens: Pens;
  /** What a millimetre on the real piece is on the paper; absent on a sheet that shows no piece. */
  readonly paperPerReal?: number;
  /** What one looks at, without frame, title block and notes; absent on a sheet that is looked at whole. */
  readonly focus?: Box;
  /** What is looked at one after the other where all of it at once is too small to be read, in that order. */
  readonly items?: readonly Box[];
  /** Of no use where its lettering cannot be read: whoever shows it then begins with its middle. */
  readonly isDense?: true;
  readonly content: readonly Primitive[];
}

/** The one rounding of all output: to a thousandth of a millimetre, without a negative zero. */
export function paperNumber(value: number): string {
  const rounded = Math.round(value * 1000) / 1000;
  return `${rounded === 0 ? 0 : rounded}`;
}

export function line(role: LineRole, x1: number, y1: number, x2: number, y2: number): Line {
  return { kind: 'line', role, from: { x: x1, y: y1 }, to: { x: x2, y: y2 } };
}

export function boxesOverlap(a: Box, b: Box, margin = 0): boolean {
  return (
    a.left < b.right + margin && b.left < a.right + margin && a.top < b.bottom + margin && b.top < a.bottom + margin
  );
}

export function grown(box: Box, by: number): Box {
  return { left: box.left - by, top: box.top - by, right: box.right + by, bottom: box.bottom + by };
}

/** The smallest box around all; undefined for none. */
export function unionOf(boxes: readonly Box[]): Box | undefined {
  const first = boxes[0];
  if (first === undefined) return undefined;
  let { left, top, right, bottom } = first;
  for (const box of boxes) {
    left = Math.min(left, box.left);
    top = Math.min(top, box.top);
    right = Math.max(right, box.right);
    bottom = Math.max(bottom, box.bottom);
  }
  return { left, top, right, bottom };
}

/** Every primitive of a tree, groups before what they hold. */
export function* walk(primitives: readonly Primitive[]): Generator<Primitive> {
  for (const primitive of primitives) {
    yield primitive;
    if (primitive.kind === 'group') yield* walk(primitive.children);
    if (primitive.kind === 'dimension') {
      yield primitive.line;
      yield* primitive.ticks;
      if (primitive.figure !== undefined) yield primitive.figure;
      if (primitive.leader !== undefined) yield primitive.leader;
    }
  }
}

export function boxAround(points: readonly Point[]): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
