import type { Evaluation, Units } from '@fettle/engine';
import { bayGroups, bayNames } from './bay-names.ts';
import { type Chain, type ElevationChains, elevationChains } from './dimension-chains.ts';
import { type LaneSide, type Lanes, laneBoxes, layLanes, type PaperChain } from './dimension-lanes.ts';
import { deepInside, nearRoom, sidesOfLabels } from './label-places.ts';
import { extentOf, laneGroups, stretched } from './lane-groups.ts';
import { cleanName } from './lettering.ts';
import type { Pens } from './line-types.ts';
import { labelColumn, labelRow, type MovedLabel } from './moved-labels.ts';
import { nearLabels } from './near-labels.ts';
import { leaderTo, letterParts, partGroups, pullGroups } from './part-groups.ts';
import { boxOnPaper, type Projection, type ViewOfParts } from './parts-in-view.ts';
import { type Box, type Group, line, type Primitive, unionOf } from './primitives.ts';
import { figureOnSheet, NEARLY, nearlyWords, realMm } from './shown-lengths.ts';

/**
 * The elevation itself, without sheet: parts, labels and lanes of dimensions around a given place at a given scale.
 */

export interface ComposedView {
  /** The drawing proper, worked out only where it is wanted: several scales are tried for one that fits. */
  draw(): readonly Group[];
  /** Everything that will be drawn. */
  readonly extent: Box;
  readonly pens: Pens;
  /** How many labels and figures are out of their places. */
  readonly crowding: number;
  readonly notes: readonly string[];
  /** What the dimensions on each side measure: 'above and right: fronts; below and left: case'; empty without any. */
  readonly sides: string;
}

export interface Wishes {
  /** What the view may take up, in mm on paper. */
  readonly roomWide: number;
  readonly roomHigh: number;
  /** On each side. */
  readonly mostLanes: number;
  /** Figures too long for their stretch beside lines that stand: lying they read best, along the line they take less room. */
  readonly figures: 'lying' | 'along';
}

export const FIRST_LANE = 3.2;
const FLOOR_PAST = 2.4;

/** What is written inside the view at this scale, and what must go to its edges: the same however it is dimensioned. */
export function letterView(evaluation: Evaluation, view: ViewOfParts, to: Projection) {
  const outside = outsideBox(evaluation, to);
  const lettering = letterParts(view, to);
  const bays = bayNames(evaluation.layout.face, view.parts, to);
  const sides = sidesOfLabels(lettering.moved, outside);
  const near = nearLabels(deepInside(sides, outside), nearRoom(view, bays, lettering, to));
  const isFar = ({ id }: MovedLabel): boolean => !near.zone.placed.some((label) => label.id === id);
  const above = sides.above.filter(isFar);
  const left = sides.left.filter(isFar);
  const right = sides.right.filter(isFar);
  return { lettering, bays, above, left, right, near };
}

