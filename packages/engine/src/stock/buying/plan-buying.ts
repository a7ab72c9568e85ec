import type { BoardPlan } from '../boards/board-problem.ts';
import { planBoards } from '../boards/plan-boards.ts';
import { searchSheets } from '../sheets/search-sheets.ts';
import type { SheetPlan, WhyUnplaced } from '../sheets/sheet-plan.ts';
import type { BoardOrder, BuyingRequest, SheetOrder, UnplannedPiece, WhyUnplanned } from './buying-request.ts';

/** The cutting plans of a piece, with how good each is. */
export interface BuyingPlan {
  readonly request: BuyingRequest;
  readonly sheets: readonly PlannedSheets[];
  readonly boards: readonly PlannedBoards[];
  /** Those of the request, and what no plan could place. */
  readonly unplanned: readonly UnplannedPiece[];
}

export interface PlannedSheets {
  readonly order: SheetOrder;
  readonly plan: SheetPlan;
  /** No plan takes fewer sheets. */
  readonly bound: number;
}

export interface PlannedBoards {
  readonly order: BoardOrder;
  readonly plan: BoardPlan;
  /** No plan costs less, in the unit of the plan's cost. */
  readonly bound: number;
}

export interface BuyingProgress {
  /** 0 to 1, never falling. */
  readonly progress: number;
  /** What is known so far: an order that was not reached yet is not in it. */
  readonly plan: BuyingPlan;
}

/** How long each order is thought about. In steps, not in seconds, so that every machine finds the same plan. */
export interface Patience {
  readonly steps: number;
  readonly seed: number;
}

export const usualPatience: Patience = { steps: 40, seed: 1 };

/** Plans one order after the other and tells after each step how far it is; whoever waits may stop at any step. */
export function* planBuying(request: BuyingRequest, patience = usualPatience): Generator<BuyingProgress, BuyingPlan> {
  const sheets: PlannedSheets[] = [];
  const boards: PlannedBoards[] = [];
  const orders = request.sheets.length + request.boards.length;
  const now = (): BuyingPlan => ({
    request,
    sheets: [...sheets],
    boards: [...boards],
    unplanned: [...request.unplanned, ...sheets.flatMap(unplacedOnSheets), ...boards.flatMap(unplacedOnBoards)],
  });
  const told = (steps: number): BuyingProgress => ({
    progress: (sheets.length + boards.length - 1 + Math.min(1, steps / patience.steps)) / Math.max(1, orders),
    plan: now(),
  });
  for (const order of request.sheets) {
    const at = sheets.length;
    let steps = 0;
    for (const { plan, bound, done } of withLast(searchSheets(order.problem, patience.seed))) {
      sheets[at] = { order, plan, bound };
      steps += 1;
      if (done || steps >= patience.steps) break;
      yield told(steps);
    }
  }
  for (const order of request.boards) {
    const at = boards.length;
    let steps = 0;
    for (const { plan, bound: found, done } of planBoards(order.prepared.problem, patience.seed)) {
      const best = plan ?? boards[at]?.plan;
      const bound = boardBound(order, found);
      if (best !== undefined) boards[at] = { order, plan: best, bound };
      steps += 1;
      const isLeast = best?.unplaced.length === 0 && best.cost <= bound;
      if (done || isLeast || steps >= patience.steps) break;
      yield told(steps);
    }
  }
  return now();
}

/**
 * What the searches' bound leaves out: boards are bought whole, so that the cost is a multiple of what all their costs are
 * multiples of, and at least that of the cheapest one.
 */
function boardBound({ prepared: { problem } }: BoardOrder, bound: number): number {
  const costs = problem.boards.map(({ cost }) => cost).filter((cost) => cost > 0);
  const step = costs.reduce((common, cost) => greatestCommonDivisor(common, cost), 0);
  if (step === 0 || problem.blanks.length === 0) return bound;
  return Math.max(Math.ceil(bound / step) * step, Math.min(...problem.boards.map(({ cost }) => cost)));
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** The plan at the end of all steps. */
export function planBuyingAtOnce(request: BuyingRequest, patience = usualPatience): BuyingPlan {
  const search = planBuying(request, patience);
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

/** A generator's last answer is one of its answers, too. */
function* withLast<Answer>(answers: Generator<Answer, Answer>): Generator<Answer, void> {
  for (;;) {
    const { value, done } = answers.next();
    yield value;
    if (done === true) return;
  }
}

function unplacedOnSheets({ order, plan }: PlannedSheets): readonly UnplannedPiece[] {
  return plan.unplaced.flatMap(({ blank, why }) =>
    order.pieces.filter((piece) => piece.blank.id === blank).map((piece) => ({ piece, why: whyUnplanned(why) })),
  );
}

function unplacedOnBoards({ order, plan }: PlannedBoards): readonly UnplannedPiece[] {
  return plan.unplaced.flatMap(({ blank }) =>
    order.pieces
      .filter((piece) => piece.blank.id === blank)
      .map((piece) => ({ piece, why: 'no cuts make it' as const })),
  );
}

function whyUnplanned(why: WhyUnplaced): WhyUnplanned {
  switch (why) {
    case 'larger than every sheet':
    case 'larger than every sheet unless turned':
      return why;
    case 'no whole positive size or count':
      return 'its size is not more than nothing';
    case 'no sheets':
      return 'its stock has no size';
    case 'too many blanks':
      return 'too many pieces';
    case 'narrower than the narrowest strip':
    case 'no cuts within the limits make it':
    case 'no sheet is left':
      return 'no cuts make it';
    default: {
      const unknown: never = why;
      return unknown;
    }
  }
}
