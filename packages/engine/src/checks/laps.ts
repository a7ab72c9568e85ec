import { type Finding, frontsMeet, lapBeyondEdge, type Mend, type Origin } from '@fettle/findings';
import { derive, given, rootOrigin } from '../design/derive.ts';
import type { Cell, Divider, FaceDesign, FrontCell, FrontFit, GroupCell } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { CarcaseLayout } from '../evaluation.ts';
import { cellWord, plainCellLabel } from '../layout/cell-names.ts';
import { type Edge, edgesAtDivider, lapAt } from '../layout/front-edges.ts';
import { solveFace } from '../layout/solve-face.ts';
import { fitOf, frontsAlong, frontsAtDivider } from '../layout/touching-fronts.ts';
import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { givenAt, isSameOrigin } from './written-sizes.ts';

/**
 * Whether fronts that lap by a written amount find the wood for it: at the edges of the case, and between two of them.
 * Full and half overlay take what there is and cannot go wrong. Each amount is reported once for each way it fails, at
 * the place that has least for it.
 */
export function lapFindings(face: FaceDesign, carcase: CarcaseLayout): readonly Finding[] {
  const parents = parentsOf(face.root);
  const troubles = [...beyondEdges(face, carcase), ...meetings(face)];
  const worst = new Map<string, Trouble>();
  for (const trouble of troubles) {
    const key = JSON.stringify([trouble.kind, rootOrigin(trouble.amount) ?? trouble.front.origin]);
    const known = worst.get(key);
    if (known === undefined || trouble.most.compare(known.most) < 0) worst.set(key, trouble);
  }
  return [...worst.values()].map((trouble) => {
    const mends = lapLess(face, carcase, trouble, troubles);
    const origin = givenAt(trouble.amount) ?? trouble.front.origin;
    return trouble.kind === 'edge'
      ? edgeFinding(trouble, origin, mends, parents)
      : meetingFinding(trouble, origin, mends, parents);
  });
}

type Trouble = EdgeTrouble | MeetingTrouble;

interface TroubleCommon {
  readonly front: FrontCell;
  /** What is written for its lap. */
  readonly amount: Figure;
  /** The amount that would do here; zero or less where none would. */
  readonly most: Length;
}

interface EdgeTrouble extends TroubleCommon {
  readonly kind: 'edge';
  readonly side: 'left' | 'right' | 'top' | 'bottom';
  readonly edge: Figure;
}

interface MeetingTrouble extends TroubleCommon {
  readonly kind: 'meeting';
  readonly divider: Divider;
  readonly other: FrontCell;
  readonly otherLap: Length;
  readonly laps: Length;
}

function amountOf(fit: FrontFit): Figure | undefined {
  if (fit.kind === 'lipped') return fit.lip;
  return fit.kind === 'overlay' && fit.how === 'by' ? fit.by : undefined;
}

function beyondEdges(face: FaceDesign, carcase: CarcaseLayout): readonly EdgeTrouble[] {
  return (['left', 'right', 'top', 'bottom'] as const).flatMap((side) => {
    const edge = carcase.edges[side];
    if (edge === undefined) return [];
    return frontsAlong(face.root, side).flatMap((front): EdgeTrouble[] => {
      const amount = amountOf(fitOf(front, face));
      if (amount === undefined || amount.length.compare(edge.length) <= 0) return [];
      return [{ kind: 'edge', front, amount, most: edge.length, side, edge }];
    });
  });
}

function meetings(face: FaceDesign): readonly MeetingTrouble[] {
  const found: MeetingTrouble[] = [];
  const waiting: Cell[] = [face.root];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    if (cell.kind !== 'row' && cell.kind !== 'stack') continue;
    waiting.push(...cell.cells);
    for (const [at, divider] of cell.dividers.entries()) {
      if (divider.form === 'none') continue;
      const edges = edgesAtDivider(cell, at, face);
      const fronts = frontsAtDivider(cell, at);
      const before = farthest(fronts.before, edges.before, face);
      const after = farthest(fronts.after, edges.after, face);
      if (before === undefined || after === undefined) continue;
      const thickness = divider.material.thickness.length;
      const laps = before.lap.plus(after.lap);
      if (laps.compare(thickness) < 0) continue;
      for (const [one, other] of [
        [before, after],
        [after, before],
      ] as const) {
        if (one.amount === undefined) continue;
        const isBoth = other.amount !== undefined && isOneNumber(one.amount, other.amount);
        const gap = fitOf(one.front, face).gap.length;
        const most = isBoth ? thickness.minus(gap).times(Rational.of(1, 2)) : thickness.minus(gap).minus(other.lap);
        found.push({
          kind: 'meeting',
          front: one.front,
          amount: one.amount,
          most,
          divider,
          other: other.front,
          otherLap: other.lap,
          laps,
        });
        // One number for both is one cause; the first of them stands for it.
        if (isBoth) break;
      }
    }
  }
  return found;
}

