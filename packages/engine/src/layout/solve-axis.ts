import { derive, plus } from '../design/derive.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { AxisBoundary, AxisCell, AxisFailure, AxisRequest, AxisResult, LimitClash, SolvedCell } from './axis.ts';
import { blameFor } from './axis-blame.ts';
import {
  type AxisPlan,
  areLimitsCrossed,
  copiedFigure,
  deltasOf,
  type Face,
  type FreePlan,
  faceMeant,
  faceOf,
  gathered,
  gradeOf,
  measuredOf,
  negatedOperand,
  planAxis,
  type SetPlan,
  solvedFrom,
} from './axis-plan.ts';
import { fillTo, sizeAt } from './fill-to.ts';

/**
 * Sizes of all cells of one row or stack, exactly, each with where it came from. Every size is a straight line in one
 * unknown, the share, held between limits; the share is the one value at which cells and boundaries fill the total.
 * Knows nothing of the other direction, of carcases or of findings.
 *
 * Never throws on what a maker can write. An axis without cells is solved and empty, whatever its total.
 */
export function solveAxis(request: AxisRequest): AxisResult {
  const axis = planAxis(request);
  const set = axis.plans.filter((plan): plan is SetPlan => plan.kind === 'set');
  const free = axis.plans.filter((plan): plan is FreePlan => plan.kind === 'free');
  const unknown = axis.plans.flatMap((plan) => (plan.kind === 'unknown' ? [{ id: plan.cell.id, why: plan.why }] : []));
  const known = set.map((plan) => plan.solved);
  const fail = (failure: AxisFailure): AxisResult => ({
    kind: 'failed',
    failure,
    known,
    clashes: clashesOf(request.cells, known),
  });

  if (request.cells.length === 0) return { kind: 'solved', cells: [], clashes: [] };
  if (unknown.length > 0) return fail({ kind: 'unknown-same', cells: unknown });
  const worthless = free.filter((plan) => plan.affine.slope.sign() <= 0 && plan.root === plan.cell);
  if (worthless.length > 0) return fail({ kind: 'share-not-positive', ids: worthless.map((plan) => plan.cell.id) });
  const flat = known.filter(isNotPositive);
  if (flat.length > 0) return fail({ kind: 'not-positive', cells: flat });

  const fixedTerms = [...boundaryTerms(request.boundaries), ...spaceTerms(known, request.cells)];
  const leftForFree = request.total.length.minus(derive('', fixedTerms).length);
  const filled = fillTo(
    free.map((plan) => plan.affine),
    leftForFree,
  );
  if (filled.kind !== 'filled') {
    const held = heldCells(axis, () => (filled.kind === 'too-much' ? 'at-least' : 'at-most'));
    const needed = derive(
      'what cells and boundaries need',
      gathered([...fixedTerms, ...spaceTerms([...held.values()], request.cells)]),
    );
    const tooMuch = filled.kind === 'too-much';
    const difference = needed.length.minus(request.total.length).abs();
    const blame = blameFor(axis, { tooMuch, difference });
    return fail({ kind: 'difference', needed, available: request.total, difference, tooMuch, blame });
  }

  const { cells, share } = cellsAt(filled.level, axis, free, fixedTerms, request);
  const squeezed = cells.filter(isNotPositive);
  if (squeezed.length > 0) {
    const taken = derive('what everything else takes', takenBeside(squeezed, cells, axis.shareOf, request));
    const blame = blameFor(axis, { tooMuch: true });
    return fail({ kind: 'nothing-left', squeezed, taken, available: request.total, blame });
  }
  return {
    kind: 'solved',
    cells,
    ...(share === undefined ? {} : { share: { figure: share, basis: axis.shareOf } }),
    clashes: clashesOf(request.cells, cells),
  };
}

/**
 * The one pass up: what all cells and boundaries need together when every cell's size is written, measured or copied
 * from one that is. Undefined when a cell shares or is unknown, and when there are no cells.
 */
