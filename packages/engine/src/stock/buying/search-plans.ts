import type { BoardPlan, BoardProblem, BoardStep } from '../boards/board-problem.ts';
import { planBoards } from '../boards/plan-boards.ts';
import { type SheetSearch, searchSheets } from '../sheets/search-sheets.ts';
import type { SheetPlan } from '../sheets/sheet-plan.ts';
import type { SheetProblem } from '../sheets/sheet-problem.ts';

/**
 * Searches for several cutting plans side by side. Questions and answers are plain data, so that the search may run in
 * another thread.
 */

export type PlanQuestion =
  | { readonly kind: 'sheets'; readonly problem: SheetProblem }
  | { readonly kind: 'boards'; readonly problem: BoardProblem };

/** The best plan so far, and what no plan can cost less than. */
export type PlanAnswer =
  | { readonly kind: 'sheets'; readonly plan: SheetPlan; readonly bound: number }
  | { readonly kind: 'boards'; readonly plan: BoardPlan; readonly bound: number };

export interface PlansSoFar {
  /** 0 to 1, never falling. */
  readonly progress: number;
  /** One for each question, in their order; absent until its first plan is found. The same object until it changes. */
  readonly answers: readonly (PlanAnswer | undefined)[];
}

/** How long each question is thought about. In steps, not in seconds, so that every machine finds the same plans. */
export interface Patience {
  readonly steps: number;
  readonly seed: number;
}

export const usualPatience: Patience = { steps: 40, seed: 1 };

/**
 * Takes a step for each question in turn, so that the first plans of all of them come before a better one of any. Tells
 * after each step how far it is; whoever waits may stop at any step.
 */
export function* searchPlans(
  questions: readonly PlanQuestion[],
  { steps, seed }: Patience = usualPatience,
): Generator<PlansSoFar, PlansSoFar> {
  const searches = questions.map((question) => answersTo(question, seed));
  const answers: (PlanAnswer | undefined)[] = questions.map(() => undefined);
  const taken = questions.map(() => 0);
  const now = (): PlansSoFar => ({
    progress: taken.reduce((sum, each) => sum + each, 0) / Math.max(1, steps * questions.length),
    answers: [...answers],
  });
  for (let turn = 0; turn < steps; turn += 1) {
    for (const [at, search] of searches.entries()) {
      if ((taken[at] as number) >= steps) continue;
      let { value, done } = search.next();
      for (; value === 'partial'; { value, done } = search.next()) yield now();
      if (value !== undefined) answers[at] = value;
      taken[at] = done === true ? steps : turn + 1;
      yield now();
    }
  }
  return now();
}

type Answered = PlanAnswer | undefined;

/** Each better answer as it comes; nothing where a step brought none, and 'partial' where it is not yet done. */
function answersTo(question: PlanQuestion, seed: number): Generator<Answered | 'partial', Answered> {
  switch (question.kind) {
    case 'sheets':
      return sheetAnswers(searchSheets(question.problem, seed));
    case 'boards':
      return boardAnswers(question.problem, planBoards(question.problem, seed));
    default:
      return question satisfies never;
  }
}

function* sheetAnswers(search: Generator<SheetSearch, SheetSearch>): Generator<Answered, Answered> {
  let before: SheetSearch | undefined;
  for (;;) {
    const { value } = search.next();
    const isNews = value.plan !== before?.plan || value.bound !== before.bound;
    before = value;
    const { plan, bound } = value;
    const answer: PlanAnswer | undefined = isNews ? { kind: 'sheets', plan, bound } : undefined;
    if (value.done) return answer;
    yield answer;
  }
}

function* boardAnswers(
  problem: BoardProblem,
  search: Generator<BoardStep, void>,
): Generator<Answered | 'partial', Answered> {
  let plan: BoardPlan | undefined;
  for (const step of search) {
    if (step.isPartial === true) {
      yield 'partial';
      continue;
    }
    const bound = wholeBoardsBound(problem, step.bound);
    plan = step.plan ?? plan;
    const answer: PlanAnswer | undefined =
      step.plan === undefined ? undefined : { kind: 'boards', plan: step.plan, bound };
    if (step.done || (plan?.unplaced.length === 0 && plan.cost <= bound)) return answer;
    yield answer;
  }
  return undefined;
}

/**
 * What the search's bound leaves out: boards are bought whole, so that the cost is a multiple of what all their costs are
 * multiples of, and at least that of the cheapest one.
 */
function wholeBoardsBound({ boards, blanks }: BoardProblem, bound: number): number {
  const costs = boards.map(({ cost }) => cost).filter((cost) => cost > 0);
  const step = costs.reduce((common, cost) => greatestCommonDivisor(common, cost), 0);
  if (step === 0 || blanks.length === 0) return bound;
  return Math.max(Math.ceil(bound / step) * step, Math.min(...boards.map(({ cost }) => cost)));
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
