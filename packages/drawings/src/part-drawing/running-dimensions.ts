import { groupedBy, Length, marksFromBaseline, type Solid, type Units } from '@fettle/engine';
import { evenly } from '../dimension-lanes.ts';
import { centredText, LETTER_HEIGHTS_MM, textBox, textDepth, textWidth } from '../lettering.ts';
import { type Box, boxesOverlap, grown, line, type Point, type Primitive, type Text } from '../primitives.ts';
import { figureOnSheet, isInch, NEARLY, realMm } from '../shown-lengths.ts';
import { spread } from '../spread.ts';
import type { Local, PartFrame, PlacedCut } from './part-frame.ts';

/**
 * Running dimensions: every place is measured from one and the same end or edge, so that no error adds up, and what is
 * shown are marks of the ruler from that baseline (superimposed running dimensioning of ISO 129-1, from memory).
 */

/**
 * Where cuts begin and end along one size of the part, and the middles of holes, each place once; the ends of the wood itself
 * are left out.
 */
export function placesAlong(frame: PartFrame, local: Local): readonly Length[] {
  const places: Length[] = [];
  for (const cut of withoutMiddleOfRows(frame.cuts)) {
    // What goes all around an end, such as a shoulder, still tells how far it reaches along the part.
    for (const place of placesOf(cut, frame, local)) {
      const isEnd = place.isZero() || place.equals(frame.size[local]);
      if (!isEnd && !places.some((known) => known.equals(place))) places.push(place);
    }
  }
  return places.sort((a, b) => a.compare(b));
}

/** Of a row of pin holes the first and the last are dimensioned: how far they are apart is told in words. */
function withoutMiddleOfRows(cuts: readonly PlacedCut[]): readonly PlacedCut[] {
  const rows = groupedBy(
    cuts.filter(({ feature }) => feature.kind === 'pin-hole'),
    ({ across }) => across.from.exactInches,
  );
  const between = new Set(
    [...rows.values()].flatMap((row) => [...row].sort((a, b) => a.along.from.compare(b.along.from)).slice(1, -1)),
  );
  return cuts.filter((cut) => !between.has(cut));
}

/** How deep a hole goes is told in words; a drill is set on its middle. What slopes is measured on the face that is drawn. */
function placesOf(cut: PlacedCut, frame: PartFrame, local: Local): readonly Length[] {
  const { solid } = cut.feature;
  const reach = cut[local];
  if (solid.kind === 'convex') return placesOnFace(solid, cut, frame, local);
  if (solid.kind !== 'cylinder') return [reach.from, reach.to];
  if (solid.axis === frame[local]) return [];
  // Of a slot one marks both ends.
  const isSlot = solid.sweptTo !== undefined && !reach.to.minus(reach.from).equals(solid.radius.times(2));
  return isSlot ? [reach.from, reach.to] : [reach.from.plus(reach.to).dividedBy(2)];
}

function placesOnFace(
  { corners }: Extract<Solid, { readonly kind: 'convex' }>,
  cut: PlacedCut,
  { face, thin, part, ...frame }: PartFrame,
  local: Local,
): readonly Length[] {
  const reach = cut[local];
  if (local === 'thin') return [reach.from, reach.to];
  const surface = face.startsWith('-') ? part.blank[thin].start.length : part.blank[thin].end.length;
  const start = part.blank[frame[local]].start.length;
  const places = corners
    .filter((corner) => corner[thin].equals(surface))
    .map((corner) => corner[frame[local]].minus(start));
  const [first, ...others] = places;
  if (first === undefined) return [reach.from, reach.to];
  const from = others.reduce((least, place) => least.min(place), first);
  const to = others.reduce((most, place) => most.max(place), first);
  return [from.max(reach.from), to.min(reach.to)];
}

/** In inches as marks of the ruler from the baseline, and what is not on a mark says so; in metric units as they are. */
export function runningFigures(places: readonly Length[], units: Units): readonly string[] {
  if (!isInch(units)) return places.map((place) => figureOnSheet(place, units));
  const ruler = Length.of(units.ruler, units.unit);
  const steps = places.map((place, at) => place.minus(places[at - 1] ?? Length.zero));
  return marksFromBaseline(steps, ruler).map((mark, at) => {
    const place = places[at] ?? mark;
    const words = figureOnSheet(mark, units);
    return mark.equals(place) ? words : `${NEARLY} ${words}`;
  });
}

const HEIGHT = LETTER_HEIGHTS_MM.small;
const DEPTH = textDepth(HEIGHT);
/** From one figure to the next, in mm on paper. */
export const RUNNING_PITCH = DEPTH + 0.4;
const FIRST = 2.5;
const KINK = 3.2;
/** Of the circle that says from where a row is measured. */
const DOT = 1;
/** Between the circle and its words, and between them and other lettering. */
const CLEAR = 0.9;
const TICK = 0.75;

export interface RunningBlock {
  readonly primitives: readonly Primitive[];
  readonly boxes: readonly Box[];
  /** From the edge of the view to the far end of the figures. */
  readonly depth: number;
  readonly leftOut: number;
}

