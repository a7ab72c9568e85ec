import type { Evaluation, LaidCell, Length, Part, Span } from '@fettle/engine';
import { FRONTS } from './parts-in-view.ts';

/**
 * Which dimensions an elevation carries, as chains of exact stretches. Above the piece and to its right the fronts and,
 * beside them, the openings that have none; below and to its left the case: the nearest chain the finest, the farthest
 * the whole. Knows nothing of paper.
 */

export interface Stretch {
  readonly start: Length;
  readonly end: Length;
}

/** A front, or several of one size, or an opening without one. */
interface MarkedStretch extends Stretch {
  readonly marks: readonly string[];
  readonly isOpening: boolean;
}

export interface Chain {
  readonly id: string;
  /** Which fronts it measures, by their marks, and whether openings; empty where that goes without saying. */
  readonly caption: string;
  readonly measures: readonly Measured[];
  readonly stretches: readonly Stretch[];
}

export type Measured = 'fronts' | 'openings' | 'case';

export interface PlainChain {
  readonly id: string;
  readonly stretches: readonly Stretch[];
}

interface MarkedChain {
  readonly id: string;
  readonly stretches: readonly MarkedStretch[];
}

export interface ElevationChains {
  /** Nearest to the piece first. */
  readonly above: readonly Chain[];
  readonly right: readonly Chain[];
  readonly below: readonly Chain[];
  readonly left: readonly Chain[];
  /** Chains beyond the most that each side may carry. */
  readonly leftOut: number;
}

type Axis = 'x' | 'y';

const knownChains = new WeakMap<Evaluation, Map<number, ElevationChains>>();

/** At most `most` chains on each side, the finest first. Worked out once, for several scales are tried for one drawing. */
export function elevationChains(evaluation: Evaluation, most: number): ElevationChains {
  const known = knownChains.get(evaluation) ?? new Map<number, ElevationChains>();
  knownChains.set(evaluation, known);
  const chains = known.get(most) ?? chainsOf(evaluation, most);
  known.set(most, chains);
  return chains;
}

function chainsOf(evaluation: Evaluation, most: number): ElevationChains {
  const fronts = { x: [] as MarkedChain[], y: [] as MarkedChain[] };
  const marks = marksByCell(evaluation.parts);
  const root = evaluation.layout.face;
  if (root !== undefined) collectFrontChains(root, marks, fronts, true);
  const above = finestFirst(fronts.x);
  const right = finestFirst(fronts.y);
  const below = caseChains(evaluation, 'x');
  const left = caseChains(evaluation, 'y');
  return {
    above: named(withoutRepeats(above.slice(0, most))),
    right: named(withoutRepeats(right.slice(0, most))),
    below: ofTheCase(withoutRepeats(below.slice(0, most))),
    left: ofTheCase(withoutRepeats(left.slice(0, most))),
    leftOut: [above, right, below, left].reduce((sum, side) => sum + Math.max(0, side.length - most), 0),
  };
}

/** Finest first: openings with what bounds them, then the body, then the whole piece. */
function caseChains(evaluation: Evaluation, axis: Axis): readonly PlainChain[] {
  const carcase = evaluation.layout.carcase;
  if (carcase === undefined) return [];
  const outside = carcase.outside[axis];
  const body = carcase.body[axis];
  const face = carcase.face[axis];
  const root = evaluation.layout.face;
  const openings =
    root === undefined || root.cell.kind === 'front' || alongOf(root) !== axis
      ? []
      : root.cells.map((cell) => cell.opening[axis]);
  const cuts = (spans: readonly Span[]): Length[] => spans.flatMap((span) => [span.start.length, span.end.length]);
  return distinct([
    chainThrough(`openings-${axis}`, cuts([outside, body, face, ...openings])),
    chainThrough(`body-${axis}`, cuts([outside, body])),
    chainThrough(`whole-${axis}`, cuts([outside])),
  ]);
}

function ofTheCase(chains: readonly PlainChain[]): readonly Chain[] {
  return chains.map((chain) => ({ ...chain, caption: '', measures: ['case'] }));
}

export function chainThrough(id: string, cuts: readonly Length[]): PlainChain {
  const sorted = [...cuts].sort((a, b) => a.compare(b));
  const stretches: Stretch[] = [];
  for (let at = 1; at < sorted.length; at++) {
    const start = sorted[at - 1];
    const end = sorted[at];
    if (start !== undefined && end !== undefined && start.compare(end) < 0) stretches.push({ start, end });
  }
  return { id, stretches };
}