export function composeView(
  evaluation: Evaluation,
  view: ViewOfParts,
  to: Projection,
  pens: Pens,
  { roomWide, roomHigh, mostLanes, figures }: Wishes,
  lettered: ReturnType<typeof letterView>,
): ComposedView {
  const outside = outsideBox(evaluation, to);
  const { lettering, bays, above, left, right, near } = lettered;
  const chains = elevationChains(evaluation, mostLanes);
  const units = evaluation.design.units;
  const paper = (axis: 'x' | 'y', list: readonly Chain[]): PaperChain[] =>
    list.map((chain) => {
      const figures = figuresOf(chain, units);
      return {
        id: chain.id,
        caption: cleanName(chain.caption),
        stretches: chain.stretches.map((stretch, at) => {
          const start = realMm(stretch.start) * to.factor;
          const end = realMm(stretch.end) * to.factor;
          const figure = figures[at] ?? '';
          return axis === 'x'
            ? { from: to.x + start, to: to.x + end, figure }
            : { from: to.y - end, to: to.y - start, figure };
        }),
      };
    });

  // What stands beside the piece first: it may reach beyond its top and foot, and what lies above and below gives way.
  const [low, high] = stretched(outside.top, outside.bottom, roomHigh - 62);
  const columns = {
    left: labelColumn(left, 'left', outside, low, high),
    right: labelColumn(right, 'right', outside, low, high),
  };
  const standing = (side: 'left' | 'right', list: readonly Chain[]): Lanes =>
    layLanes(paper('y', list), {
      side,
      edge: side === 'left' ? outside.left : outside.right,
      clear: FIRST_LANE + columns[side].depth,
      low,
      high,
      figures,
    });
  const leftLanes = standing('left', chains.left);
  const rightLanes = standing('right', chains.right);
  const beside =
    unionOf([
      outside,
      ...columns.left.boxes,
      ...columns.right.boxes,
      ...laneBoxes(leftLanes),
      ...laneBoxes(rightLanes),
    ]) ?? outside;

  const [leftmost, rightmost] = stretched(outside.left, outside.right, roomWide - 2);
  const row = labelRow(above, outside, beside.top, leftmost, rightmost);
  const lying = (side: 'above' | 'below', list: readonly Chain[], clear: number): Lanes =>
    layLanes(paper('x', list), {
      side,
      edge: side === 'above' ? outside.top : outside.bottom,
      clear: FIRST_LANE + clear,
      low: leftmost,
      high: rightmost,
      figures: 'along',
    });
  const aboveLanes = lying('above', chains.above, row.depth === 0 ? outside.top - beside.top : row.depth);
  const belowLanes = lying('below', chains.below, beside.bottom - outside.bottom);

  const zones = [columns.left, columns.right, row];
  const lanes: readonly (readonly [LaneSide, Lanes])[] = [
    ['above', aboveLanes],
    ['right', rightLanes],
    ['below', belowLanes],
    ['left', leftLanes],
  ];
  const writing: readonly Box[] = [
    ...lettering.boxes,
    ...bays.names.map((bay) => bay.lettering.box),
    ...zones.flatMap((zone) => zone.boxes),
    ...near.zone.boxes,
    ...lanes.flatMap(([, side]) => laneBoxes(side)),
  ];
  const draw = (): readonly Group[] => [
    {
      kind: 'group',
      id: 'outside',
      name: 'outside',
      children: [{ kind: 'rectangle', surface: 'outside', box: outside }],
    },
    ...(evaluation.design.carcase.hung === undefined ? floorLine(outside) : []),
    {
      kind: 'group',
      id: 'parts',
      name: 'parts',
      children: partGroups(view.parts, to, pens, lettering, zones, writing),
    },
    ...pullGroups(view.pulls, to),
    ...bayGroups(bays),
    ...near.zone.placed.map((label): Group => {
      const children = [...leaderTo(label.leader, writing), label.text];
      return { kind: 'group', id: `label-${label.id}`, name: 'label', children };
    }),
    {
      kind: 'group',
      id: 'dimensions',
      name: 'dimensions',
      children: lanes.flatMap(([side, laid]) => laneGroups(side, laid, writing)),
    },
  ];
  const writesNearly = lanes.some(([, side]) => side.texts.some((text) => text.text.startsWith(NEARLY)));
  const nearly = writesNearly ? nearlyWords(units) : undefined;
  const fronts = frontIds(view);
  const labelsLeftOut = zones.flatMap((zone) => zone.leftOut).length + bays.leftOut;
  const figuresLeftOut = lanes.reduce((sum, [, side]) => sum + side.leftOut, 0);
  return {
    draw,
    extent: extentOf(beside, writing, lanes),
    pens,
    crowding:
      labelsLeftOut * 2 +
      figuresLeftOut * 2 +
      chains.leftOut * 2 +
      lettering.moved.filter(({ id }) => fronts.has(id)).length,
    notes: notesOf(labelsLeftOut, figuresLeftOut, chains.leftOut, lettering.frontsWithoutArrow, nearly),
    sides: sidesWords(chains),
  };
}

const knownFigures = new WeakMap<Chain, readonly string[]>();

/** Of each stretch: the same at every scale that is tried. */
function figuresOf(chain: Chain, units: Units): readonly string[] {
  const known = knownFigures.get(chain);
  if (known !== undefined) return known;
  const figures = chain.stretches.map(({ start, end }) => figureOnSheet(end.minus(start), units));
  knownFigures.set(chain, figures);
  return figures;
}

function outsideBox(evaluation: Evaluation, to: Projection): Box {
  const outside = evaluation.layout.carcase?.outside;
  if (outside === undefined) return { left: to.x, right: to.x, top: to.y, bottom: to.y };
  return boxOnPaper(
    {
      x0: realMm(outside.x.start.length),
      x1: realMm(outside.x.end.length),
      y0: realMm(outside.y.start.length),
      y1: realMm(outside.y.end.length),
    },
    to,
  );
}

function floorLine(outside: Box): readonly Group[] {
  const { left, right, bottom } = outside;
  const lines: Primitive[] = [line('floor', left - FLOOR_PAST, bottom, right + FLOOR_PAST, bottom)];
  return [{ kind: 'group', id: 'floor', name: 'floor', children: lines }];
}

/** Sides that measure the same are told together. */
function sidesWords(chains: ElevationChains): string {
  const sides = new Map<string, string[]>();
  for (const side of ['above', 'right', 'below', 'left'] as const) {
    const drawn = chains[side].flatMap((chain) => chain.measures);
    const what = (['fronts', 'openings', 'case'] as const).filter((kind) => drawn.includes(kind)).join(' and ');
    if (what !== '') sides.set(what, [...(sides.get(what) ?? []), side]);
  }
  return [...sides].map(([what, where]) => `${where.join(' and ')}: ${what}`).join('; ');
}

function frontIds(view: ViewOfParts): ReadonlySet<string> {
  return new Set(view.parts.filter((entry) => entry.isFront).map((entry) => entry.part.id));
}

function notesOf(
  labels: number,
  figures: number,
  chains: number,
  arrows: number,
  nearly: string | undefined,
): readonly string[] {
  const counted = (count: number, one: string, many: string): string[] =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  const left = [
    ...counted(labels, 'label', 'labels'),
    ...counted(figures, 'figure', 'figures'),
    ...counted(chains, 'chain of dimensions', 'chains of dimensions'),
    ...counted(arrows, 'grain arrow', 'grain arrows'),
  ];
  const notes = [
    ...(nearly === undefined ? [] : [`${NEARLY} ${nearly}.`]),
    ...(left.length === 0 ? [] : [`No room at this scale for ${left.join(', ')}.`]),
  ];
  return notes.length === 0 ? [] : [notes.join(' ')];
}
