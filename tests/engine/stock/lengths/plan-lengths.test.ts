import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkLengthPlan } from '../../../../packages/engine/src/stock/lengths/check-length-plan.ts';
import type { LengthPlan, LengthProblem } from '../../../../packages/engine/src/stock/lengths/length-problem.ts';
import { planLengths } from '../../../../packages/engine/src/stock/lengths/plan-lengths.ts';
import { arbitraryLengthProblem } from './arbitrary-lengths.ts';
import { planWithin } from './planning.ts';

/** Lengths out of stock: what a saw can cut, everything accounted for, and a bound that holds. */

function one(
  stock: number,
  items: readonly (readonly [length: number, count: number])[],
  kerf = 0,
  trim = 0,
): LengthProblem {
  return {
    stocks: [{ id: 'bar', length: stock, cost: 1 }],
    items: items.map(([length, count]) => ({ id: `${length}`, length, count })),
    kerf,
    trim,
  };
}

/** How much has no place, each piece with the cut that parts it from the next. */
function missing({ items, kerf }: LengthProblem, { unplaced }: LengthPlan): number {
  const length = (id: string) => items.find((item) => item.id === id)?.length ?? 0;
  return unplaced.reduce((sum, { item, count }) => sum + count * (length(item) + kerf), 0);
}

describe('a plan', () => {
  test('of pieces that end flush needs no cut after the last one', () => {
    expect(planWithin(one(103, [[50, 2]], 3), 50).plan).toEqual({
      cuts: [{ stock: 'bar', times: 1, pieces: [{ item: '50', count: 2 }], left: 0 }],
      unplaced: [],
      cost: 1,
    });
  });

  test('needs a second bar where the kerf is a hair too wide', () => {
    expect(planWithin(one(103, [[50, 2]], 4), 50).plan.cost).toBe(2);
  });

  test('takes an end thinner than the blade with the blade, and says what is left beyond it', () => {
    expect(planWithin(one(102, [[100, 1]], 3), 50).plan.cuts[0]?.left).toBe(0);
    expect(planWithin(one(110, [[100, 1]], 3), 50).plan.cuts[0]?.left).toBe(7);
  });

  test('leaves the trim to the saw', () => {
    expect(planWithin(one(110, [[50, 2]], 0, 10), 50).plan.cost).toBe(1);
    expect(planWithin(one(110, [[50, 2]], 0, 11), 50).plan.cost).toBe(2);
  });

  test('keeps pieces of one length that have different names apart', () => {
    const { plan } = planWithin(
      {
        stocks: [{ id: 'bar', length: 100, cost: 1 }],
        items: [
          { id: 'rail', length: 50, count: 3 },
          { id: 'stile', length: 50, count: 1 },
        ],
        kerf: 0,
        trim: 0,
      },
      50,
    );
    expect(plan.cuts).toEqual([
      { stock: 'bar', times: 1, pieces: [{ item: 'rail', count: 2 }], left: 0 },
      {
        stock: 'bar',
        times: 1,
        pieces: [
          { item: 'rail', count: 1 },
          { item: 'stile', count: 1 },
        ],
        left: 0,
      },
    ]);
  });

  test('uses what is cheap while there is any of it, and leaves long stock to long pieces', () => {
    const { plan, bound } = planWithin(
      {
        stocks: [
          { id: 'offcut', length: 70, cost: 0, available: 1 },
          { id: 'long', length: 120, cost: 120, available: 1 },
          { id: 'new', length: 80, cost: 80 },
        ],
        items: [
          { id: 'rail', length: 110, count: 1 },
          { id: 'stile', length: 60, count: 2 },
        ],
        kerf: 0,
        trim: 0,
      },
      200,
    );
    expect(plan.cost).toBe(200);
    expect(bound).toBe(200);
    expect(plan.cuts.map(({ stock }) => stock).sort()).toEqual(['long', 'new', 'offcut']);
  });

  test('says what has no place: too long for every stock, no length at all, or one more than there is stock for', () => {
    const { plan } = planWithin(
      {
        stocks: [{ id: 'bar', length: 100, cost: 5, available: 2 }],
        items: [
          { id: 'mast', length: 101, count: 1 },
          { id: 'half', length: 50.5, count: 1 },
          { id: 'nothing', length: 0, count: 2 },
          { id: 'rail', length: 90, count: 3 },
        ],
        kerf: 3,
        trim: 0,
      },
      50,
    );
    expect(plan.unplaced).toEqual([
      { item: 'mast', count: 1 },
      { item: 'half', count: 1 },
      { item: 'nothing', count: 2 },
      { item: 'rail', count: 1 },
    ]);
    expect(plan.cost).toBe(10);
  });

  test('of nothing, or without stock, is there and done at once', () => {
    expect([...planLengths(one(100, []))]).toEqual([
      { plan: { cuts: [], unplaced: [], cost: 0 }, bound: 0, done: true, progress: 1 },
    ]);
    expect(planWithin({ stocks: [], items: [{ id: 'rail', length: 5, count: 2 }], kerf: 0, trim: 0 }, 5)).toMatchObject(
      {
        plan: { cuts: [], unplaced: [{ item: 'rail', count: 2 }] },
        isDone: true,
      },
    );
  });

  test('of ten thousand tiny parts comes with the first step, all of one length or all different', () => {
    expect(planWithin(one(2440, [[7, 10_000]], 3), 3).plan.cost).toBe(Math.ceil(10_000 / 244));
    const different = Array.from({ length: 10_000 }, (_, index) => [3 + index, 1] as const);
    expect(planWithin(one(100_000, different, 3), 1).plan.unplaced).toEqual([]);
  });

  test('is refused where the question itself is no question', () => {
    for (const broken of [one(100, [[5, 1.5]]), one(100, [[5, 1]], -1), one(0.5, [[5, 1]])]) {
      expect(() => planLengths(broken).next()).toThrow(RangeError);
    }
  });
});