export function rigidTotal(request: Pick<AxisRequest, 'cells' | 'boundaries' | 'sameAs'>): Figure | undefined {
  const { plans } = planAxis(request);
  const set = plans.filter((plan): plan is SetPlan => plan.kind === 'set');
  if (set.length === 0 || set.length < plans.length) return undefined;
  const openings = spaceTerms(
    set.map((plan) => plan.solved),
    request.cells,
  );
  return derive(
    'all openings and what stands between them',
    gathered([...openings, ...boundaryTerms(request.boundaries)]),
  );
}

function boundaryTerms(boundaries: readonly AxisBoundary[]): readonly Operand[] {
  return boundaries.map((boundary) => plus(boundary.label, boundary.thickness));
}

/**
 * What these cells take, in the terms a maker counts in: a front and the gaps beside it where a front was asked for, so
 * that in a sum over the axis covered dividers cancel; else the opening.
 */
function spaceTerms(solved: readonly SolvedCell[], cells: readonly AxisCell[]): readonly Operand[] {
  const asked = new Map(cells.map((cell) => [cell.id, cell]));
  return solved.flatMap((one) => {
    const cell = asked.get(one.id);
    if (cell === undefined || one.front === undefined || faceCounted(cell) === 'opening') {
      return [plus(`opening of ${one.label}`, one.opening)];
    }
    return [plus(`front of ${one.label}`, one.front), ...deltasOf(cell).map(negatedOperand)];
  });
}

function faceCounted(cell: AxisCell): Face {
  return measuredOf(cell)?.face ?? faceMeant(cell);
}

/** The cells that a limit decides, and their copies; `limitOf` says which limit, if any, holds a plan. */
function heldCells(
  axis: AxisPlan,
  limitOf: (plan: FreePlan) => 'at-least' | 'at-most' | undefined,
): Map<string, SolvedCell> {
  const held = new Map<string, SolvedCell>();
  for (const plan of axis.copiesLast) {
    if (plan.kind !== 'free') continue;
    const target = plan.follows === undefined ? undefined : held.get(plan.follows.plan.cell.id);
    if (target !== undefined) {
      held.set(plan.cell.id, copyOf(plan.cell, target));
      continue;
    }
    const limit = plan.follows === undefined ? limitOf(plan) : undefined;
    if (limit !== undefined) held.set(plan.cell.id, heldOwn(plan.cell, limit));
  }
  return held;
}

function heldOwn(cell: AxisCell, by: 'at-least' | 'at-most'): SolvedCell {
  const isLeast = by === 'at-least' || areLimitsCrossed(cell);
  const limit = (isLeast ? cell.atLeast : cell.atMost) ?? derive('no limit', []);
  const rule = isLeast ? 'not less than it may be' : 'not more than it may be';
  return solvedFrom(cell, faceMeant(cell), derive(rule, [plus(isLeast ? 'at least' : 'at most', limit)]), by);
}

function copyOf(cell: AxisCell, target: SolvedCell): SolvedCell {
  // The plan has already made sure that there is something to copy.
  return solvedFrom(cell, faceMeant(cell), copiedFigure(cell, target) ?? target.opening, 'same');
}

/** All cells in order, at this level of the share, and the share itself when a cell really takes it. */
function cellsAt(
  level: Length,
  axis: AxisPlan,
  free: readonly FreePlan[],
  fixedTerms: readonly Operand[],
  request: AxisRequest,
): { readonly cells: readonly SolvedCell[]; readonly share?: Figure } {
  const solved = heldCells(axis, (plan) => {
    const { held } = sizeAt(plan.affine, level);
    return held === undefined ? undefined : held === 'least' ? 'at-least' : 'at-most';
  });
  const sharing = free.filter((plan) => !solved.has(plan.cell.id));
  const share =
    sharing.length === 0
      ? undefined
      : shareFigure(sharing, [...fixedTerms, ...spaceTerms([...solved.values()], request.cells)], request);
  for (const plan of axis.copiesLast) {
    const id = plan.cell.id;
    if (plan.kind === 'set') solved.set(id, plan.solved);
    if (plan.kind !== 'free' || solved.has(id) || share === undefined) continue;
    const target = plan.follows === undefined ? undefined : solved.get(plan.follows.plan.cell.id);
    solved.set(
      id,
      target === undefined
        ? solvedFrom(plan.cell, shareFace(axis.shareOf, plan.cell), sharedFigure(plan.cell, share), 'share')
        : copyOf(plan.cell, target),
    );
  }
  const cells = request.cells.flatMap((cell) => solved.get(cell.id) ?? []);
  return share === undefined ? { cells } : { cells, share };
}

