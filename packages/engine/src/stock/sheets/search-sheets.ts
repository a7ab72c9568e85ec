import { costStep, leastCost, roundUpCost } from './cost-bound.ts';
import { dualFeasibleBound } from './dual-feasible-bound.ts';
import { ORDERS, planOnce } from './first-plan.ts';
import { SheetImprover } from './improve-sheets.ts';
import { PatternSearch } from './pattern-search.ts';
import { planFromRecord } from './plan-from-record.ts';
import { prepareSheets } from './prepare-sheets.ts';
import type { SheetPlan } from './sheet-plan.ts';
import type { SheetProblem } from './sheet-problem.ts';
import type { Fit, StateRecord } from './sheet-state.ts';

/** Blanks are taken out and put back so often between two answers. */
const STEPS_OF_A_TURN = 128;

/** Where a search stands. */
export interface SheetSearch {
  /** The best plan so far; the same object until there is a better one. */
  readonly plan: SheetPlan;
  /** No plan that leaves nothing out costs less. Never above the plan's cost. */
  readonly bound: number;
  /** Nothing is left out that could be placed, and the cost is the bound. */
  readonly provedLeast: boolean;
  /** Nothing more will be found. */
  readonly done: boolean;
  /** How many small steps the search has taken; it grows by one with each answer. */
  readonly steps: number;
}

/**
 * Searches for the cheapest plan. Answers after every small step (some milliseconds), the first time with a good plan, so
 * that whoever runs it can stop when there is no time left. Knows no clock: the same problem and seed give the same plan
 * after the same number of steps. Never throws; what cannot be placed is in the plan's `unplaced`.
 */
export function* searchSheets(problem: SheetProblem, seed = 1): Generator<SheetSearch, SheetSearch> {
  const prepared = prepareSheets(problem);
  const { types, kinds } = prepared;
  const areas = Float64Array.from(types, ({ width, length }) => width * length);
  const total = types.reduce((sum, { width, length, count }) => sum + width * length * count, 0);
  const blanks = types.reduce((sum, { count }) => sum + count, 0);
  const step = costStep(kinds);
  let best = planOnce(prepared, areas, ORDERS[0] as (typeof ORDERS)[0], 'shortest side');
  let plan = planFromRecord(prepared, best);
  let bound = 0;
  let steps = 0;
  let done = types.length === 0;
  const offer = (record: StateRecord): boolean => {
    if (!isBetter(record, best, areas)) return false;
    best = record;
    plan = planFromRecord(prepared, best);
    return true;
  };
  const raiseBound = (to: number) => {
    if (Number.isFinite(to)) bound = Math.max(bound, roundUpCost(to, step));
    done ||= looseArea(best, areas) === 0 && best.cost <= bound;
  };
  const answer = (): SheetSearch => ({
    plan,
    bound: Math.min(bound, plan.cost),
    provedLeast: looseArea(best, areas) === 0 && best.cost <= bound,
    done,
    steps: ++steps,
  });
  raiseBound(
    leastCost(
      total,
      kinds,
      kinds.map(({ width, length }) => width * length),
    ),
  );
  if (!done) yield answer();
  if (!done && total > 0 && types.length <= 1000) {
    raiseBound(dualFeasibleBound(prepared));
    if (!done) yield answer();
  }
  // Orders with many blanks of each size are won by patterns, others by moving blanks.
  const isRepetitive = blanks >= 1.5 * types.length;
  for (const [order, fit] of done || (isRepetitive && blanks > 300) ? [] : firstPlans(blanks > 3000)) {
    offer(planOnce(prepared, areas, order, fit));
    raiseBound(0);
    if (done) break;
    yield answer();
  }
  if (!done) {
    const improver = new SheetImprover(prepared, areas, best, step, seed);
    const patterns = new PatternSearch(prepared, areas, step, seed, (to) => {
      raiseBound(to);
      return done;
    });
    const isWonByPatterns = isRepetitive && patterns.findsPlans;
    // Of very many of each size nearly every turn is one with patterns; else one now and then is enough, for their own plans
    // and for the bound.
    const isLeftToPatterns = isWonByPatterns && blanks >= 6 * types.length;
    const turns = isWonByPatterns && !isLeftToPatterns ? 6 : 8;
    // A turn with patterns takes several times as long as one of the others, which are to have most of the time.
    const stepsOfATurn = STEPS_OF_A_TURN * (isWonByPatterns ? (isLeftToPatterns ? 1 : 4) : 2);
    let hasPatterns = false;
    for (let turn = 0; !done; turn++) {
      const isLastOfTurns = turn % turns === turns - 1;
      const isPatternsTurn = isLeftToPatterns ? !hasPatterns || !isLastOfTurns : isLastOfTurns;
      if (isPatternsTurn && patterns.isAtWork()) {
        const found = patterns.run();
        hasPatterns ||= found !== undefined;
        if (found !== undefined && offer(found)) improver.adopt(found);
      } else if (improver.run(stepsOfATurn)) offer(improver.best);
      raiseBound(0);
      if (!done) yield answer();
    }
  }
  return answer();
}

function firstPlans(areFew: boolean): readonly (readonly [(typeof ORDERS)[0], Fit])[] {
  return ORDERS.slice(0, areFew ? 1 : ORDERS.length).flatMap((order) =>
    (['kept together', 'least area'] as const).map((fit) => [order, fit] as const),
  );
}

function isBetter(one: StateRecord, other: StateRecord, areas: Float64Array): boolean {
  const loose = looseArea(one, areas) - looseArea(other, areas);
  return loose < 0 || (loose === 0 && one.cost < other.cost);
}

function looseArea({ loose }: StateRecord, areas: Float64Array): number {
  return loose.reduce((sum, count, type) => sum + count * (areas[type] as number), 0);
}
