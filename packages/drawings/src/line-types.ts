/**
 * Which line means what, and how wide and how broken it is. Source: ISO 128-2:2020/2022, from memory; the series of
 * pen widths was read in reference tables, dash lengths and the ratio of wide to narrow are from memory.
 */

export type LineRole =
  /** Edges one sees. */
  | 'edge'
  | 'floor'
  /** The outline of what a section cuts. */
  | 'cut'
  | 'hatch'
  /** Edges one sees behind the plane of a section. */
  | 'behind'
  /** Edges behind something. */
  | 'hidden'
  /** How a door swings. */
  | 'swing'
  /** The outline of what a section has taken away, before its plane. */
  | 'before'
  | 'dimension'
  | 'extension'
  | 'tick'
  | 'leader'
  | 'grain'
  | 'centre'
  | 'frame'
  | 'rule'
  | 'symbol';

/** Pen widths in mm: steps of the square root of two (ISO 128-2). */
export const PEN_WIDTHS_MM = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2] as const;

/** Wide : narrow is 2 : 1 on mechanical drawings, which are two steps of the series (ISO 128-2, from memory). */
export interface Pens {
  readonly wide: number;
  readonly narrow: number;
}

export const PEN_GROUPS: readonly Pens[] = [
  { wide: 0.35, narrow: 0.18 },
  { wide: 0.25, narrow: 0.13 },
];

export interface LineType {
  readonly width: keyof Pens;
  /** Dashes and spaces in turn, in widths of the line; absent for a continuous line. */
  readonly dashes?: readonly number[];
}

/**
 * Dash, space and long dash of ISO 128 in widths of the line: 12, 3 and 24 (from memory). Its dot of half a width is
 * lost on a screen and in a small print, so that the line would pass for a dashed one; ours is two widths long.
 */
const DASHED = [12, 3];
const DOT = 2;
const LONG_DASH_DOT = [24, 3, DOT, 3];
const LONG_DASH_DOUBLE_DOT = [24, 3, DOT, 3, DOT, 3];

/** ISO 128-2, from memory. Ticks are wide so that they can be told from the lines they end (common practice). */
export const LINE_TYPES: Readonly<Record<LineRole, LineType>> = {
  edge: { width: 'wide' },
  floor: { width: 'wide' },
  cut: { width: 'wide' },
  hatch: { width: 'narrow' },
  // Visible edges are wide; behind a section they are narrow, so that what is cut stands out (common practice, no source).
  behind: { width: 'narrow' },
  hidden: { width: 'narrow', dashes: DASHED },
  swing: { width: 'narrow', dashes: LONG_DASH_DOUBLE_DOT },
  before: { width: 'narrow', dashes: LONG_DASH_DOUBLE_DOT },
  dimension: { width: 'narrow' },
  extension: { width: 'narrow' },
  tick: { width: 'wide' },
  leader: { width: 'narrow' },
  grain: { width: 'narrow' },
  centre: { width: 'narrow', dashes: LONG_DASH_DOT },
  frame: { width: 'wide' },
  rule: { width: 'narrow' },
  symbol: { width: 'narrow' },
};

/** The dashes of a line in mm on paper, absent for a continuous line. */
export function dashesMm(role: LineRole, pens: Pens): readonly number[] | undefined {
  const type = LINE_TYPES[role];
  return type.dashes?.map((widths) => widths * pens[type.width]);
}

export function penMm(role: LineRole, pens: Pens): number {
  return pens[LINE_TYPES[role].width];
}
