import { describe, expect, it } from 'vitest';
import { checkSheetPlan } from '../../../../packages/engine/src/stock/sheets/check-sheet-plan.ts';
import type {
  SheetBlank,
  SheetKind,
  SheetProblem,
} from '../../../../packages/engine/src/stock/sheets/sheet-problem.ts';
import { lastAnswer } from './taking-steps.ts';

const sheet: SheetKind = { id: 'plywood', width: 48, length: 96, cost: 70 };
const shelf: SheetBlank = { id: 'shelf', width: 12, length: 30, count: 1, mayTurn: false };
const ask = (change: Partial<SheetProblem>): SheetProblem => ({ sheets: [sheet], blanks: [shelf], kerf: 1, ...change });
const unplacedOf = (problem: SheetProblem, steps = 20) => {
  const { plan } = lastAnswer(problem, steps);
  expect(checkSheetPlan(problem, plan)).toEqual([]);
  return plan.unplaced;
};

describe('orders that no sheet can hold', () => {
  it('a blank larger than every sheet', () => {
    const blanks = [shelf, { ...shelf, id: 'top', width: 49, count: 2, length: 97 }];
    expect(unplacedOf(ask({ blanks }))).toEqual([{ blank: 'top', count: 2, why: 'larger than every sheet' }]);
  });

  it('a blank that would fit if its grain could lie the other way', () => {
    const blanks = [{ ...shelf, width: 60, length: 20 }];
    expect(unplacedOf(ask({ blanks }))).toEqual([
      { blank: 'shelf', count: 1, why: 'larger than every sheet unless turned' },
    ]);
    expect(unplacedOf(ask({ blanks: [{ ...shelf, width: 60, length: 20, mayTurn: true }] }))).toEqual([]);
  });

  it('no sheets, or none that can be used', () => {
    expect(unplacedOf(ask({ sheets: [] }))).toEqual([{ blank: 'shelf', count: 1, why: 'no sheets' }]);
    const sheets = [
      { ...sheet, id: 'a gift', cost: -1 },
      { ...sheet, id: 'a thread', width: 0 },
      { ...sheet, id: 'all sold', available: 0 },
      { ...sheet, id: 'all trim', trim: { left: 24, right: 24, near: 0, far: 0 } },
    ];
    const { plan } = lastAnswer(ask({ sheets }), 5);
    expect(plan.sheets).toEqual([]);
    expect(plan.unplaced).toEqual([{ blank: 'shelf', count: 1, why: 'no sheets' }]);
    expect(plan.refused).toEqual([
      { sheet: 'a gift', why: 'negative cost' },
      { sheet: 'a thread', why: 'no whole positive size' },
      { sheet: 'all sold', why: 'none available' },
      { sheet: 'all trim', why: 'trimmed to nothing' },
    ]);
  });

  it('more blanks than the sheets on hand hold: as many as fit are placed, the rest is named', () => {
    const problem = ask({
      sheets: [{ ...sheet, available: 1 }],
      blanks: [{ ...shelf, width: 48, length: 40, count: 3 }],
    });
    const { plan, provedLeast } = lastAnswer(problem, 40);
    expect(checkSheetPlan(problem, plan)).toEqual([]);
    expect(plan.unplaced).toEqual([{ blank: 'shelf', count: 1, why: 'no sheet is left' }]);
    expect(provedLeast).toBe(false);
  });

  it('sizes and counts that are no numbers of pieces', () => {
    for (const change of [{ width: Number.NaN }, { length: -3 }, { width: 1.5 }, { count: 0.5 }, { count: -1 }]) {
      expect(unplacedOf(ask({ blanks: [{ ...shelf, ...change }] }))).toEqual([
        { blank: 'shelf', count: 1, why: 'no whole positive size or count' },
      ]);
    }
  });

  it('a count beyond what anybody saws', () => {
    expect(unplacedOf(ask({ blanks: [{ ...shelf, count: 1_000_000 }] }))).toEqual([
      { blank: 'shelf', count: 1_000_000, why: 'too many blanks' },
    ]);
  });

  it('what the machines cannot cut', () => {
    expect(unplacedOf(ask({ limits: { narrowestStrip: 13 } }))).toEqual([
      { blank: 'shelf', count: 1, why: 'narrower than the narrowest strip' },
    ]);
    const limits = { longestRip: 29, longestCrosscut: 48 };
    expect(unplacedOf(ask({ limits }))).toEqual([
      { blank: 'shelf', count: 1, why: 'no cuts within the limits make it' },
    ]);
    expect(unplacedOf(ask({ limits: { longestRip: 30 } }))).toEqual([]);
    expect(unplacedOf(ask({ limits: { stages: 1 } }))).toEqual([
      { blank: 'shelf', count: 1, why: 'no cuts within the limits make it' },
    ]);
  });

  it('a kerf wider than the blanks is only a great waste', () => {
    const problem = ask({ kerf: 13, blanks: [{ ...shelf, width: 10, length: 10, count: 20 }] });
    const { plan, bound } = lastAnswer(problem, 20);
    expect(checkSheetPlan(problem, plan)).toEqual([]);
    expect(plan.unplaced).toEqual([]);
    // Two blanks and a kerf across, four and three kerfs along: 33 of 48, 79 of 96.
    expect(plan.sheets.length).toBe(3);
    expect(bound).toBe(210);
  });

  it('ten thousand tiny parts', () => {
    const blanks = Array.from({ length: 10_000 }, (_, index) => ({
      id: `chip ${index}`,
      width: 1 + (index % 7),
      length: 1 + (index % 11),
      count: 1,
      mayTurn: index % 2 === 0,
    }));
    expect(unplacedOf(ask({ sheets: [{ ...sheet, width: 480, length: 960 }], blanks }), 3)).toEqual([]);
  });
});
