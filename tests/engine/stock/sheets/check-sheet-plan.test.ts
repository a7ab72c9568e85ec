import { describe, expect, it } from 'vitest';
import { checkSheetPlan } from '../../../../packages/engine/src/stock/sheets/check-sheet-plan.ts';
import type { CutPiece, CuttingNode, SheetPlan } from '../../../../packages/engine/src/stock/sheets/sheet-plan.ts';
import type { SheetProblem } from '../../../../packages/engine/src/stock/sheets/sheet-problem.ts';

const problem: SheetProblem = {
  sheets: [{ id: 'board', width: 20, length: 30, cost: 5, available: 1 }],
  blanks: [
    { id: 'a', width: 9, length: 30, count: 1, mayTurn: false },
    { id: 'b', width: 10, length: 12, count: 2, mayTurn: true },
  ],
  kerf: 1,
  limits: { stages: 2, longestRip: 30, longestCrosscut: 10, narrowestStrip: 9 },
};
const a: CuttingNode = { kind: 'blank', blank: 'a', turned: false, x: 0, y: 0, width: 9, length: 30 };
const b1: CuttingNode = { kind: 'blank', blank: 'b', turned: false, x: 10, y: 0, width: 10, length: 12 };
const b2: CuttingNode = { ...b1, y: 13 };
const offcut: CuttingNode = { kind: 'offcut', x: 10, y: 26, width: 10, length: 4 };
const strip: CutPiece = {
  kind: 'cut',
  direction: 'crosscut',
  x: 10,
  y: 0,
  width: 10,
  length: 30,
  pieces: [b1, b2, offcut],
};
const root: CutPiece = { kind: 'cut', direction: 'rip', x: 0, y: 0, width: 20, length: 30, pieces: [a, strip] };
const planOf = (node: CuttingNode): SheetPlan => ({
  sheets: [{ sheet: 'board', root: node }],
  cost: 5,
  unplaced: [],
  refused: [],
});
const withStrip = (pieces: readonly CuttingNode[]) => planOf({ ...root, pieces: [a, { ...strip, pieces }] });
const good = planOf(root);

describe('a plan that can be cut', () => {
  it('has no faults', () => {
    expect(checkSheetPlan(problem, good)).toEqual([]);
  });
});

describe('a plan that cannot be cut', () => {
  it.each<[string, SheetProblem, SheetPlan, RegExp]>([
    ['blanks that overlap', problem, withStrip([b1, { ...b2, y: 11 }, offcut]), /-1 between two pieces/],
    ['no room for the blade', problem, withStrip([b1, { ...b2, y: 12 }, offcut]), /0 between two pieces/],
    ['a blank left out', problem, withStrip([b1, { ...offcut, y: 13, length: 17 }]), /b is asked 2 times, placed 1/],
    ['a blank twice', problem, withStrip([b1, b2, { ...b2, y: 26 }]), /b is asked 2 times, placed 3/],
    ['a piece beyond the edge', problem, withStrip([b1, b2, { ...offcut, length: 5 }]), /leave -1/],
    ['room that nobody names', problem, withStrip([b1, b2]), /leave 5/],
    ['a cut that stops before the edge', problem, withStrip([{ ...b1, width: 9 }, b2, offcut]), /edge to edge/],
    [
      'a blank of another size',
      problem,
      withStrip([
        { ...b1, length: 11 },
        { ...b2, y: 12 },
        { ...offcut, y: 25, length: 5 },
      ]),
      /not 10 × 12/,
    ],
    [
      'more sheets than there are',
      problem,
      { ...good, cost: 10, sheets: [...good.sheets, ...good.sheets] },
      /2 sheets of board, but there are 1/,
    ],
    ['a wrong sum', problem, { ...good, cost: 4 }, /costs 5, not 4/],
    ['too many stages', { ...problem, limits: { stages: 1 } }, good, /more than 1 stages/],
    ['a rip too long', { ...problem, limits: { longestRip: 29 } }, good, /a rip of 30, longer than 29/],
    ['a crosscut too long', { ...problem, limits: { longestCrosscut: 9 } }, good, /a crosscut of 10, longer than 9/],
    ['a strip too narrow', { ...problem, limits: { narrowestStrip: 10 } }, good, /narrower than the narrowest/],
    ['a sheet that begins in its trim', problem, planOf({ ...root, x: 1 }), /inside its trim/],
    [
      'a blank that may not turn',
      { ...problem, blanks: [{ id: 'a', width: 30, length: 9, count: 1, mayTurn: false }, ...problem.blanks.slice(1)] },
      planOf({ ...root, pieces: [{ ...a, turned: true }, strip] }),
      /may not turn/,
    ],
  ])('%s', (_, asked, plan, fault) => {
    expect(checkSheetPlan(asked, plan).join('; ')).toMatch(fault);
  });
});