/** The overlay or lipped front that laps this edge farthest. */
function farthest(
  fronts: readonly FrontCell[],
  edge: Edge,
  face: FaceDesign,
): { readonly front: FrontCell; readonly lap: Length; readonly amount?: Figure } | undefined {
  let most: { readonly front: FrontCell; readonly lap: Length; readonly amount?: Figure } | undefined;
  for (const front of fronts) {
    const fit = fitOf(front, face);
    if (fit.kind === 'inset') continue;
    const lap = derive('', lapAt(edge, fit)).length;
    const amount = amountOf(fit);
    if (most === undefined || lap.compare(most.lap) > 0)
      most = { front, lap, ...(amount === undefined ? {} : { amount }) };
  }
  return most;
}

function isOneNumber(a: Figure, b: Figure): boolean {
  const [one, other] = [givenAt(a), givenAt(b)];
  return a === b || (one !== undefined && other !== undefined && isSameOrigin(one, other));
}

/** The amount that would do everywhere it counts, if no sum breaks by it. */
function lapLess(
  face: FaceDesign,
  carcase: CarcaseLayout,
  trouble: Trouble,
  troubles: readonly Trouble[],
): readonly Mend[] {
  const at = givenAt(trouble.amount);
  if (at === undefined) return [];
  const limits = troubles.filter((other) => isOneNumber(other.amount, trouble.amount)).map((other) => other.most);
  // Between two fronts of the same amount an edge's own limit may still be too much.
  const to = limits.reduce((least, one) => least.min(one), trouble.most);
  if (!to.isPositive()) return [];
  const changed = withAmount(face, at, to);
  const isClear = beyondEdges(changed, carcase).length + meetings(changed).length < troubles.length;
  if (!isClear || failures(changed, carcase) > failures(face, carcase)) return [];
  return [{ how: 'lap-less', values: { size: to }, changes: [{ kind: 'set-length', at, to }] }];
}

function failures(face: FaceDesign, carcase: CarcaseLayout): number {
  return solveFace(face, carcase).axes.filter(({ result }) => result.kind === 'failed').length;
}

function withAmount(face: FaceDesign, at: Origin, to: Length): FaceDesign {
  const figure = given(to, at);
  const isIt = (amount: Figure): boolean => {
    const place = givenAt(amount);
    return place !== undefined && isSameOrigin(place, at);
  };
  const fitted = (fit: FrontFit): FrontFit => {
    if (fit.kind === 'lipped' && isIt(fit.lip)) return { ...fit, lip: figure };
    if (fit.kind === 'overlay' && fit.how === 'by' && isIt(fit.by)) return { ...fit, by: figure };
    return fit;
  };
  const changed = (cell: Cell): Cell => {
    if (cell.kind === 'row' || cell.kind === 'stack') return { ...cell, cells: cell.cells.map(changed) };
    return cell.kind === 'front' && cell.fit !== undefined ? { ...cell, fit: fitted(cell.fit) } : cell;
  };
  return { ...face, fit: fitted(face.fit), root: changed(face.root) };
}

type Parents = ReadonlyMap<Cell, GroupCell>;

function parentsOf(root: Cell): Parents {
  const parents = new Map<Cell, GroupCell>();
  const waiting: Cell[] = [root];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    if (cell.kind !== 'row' && cell.kind !== 'stack') continue;
    for (const inner of cell.cells) parents.set(inner, cell);
    waiting.push(...cell.cells);
  }
  return parents;
}

function whoIs(cell: Cell, parents: Parents): { readonly name?: string; readonly words: string } {
  const group = parents.get(cell);
  const words = group === undefined ? `the ${cellWord(cell)}` : plainCellLabel(cell, group);
  return cell.name === undefined ? { words } : { name: cell.name, words };
}

function edgeFinding(trouble: EdgeTrouble, origin: Origin, mends: readonly Mend[], parents: Parents): Finding {
  const { amount, edge, side, front } = trouble;
  const edgeAt = rootOrigin(edge);
  return lapBeyondEdge.at(
    origin,
    {
      ...whoIs(front, parents),
      side,
      lap: amount.length,
      edge: edge.length,
      over: amount.length.minus(edge.length),
    },
    {
      related: edgeAt === undefined ? [] : [{ role: 'edge', values: { edge: edge.length }, origin: edgeAt }],
      mends,
    },
  );
}

function meetingFinding(trouble: MeetingTrouble, origin: Origin, mends: readonly Mend[], parents: Parents): Finding {
  const { front, other, otherLap, divider, laps } = trouble;
  const thickness = divider.material.thickness.length;
  return frontsMeet.at(
    origin,
    { ...whoIs(front, parents), laps, thickness, over: laps.minus(thickness).max(Length.zero) },
    {
      related: [
        { role: 'beside', values: { ...whoIs(other, parents), lap: otherLap }, origin: other.origin },
        { role: 'divider', values: { thickness }, origin: divider.origin },
      ],
      mends,
    },
  );
}
