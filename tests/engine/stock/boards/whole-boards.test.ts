import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardBounds, measureBoards } from '../../../../packages/engine/src/stock/boards/board-bound.ts';
import type { BoardProblem } from '../../../../packages/engine/src/stock/boards/board-problem.ts';
import { planBoards } from '../../../../packages/engine/src/stock/boards/plan-boards.ts';
import {
  leastCostOfWhole,
  type Need,
  WholeBoards,
  type WholeKind,
} from '../../../../packages/engine/src/stock/boards/whole-boards.ts';

/** Boards are bought whole: what they cost at least when they have to do by every measure at once. */

const arbitraryOrder = fc.integer({ min: 1, max: 4 }).chain((count) =>
  fc.record({
    kinds: fc.array(fc.record({ cost: fc.integer({ min: 0, max: 30 }), available: fc.integer({ min: 0, max: 3 }) }), {
      minLength: count,
      maxLength: count,
    }),
    needs: fc.array(
      fc.record({
        total: fc.integer({ min: 0, max: 40 }),
        held: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: count, maxLength: count }),
      }),
      { maxLength: 3 },
    ),
  }),
);

/** By trying every number of every kind. */
function byTrying(kinds: readonly WholeKind[], needs: readonly Need[]): number {
  let least = Number.POSITIVE_INFINITY;
  const tryFrom = (kind: number, counts: readonly number[], cost: number): void => {
    const next = kinds[kind];
    if (next === undefined) {
      const isEnough = needs.every(
        ({ total, held }) => held.reduce((sum, one, at) => sum + one * (counts[at] as number), 0) >= total,
      );
      if (isEnough) least = Math.min(least, cost);
      return;
    }
    for (let count = 0; count <= next.available; count += 1) {
      tryFrom(kind + 1, [...counts, count], cost + count * next.cost);
    }
  };
  tryFrom(0, [], 0);
  return least;
}

describe('the least cost of whole boards', () => {
  test('is what trying every choice finds', () => {
    fc.assert(
      fc.property(arbitraryOrder, ({ kinds, needs }) => {
        expect(leastCostOfWhole(kinds, needs, Number.POSITIVE_INFINITY, 100_000)).toBe(byTrying(kinds, needs));
      }),
      { numRuns: 1000 },
    );
  });

  test('is never above that when the search is stopped, by how long it took or by what is enough', () => {
    fc.assert(
      fc.property(arbitraryOrder, fc.nat(6), fc.nat(60), ({ kinds, needs }, choices, enough) => {
        const least = byTrying(kinds, needs);
        expect(leastCostOfWhole(kinds, needs, Number.POSITIVE_INFINITY, choices)).toBeLessThanOrEqual(least);
        const stopped = leastCostOfWhole(kinds, needs, enough, 100_000);
        expect(stopped).toBeLessThanOrEqual(least);
        if (least > enough) expect(stopped).toBeGreaterThanOrEqual(enough);
      }),
      { numRuns: 500 },
    );
  });

  test('counts boards that are alike together, and as many as one likes where there is no limit', () => {
    const board = { id: 'a', width: 10, length: 100, cost: 7 };
    const need = { total: 25, held: [10, 10] };
    const two = new WholeBoards(
      [
        { ...board, available: 1 },
        { ...board, id: 'b', available: 1 },
      ],
      [need],
    );
    expect(two.leastCost(1000)).toBe(Number.POSITIVE_INFINITY);
    const many = new WholeBoards(
      [
        { ...board, available: 1 },
        { ...board, id: 'b' },
      ],
      [need],
    );
    expect(many.leastCost(1000)).toBe(21);
  });
});

describe('a bound for boards', () => {
  const NO_LOSS = { ripKerf: 0, crosscutKerf: 0, endTrim: 0, edgeTrim: 0 };

  /** 2¼ boards of the cheaper kind by area; whole ones are three, or two and a wide one. */
  const problem: BoardProblem = {
    ...NO_LOSS,
    boards: [
      { id: 'narrow', width: 100, length: 1000, cost: 100 },
      { id: 'wide', width: 150, length: 1000, cost: 160 },
    ],
    blanks: [{ id: 'rail', width: 50, length: 500, count: 9 }],
  };

  test('does not buy a quarter of a board', () => {
    expect(boardBounds(problem).best).toBe(225);
    const whole = new WholeBoards(problem.boards, measureBoards(problem).needs);
    expect(whole.leastCost(Number.POSITIVE_INFINITY)).toBe(260);
  });

  test('proves the plan least that area alone does not', () => {
    let cost = Number.NaN;
    let bound = 0;
    for (const step of planBoards(problem, 1)) {
      cost = step.plan?.cost ?? cost;
      bound = step.bound;
    }
    expect([cost, bound]).toEqual([260, 260]);
  });
});