function collectFrontChains(
  cell: LaidCell,
  marks: ReadonlyMap<string, readonly string[]>,
  chains: Record<Axis, MarkedChain[]>,
  isRoot: boolean,
): void {
  const along = alongOf(cell);
  const across: Axis = along === 'x' ? 'y' : 'x';
  const isGroup = cell.cell.kind === 'row' || cell.cell.kind === 'stack';
  // The openings of the outermost group are shown with the case; only fronts are wanted of it here.
  const members = (isGroup ? cell.cells : [cell]).filter((member) => !isRoot || !reach(member, along).isOpening);
  chains[along].push(...frontChains(cell, members, along, marks));
  chains[across].push(
    ...frontChains(
      cell,
      members.filter((member) => member.front !== undefined),
      across,
      marks,
    ),
  );
  // Fronts behind a door are measured where one sees them.
  if (!isGroup) return;
  for (const inner of cell.cells) if (inner.cells.length > 0) collectFrontChains(inner, marks, chains, false);
}

/** What each member takes up along an axis: its leaves, the reach of all fronts inside it, or its opening. */
function frontChains(
  group: LaidCell,
  members: readonly LaidCell[],
  axis: Axis,
  marks: ReadonlyMap<string, readonly string[]>,
): readonly MarkedChain[] {
  const stretches = members.flatMap((member) => {
    const own = member.front === undefined ? [] : (marks.get(member.cell.id) ?? []);
    const { taken, isOpening } = reach(member, axis);
    return taken.map((stretch, at) => ({
      ...stretch,
      isOpening,
      marks: taken.length === own.length ? own.slice(at, at + 1) : own,
    }));
  });
  return withoutOverlap(stretches).map((row, at) => ({
    id: `fronts-${axis}-${group.cell.id}${at === 0 ? '' : `-${at + 1}`}`,
    stretches: row,
  }));
}

/** Where one chain of fronts alone is on its side it needs no name; several say whose each is. */
function named(chains: readonly MarkedChain[]): readonly Chain[] {
  const alone = chains.length === 1;
  return chains.map(({ id, stretches }) => {
    const openings = stretches.filter((stretch) => stretch.isOpening).length;
    const measures: readonly Measured[] = [
      ...(openings < stretches.length ? (['fronts'] as const) : []),
      ...(openings > 0 ? (['openings'] as const) : []),
    ];
    const words = [
      captionOf(stretches.flatMap((stretch) => stretch.marks)),
      openings === 0 ? '' : openings === 1 ? 'opening' : 'openings',
    ].filter((word) => word !== '');
    return { id, caption: alone && openings === 0 ? '' : words.join(', '), measures, stretches };
  });
}

/** One for all: a comparison that makes its own each time takes longer than all the rest. */
const byMark = new Intl.Collator('en', { numeric: true });

/** From the first mark to the last. */
function captionOf(marks: readonly string[]): string {
  const sorted = [...marks].sort(byMark.compare);
  const first = sorted[0];
  const last = sorted[sorted.length - 1];
  return first === undefined || last === undefined || first === last ? (first ?? '') : `${first}–${last}`;
}

interface Reach {
  readonly taken: readonly Stretch[];
  readonly isOpening: boolean;
}

/**
 * Fronts alone reach from the first edge to the last. As soon as one space among them is open the whole is measured by
 * its opening: from the edge of a front to that of an opening would be the size of nothing.
 */
function reach(cell: LaidCell, axis: Axis): Reach {
  if (cell.leaves.length > 0) {
    const leaves = cell.leaves.map((leaf) => ({ start: leaf[axis].start.length, end: leaf[axis].end.length }));
    return { taken: axis === 'x' ? leaves : leaves.slice(0, 1), isOpening: false };
  }
  const inner = cell.cells.map((child) => reach(child, axis));
  const stretches = inner.flatMap(({ taken }) => taken);
  const first = stretches[0];
  if (first === undefined || inner.some(({ isOpening }) => isOpening)) {
    return { taken: [{ start: cell.opening[axis].start.length, end: cell.opening[axis].end.length }], isOpening: true };
  }
  let { start, end } = first;
  for (const stretch of stretches) {
    start = start.min(stretch.start);
    end = end.max(stretch.end);
  }
  return { taken: [{ start, end }], isOpening: false };
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
    if (previous === undefined || !same(previous, stretch) || previous.isOpening !== stretch.isOpening)
      distinctOnes.push(stretch);
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

function finestFirst(chains: readonly MarkedChain[]): readonly MarkedChain[] {
  return [...distinct(chains)].sort((a, b) => b.stretches.length - a.stretches.length);
}

/** What the next chain outwards says at the same place is not said twice side by side: the finer one leaves it out. */
export function withoutRepeats<Kind extends { readonly stretches: readonly Stretch[] }>(
  chains: readonly Kind[],
): readonly Kind[] {
  return chains
    .map((chain, at) => {
      const next = chains[at + 1]?.stretches ?? [];
      return { ...chain, stretches: chain.stretches.filter((stretch) => !next.some((other) => same(other, stretch))) };
    })
    .filter((chain) => chain.stretches.length > 0);
}

/** Drops empty chains and those that say nothing but what another one of them says already. */
function distinct<Kind extends { readonly stretches: readonly Stretch[] }>(chains: readonly Kind[]): readonly Kind[] {
  const kept: Kind[] = [];
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
