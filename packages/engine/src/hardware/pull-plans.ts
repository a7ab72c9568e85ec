import type { FramedDesign } from '../design/construction-design.ts';
import { derive, less, plus } from '../design/derive.ts';
import type { FaceDesign, FrontCell, GroupCell } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { PullsDesign } from '../design/hanging-design.ts';
import type { CarcaseLayout, LaidCell, Rectangle, Span } from '../evaluation.ts';
import { doorFrame, frontDeep } from '../layout/front-thickness.ts';
import { leafId } from '../layout/leaf-ids.ts';
import type { LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { frontWords } from '../parts/face-parts.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { USUAL_THREAD } from '../tables/hanging-habits.ts';
import { fromClosing, upFrom, usual } from './pull-places.ts';
import { type PullMiddle, type SeatedPull, seatsOf } from './pull-seats.ts';

/**
 * Where the pulls of a front sit, and what their screws go through. Drawn, listed and checked from here alone. Knows
 * nothing of findings.
 */
export interface PullPlan {
  readonly cell: FrontCell;
  readonly group?: GroupCell;
  readonly pulls: PullsDesign;
  /** The fronts it is on: two where it is shared. */
  readonly fronts: readonly FrontWithPull[];
  /** 'drawer front "cards"' */
  readonly label: string;
  /** Middles, from left to right: from the left edge of the first front, and up from its lower edge. */
  readonly middles: readonly PullMiddle[];
  readonly stands: 'upright' | 'level';
  readonly deep: Span;
  /** Wood between the pull and the heads of its screws; absent where it lies in a recess. */
  readonly through?: Figure;
  /** What screws of the right length measure. */
  readonly wantedScrew?: Figure;
  readonly thread: Figure;
  /** Width of the stiles, of a door that is made as a frame. */
  readonly stile?: Figure;
}

export interface FrontWithPull {
  readonly id: string;
  readonly at: Rectangle;
  /** The edge that it opens at; of a drawer front there is none. */
  readonly closing?: 'left' | 'right';
}

const half = Rational.of(1, 2);

/** For every front that has pulls and whose way of opening is known. */
export function planPulls(
  face: FaceDesign,
  layout: CarcaseLayout,
  root: LaidCell,
  parts: readonly UnmarkedPart[],
): readonly PullPlan[] {
  const plans: PullPlan[] = [];
  const visit = (laid: LaidCell, group: GroupCell | undefined): void => {
    const { cell } = laid;
    if (cell.kind === 'row' || cell.kind === 'stack') {
      for (const inner of laid.cells) visit(inner, cell);
      return;
    }
    for (const inner of laid.cells) visit(inner, undefined);
    if (cell.kind !== 'front') return;
    const pulls = cell.pulls ?? (cell.what === 'false-front' ? undefined : face.pulls);
    if (pulls === undefined) return;
    const fronts = frontsOf(laid, cell);
    const deep = frontDeep(cell, face, layout);
    const pairs = pulls.isShared && fronts.length === 2 ? [fronts] : fronts.map((front) => [front]);
    for (const on of pairs) {
      const { unit, aboveFloor } = layout;
      const framed = doorFrame(cell, face);
      const plan = planOn(on, { cell, group, pulls, deep, parts, unit, aboveFloor, framed });
      if (plan !== undefined) plans.push(plan);
    }
  };
  visit(root, undefined);
  return plans;
}

function frontsOf({ leaves }: LaidCell, cell: FrontCell): readonly FrontWithPull[] {
  return leaves.flatMap((at, index) => {
    if (!at.x.size.length.isPositive() || !at.y.size.length.isPositive()) return [];
    const id = leafId(cell, leaves.length, index);
    if (cell.what !== 'door') return [{ id, at }];
    const hung = leaves.length > 1 ? (index === 0 ? 'left' : 'right') : cell.hingeSide;
    return hung === undefined ? [] : [{ id, at, closing: hung === 'left' ? ('right' as const) : ('left' as const) }];
  });
}

export interface FrontFacts {
  readonly cell: FrontCell;
  readonly group: GroupCell | undefined;
  readonly pulls: PullsDesign;
  readonly deep: Span;
  readonly parts: readonly UnmarkedPart[];
  readonly unit: LengthUnit;
  /** Of a piece that hangs. */
  readonly aboveFloor: Figure | undefined;
  /** Of a door that is made as a frame. */
  readonly framed: FramedDesign | undefined;
}

function planOn(fronts: readonly FrontWithPull[], facts: FrontFacts): PullPlan | undefined {
  const [first, second] = fronts;
  if (first === undefined) return undefined;
  const { cell, group, pulls, deep, unit } = facts;
  const stands = pulls.stands ?? (cell.what === 'door' && second === undefined ? 'upright' : 'level');
  const up = upFrom(first, facts, stands);
  const thread =
    pulls.entry.thread ??
    usual(USUAL_THREAD, unit, '3/8"', '10 mm', (size) => `threads of pulls are about ${size} deep`);
  const middles = acrossOf(fronts, facts).map((across) => ({ across, up }));
  const through =
    pulls.entry.letIn === undefined ? throughWood(facts, { fronts, pulls, cell, stands }, middles) : undefined;
  const hand =
    cell.what === 'door' && cell.leaves === 2 && second === undefined
      ? `${first.closing === 'right' ? 'left' : 'right'} `
      : '';
  return {
    cell,
    ...(group === undefined ? {} : { group }),
    pulls,
    fronts,
    label: `${hand}${frontWords(cell.what)}${cell.name === undefined ? '' : ` "${cell.name}"`}`,
    middles,
    stands,
    deep,
    thread,
    ...(facts.framed === undefined ? {} : { stile: facts.framed.stiles }),
    ...(through === undefined
      ? {}
      : {
          through,
          wantedScrew: derive('screws that fill the thread', [
            plus('wood between the pull and the screw heads', through),
            plus('depth of the thread', thread),
          ]),
        }),
  };
}

/** From the left edge of the first front. */
function acrossOf(fronts: readonly FrontWithPull[], facts: FrontFacts): readonly Figure[] {
  const { cell, pulls } = facts;
  const [first, second] = fronts as readonly [FrontWithPull, FrontWithPull?];
  const width = first.at.x.size;
  if (second !== undefined) {
    return [
      derive('in the middle of the gap between the two doors', [
        plus('where the right door begins', second.at.x.start, half),
        plus('where the left door ends', first.at.x.end, half),
        less('where the left door begins', first.at.x.start),
      ]),
    ];
  }
  if (first.closing !== undefined) {
    const from = fromClosing(facts);
    return [
      first.closing === 'left'
        ? derive('from the closing edge', [plus('from the closing edge to the middle of the pull', from)])
        : derive('from the closing edge', [
            plus('width of the door', width),
            less('from the closing edge to the middle of the pull', from),
          ]),
    ];
  }
  const count = cell.what === 'door' ? 1 : pulls.countEach;
  return Array.from({ length: count }, (_, at) => {
    if (count === 1) return derive('in the middle of the front', [plus('width of the front', width, half)]);
    if (pulls.fromEdge === undefined) {
      return derive('in the middle of its share of the front, common practice', [
        plus('width of the front', width, Rational.of(2 * at + 1, 2 * count)),
      ]);
    }
    const share = Rational.of(at, count - 1);
    return derive('evenly between the outermost', [
      plus('width of the front', width, share),
      plus('from an end to the outermost', pulls.fromEdge, Rational.one.minus(share.times(2))),
    ]);
  });
}

/** The front itself, or what of its frame the screws go through, and the front of the box where that lies behind it. */
function throughWood({ cell, deep, parts }: FrontFacts, pull: SeatedPull, middles: readonly PullMiddle[]): Figure {
  const box = cell.what === 'drawer' ? parts.find((part) => part.id === `${cell.id}/box-front`) : undefined;
  const [seat] = middles.flatMap((middle) => seatsOf(pull, middle, parts)).filter(({ part }) => part !== box);
  return derive('what the screws go through', [
    plus('thickness of the front', seat?.part.thickness ?? deep.size),
    ...(box === undefined ? [] : [plus('thickness of the box front', box.thickness)]),
  ]);
}
