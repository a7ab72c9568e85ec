import type { Part, Units } from '@fettle/engine';
import { brokenAround } from '../broken-lines.ts';
import type { Chain } from '../dimension-chains.ts';
import { type LaneSide, type Lanes, laneBoxes, layLanes, type PaperChain } from '../dimension-lanes.ts';
import { extentOf, laneGroups, stretched } from '../lane-groups.ts';
import { cleanName, textBox } from '../lettering.ts';
import { type LineRole, type Pens, penMm } from '../line-types.ts';
import type { Projection } from '../parts-in-view.ts';
import { type Box, boxAround, type Group, grown, type Line, line, type Primitive, unionOf } from '../primitives.ts';
import type { Stretch } from '../shapes/seen-edges.ts';
import type { Flat, ViewDirection } from '../shapes/view-direction.ts';
import { figureOnSheet, NEARLY, nearlyWords, realMm } from '../shown-lengths.ts';
import { type Callout, calloutPrimitives, placeCallouts } from './callouts.ts';
import { type Fitting, fittingBoxes, fittingLines, fittingsGroup } from './fittings.ts';
import { type Hatch, hatchesOf, hatchLines } from './hatching.ts';
import { movedBox, movedGroup, onPaper } from './on-paper.ts';
import { otherSpotsOf, spotsOf, standsOn } from './spots.ts';
import type { ViewedPart } from './viewed-parts.ts';

/** A view of some parts with their marks and lanes of dimensions, at a given scale around the origin of the paper. */

export interface ViewPlan {
  /** Farthest first. */
  readonly viewed: readonly ViewedPart[];
  readonly from: ViewDirection;
  /** The space the piece takes up in the picture, in real millimetres. */
  readonly low: Flat;
  readonly high: Flat;
  /** How edges that one sees are drawn. */
  readonly seenAs: LineRole;
  readonly fittings?: readonly Fitting[];
  /** Nearest to the view first. */
  readonly chains: Readonly<Record<LaneSide, readonly Chain[]>>;
  readonly standsOnFloor: boolean;
  /** Outlines of what is taken away and yet belongs to the picture. */
  readonly before?: readonly Stretch[];
  /** What is written at a part, in order of preference. */
  readonly wordsOf: (part: Part) => readonly string[];
  /** Parts that need no mark where it has no room on them. */
  readonly mayGoWithout: (viewed: ViewedPart) => boolean;
}

export interface ComposedPlan {
  readonly groups: readonly Group[];
  readonly extent: Box;
  /** How many marks and figures are missing. */
  readonly crowding: number;
  readonly notes: readonly string[];
}

/** Marks may stand this far outside the view. */
const AROUND_MM = 8;
const FIRST_LANE = 3.2;
const FLOOR_PAST = 2.4;

/** The marks take longest and are the same however a view is dimensioned. */
export interface MarkedView {
  readonly callouts: readonly Callout[];
  readonly leftOut: number;
  readonly hatches: ReadonlyMap<string, Hatch>;
  readonly outside: Box;
}

export function bareView(plan: ViewPlan, factor: number): MarkedView {
  const to = { factor, x: 0, y: 0 };
  const outside = boxAround([onPaper(plan.low, to), onPaper(plan.high, to)]);
  return { callouts: [], leftOut: 0, hatches: new Map(), outside };
}

export function markView(plan: ViewPlan, factor: number): MarkedView {
  const to = { factor, x: 0, y: 0 };
  const { outside } = bareView(plan, factor);
  const hatches = hatchesOf(plan.viewed, plan.from);
  const stretches = (list: readonly Stretch[], role: LineRole): Line[] => list.map((each) => paperLine(each, role, to));
  const wishes = [...plan.viewed].reverse().flatMap((each) => {
    const spots = spotsOf(each, plan.viewed, plan.from, to);
    if (spots.length === 0) return [];
    const words = plan.wordsOf(each.part);
    const otherSpots = () => otherSpotsOf(each, plan.viewed, plan.from, to);
    const holds = standsOn(each, plan.viewed, plan.from, to);
    return [{ id: each.part.id, words, spots, otherSpots, holds, each }];
  });
  const room = {
    within: grown(outside, AROUND_MM),
    taken: plan.standsOnFloor
      ? [{ left: outside.left - 99, right: outside.right + 99, top: outside.bottom - 0.1, bottom: outside.bottom + 99 }]
      : [],
    firm: plan.viewed.flatMap(({ cut, seen }) => [
      ...stretches(cut?.outline ?? [], 'cut'),
      ...(plan.seenAs === 'edge' ? stretches(seen, 'edge') : []),
    ]),
    soft: plan.viewed
      .flatMap(({ seen, hidden }) => [
        ...(plan.seenAs === 'edge' ? [] : stretches(seen, plan.seenAs)),
        ...stretches(hidden, 'hidden'),
      ])
      .concat(fittingLines(plan.fittings ?? [], to)),
  };
  const { placed, leftOut } = placeCallouts(
    wishes.map((wish) => ({ ...wish, mustStandOn: plan.mayGoWithout(wish.each) })),
    room,
  );
  return { callouts: placed, leftOut: leftOut.length, hatches, outside };
}

