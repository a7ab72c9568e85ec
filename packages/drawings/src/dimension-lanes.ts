import { centredText, LETTER_HEIGHTS_MM, textBox, textDepth, textWidth } from './lettering.ts';
import { type Box, type Dimension, type Line, line, type Point, type Text } from './primitives.ts';
import { spread } from './spread.ts';

/**
 * Lays chains of dimensions in lanes beside a view, one lane outside the other. A lane is as deep as its lettering
 * needs, so lanes never overlap; inside a lane figures that are too long for their stretch go to the far side of the
 * line and are moved apart. Figures stand above their line and are read from the bottom or the right (ISO 129-1, from
 * memory). Knows paper only.
 */

export type LaneSide = 'above' | 'right' | 'below' | 'left';

export interface PaperChain {
  readonly id: string;
  readonly caption: string;
  readonly stretches: readonly { readonly from: number; readonly to: number; readonly figure: string }[];
}

export interface LanePlace {
  readonly side: LaneSide;
  /** Edge of the view on this side, from which extension lines start. */
  readonly edge: number;
  /** How far from the edge the first lane may begin. */
  readonly clear: number;
  /** How far figures may be moved along the lane. */
  readonly low: number;
  readonly high: number;
  /** How figures too long for their stretch stand: across a line that stands, or along theirs where they stay near. */
  readonly figures: 'lying' | 'along';
}

export interface Lane {
  readonly id: string;
  readonly dimensions: readonly Dimension[];
  readonly caption?: Text;
}

export interface Lanes {
  readonly lanes: readonly Lane[];
  /** Still unbroken: the caller opens them where they meet lettering. */
  readonly extensions: readonly Line[];
  readonly texts: readonly Text[];
  /** Distance from the edge to the far end of the last lane. */
  readonly reach: number;
  /** Figures for which there was no room at all. */
  readonly leftOut: number;
}

const HEIGHT = LETTER_HEIGHTS_MM.small;
const DEPTH = textDepth(HEIGHT);
/** Between a line and the figure that stands on it, and between one lane and the next. */
const ON_LINE = 0.5;
const BETWEEN_LANES = 2;
/** From a line to figures that had to move to its far side. */
const FAR = 1.9;
const TICK = 0.75;
const HAIR = 0.6;
/** Extension lines begin a little off the view and end a little beyond the line. */
const EXTENSION_GAP = 1;
const EXTENSION_PAST = 1.4;
/** Between the end of a chain and its caption. */
const CAPTION_OFF = 1.6;
/** A figure that would have to move farther than this is turned across its line instead. */
const FARTHEST_MOVE = 14;

interface FarFigure {
  readonly index: number;
  readonly middle: number;
  readonly figure: string;
}

interface FarRow {
  readonly turned: boolean;
  readonly depth: number;
  readonly placed: readonly { readonly index: number; readonly at: number }[];
}

