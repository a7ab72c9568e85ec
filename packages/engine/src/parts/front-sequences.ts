import type { Cell, FaceDesign, FrontCell } from '../design/design.ts';
import type { SequenceDesign, SequenceMember } from '../design/sequence-design.ts';
import type { LaidCell, Rectangle } from '../evaluation.ts';
import { doorFrame, frontMaterial, frontThickness } from '../layout/front-thickness.ts';
import { leafId } from '../layout/leaf-ids.ts';
import type { PlaceInRun } from './part.ts';

/**
 * Which fronts follow one another in one blank. A sequence is cut into runs: fronts of one stock that stand in one line.
 * Where the line turns, or where the wood changes, a new run begins.
 */

export interface FrontInSequence {
  /** The part that it is. */
  readonly id: string;
  readonly cell: FrontCell;
  readonly at: Rectangle;
  readonly member: SequenceMember;
}

/** What a sequence names and cannot be cut in order. */
export interface UnfitMember {
  readonly member: SequenceMember;
  readonly cell: Cell;
  readonly why: 'not a front' | 'framed' | 'no grain' | 'in order already';
  /** Where the same front comes first. */
  readonly first?: SequenceMember;
}

/** Why a run ends before its sequence does. */
export interface SequenceBreak {
  readonly before: FrontInSequence;
  readonly after: FrontInSequence;
  readonly why: 'other stock' | 'other thickness' | 'turns';
}

export interface LaidSequence {
  readonly sequence: SequenceDesign;
  readonly grain: 'x' | 'y';
  /** Each at least one. */
  readonly runs: readonly (readonly FrontInSequence[])[];
  readonly breaks: readonly SequenceBreak[];
  readonly unfit: readonly UnfitMember[];
}

/** By the id of the part: its grain and its place. */
export type FrontsInSequence = ReadonlyMap<string, { readonly grain: 'x' | 'y'; readonly run?: PlaceInRun }>;

/** A front that no layout could place is in no run; names that mean nothing have their finding elsewhere. */
export function laidSequences(
  sequences: readonly SequenceDesign[],
  face: FaceDesign,
  root: LaidCell,
): readonly LaidSequence[] {
  const cells = flattened(root);
  const taken = new Map<string, SequenceMember>();
  return sequences.map((sequence): LaidSequence => {
    const fronts: FrontInSequence[] = [];
    const unfit: UnfitMember[] = [];
    for (const member of sequence.members) {
      for (const laid of namedBy(member, cells)) {
        const leaves = leavesOf(laid, member);
        const [first] = leaves;
        if (first === undefined) {
          unfit.push({ member, cell: laid.cell, why: 'not a front' });
          continue;
        }
        const { cell } = first;
        const before = taken.get(cell.id);
        const isTwice = before !== undefined;
        const isFramed = doorFrame(cell, face) !== undefined;
        const hasNoGrain = frontMaterial(cell, face)?.stock?.grain === 'none';
        if (isTwice) unfit.push({ member, cell, why: 'in order already', first: before });
        else if (isFramed) unfit.push({ member, cell, why: 'framed' });
        else if (!hasNoGrain) fronts.push(...leaves);
        // Under veneer it does not matter.
        else if (!sequence.isVeneered) unfit.push({ member, cell, why: 'no grain' });
        if (!isTwice) taken.set(cell.id, member);
      }
    }
    const grain = grainOf(sequence, fronts);
    return { sequence, grain, unfit, ...runsOf(fronts, face) };
  });
}

/**
 * What the parts have to know of it. Fronts that are edged before they are veneered are veneered one by one, so that the
 * wood beneath may come from anywhere.
 */
export function frontsInSequence(laid: readonly LaidSequence[], face: FaceDesign): FrontsInSequence {
  const found = new Map<string, { readonly grain: 'x' | 'y'; readonly run?: PlaceInRun }>();
  laid.forEach(({ sequence, grain, runs }, number) => {
    if (isVeneeredOneByOne(sequence, runs, face)) return;
    runs.forEach((fronts, at) => {
      const [one, other] = fronts;
      const line = one === undefined || other === undefined ? undefined : lineOf(one.at, other.at);
      for (const [place, { id }] of fronts.entries()) {
        found.set(id, {
          grain,
          ...(line === undefined
            ? {}
            : {
                run: {
                  id: `sequence ${number + 1}.${at + 1}`,
                  label: `sequence${sequence.name === undefined ? '' : ` "${sequence.name}"`}`,
                  place,
                  order: line === grain ? 'along' : 'across',
                },
              }),
        });
      }
    });
  });
  return found;
}

