import { derive, less, plus } from '../design/derive.ts';
import type { Figure, Operand } from '../design/figure.ts';
import { Length } from '../length/length.ts';
import { Rational, type WholeOrRational } from '../length/rational.ts';
import type { AxisCell, AxisRequest, SameTarget, SolvedCell, WhyUnknown } from './axis.ts';
import type { AffineSize } from './fill-to.ts';

/**
 * Turns what was asked of each cell into one of three plans: its size is set, its size grows with the common share, or
 * it cannot be known. Nothing is solved here.
 */

export type Face = 'front' | 'opening';

/** The size does not depend on the share. */
export interface SetPlan {
  readonly kind: 'set';
  readonly cell: AxisCell;
  /** The cell whose written size this is: itself, unless it follows another cell of this axis. */
  readonly root: AxisCell;
  readonly solved: SolvedCell;
}

/** The opening is `affine` in the share. */
export interface FreePlan {
  readonly kind: 'free';
  readonly cell: AxisCell;
  readonly root: AxisCell;
  readonly affine: AffineSize;
  /** opening = weight × share + these. */
  readonly constants: readonly Operand[];
  /** The plan it copies by `same as`, and which face of it. */
  readonly follows?: { readonly plan: FreePlan; readonly face: Face };
}

export interface UnknownPlan {
  readonly kind: 'unknown';
  readonly cell: AxisCell;
  readonly why: WhyUnknown;
}

export type CellPlan = SetPlan | FreePlan | UnknownPlan;

export interface AxisPlan {
  /** In the order of the cells. */
  readonly plans: readonly CellPlan[];
  /** The same plans, each after the one it copies. */
  readonly copiesLast: readonly CellPlan[];
  /** Shares are of fronts when every cell that shares has one, else of openings. */
  readonly shareOf: Face;
}

export function planAxis(request: Pick<AxisRequest, 'cells' | 'sameAs'>): AxisPlan {
  const { cells } = request;
  const shareOf = cells.filter(isSharing).every((cell) => cell.hasFront) ? 'front' : 'opening';
  const byId = new Map(cells.map((cell) => [cell.id, cell]));
  const sameAs = request.sameAs ?? ((id: string) => sameByName(byId.get(id), cells));
  const plans = new Map<string, CellPlan>();

  const plan = (first: AxisCell): CellPlan => {
    // A chain of cells each the same as the next is walked to its end first, so that its length needs no deep calls.
    const chain: AxisCell[] = [];
    const onChain = new Set<string>();
    let cell = first;
    let found: CellPlan | undefined;
    while (found === undefined) {
      found = plans.get(cell.id);
      if (found !== undefined) break;
      if (onChain.has(cell.id)) {
        found = { kind: 'unknown', cell, why: 'circular' };
        break;
      }
      chain.push(cell);
      onChain.add(cell.id);
      const target = isSame(cell) ? sameAs(cell.id) : undefined;
      const next = target?.kind === 'here' ? byId.get(target.id) : undefined;
      if (next === undefined) {
        found = planAlone(chain.pop() ?? cell, target, shareOf);
        plans.set(cell.id, found);
      } else {
        cell = next;
      }
    }
    for (const follower of chain.reverse()) {
      found = planFollower(follower, found);
      plans.set(follower.id, found);
    }
    return found;
  };

  const inOrder = cells.map((cell) => plans.get(cell.id) ?? plan(cell));
  return { plans: inOrder, copiesLast: [...plans.values()], shareOf };
}

/** The face that a written size, a copy or a limit of this cell means. */
export function faceMeant(cell: AxisCell): Face {
  if (!cell.hasFront) return 'opening';
  return cell.asked.kind === 'fixed' || cell.asked.kind === 'same' ? cell.asked.basis : 'front';
}

/** What was found with a ruler; a cell without a front that has one measured has its opening measured. */
export function measuredOf(cell: AxisCell): { readonly figure: Figure; readonly face: Face } | undefined {
  if (cell.measured !== undefined) return { figure: cell.measured, face: 'opening' };
  if (cell.measuredFront === undefined) return undefined;
  return { figure: cell.measuredFront, face: cell.hasFront ? 'front' : 'opening' };
}

