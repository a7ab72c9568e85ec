import type { BoardPlan } from '../boards/board-problem.ts';
import type { SheetPlan, WhyUnplaced } from '../sheets/sheet-plan.ts';
import type { BoardOrder, BuyingRequest, SheetOrder, UnplannedPiece, WhyUnplanned } from './buying-request.ts';
import type { BlankToCut } from './ordered-blanks.ts';
import { type PlanQuestion, type PlansSoFar, searchPlans, usualPatience } from './search-plans.ts';

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

/** What the searches are asked: sheets, then boards, in the order of the request. */
export function planQuestions({ sheets, boards }: BuyingRequest): readonly PlanQuestion[] {
  return [
    ...sheets.map(({ problem }): PlanQuestion => ({ kind: 'sheets', problem })),
    ...boards.map(({ prepared }): PlanQuestion => ({ kind: 'boards', problem: prepared.problem })),
  ];
}

/** The plans that answer a request; undefined as long as one is missing, for then parts would be left out. */
export function buyingPlanOf(request: BuyingRequest, answers: PlansSoFar['answers']): BuyingPlan | undefined {
  const sheets: PlannedSheets[] = [];
  const boards: PlannedBoards[] = [];
  const orders = [...request.sheets, ...request.boards];
  for (const [at, order] of orders.entries()) {
    const answer = answers[at];
    if (answer?.kind === 'sheets' && 'problem' in order) {
      sheets.push({ order, plan: answer.plan, bound: answer.bound });
    } else if (answer?.kind === 'boards' && 'prepared' in order) {
      boards.push({ order, plan: answer.plan, bound: answer.bound });
    } else return undefined;
  }
  const unplanned = [...request.unplanned, ...sheets.flatMap(unplacedOnSheets), ...boards.flatMap(unplacedOnBoards)];
  return { request, sheets, boards, unplanned };
}

/** The plan at the end of all steps. */
export function planBuyingAtOnce(request: BuyingRequest, patience = usualPatience): BuyingPlan {
  const search = searchPlans(planQuestions(request), patience);
  for (;;) {
    const step = search.next();
    if (step.done !== true) continue;
    const plan = buyingPlanOf(request, step.value.answers);
    if (plan === undefined) throw new Error('every search has an answer once it has taken a step');
    return plan;
  }
}

function unplacedOnSheets({ order, plan }: PlannedSheets): readonly UnplannedPiece[] {
  return plan.unplaced.flatMap(({ blank, why }) => unplaced(order.blanks.get(blank), whyUnplanned(why)));
}

function unplacedOnBoards({ order, plan }: PlannedBoards): readonly UnplannedPiece[] {
  return plan.unplaced.flatMap(({ blank }) => unplaced(order.blanks.get(blank), 'no cuts make it'));
}

/** Of pieces that follow one another none is too large by itself. */
function unplaced(blank: BlankToCut | undefined, why: WhyUnplanned): readonly UnplannedPiece[] {
  const pieces = blank?.pieces ?? [];
  const isTooLarge = why === 'larger than every sheet' || why === 'larger than every sheet unless turned';
  const said = pieces.length > 1 && isTooLarge ? 'with those it follows, larger than any of its stock' : why;
  return pieces.map((piece) => ({ piece, why: said }));
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