export interface RunningPlace {
  /** On paper: the edge of the view that the dimensions hang from. */
  readonly edge: number;
  /** The baseline on paper, and which way places run from it: 1 to the right or downwards, -1 the other way. */
  readonly base: number;
  readonly way: 1 | -1;
  readonly factor: number;
  /** How far figures may be moved. */
  readonly low: number;
  readonly high: number;
}

/** Below a view, figures turned upwards; places run from one of its ends. */
export function runningBelow(places: readonly Length[], figures: readonly string[], at: RunningPlace): RunningBlock {
  return running(places, figures, at, 'below');
}

/** To the left of a view; places run upwards from its foot. */
export function runningLeft(places: readonly Length[], figures: readonly string[], at: RunningPlace): RunningBlock {
  return running(places, figures, at, 'left');
}

/** The room that `nameOfBase` takes to the right of the baseline, in mm on paper. */
export function roomForBase(words: string): number {
  return DOT + 2 * CLEAR + textWidth(words, HEIGHT);
}

/**
 * From which end a row is measured, beside its circle: written where that end lies to the right, or one marks out from the
 * left as always. To the right of all figures of the row, and lowered until it is clear of what else is written there.
 */
export function nameOfBase(
  words: string,
  { edge, base }: Pick<RunningPlace, 'edge' | 'base'>,
  figures: readonly Box[],
  others: readonly Box[],
): Text {
  const left = Math.max(base + DOT, ...figures.map(({ right }) => right)) + CLEAR;
  const height = HEIGHT;
  const lies = { role: 'caption', text: words, height, runs: 'across', anchor: 'start' } as const;
  const reach = grown(textBox({ kind: 'text', ...lies, at: { x: left, y: 0 } }), CLEAR / 2);
  const isFree = (y: number): boolean =>
    !others.some((other) => boxesOverlap({ ...reach, top: reach.top + y, bottom: reach.bottom + y }, other));
  const level = centredText({ ...lies, text: words }, { x: left, y: edge + FIRST }).at.y;
  const steps = Array.from({ length: 12 }, (_, at) => level + at / 2);
  return { kind: 'text', ...lies, at: { x: left, y: steps.find(isFree) ?? level } };
}

function running(
  places: readonly Length[],
  figures: readonly string[],
  { edge, base, way, factor, low, high }: RunningPlace,
  side: 'below' | 'left',
): RunningBlock {
  if (places.length === 0) return { primitives: [], boxes: [], depth: 0, leftOut: 0 };
  const all = places
    .map((place, index) => ({ at: base + way * realMm(place) * factor, figure: figures[index] ?? '' }))
    .sort((a, b) => a.at - b.at);
  const kept = evenly(all, Math.max(1, Math.floor((high - low) / RUNNING_PITCH)));
  const middles = spread(
    kept.map(({ at }) => ({ centre: at, size: RUNNING_PITCH })),
    low,
    high,
  );
  const paper = (along: number, out: number): Point =>
    side === 'below' ? { x: along, y: edge + out } : { x: edge - out, y: along };
  const lineOut = FIRST;
  const figureOut = lineOut + KINK;
  const ends = [base, ...all.map(({ at }) => at)];
  const joined = (from: Point, to: Point, role: 'dimension' | 'extension' | 'leader'): Primitive =>
    line(role, from.x, from.y, to.x, to.y);
  const texts = kept.map(({ figure }, index): Text => {
    const centre = paper(middles[index] ?? 0, figureOut);
    const runs = side === 'below' ? 'upwards' : 'across';
    return { ...centredText({ role: 'figure', text: figure, height: HEIGHT, runs }, centre), anchor: 'end' };
  });
  const primitives: Primitive[] = [
    joined(paper(Math.min(...ends), lineOut), paper(Math.max(...ends), lineOut), 'dimension'),
    { kind: 'circle', role: 'dimension', centre: paper(base, lineOut), radius: DOT, filled: false },
    ...all.flatMap(({ at }): Primitive[] => {
      const middle = paper(at, lineOut);
      return [
        joined(paper(at, 0.8), middle, 'extension'),
        line('tick', middle.x - TICK, middle.y + TICK, middle.x + TICK, middle.y - TICK),
      ];
    }),
    ...kept.map(({ at }, index) => joined(paper(at, lineOut), paper(middles[index] ?? at, figureOut - 0.5), 'leader')),
    ...texts,
  ];
  const longest = Math.max(...kept.map(({ figure }) => textWidth(figure, HEIGHT)));
  return {
    primitives,
    boxes: texts.map((text) => boxOfText(text)),
    depth: figureOut + longest,
    leftOut: all.length - kept.length,
  };
}

function boxOfText(text: Text): Box {
  const width = textWidth(text.text, text.height);
  const { x, y } = text.at;
  return text.runs === 'upwards'
    ? { left: x - DEPTH, right: x + 1, top: y, bottom: y + width }
    : { left: x - width, right: x, top: y - DEPTH, bottom: y + 1 };
}