export function layLanes(chains: readonly PaperChain[], place: LanePlace): Lanes {
  const upright = place.side === 'left' || place.side === 'right';
  /** Whether the figures on the line stand on the side away from the view. */
  const figuresOutside = place.side === 'above' || place.side === 'left';
  const lanes: Lane[] = [];
  const texts: Text[] = [];
  const reaches = new Map<number, number>();
  let cursor = place.clear;
  let leftOut = 0;
  const joints = sharedEnds(chains);
  for (const chain of chains) {
    const far = farRow(chain, place);
    const onLine = ON_LINE + DEPTH;
    const farDepth = far === undefined ? 0 : FAR + far.depth;
    const lineAt = cursor + (figuresOutside ? farDepth : onLine);
    const inward = figuresOutside ? 1 : -1;
    const figureAt = lineAt + inward * (ON_LINE + DEPTH / 2);
    const farAt = far === undefined ? lineAt : lineAt - inward * (FAR + far.depth / 2);
    const farEdge = lineAt - inward * FAR;
    cursor = lineAt + (figuresOutside ? onLine : Math.max(farDepth, EXTENSION_PAST)) + BETWEEN_LANES;
    const dimensions = chain.stretches.map((stretch, index): Dimension => {
      const middle = (stretch.from + stretch.to) / 2;
      const moved = far?.placed.find((placed) => placed.index === index);
      const onTheLine = !isFar(stretch);
      if (!onTheLine && moved === undefined) leftOut += 1;
      const figure = onTheLine
        ? figureText(stretch.figure, upright, toPaper(place, middle, figureAt))
        : moved === undefined
          ? undefined
          : farText(stretch.figure, far?.turned === true, place, moved.at, farAt, farEdge);
      if (figure !== undefined) texts.push(figure);
      const needsLeader = moved !== undefined && Math.abs(moved.at - middle) > 0.6;
      const ends = [joints.get(stretch.from) ?? stretch.from, joints.get(stretch.to) ?? stretch.to];
      for (const t of ends) {
        reaches.set(t, Math.max(reaches.get(t) ?? 0, lineAt + EXTENSION_PAST));
      }
      return {
        kind: 'dimension',
        along: upright ? 'y' : 'x',
        line: between('dimension', toPaper(place, stretch.from, lineAt), toPaper(place, stretch.to, lineAt)),
        ticks: ends.map((t) => tick(toPaper(place, t, lineAt))),
        ...(figure === undefined ? {} : { figure }),
        ...(needsLeader
          ? {
              leader: {
                kind: 'polyline',
                role: 'leader',
                points: [toPaper(place, middle, lineAt), toPaper(place, moved.at, farEdge)],
                closed: false,
              },
            }
          : {}),
      };
    });
    const caption = captionOf(chain, place, figureAt);
    if (caption !== undefined) texts.push(caption);
    lanes.push({ id: chain.id, dimensions, ...(caption === undefined ? {} : { caption }) });
  }
  const extensions = [...reaches].map(([t, reach]) =>
    between('extension', toPaper(place, t, EXTENSION_GAP), toPaper(place, t, reach)),
  );
  return { lanes, extensions, texts, reach: cursor, leftOut };
}

/** How far from where the first may begin so many lanes reach at least, however long their figures are; 0 for none. */
export function leastReach(lanes: number, side: LaneSide): number {
  if (lanes === 0) return 0;
  const onLine = ON_LINE + DEPTH;
  const isOutside = side === 'above' || side === 'left';
  const first = isOutside ? 0 : onLine;
  const next = onLine + BETWEEN_LANES + (isOutside ? 0 : EXTENSION_PAST);
  return first + (lanes - 1) * next + EXTENSION_PAST;
}

/** How far the caption of a chain beside a view reaches beyond the chain's lower end. */
export function captionReach(caption: string): number {
  return caption === '' ? 0 : textWidth(caption, HEIGHT) + CAPTION_OFF;
}

/**
 * Ends that are a hair's breadth apart, as on both sides of a gap between fronts, share one extension line and one
 * tick in their middle; two would run together into a blot.
 */
function sharedEnds(chains: readonly PaperChain[]): ReadonlyMap<number, number> {
  const ends = [...new Set(chains.flatMap((chain) => chain.stretches.flatMap(({ from, to }) => [from, to])))];
  ends.sort((a, b) => a - b);
  const shared = new Map<number, number>();
  let group: number[] = [];
  const close = (): void => {
    const middle = ((group[0] ?? 0) + (group[group.length - 1] ?? 0)) / 2;
    for (const end of group) shared.set(end, middle);
    group = [];
  };
  for (const end of ends) {
    if (group.length > 0 && end - (group[0] ?? end) > HAIR) close();
    group.push(end);
  }
  if (group.length > 0) close();
  return shared;
}

/** Boxes of everything written in some lanes. */
export function laneBoxes(lanes: Lanes): readonly Box[] {
  return lanes.texts.map(textBox);
}

function isFar(stretch: PaperChain['stretches'][number]): boolean {
  return textWidth(stretch.figure, HEIGHT) + 1.4 > stretch.to - stretch.from;
}

