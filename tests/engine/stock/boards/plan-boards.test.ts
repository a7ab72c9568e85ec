import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardBounds } from '../../../../packages/engine/src/stock/boards/board-bound.ts';
import type { BoardKind, BoardPlan, BoardProblem } from '../../../../packages/engine/src/stock/boards/board-problem.ts';
import { checkBoardPlan } from '../../../../packages/engine/src/stock/boards/check-board-plan.ts';
import { MovedBlanks } from '../../../../packages/engine/src/stock/boards/move-blanks.ts';
import { planBoards } from '../../../../packages/engine/src/stock/boards/plan-boards.ts';
import { searchPlans } from '../../../../packages/engine/src/stock/buying/search-plans.ts';

/** Blanks out of boards: what a saw can cut, around defects, everything accounted for, with a bound that holds. */

const NO_LOSS = { ripKerf: 0, crosscutKerf: 0, endTrim: 0, edgeTrim: 0 };

function plan(problem: BoardProblem, mostSteps = 60): { plan: BoardPlan; bound: number; isDone: boolean } {
  let best: BoardPlan | undefined;
  let bound = 0;
  let isDone = false;
  let steps = 0;
  for (const step of planBoards(problem, 3)) {
    steps += 1;
    if (step.plan !== undefined) {
      expect(checkBoardPlan(problem, step.plan)).toEqual([]);
      if (best !== undefined && best.unplaced.length === 0) expect(step.plan.cost).toBeLessThan(best.cost);
      best = step.plan;
    }
    expect(step.areaBound).toBeLessThanOrEqual(step.bound);
    ({ bound, done: isDone } = step);
    if (isDone || steps >= mostSteps) break;
  }
  if (best === undefined) throw new Error('there is no plan');
  return { plan: best, bound, isDone };
}

const board = (width: number, length: number, more: Partial<BoardKind> = {}): BoardKind => ({
  id: `${width} × ${length}`,
  width,
  length,
  cost: width * length,
  ...more,
});

