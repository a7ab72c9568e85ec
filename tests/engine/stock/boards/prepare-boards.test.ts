import { describe, expect, test } from 'vitest';
import { Length } from '../../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../../packages/engine/src/length/rational.ts';
import type { Blank } from '../../../../packages/engine/src/stock/blank.ts';
import {
  type BoardAllowances,
  usualAllowances,
} from '../../../../packages/engine/src/stock/boards/board-allowances.ts';
import { checkBoardPlan } from '../../../../packages/engine/src/stock/boards/check-board-plan.ts';
import { glueUp } from '../../../../packages/engine/src/stock/boards/glue-up.ts';
import { planBoards } from '../../../../packages/engine/src/stock/boards/plan-boards.ts';
import {
  type BlankAsked,
  type BoardOffered,
  type BoardsAsked,
  prepareBoards,
} from '../../../../packages/engine/src/stock/boards/prepare-boards.ts';

/** From a maker's parts to boards of a yard: thicknesses, allowances, glue-ups, and what no board can give. */

const inch = Length.inches;

function blank(id: string, width: Length, length: Length): Blank {
  return { id, parts: [{ part: id, width, length }], order: 'across', between: [], mayTurn: false };
}

function asked(
  blanks: readonly BlankAsked[],
  boards: readonly BoardOffered[],
  allowances?: BoardAllowances,
): BoardsAsked {
  return {
    blanks,
    boards,
    lumber: 'hardwood',
    ripKerf: inch(1, 8),
    crosscutKerf: inch(1, 8),
    allowances: allowances ?? usualAllowances('in'),
  };
}

function fourQuarter(width: Length, length: Length, more: Partial<BoardOffered> = {}): BoardOffered {
  return { id: '4/4', thickness: inch(1), width, length, cost: Rational.one, ...more };
}

describe('a glue-up', () => {
  test('is none where one board is wide enough', () => {
    expect(glueUp(inch(7), inch(7), inch(1, 16))).toEqual({ staves: 1, staveWidth: inch(7) });
  });

  test('of 20" from boards of 7" is three staves of 6-3/4", as the joints take 1/16" from each edge that is glued', () => {
    const made = glueUp(inch(20), inch(7), inch(1, 16));
    expect(made?.staves).toBe(3);
    expect(made?.staveWidth.exactInches).toBe('27/4');
  });

  test('takes a fourth stave where the joints make three a hair too wide', () => {
    expect(glueUp(inch(83, 4), inch(7), inch(1, 16))?.staves).toBe(3);
    expect(glueUp(inch(83, 4).plus(inch(1, 64)), inch(7), inch(1, 16))?.staves).toBe(4);
  });

  test('of boards without width is none', () => {
    expect(glueUp(inch(20), Length.zero, inch(1, 16))).toBeUndefined();
  });
});

