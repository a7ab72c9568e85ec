import { costStep, roundUpCost } from '../sheets/cost-bound.ts';
import { PatternGeneration } from '../sheets/generate-patterns.ts';
import type { PatternEffort } from '../sheets/pattern-columns.ts';
import type { BoardProblem } from './board-problem.ts';
import { boardsAsSheets } from './boards-as-sheets.ts';
import type { Need } from './whole-boards.ts';

/** At so many places of a side can be cut before the table of patterns becomes coarse. */
const MOST_PLACES = 300;
/** The bound hardly rises after so many fillings of that table. */
const EFFORT: PatternEffort = { rounds: 400, stripRounds: Number.POSITIVE_INFINITY, isForBound: true };

/**
 * A bound that knows how blanks go into a board together: whatever bands are cut from a board is a pattern of guillotine cuts,
 * and the linear program over all those costs no more than any plan. Pauses now and then; tells `raise` every bound
 * and what whole boards have to hold at its prices, which may end the work by answering true. Defects are not counted. Silent where the problem is too large for it.
 */
export function* patternBound(
  problem: BoardProblem,
  raise: (bound: number, need: Need) => boolean,
): Generator<void, void> {
  const prepared = boardsAsSheets(problem, 'not counted');
  const generation = PatternGeneration.for(prepared, MOST_PLACES);
  if (generation === undefined) return;
  const step = costStep(prepared.kinds);
  const asked = Int32Array.from(prepared.types, ({ count }) => count);
  const solving = generation.solve(asked, EFFORT, (bound, { total, bests }) => {
    const heldOn = new Map(prepared.kinds.map(({ sheet }, kind) => [sheet.id, bests[kind] as number]));
    return raise(roundUpCost(bound, step), { total, held: problem.boards.map(({ id }) => heldOn.get(id) ?? 0) });
  });
  while (solving.next().done !== true) yield;
}
