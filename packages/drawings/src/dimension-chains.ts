import type { Evaluation, LaidCell, Length, Part, Span } from '@fettle/engine';
import { FRONTS } from './parts-in-view.ts';

/**
 * Which dimensions an elevation carries, as chains of exact stretches. Above the piece and to its right the fronts,
 * below and to its left the case: the nearest chain the finest, the farthest the whole. Knows nothing of paper.
 */

export interface Stretch {
  readonly start: Length;
  readonly end: Length;
}

interface MarkedStretch extends Stretch {
  readonly marks: readonly string[];
}

export interface Chain {
  readonly id: string;
  /** Which fronts it measures, by their marks; empty for the case. */
  readonly caption: string;
  readonly stretches: readonly Stretch[];
}

export interface ElevationChains {
  /** Nearest to the piece first. */
  readonly above: readonly Chain[];
  readonly right: readonly Chain[];
  readonly below: readonly Chain[];
  readonly left: readonly Chain[];
}

type Axis = 'x' | 'y';

export function elevationChains(evaluation: Evaluation): ElevationChains {
  const fronts = { x: [] as Chain[], y: [] as Chain[] };
  const marks = marksByCell(evaluation.parts);
  const root = evaluation.layout.face;
  if (root !== undefined) collectFrontChains(root, marks, fronts, true);
  return {
    above: finestFirst(distinct(fronts.x)),
    right: finestFirst(distinct(fronts.y)),
    below: caseChains(evaluation, 'x'),
    left: caseChains(evaluation, 'y'),
  };
}

/** Finest first: openings with what bounds them, then the body, then the whole piece. */
function caseChains(evaluation: Evaluation, axis: Axis): readonly Chain[] {
  const carcase = evaluation.layout.carcase;
  if (carcase === undefined) return [];
  const outside = carcase.outside[axis];
  const body = carcase.body[axis];
  const face = carcase.face[axis];
  const root = evaluation.layout.face;
  const openings = root === undefined || alongOf(root) !== axis ? [] : root.cells.map((cell) => cell.opening[axis]);
  const cuts = (spans: readonly Span[]): Length[] => spans.flatMap((span) => [span.start.length, span.end.length]);
  return distinct([
    chainThrough(`openings-${axis}`, cuts([outside, body, face, ...openings])),
    chainThrough(`body-${axis}`, cuts([outside, body])),
    chainThrough(`whole-${axis}`, cuts([outside])),
  ]);
}

function chainThrough(id: string, cuts: readonly Length[]): Chain {
  const sorted = [...cuts].sort((a, b) => a.compare(b));
  const stretches: Stretch[] = [];
  for (let at = 1; at < sorted.length; at++) {
    const start = sorted[at - 1];
    const end = sorted[at];
    if (start !== undefined && end !== undefined && start.compare(end) < 0) stretches.push({ start, end });
  }
  return { id, caption: '', stretches };
}

function collectFrontChains(
  cell: LaidCell,
  marks: ReadonlyMap<string, readonly string[]>,
  chains: Record<Axis, Chain[]>,
  isRoot: boolean,
): void {
  const along = alongOf(cell);
  const across: Axis = along === 'x' ? 'y' : 'x';
  const isGroup = cell.cell.kind === 'row' || cell.cell.kind === 'stack';
  // The openings of the outermost group are shown with the case; only fronts are wanted of it here.
  const members = (isGroup ? cell.cells : [cell]).filter((member) => !isRoot || hasFront(member));
  chains[along].push(...frontChains(cell, members, along, marks));
  chains[across].push(
    ...frontChains(
      cell,
      members.filter((member) => member.front !== undefined),
      across,
      marks,
    ),
  );
  for (const inner of cell.cells) if (inner.cells.length > 0) collectFrontChains(inner, marks, chains, false);
}

function hasFront(cell: LaidCell): boolean {
  return cell.front !== undefined || cell.cells.some(hasFront);
}