export function isVeneeredOneByOne(sequence: SequenceDesign, runs: LaidSequence['runs'], face: FaceDesign): boolean {
  if (!sequence.isVeneered) return false;
  return runs.flat().some(({ cell }) => frontMaterial(cell, face)?.edging?.veneer === 'before');
}

/** From top to bottom and from left to right, as they are written; groups before what they hold. */
function flattened(laid: LaidCell): readonly LaidCell[] {
  return [laid, ...laid.cells.flatMap(flattened)];
}

/** The fronts that a member stands for; what is named itself and is none, so that it can be told. */
function namedBy({ from, to }: SequenceMember, cells: readonly LaidCell[]): readonly LaidCell[] {
  const first = cells.find(({ cell }) => cell.name === from);
  const last = to === undefined ? undefined : cells.find(({ cell }) => cell.name === to);
  if (first === undefined) return [];
  if (last === undefined) return frontsInside(first);
  const [start, end] = [cells.indexOf(first), cells.indexOf(last)];
  const between = cells.slice(Math.min(start, end), Math.max(start, end) + 1);
  // A group that is named as the end holds the last of them.
  const all = new Set([
    ...between.filter(({ cell }) => cell.kind === 'front'),
    ...frontsInside(first),
    ...frontsInside(last),
  ]);
  const inOrder = cells.filter((each) => all.has(each));
  return start <= end ? inOrder : inOrder.reverse();
}

function frontsInside(laid: LaidCell): readonly LaidCell[] {
  const fronts = flattened(laid).filter(({ cell }) => cell.kind === 'front');
  return fronts.length === 0 ? [laid] : fronts;
}

function leavesOf({ cell, leaves }: LaidCell, member: SequenceMember): readonly FrontInSequence[] {
  if (cell.kind !== 'front') return [];
  return leaves.map((at, place) => ({ id: leafId(cell, leaves.length, place), cell, at, member }));
}

/** Along the sequence: upright where all stand in one column, else across. */
function grainOf({ grain }: SequenceDesign, fronts: readonly FrontInSequence[]): 'x' | 'y' {
  if (grain !== undefined) return grain === 'upright' ? 'y' : 'x';
  const [first, ...others] = fronts;
  const isColumn = first !== undefined && others.length > 0 && others.every(({ at }) => lineOf(first.at, at) === 'y');
  return isColumn ? 'y' : 'x';
}

function runsOf(fronts: readonly FrontInSequence[], face: FaceDesign): Pick<LaidSequence, 'runs' | 'breaks'> {
  const runs: FrontInSequence[][] = [];
  const breaks: SequenceBreak[] = [];
  let line: 'x' | 'y' | undefined;
  for (const front of fronts) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    if (run === undefined || before === undefined) {
      runs.push([front]);
      continue;
    }
    const next = lineOf(before.at, front.at);
    const why = otherWood(before.cell, front.cell, face);
    if (why === undefined && next !== undefined && (run.length === 1 || next === line)) {
      run.push(front);
      line = next;
    } else {
      breaks.push({ before, after: front, why: why ?? 'turns' });
      runs.push([front]);
      line = undefined;
    }
  }
  return { runs, breaks };
}

function otherWood(one: FrontCell, other: FrontCell, face: FaceDesign): SequenceBreak['why'] | undefined {
  if (frontMaterial(one, face)?.stock?.name !== frontMaterial(other, face)?.stock?.name) return 'other stock';
  return frontThickness(one, face).length.equals(frontThickness(other, face).length) ? undefined : 'other thickness';
}

/** The axis along which two fronts follow each other: across it both reach equally far. */
function lineOf(one: Rectangle, other: Rectangle): 'x' | 'y' | undefined {
  const isAlike = (axis: 'x' | 'y'): boolean =>
    one[axis].start.length.equals(other[axis].start.length) && one[axis].size.length.equals(other[axis].size.length);
  if (isAlike('y')) return 'x';
  return isAlike('x') ? 'y' : undefined;
}