describe('a plan', () => {
  test('fills a board whose width the strips fill, and is proved least', () => {
    const problem = {
      ...NO_LOSS,
      boards: [board(60, 960)],
      blanks: [
        { id: 'stile', width: 20, length: 300, count: 9 },
        { id: 'rail', width: 20, length: 60, count: 3 },
      ],
    };
    const result = plan(problem);
    expect(result.plan.boards).toHaveLength(1);
    expect(result.bound).toBe(60 * 960);
    expect(result.isDone).toBe(true);
  });

  test('counts kerfs, but none where a blank ends flush, and the rough ends and edges', () => {
    const blanks = [{ id: 'rail', width: 20, length: 100, count: 4 }];
    const kerfs = { ripKerf: 3, crosscutKerf: 4, endTrim: 10, edgeTrim: 5 };
    expect(plan({ ...kerfs, boards: [board(53, 224)], blanks }).plan.boards).toHaveLength(1);
    expect(plan({ ...kerfs, boards: [board(52, 224)], blanks }).plan.boards).toHaveLength(2);
    expect(plan({ ...kerfs, boards: [board(53, 223)], blanks }).plan.boards).toHaveLength(2);
  });

  test('cuts around a knot: what lies beside it, before it and beyond it', () => {
    const knotty = board(100, 300, { available: 1, defects: [{ from: 100, to: 120, left: 0, right: 60 }] });
    const blanks = [
      { id: 'long', width: 40, length: 300, count: 1 },
      { id: 'near', width: 60, length: 100, count: 1 },
      { id: 'far', width: 60, length: 180, count: 1 },
    ];
    const { plan: found } = plan({ ...NO_LOSS, boards: [knotty], blanks });
    expect(found.unplaced).toEqual([]);
    expect(found.boards[0]?.order).toBe('rip first');
  });

  test('leaves out what the knot makes impossible, and says so', () => {
    const knotty = board(100, 300, { available: 1, defects: [{ from: 100, to: 120, left: 0, right: 61 }] });
    const blanks = [{ id: 'long', width: 40, length: 300, count: 1 }];
    expect(plan({ ...NO_LOSS, boards: [knotty], blanks }).plan.unplaced).toEqual([{ blank: 'long', count: 1 }]);
  });

  test('takes the boards that are there before it buys, and the cheaper one if either will do', () => {
    const boards = [
      board(50, 200, { id: 'on hand', cost: 0, available: 1 }),
      board(50, 200, { id: 'dear', cost: 20 }),
      board(50, 200, { id: 'cheap', cost: 10 }),
    ];
    const blanks = [{ id: 'slat', width: 50, length: 100, count: 4 }];
    const { plan: found, bound } = plan({ ...NO_LOSS, boards, blanks });
    expect(found.boards.map((cut) => cut.board).sort()).toEqual(['cheap', 'on hand']);
    expect(bound).toBe(10);
  });

  test('says what is wider or longer than every board, and what is no rectangle', () => {
    const blanks = [
      { id: 'wide', width: 101, length: 10, count: 2 },
      { id: 'long', width: 10, length: 301, count: 1 },
      { id: 'none', width: 0, length: 10, count: 1 },
      { id: 'half', width: 9.5, length: 10, count: 1 },
      { id: 'fits', width: 100, length: 300, count: 1 },
    ];
    const { plan: found } = plan({ ...NO_LOSS, boards: [board(100, 300)], blanks });
    expect(found.unplaced).toEqual([
      { blank: 'wide', count: 2 },
      { blank: 'long', count: 1 },
      { blank: 'none', count: 1 },
      { blank: 'half', count: 1 },
    ]);
    expect(found.boards).toHaveLength(1);
  });

  test('of nothing, without boards, and of ten thousand tiny blanks comes with the first step', () => {
    expect(plan({ ...NO_LOSS, boards: [board(10, 10)], blanks: [] }, 1)).toMatchObject({
      plan: { cost: 0 },
      isDone: true,
    });
    const slat = { id: 'slat', width: 3, length: 10, count: 10_000 };
    expect(plan({ ...NO_LOSS, boards: [], blanks: [slat] }, 1).plan.unplaced).toEqual([
      { blank: 'slat', count: 10_000 },
    ]);
    const tiny = plan({ ...NO_LOSS, ripKerf: 1, crosscutKerf: 1, boards: [board(199, 2200)], blanks: [slat] }, 1);
    expect(tiny.plan.boards).toHaveLength(1);
  });

  test('of more boards than one can wait for comes in small steps, so that one can stop', () => {
    // Each board holds one: two hundred boards.
    const wide = { id: 'wide', width: 6, length: 60, count: 200 };
    const problem = { ...NO_LOSS, ripKerf: 1, crosscutKerf: 1, boards: [board(10, 100)], blanks: [wide] };
    const steps = [];
    for (const step of planBoards(problem, 3)) {
      steps.push(step);
      if (step.plan !== undefined) break;
    }
    const parts = steps.slice(0, -1);
    expect(parts.length).toBeGreaterThan(3);
    expect(parts.every(({ isPartial, plan: none, done }) => isPartial === true && none === undefined && !done)).toBe(
      true,
    );
    expect(steps.at(-1)?.plan?.boards).toHaveLength(200);
    // What is planned with others is planned whole, however many small steps it takes.
    const search = searchPlans([{ kind: 'boards', problem }], { steps: 1, seed: 3 });
    let last = search.next();
    while (last.done !== true) last = search.next();
    expect(last.value.answers[0]?.plan).toEqual(steps.at(-1)?.plan);
  });

  test('is refused where the question itself is no question', () => {
    expect(() => planBoards({ ...NO_LOSS, ripKerf: -1, boards: [], blanks: [] }).next()).toThrow(RangeError);
  });
});