describe('preparing boards', () => {
  test('sorts blanks by the rough thickness they need, and planes thicker boards down where there is nothing else', () => {
    const boards = [fourQuarter(inch(8), inch(96)), fourQuarter(inch(8), inch(96), { id: '8/4', thickness: inch(2) })];
    const { problems, refused } = prepareBoards(
      asked(
        [
          { blank: blank('door', inch(2), inch(20)), thickness: inch(3, 4), count: 1, mayBeGluedUp: false },
          { blank: blank('rail', inch(2), inch(20)), thickness: inch(1), count: 1, mayBeGluedUp: false },
          { blank: blank('leg', inch(7, 4), inch(30)), thickness: inch(7, 4), count: 4, mayBeGluedUp: false },
        ],
        boards,
      ),
    );
    expect(refused).toEqual([]);
    expect(
      problems.map(({ thickness, problem }) => [thickness.exactInches, problem.blanks.map(({ id }) => id)]),
    ).toEqual([
      ['1', ['door']],
      ['2', ['rail', 'leg']],
    ]);
  });

  test('adds what is planed off later, unless the blank says its own, and cuts the rough ends and edges off', () => {
    const own = { left: Length.zero, right: Length.zero, near: Length.zero, far: inch(2) };
    const { problems } = prepareBoards(
      asked(
        [
          { blank: blank('shelf', inch(5), inch(30)), thickness: inch(3, 4), count: 1, mayBeGluedUp: false },
          {
            blank: { ...blank('top', inch(5), inch(30)), allowance: own },
            thickness: inch(3, 4),
            count: 1,
            mayBeGluedUp: false,
          },
        ],
        [fourQuarter(inch(8), inch(96))],
      ),
    );
    const { problem, scale } = problems[0] ?? expect.fail('there is no problem');
    const units = (length: Length) => Number(scale.perInch) * length.approximateInches;
    expect(problem.blanks.map(({ width, length }) => [width, length])).toEqual([
      [units(inch(21, 4)), units(inch(31))],
      [units(inch(5)), units(inch(32))],
    ]);
    expect([problem.endTrim, problem.edgeTrim]).toEqual([units(inch(1)), units(inch(1, 4))]);
  });

  test('refuses with the reason and by how much: thickness, width, length, and an order that no board can hold', () => {
    const wide = blank('wide', inch(12), inch(20));
    const ordered: Blank = {
      id: 'three fronts',
      parts: ['a', 'b', 'c'].map((part) => ({ part, width: inch(4), length: inch(20) })),
      order: 'across',
      between: [inch(1, 8), inch(1, 8)],
      mayTurn: false,
    };
    const thin = { thickness: inch(3, 4), count: 1 };
    const { problems, refused } = prepareBoards(
      asked(
        [
          { blank: blank('post', inch(4), inch(20)), thickness: inch(4), count: 1, mayBeGluedUp: true },
          { blank: blank('leg', inch(2), inch(20)), thickness: inch(7, 4), count: 1, mayBeGluedUp: true },
          { blank: wide, mayBeGluedUp: false, ...thin },
          { blank: ordered, mayBeGluedUp: true, ...thin },
          { blank: blank('long', inch(2), inch(120)), mayBeGluedUp: true, ...thin },
        ],
        [fourQuarter(inch(8), inch(96))],
      ),
    );
    expect(problems).toEqual([]);
    expect(refused.map((one) => [one.blank, one.why, one.needs.exactInches, one.most.exactInches])).toEqual([
      ['post', 'thicker than any lumber', '4', '1'],
      ['leg', 'no board of that thickness', '2', '1'],
      ['wide', 'wider than any board', '49/4', '15/2'],
      ['three fronts', 'wider than any board', '25/2', '15/2'],
      ['long', 'longer than any board', '121', '94'],
    ]);
  });

  test('a glued-up top is planned stave by stave, in order groups stay whole, and the plan can be sawn', () => {
    const fronts: Blank = {
      id: 'fronts',
      parts: ['upper', 'lower'].map((part) => ({ part, width: inch(6), length: inch(18) })),
      order: 'along',
      between: [inch(1, 8)],
      mayTurn: false,
    };
    const { problems, refused } = prepareBoards(
      asked(
        [
          { blank: blank('top', inch(18), inch(50)), thickness: inch(3, 4), count: 1, mayBeGluedUp: true },
          { blank: fronts, thickness: inch(3, 4), count: 2, mayBeGluedUp: false },
        ],
        [
          fourQuarter(inch(15, 2), inch(96), { cost: Rational.of(75, 10) }),
          fourQuarter(inch(7), inch(60), {
            id: 'on hand',
            available: 1,
            cost: Rational.zero,
            defects: [{ from: inch(20), to: inch(22), left: inch(0), right: inch(2) }],
          }),
        ],
      ),
    );
    expect(refused).toEqual([]);
    const prepared = problems[0] ?? expect.fail('there is no problem');
    expect(prepared.glueUps.get('top')?.staves).toBe(3);
    expect(prepared.problem.blanks.map(({ id, count }) => [id, count])).toEqual([
      ['top', 3],
      ['fronts', 2],
    ]);
    expect(prepared.costUnit.toString()).toBe('1/2');
    const last = [...planBoards(prepared.problem)].filter((step) => step.plan !== undefined).at(-1);
    expect(checkBoardPlan(prepared.problem, last?.plan ?? expect.fail('there is no plan'))).toEqual([]);
    expect(last?.plan?.unplaced).toEqual([]);
  });
});

describe('the usual allowances', () => {
  test('are round figures of either system, all of them more than nothing', () => {
    for (const unit of ['in', 'mm'] as const) {
      for (const allowance of Object.values(usualAllowances(unit))) expect(allowance.isPositive()).toBe(true);
    }
    expect(usualAllowances('mm').onLength.in('mm').toString()).toBe('25');
    expect(usualAllowances('in').onLength.exactInches).toBe('1');
  });
});