describe('whatever is asked', () => {
  test('every plan can be sawn, each piece is there once, plans get better and no bound is above a plan', () => {
    fc.assert(
      fc.property(arbitraryLengthProblem, (problem) => {
        const { plans, plan, bound } = planWithin(problem, 40);
        for (let index = 1; index < plans.length; index += 1) {
          const [before, after] = [plans[index - 1] as LengthPlan, plans[index] as LengthPlan];
          const [left, leftBefore] = [missing(problem, after), missing(problem, before)];
          expect(left < leftBefore || (left === leftBefore && after.cost < before.cost)).toBe(true);
        }
        if (plan.unplaced.length === 0) expect(bound).toBeLessThanOrEqual(plan.cost);
      }),
      { numRuns: 300 },
    );
  });

  test('the same seed gives the same steps', () => {
    fc.assert(
      fc.property(arbitraryLengthProblem, (problem) => {
        const first = planWithin(problem, 30, 7);
        expect(planWithin(problem, 30, 7)).toEqual(first);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the checker', () => {
  const problem = one(
    100,
    [
      [60, 1],
      [40, 2],
    ],
    3,
  );
  const plan: LengthPlan = {
    cuts: [
      { stock: 'bar', times: 1, pieces: [{ item: '60', count: 1 }], left: 37 },
      { stock: 'bar', times: 1, pieces: [{ item: '40', count: 2 }], left: 14 },
    ],
    unplaced: [],
    cost: 2,
  };

  test('finds nothing wrong with a plan that can be sawn', () => {
    expect(checkLengthPlan(problem, plan)).toEqual([]);
  });

  test.each<readonly [string, Partial<LengthPlan>, string]>([
    ['that lacks a piece', { cuts: plan.cuts.slice(0, 1), cost: 1 }, '40 is there 0 times, not 2'],
    [
      'that forgets the kerf',
      {
        cuts: [
          {
            stock: 'bar',
            times: 1,
            pieces: [
              { item: '60', count: 1 },
              { item: '40', count: 1 },
            ],
            left: 0,
          },
        ],
      },
      '3 too much on bar',
    ],
    ['that flatters itself', { cost: 1 }, 'the plan says it costs 1, it costs 2'],
    [
      'from stock that is not there',
      { cuts: [{ stock: 'rod', times: 1, pieces: [], left: 0 }] },
      'there is no stock rod',
    ],
    ['that hides what is left out', { unplaced: [{ item: '40', count: 1 }] }, '40 is there 3 times, not 2'],
  ])('sees a plan %s', (_, change, words) => {
    expect(checkLengthPlan(problem, { ...plan, ...change })).toContain(words);
  });

  test('sees that more stock is used than there is', () => {
    const limited = { ...problem, stocks: [{ id: 'bar', length: 100, cost: 1, available: 1 }] };
    expect(checkLengthPlan(limited, plan)).toEqual(['2 of bar are used, there are 1']);
  });
});