describe('the bound', () => {
  test('sees that blanks wider than half a board go into as many boards', () => {
    const problem = {
      ...NO_LOSS,
      boards: [board(100, 100, { cost: 1 })],
      blanks: [{ id: 'wide', width: 51, length: 51, count: 7 }],
    };
    expect(boardBounds(problem)).toEqual({ area: 2, best: 7 });
  });

  test('counts what is left beside what nothing fits', () => {
    const problem = {
      ...NO_LOSS,
      boards: [board(100, 90, { cost: 1 })],
      blanks: [
        { id: 'wide', width: 80, length: 90, count: 3 },
        { id: 'strip', width: 30, length: 90, count: 3 },
      ],
    };
    expect(boardBounds(problem).best).toBe(4);
  });

  test('rises above what widths and lengths tell by themselves, by what goes into a board together', () => {
    // Two of the wide ones go into a board, side by side, and then none of the long ones; or one of them and two of the long
    // ones: each board holds fewer than widths, lengths and areas by themselves would allow.
    const problem = {
      ...NO_LOSS,
      boards: [board(100, 100, { cost: 1 })],
      blanks: [
        { id: 'wide', width: 45, length: 60, count: 6 },
        { id: 'long', width: 20, length: 75, count: 6 },
      ],
    };
    const result = plan(problem, 30);
    expect(boardBounds(problem).best).toBe(4);
    expect(result.bound).toBe(5);
    expect(result.plan.cost).toBe(5);
  });
});