/** What each member takes up along an axis: its leaves, or the reach of all fronts inside it. */
function frontChains(
  group: LaidCell,
  members: readonly LaidCell[],
  axis: Axis,
  marks: ReadonlyMap<string, readonly string[]>,
): readonly Chain[] {
  const stretches = members.flatMap((member) => {
    const own = member.front === undefined ? [] : (marks.get(member.cell.id) ?? []);
    const taken = reach(member, axis);
    return taken.map((stretch, at) => ({
      ...stretch,
      marks: taken.length === own.length ? own.slice(at, at + 1) : own,
    }));
  });
  return withoutOverlap(stretches).map((row, at) => ({
    id: `fronts-${axis}-${group.cell.id}${at === 0 ? '' : `-${at + 1}`}`,
    caption: captionOf(row.flatMap((stretch) => stretch.marks)),
    stretches: row,
  }));
}

/** From the first mark to the last. */
function captionOf(marks: readonly string[]): string {
  const sorted = [...marks].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
  const first = sorted[0];
  const last = sorted[sorted.length - 1];
  return first === undefined || last === undefined || first === last ? (first ?? '') : `${first}–${last}`;
}

function reach(cell: LaidCell, axis: Axis): readonly Stretch[] {
  if (cell.leaves.length > 0) {
    const leaves = cell.leaves.map((leaf) => ({ start: leaf[axis].start.length, end: leaf[axis].end.length }));
    return axis === 'x' ? leaves : leaves.slice(0, 1);
  }
  if (cell.cells.length === 0) {
    return [{ start: cell.opening[axis].start.length, end: cell.opening[axis].end.length }];
  }
  const inner = cell.cells.flatMap((child) => reach(child, axis));
  const first = inner[0];
  if (first === undefined) return [];
  let { start, end } = first;
  for (const stretch of inner) {
    start = start.min(stretch.start);
    end = end.max(stretch.end);
  }
  return [{ start, end }];
}

/**
 * In order, each once, nothing without a size. Fronts that overlap, which is a mistake in the design or a lip over a
 * lip, go to a chain of their own.
 */
function withoutOverlap(stretches: readonly MarkedStretch[]): readonly (readonly MarkedStretch[])[] {
  const sorted = stretches
    .filter((stretch) => stretch.start.compare(stretch.end) < 0)
    .sort((a, b) => a.start.compare(b.start) || a.end.compare(b.end));
  const distinctOnes: MarkedStretch[] = [];
  for (const stretch of sorted) {
    const previous = distinctOnes[distinctOnes.length - 1];
    if (previous === undefined || !same(previous, stretch)) distinctOnes.push(stretch);
    else distinctOnes.splice(-1, 1, { ...previous, marks: [...previous.marks, ...stretch.marks] });
  }
  const rows: MarkedStretch[][] = [];
  for (const stretch of distinctOnes) {
    const row = rows.find((kept) => {
      const previous = kept[kept.length - 1];
      return previous !== undefined && previous.end.compare(stretch.start) <= 0;
    });
    if (row === undefined) rows.push([stretch]);
    else row.push(stretch);
  }
  return rows;
}

/** Where several chains share a side, each needs to say whose it is. */
function finestFirst(chains: readonly Chain[]): readonly Chain[] {
  if (chains.length === 1) return chains.map((chain) => ({ ...chain, caption: '' }));
  return [...chains].sort((a, b) => b.stretches.length - a.stretches.length);
}

/** Drops empty chains and those that say nothing but what another one of them says already. */
function distinct(chains: readonly Chain[]): readonly Chain[] {
  const kept: Chain[] = [];
  for (const chain of chains) {
    if (chain.stretches.length === 0) continue;
    const known = kept.some((other) =>
      chain.stretches.every((stretch) => other.stretches.some((o) => same(o, stretch))),
    );
    if (!known) kept.push(chain);
  }
  return kept.filter(
    (chain) =>
      !kept.some(
        (other) =>
          other !== chain &&
          other.stretches.length > chain.stretches.length &&
          chain.stretches.every((stretch) => other.stretches.some((o) => same(o, stretch))),
      ),
  );
}

function same(a: Stretch, b: Stretch): boolean {
  return a.start.equals(b.start) && a.end.equals(b.end);
}

function alongOf(cell: LaidCell): Axis {
  return cell.cell.kind === 'stack' ? 'y' : 'x';
}

function marksByCell(parts: readonly Part[]): ReadonlyMap<string, readonly string[]> {
  const marks = new Map<string, string[]>();
  for (const part of parts) {
    if (part.cell === undefined || !FRONTS.includes(part.role)) continue;
    const known = marks.get(part.cell);
    if (known === undefined) marks.set(part.cell, [part.mark]);
    else known.push(part.mark);
  }
  return marks;
}
