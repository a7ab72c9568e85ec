import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSheetPlan } from '../../../../packages/engine/src/stock/sheets/check-sheet-plan.ts';
import { anySheetProblem } from './arbitrary-sheets.ts';
import { answersOf } from './taking-steps.ts';

describe('whatever is asked', () => {
  it('every plan on the way can be cut as written and leaves nothing out in silence', () => {
    fc.assert(
      fc.property(anySheetProblem, fc.integer(), (problem, seed) => {
        for (const { plan } of answersOf(problem, 25, seed)) expect(checkSheetPlan(problem, plan)).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  it('the bound never falls and never passes a plan, and plans never get worse', () => {
    fc.assert(
      fc.property(anySheetProblem, (problem) => {
        const answers = answersOf(problem, 25);
        answers.forEach(({ plan, bound, provedLeast, steps }, place) => {
          const before = answers[place - 1];
          expect(steps).toBe(place + 1);
          expect(bound).toBeLessThanOrEqual(plan.cost);
          if (provedLeast) expect(plan.cost).toBe(bound);
          if (before === undefined) return;
          const left = (unplaced: typeof plan.unplaced) => unplaced.reduce((sum, { count }) => sum + count, 0);
          if (left(plan.unplaced) === left(before.plan.unplaced) && left(plan.unplaced) === 0) {
            expect(plan.cost).toBeLessThanOrEqual(before.plan.cost);
            expect(bound).toBeGreaterThanOrEqual(before.bound);
          }
        });
      }),
      { numRuns: 300 },
    );
  });

  it('the same seed gives the same plan after the same number of steps', () => {
    fc.assert(
      fc.property(anySheetProblem, fc.integer(), (problem, seed) => {
        expect(answersOf(problem, 20, seed).at(-1)).toEqual(answersOf(problem, 20, seed).at(-1));
      }),
      { numRuns: 60 },
    );
  });
});