export interface PlanWishes {
  readonly roomWide: number;
  readonly roomHigh: number;
  readonly mostLanes: number;
  readonly figures: 'lying' | 'along';
}

export function composePlan(
  plan: ViewPlan,
  units: Units,
  factor: number,
  pens: Pens,
  wishes: PlanWishes,
  marked: MarkedView,
): ComposedPlan {
  const { outside, callouts } = marked;
  const marks = callouts.map(({ text }) => textBox(text));
  const to = { factor, x: 0, y: 0 };
  const fittings = plan.fittings ?? [];
  const around = unionOf([outside, ...marks, ...fittingBoxes(fittings, to)]) ?? outside;
  const lanes = layAround(plan, units, factor, wishes, outside, around);
  const writing = [...marks, ...lanes.flatMap(([, laid]) => laneBoxes(laid))];
  // Drawn only where it is wanted: several scales are tried for one that fits.
  const draw = (): readonly Group[] => [
    {
      kind: 'group',
      id: 'outside',
      name: 'outside',
      children: [{ kind: 'rectangle', surface: 'outside', box: outside }],
    },
    ...(plan.standsOnFloor ? [floorOf(outside)] : []),
    ...(plan.before === undefined || plan.before.length === 0 ? [] : [beforeOf(plan.before, to, writing)]),
    {
      kind: 'group',
      id: 'parts',
      name: 'parts',
      children: plan.viewed.map((each) => partGroup(each, plan, to, pens, marked, writing)),
    },
    ...(fittings.length === 0 ? [] : [fittingsGroup(fittings, to, writing)]),
    {
      kind: 'group',
      id: 'dimensions',
      name: 'dimensions',
      children: lanes.flatMap(([side, laid]) => laneGroups(side, laid, writing)),
    },
  ];
  const figures = lanes.reduce((sum, [, laid]) => sum + laid.leftOut, 0);
  const chains = sides.reduce((sum, side) => sum + Math.max(0, plan.chains[side].length - wishes.mostLanes), 0);
  const writesNearly = lanes.some(([, laid]) => laid.texts.some(({ text }) => text.startsWith(NEARLY)));
  return {
    get groups() {
      return draw();
    },
    extent: extentOf(around, writing, lanes),
    crowding: 2 * (marked.leftOut + figures + chains),
    notes: notesOf(marked.leftOut, figures, chains, writesNearly ? nearlyWords(units) : undefined),
  };
}

function beforeOf(stretches: readonly Stretch[], to: Projection, writing: readonly Box[]): Group {
  const children = stretches.flatMap((stretch) => brokenAround(paperLine(stretch, 'before', to), writing));
  return { kind: 'group', id: 'before', name: 'before', children };
}

const sides = ['left', 'right', 'above', 'below'] as const;

function layAround(
  plan: ViewPlan,
  units: Units,
  factor: number,
  { roomWide, roomHigh, mostLanes, figures }: PlanWishes,
  outside: Box,
  around: Box,
): readonly (readonly [LaneSide, Lanes])[] {
  const chainsOf = (side: LaneSide): PaperChain[] =>
    plan.chains[side].slice(0, mostLanes).map((chain) => paperChain(chain, side, units, factor));
  const [low, high] = stretched(
    outside.top,
    outside.bottom,
    Math.min(roomHigh - 50, outside.bottom - outside.top + 40),
  );
  const standing = (side: 'left' | 'right'): Lanes =>
    layLanes(chainsOf(side), {
      side,
      edge: outside[side],
      clear: FIRST_LANE + (side === 'left' ? outside.left - around.left : around.right - outside.right),
      low,
      high,
      figures,
    });
  const left = standing('left');
  const right = standing('right');
  const writing = [...laneBoxes(left), ...laneBoxes(right)];
  const lying = (side: 'above' | 'below'): Lanes => {
    const [leftmost, rightmost] = stretched(outside.left, outside.right, roomWide - 2);
    const past = writing.filter((box) => (side === 'above' ? box.top < around.top : box.bottom > around.bottom));
    // Beside what reaches past the view there is room enough in most cases; else the lanes begin beyond it.
    const low = Math.max(leftmost, ...past.filter((box) => box.left < outside.left).map((box) => box.right + 1));
    const high = Math.min(rightmost, ...past.filter((box) => box.right > outside.right).map((box) => box.left - 1));
    const hasRoom =
      plan.chains[side].every(({ caption }) => caption === '') && high - low > outside.right - outside.left + 2;
    const clear = hasRoom ? around : (unionOf([around, ...writing]) ?? around);
    return layLanes(chainsOf(side), {
      side,
      edge: side === 'above' ? outside.top : outside.bottom,
      clear: FIRST_LANE + (side === 'above' ? outside.top - clear.top : clear.bottom - outside.bottom),
      low: hasRoom ? low : leftmost,
      high: hasRoom ? high : rightmost,
      figures: 'along',
    });
  };
  return [
    ['above', lying('above')],
    ['right', right],
    ['below', lying('below')],
    ['left', left],
  ];
}