describe('blanks moved from board to board', () => {
  test('lie in bands that a saw can cut, in either order, and are trimmed by the last cut only', () => {
    const sizes = fc.record({
      width: fc.integer({ min: 5, max: 60 }),
      length: fc.integer({ min: 5, max: 120 }),
      count: fc.integer({ min: 1, max: 6 }),
    });
    fc.assert(
      fc.property(fc.array(sizes, { minLength: 1, maxLength: 8 }), fc.integer({ min: 0, max: 3 }), (some, ripKerf) => {
        const problem: BoardProblem = {
          boards: [board(100, 200), board(80, 150, { available: 2 })],
          blanks: some.map((blank, at) => ({ id: `blank ${at}`, ...blank })),
          ripKerf,
          crosscutKerf: 2,
          endTrim: 3,
          edgeTrim: 2,
        };
        const found = MovedBlanks.for(problem, 7)?.cheaper(Number.POSITIVE_INFINITY);
        if (found === undefined) throw new Error('every blank fits, and yet there is no plan');
        expect(checkBoardPlan(problem, found)).toEqual([]);
        expect(found.unplaced).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('whatever is asked', () => {
  const arbitraryProblem: fc.Arbitrary<BoardProblem> = fc.record({
    boards: fc
      .array(
        fc.record(
          {
            width: fc.integer({ min: 1, max: 60 }),
            length: fc.integer({ min: 1, max: 120 }),
            cost: fc.integer({ min: 0, max: 50 }),
            available: fc.integer({ min: 0, max: 5 }),
            defects: fc.array(
              fc.record({
                from: fc.integer({ min: -5, max: 110 }),
                to: fc.integer({ min: 0, max: 130 }),
                left: fc.integer({ min: -5, max: 50 }),
                right: fc.integer({ min: 0, max: 70 }),
              }),
              { maxLength: 3 },
            ),
          },
          { requiredKeys: ['width', 'length', 'cost'] },
        ),
        { maxLength: 3 },
      )
      .map((boards) => boards.map((kind, at) => ({ id: `board ${at}`, ...kind }))),
    blanks: fc
      .array(
        fc.record({
          width: fc.integer({ min: 1, max: 50 }),
          length: fc.integer({ min: 1, max: 100 }),
          count: fc.integer({ min: 0, max: 6 }),
        }),
        { maxLength: 8 },
      )
      .map((blanks) => blanks.map((blank, at) => ({ id: `blank ${at}`, ...blank }))),
    ripKerf: fc.integer({ min: 0, max: 4 }),
    crosscutKerf: fc.integer({ min: 0, max: 4 }),
    endTrim: fc.integer({ min: 0, max: 10 }),
    edgeTrim: fc.integer({ min: 0, max: 6 }),
  });

  test('every plan can be sawn, each blank is there once, and no bound is above a plan', () => {
    fc.assert(
      fc.property(arbitraryProblem, (problem) => {
        const { plan: found, bound } = plan(problem, 25);
        if (found.unplaced.length === 0) expect(bound).toBeLessThanOrEqual(found.cost);
      }),
      { numRuns: 300 },
    );
  });

  test('beside a defect narrower than the blade there is still room for the blade', () => {
    const problem: BoardProblem = {
      boards: [{ id: 'board', width: 15, length: 13, cost: 0, defects: [{ from: 0, to: 7, left: 9, right: 10 }] }],
      blanks: [
        { id: 'one', width: 1, length: 1, count: 1 },
        { id: 'two', width: 1, length: 1, count: 2 },
      ],
      ripKerf: 3,
      crosscutKerf: 0,
      endTrim: 6,
      edgeTrim: 4,
    };
    // Between the trims there are 7 by 1: one from 0 to 1, one from 4 to 5, and with the blade no third before the end.
    const { boards, unplaced } = plan(problem, 25).plan;
    expect(unplaced).toEqual([]);
    expect(boards.length).toBe(2);
  });

  test('the same seed gives the same steps', () => {
    fc.assert(
      fc.property(arbitraryProblem, (problem) => {
        const steps = () => {
          const taken = [];
          for (const step of planBoards(problem, 5)) if (taken.push(step) >= 15) break;
          return taken;
        };
        expect(steps()).toEqual(steps());
      }),
      { numRuns: 30 },
    );
  });
});

describe('the checker', () => {
  const problem: BoardProblem = {
    ...NO_LOSS,
    ripKerf: 2,
    boards: [board(50, 100, { id: 'board', defects: [{ from: 80, to: 90, left: 0, right: 50 }] })],
    blanks: [{ id: 'slat', width: 20, length: 70, count: 2 }],
  };
  const good: BoardPlan = {
    boards: [
      {
        board: 'board',
        order: 'crosscut first',
        bands: [
          {
            at: 0,
            size: 70,
            blanks: [
              { blank: 'slat', at: 0 },
              { blank: 'slat', at: 22 },
            ],
          },
        ],
      },
    ],
    unplaced: [],
    cost: 5000,
  };
  const withBlanks = (at: number, size: number, places: readonly number[]): BoardPlan => {
    const blanks = places.map((place) => ({ blank: 'slat', at: place }));
    return { ...good, boards: [{ board: 'board', order: 'crosscut first', bands: [{ at, size, blanks }] }] };
  };

  test('finds nothing wrong with a plan that can be sawn', () => {
    expect(checkBoardPlan(problem, good)).toEqual([]);
  });

  test.each<readonly [string, BoardPlan, string]>([
    ['that forgets the kerf', withBlanks(0, 70, [0, 21]), 'slat begins 1 too soon'],
    ['that runs over the edge', withBlanks(0, 70, [0, 31]), 'slat ends 1 too late'],
    ['with a blank larger than its band', withBlanks(0, 69, [0, 22]), 'slat is 1 larger than its band'],
    ['with a knot in a blank', withBlanks(15, 70, [0, 22]), 'slat has a defect of board in it'],
    ['that lacks a blank', withBlanks(0, 70, [0]), 'slat is there 1 times, not 2'],
    ['that flatters itself', { ...good, cost: 1 }, 'the plan says it costs 1, it costs 5000'],
  ])('sees a plan %s', (_, wrong, words) => {
    expect(checkBoardPlan(problem, wrong)).toContain(words);
  });
});