/** What is added to the opening to make the front; zero where there is no front. */
export function deltaOf(cell: AxisCell): Length {
  return derive('', deltasOf(cell)).length;
}

export function deltasOf(cell: AxisCell): readonly Operand[] {
  return cell.hasFront ? [...cell.deltaStart, ...cell.deltaEnd] : [];
}

export function negatedOperand(operand: Operand): Operand {
  return { ...operand, sign: operand.sign === '+' ? '-' : operand.sign === '-' ? '+' : '' };
}

/** The same sum with equal terms counted together, in the order they first appear; what cancels is left out. */
export function gathered(operands: readonly Operand[]): readonly Operand[] {
  const sums = new Map<Figure, Map<string, Rational>>();
  for (const { sign, label, figure, times = 1 } of operands) {
    const count = typeof times === 'number' ? Rational.of(times) : times;
    const byLabel = sums.get(figure) ?? new Map<string, Rational>();
    sums.set(figure, byLabel);
    byLabel.set(label, (byLabel.get(label) ?? Rational.zero).plus(sign === '-' ? count.negated() : count));
  }
  const result: Operand[] = [];
  for (const [figure, byLabel] of sums) {
    for (const [label, count] of byLabel) {
      if (count.isZero()) continue;
      const times = plainTimes(count.abs());
      result.push(count.sign() < 0 ? less(label, figure, times) : plus(label, figure, times));
    }
  }
  return result;
}

function plainTimes(count: Rational): WholeOrRational | undefined {
  if (count.equals(Rational.one)) return undefined;
  return count.isWhole() && count.compare(Rational.of(1_000_000)) < 0 ? count.toNumber() : count;
}

/** Opening and front of a cell one of whose faces is known. */
export function solvedFrom(cell: AxisCell, face: Face, figure: Figure, by: SolvedCell['by']): SolvedCell {
  const { id, label } = cell;
  if (!cell.hasFront) return { id, label, opening: figure, by };
  const deltas = deltasOf(cell);
  const given = plus(face === 'front' ? `front of ${label}` : `opening of ${label}`, figure);
  if (face === 'opening') {
    return { id, label, opening: figure, front: derive('from opening to front', gathered([given, ...deltas])), by };
  }
  const opening = derive('from front to opening', gathered([given, ...deltas.map(negatedOperand)]));
  return { id, label, opening, front: figure, by };
}

export function faceOf(solved: SolvedCell, face: Face): Figure {
  return face === 'front' ? (solved.front ?? solved.opening) : solved.opening;
}

function isSharing(cell: AxisCell): boolean {
  return measuredOf(cell) === undefined && cell.asked.kind !== 'fixed' && cell.asked.kind !== 'same';
}

function isSame(cell: AxisCell): boolean {
  return measuredOf(cell) === undefined && cell.asked.kind === 'same';
}

function sameByName(cell: AxisCell | undefined, cells: readonly AxisCell[]): SameTarget {
  const as = cell?.asked.kind === 'same' ? cell.asked.as : undefined;
  const target = cells.find((other) => other.name !== undefined && other.name === as);
  return target === undefined ? { kind: 'unknown', why: 'no-such-cell' } : { kind: 'here', id: target.id };
}