function paperChain(chain: Chain, side: LaneSide, units: Units, factor: number): PaperChain {
  const isUpright = side === 'left' || side === 'right';
  return {
    id: chain.id,
    caption: cleanName(chain.caption),
    stretches: chain.stretches.map(({ start, end }) => {
      const figure = figureOnSheet(end.minus(start), units);
      const [from, to] = [realMm(start) * factor, realMm(end) * factor];
      return isUpright ? { from: -to, to: -from, figure } : { from, to, figure };
    }),
  };
}

function floorOf({ left, right, bottom }: Box): Group {
  const floor = line('floor', left - FLOOR_PAST, bottom, right + FLOOR_PAST, bottom);
  return { kind: 'group', id: 'floor', name: 'floor', children: [floor] };
}

export function paperLine({ from, to: end }: Stretch, role: LineRole, to: Projection): Line {
  return { kind: 'line', role, from: onPaper(from, to), to: onPaper(end, to) };
}

/** Shorter than this on paper is a speck. */
const SPECK_MM = 0.35;

function partGroup(
  viewed: ViewedPart,
  plan: ViewPlan,
  to: Projection,
  pens: Pens,
  { hatches, callouts }: MarkedView,
  writing: readonly Box[],
): Group {
  const { part, cut, areas, seen, hidden } = viewed;
  const children: Primitive[] = areas.map(({ outline }) => ({
    kind: 'area',
    surface: 'wood',
    points: outline.map((point) => onPaper(point, to)),
  }));
  const drawn = (list: readonly Stretch[], role: LineRole): Line[] =>
    list
      .map((stretch) => paperLine(stretch, role, to))
      .filter(({ from, to: end }) => Math.hypot(end.x - from.x, end.y - from.y) >= SPECK_MM)
      .flatMap((each) => brokenAround(each, writing));
  children.push(...drawn(hidden, 'hidden'), ...drawn(seen, plan.seenAs));
  const hatch = hatches.get(part.id);
  if (cut !== undefined && hatch !== undefined) {
    const pen = penMm('cut', pens);
    children.push(...hatchLines(viewed, hatch, to, pen).flatMap((each) => brokenAround(each, writing)));
    children.push(...cutOutline(viewed, to, pen));
  }
  const callout = callouts.find(({ id }) => id === part.id);
  if (callout !== undefined) children.push(...calloutPrimitives(callout));
  return {
    kind: 'group',
    id: `part-${part.id}`,
    name: cut === undefined ? `part ${part.role}` : `part cut ${part.role}`,
    part: { id: part.id, origin: part.origin, label: `${cleanName(part.label)}, mark ${cleanName(part.mark)}` },
    children,
  };
}

/** The pen stays inside the wood, so that the outer border of the ink is the true edge and narrow gaps stay clear. */
function cutOutline({ cut }: ViewedPart, to: Projection, pen: number): readonly Line[] {
  if (cut === undefined) return [];
  const box = boxAround(cut.pieces.flat().map((point) => onPaper(point, to)));
  const inset = Math.min(pen / 2, (box.right - box.left) / 2, (box.bottom - box.top) / 2);
  return cut.outline.map((stretch): Line => {
    const { from, to: end } = paperLine(stretch, 'cut', to);
    const length = Math.hypot(end.x - from.x, end.y - from.y) || 1;
    // The wood lies to the left as one goes along; on paper y runs downwards.
    const by = { x: ((end.y - from.y) / length) * inset, y: (-(end.x - from.x) / length) * inset };
    return {
      kind: 'line',
      role: 'cut',
      from: { x: from.x + by.x, y: from.y + by.y },
      to: { x: end.x + by.x, y: end.y + by.y },
    };
  });
}

function notesOf(marks: number, figures: number, chains: number, nearly: string | undefined): readonly string[] {
  const counted = (count: number, one: string, many: string): string[] =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  const left = [
    ...counted(marks, 'mark', 'marks'),
    ...counted(figures, 'figure', 'figures'),
    ...counted(chains, 'chain of dimensions', 'chains of dimensions'),
  ];
  const notes = [
    ...(nearly === undefined ? [] : [`${NEARLY} ${nearly}.`]),
    ...(left.length === 0 ? [] : [`No room at this scale for ${left.join(', ')}.`]),
  ];
  return notes.length === 0 ? [] : [notes.join(' ')];
}

/** The same view elsewhere on the paper. */
export function movedPlan({ groups, extent, ...rest }: ComposedPlan, x: number, y: number): ComposedPlan {
  return { ...rest, groups: groups.map((group) => movedGroup(group, { x, y })), extent: movedBox(extent, { x, y }) };
}