/** Figures that do not fit their stretch, moved apart: along the line if that is asked and stays near, else across it. */
function farRow(chain: PaperChain, place: LanePlace): FarRow | undefined {
  const far = chain.stretches
    .map((stretch, index): FarFigure | undefined =>
      isFar(stretch) ? { index, middle: (stretch.from + stretch.to) / 2, figure: stretch.figure } : undefined,
    )
    .filter((figure) => figure !== undefined)
    .sort((a, b) => a.middle - b.middle);
  if (far.length === 0) return undefined;
  const room = place.high - place.low;
  const sizes = far.map((figure) => textWidth(figure.figure, HEIGHT) + 1.6);
  if (place.figures === 'along' && sizes.reduce((sum, size) => sum + size, 0) <= room) {
    const at = spread(
      far.map((figure, index) => ({ centre: figure.middle, size: sizes[index] ?? 0 })),
      place.low,
      place.high,
    );
    const farthest = Math.max(...far.map((figure, index) => Math.abs((at[index] ?? 0) - figure.middle)));
    if (farthest <= FARTHEST_MOVE) {
      return { turned: false, depth: DEPTH, placed: far.map((f, index) => ({ index: f.index, at: at[index] ?? 0 })) };
    }
  }
  const pitch = DEPTH + 0.3;
  const kept = longest(far, chain, Math.max(0, Math.floor(room / pitch)));
  const at = spread(
    kept.map((figure) => ({ centre: figure.middle, size: pitch })),
    place.low,
    place.high,
  );
  return {
    turned: true,
    depth: Math.max(0, ...kept.map((figure) => textWidth(figure.figure, HEIGHT))),
    placed: kept.map((figure, index) => ({ index: figure.index, at: at[index] ?? 0 })),
  };
}

/** The figures of the longest stretches; of equally long ones some spread over the whole. */
function longest(far: readonly FarFigure[], chain: PaperChain, most: number): readonly FarFigure[] {
  if (far.length <= most) return far;
  const lengthOf = ({ index }: FarFigure): number => {
    const stretch = chain.stretches[index];
    return stretch === undefined ? 0 : Math.round((stretch.to - stretch.from) * 1000);
  };
  const lengths = far.map(lengthOf).sort((a, b) => b - a);
  const shortest = lengths[Math.max(0, most - 1)] ?? 0;
  const longer = far.filter((figure) => lengthOf(figure) > shortest);
  const equal = new Set(
    evenly(
      far.filter((figure) => lengthOf(figure) === shortest),
      most - longer.length,
    ),
  );
  return far.filter((figure) => lengthOf(figure) > shortest || equal.has(figure));
}

/** At most `most` of some items, spread over the whole. */
export function evenly<Item>(items: readonly Item[], most: number): readonly Item[] {
  if (items.length <= most) return items;
  return Array.from({ length: most }, (_, at) => items[Math.floor((at * items.length) / most)]).filter(
    (item) => item !== undefined,
  );
}

/** Before the left end of a lane that lies, below the lower end of one that stands. */
function captionOf(chain: PaperChain, place: LanePlace, depth: number): Text | undefined {
  if (chain.caption === '') return undefined;
  const upright = place.side === 'left' || place.side === 'right';
  const half = textWidth(chain.caption, HEIGHT) / 2 + CAPTION_OFF;
  const ends = chain.stretches.flatMap((stretch) => [stretch.from, stretch.to]);
  const at = upright ? Math.max(...ends) + half : Math.min(...ends) - half;
  const runs = upright ? 'upwards' : 'across';
  return centredText({ role: 'caption', text: chain.caption, height: HEIGHT, runs }, toPaper(place, at, depth));
}

function figureText(text: string, upwards: boolean, centre: Point): Text {
  return centredText({ role: 'figure', text, height: HEIGHT, runs: upwards ? 'upwards' : 'across' }, centre);
}

/** A figure on the far side of its line; turned ones begin or end at the line, so that their leaders reach them. */
function farText(
  text: string,
  turned: boolean,
  place: LanePlace,
  along: number,
  middle: number,
  nearLine: number,
): Text {
  const upright = place.side === 'left' || place.side === 'right';
  if (!turned) return figureText(text, upright, toPaper(place, along, middle));
  const centred = figureText(text, !upright, toPaper(place, along, nearLine));
  // Seen from the paper, the far side is below a line that lies and to the right of one that stands, on every side.
  return { ...centred, anchor: upright ? 'start' : 'end' };
}

/** From a place along the lane and a distance from the view to the paper. */
function toPaper(place: LanePlace, along: number, distance: number): Point {
  switch (place.side) {
    case 'above':
      return { x: along, y: place.edge - distance };
    case 'below':
      return { x: along, y: place.edge + distance };
    case 'left':
      return { x: place.edge - distance, y: along };
    case 'right':
      return { x: place.edge + distance, y: along };
    default: {
      const unknown: never = place.side;
      return unknown;
    }
  }
}

function tick(at: Point): Line {
  return line('tick', at.x - TICK, at.y + TICK, at.x + TICK, at.y - TICK);
}

function between(role: 'dimension' | 'extension', from: Point, to: Point): Line {
  return { kind: 'line', role, from, to };
}