/** For a cell that follows no other cell of this axis; `target` is where its `same as` leads, if it has one. */
function planAlone(cell: AxisCell, target: SameTarget | undefined, shareOf: Face): CellPlan {
  const found = measuredOf(cell);
  if (found !== undefined) {
    return { kind: 'set', cell, root: cell, solved: solvedFrom(cell, found.face, found.figure, 'measured') };
  }
  const face = faceMeant(cell);
  const asked = cell.asked;
  switch (asked.kind) {
    case 'fixed':
      return { kind: 'set', cell, root: cell, solved: solvedFrom(cell, face, asked.figure, 'fixed') };
    case 'same': {
      if (target?.kind !== 'known') {
        return { kind: 'unknown', cell, why: target?.kind === 'unknown' ? target.why : 'no-such-cell' };
      }
      const copied = copiedFigure(cell, target.cell);
      return copied === undefined
        ? { kind: 'unknown', cell, why: 'no-front' }
        : { kind: 'set', cell, root: cell, solved: solvedFrom(cell, face, copied, 'same') };
    }
    case 'share':
      return planFree(cell, asked.weight, [], shareOf);
    case 'rest':
      return planFree(cell, Rational.one, [], shareOf);
    case 'graded-by-ratio':
      return planFree(cell, asked.ratio.power(asked.step), [], shareOf);
    case 'graded':
      return planFree(cell, Rational.one, gradeOf(asked.by, asked.step), shareOf);
    default: {
      const unknown: never = asked;
      return unknown;
    }
  }
}

export function gradeOf(by: Figure, step: number): readonly Operand[] {
  return step === 0 ? [] : [plus('step of the grading', by, step)];
}

/** The figure of the face that `cell` copies; undefined when it copies a front and one of the two has none. */
export function copiedFigure(cell: AxisCell, target: SolvedCell): Figure | undefined {
  if (cell.asked.kind !== 'same') return undefined;
  const face = cell.asked.basis;
  if (face === 'front' && (target.front === undefined || !cell.hasFront)) return undefined;
  return derive(`same ${face} as ${target.label}`, [plus(`${face} of ${target.label}`, faceOf(target, face))]);
}

function planFree(cell: AxisCell, weight: Rational, addends: readonly Operand[], shareOf: Face): FreePlan {
  const constants = shareOf === 'front' ? [...addends, ...deltasOf(cell).map(negatedOperand)] : addends;
  const toOpening = faceMeant(cell) === 'front' ? deltaOf(cell) : Length.zero;
  const least = cell.atLeast?.length.minus(toOpening);
  // Limits that cross are a clash of their own; the least is followed.
  const most = areLimitsCrossed(cell) ? least : cell.atMost?.length.minus(toOpening);
  const affine: AffineSize = {
    slope: weight,
    intercept: derive('', constants).length,
    ...(least === undefined ? {} : { least }),
    ...(most === undefined ? {} : { most }),
  };
  return { kind: 'free', cell, root: cell, affine, constants };
}

export function areLimitsCrossed(cell: AxisCell): boolean {
  const { atLeast, atMost } = cell;
  return atLeast !== undefined && atMost !== undefined && atLeast.length.compare(atMost.length) > 0;
}

/** For a cell that is the same as another of this axis whose plan is known. Limits of its own do not bend it. */
function planFollower(cell: AxisCell, target: CellPlan): CellPlan {
  if (target.kind === 'unknown') return { kind: 'unknown', cell, why: target.why };
  if (target.kind === 'set') {
    const copied = copiedFigure(cell, target.solved);
    if (copied === undefined) return { kind: 'unknown', cell, why: 'no-front' };
    return { kind: 'set', cell, root: target.root, solved: solvedFrom(cell, faceMeant(cell), copied, 'same') };
  }
  const face = cell.asked.kind === 'same' ? cell.asked.basis : 'opening';
  if (face === 'front' && !(cell.hasFront && target.cell.hasFront)) return { kind: 'unknown', cell, why: 'no-front' };
  const shifts = face === 'front' ? [...deltasOf(target.cell), ...deltasOf(cell).map(negatedOperand)] : [];
  const shift = derive('', shifts).length;
  const { slope, intercept, least, most } = target.affine;
  return {
    kind: 'free',
    cell,
    root: target.root,
    affine: {
      slope,
      intercept: intercept.plus(shift),
      ...(least === undefined ? {} : { least: least.plus(shift) }),
      ...(most === undefined ? {} : { most: most.plus(shift) }),
    },
    constants: [...target.constants, ...shifts],
    follows: { plan: target, face },
  };
}