function shareFace(shareOf: Face, cell: AxisCell): Face {
  return cell.hasFront ? shareOf : 'opening';
}

/** The total less all that does not share, in as many shares as there are. */
function shareFigure(sharing: readonly FreePlan[], takenTerms: readonly Operand[], request: AxisRequest): Figure {
  const left = gathered([
    plus(request.totalLabel, request.total),
    ...takenTerms.map(negatedOperand),
    ...sharing.flatMap((plan) => plan.constants.map(negatedOperand)),
  ]);
  const shares = sharing.reduce((sum, plan) => sum.plus(plan.affine.slope), Rational.zero);
  if (shares.equals(Rational.one)) return derive('the rest', left);
  const toShare = derive('what is left to share', left);
  return derive(`one of ${shares} shares`, [plus('what is left to share', toShare, shares.inverse())]);
}

function sharedFigure(cell: AxisCell, share: Figure): Figure {
  const asked = cell.asked;
  if (asked.kind === 'graded') {
    const steps = gradeOf(asked.by, asked.step);
    return steps.length === 0 ? share : derive('graded', [plus('first of the grading', share), ...steps]);
  }
  if (asked.kind === 'graded-by-ratio') {
    if (asked.step === 0) return share;
    return derive('graded', [plus('first of the grading', share, asked.ratio.power(asked.step))]);
  }
  if (asked.kind !== 'share' || asked.weight.equals(Rational.one)) return share;
  return derive(`${asked.weight} shares`, [plus('one share', share, asked.weight)]);
}

function isNotPositive(cell: SolvedCell): boolean {
  return !cell.opening.length.isPositive() || (cell.front !== undefined && !cell.front.length.isPositive());
}

/** Total less these is what the squeezed cells come to, as fronts where shares are of fronts. */
function takenBeside(
  squeezed: readonly SolvedCell[],
  cells: readonly SolvedCell[],
  shareOf: Face,
  request: AxisRequest,
): readonly Operand[] {
  const ids = new Set(squeezed.map((cell) => cell.id));
  const gaps = request.cells
    .filter((cell) => ids.has(cell.id) && shareOf === 'front')
    .flatMap((cell) => deltasOf(cell).map(negatedOperand));
  const others = cells.filter((cell) => !ids.has(cell.id));
  return gathered([...boundaryTerms(request.boundaries), ...spaceTerms(others, request.cells), ...gaps]);
}

function clashesOf(cells: readonly AxisCell[], solved: readonly SolvedCell[]): readonly LimitClash[] {
  const byId = new Map(solved.map((cell) => [cell.id, cell]));
  return cells.flatMap((cell): LimitClash[] => {
    const { id, atLeast, atMost } = cell;
    if (atLeast !== undefined && atMost !== undefined && areLimitsCrossed(cell)) {
      return [{ id, between: [atLeast, atMost], what: 'least-over-most' }];
    }
    const found = byId.get(id);
    if (found === undefined) return [];
    const size = faceOf(found, faceMeant(cell));
    if (atLeast !== undefined && size.length.compare(atLeast.length) < 0) {
      return [{ id, between: [size, atLeast], what: 'size-under-least' }];
    }
    if (atMost !== undefined && size.length.compare(atMost.length) > 0) {
      return [{ id, between: [size, atMost], what: 'size-over-most' }];
    }
    return [];
  });
}
