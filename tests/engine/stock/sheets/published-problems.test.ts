import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkSheetPlan } from '../../../../packages/engine/src/stock/sheets/check-sheet-plan.ts';
import type { SheetProblem } from '../../../../packages/engine/src/stock/sheets/sheet-problem.ts';
import { lastAnswer } from './taking-steps.ts';

interface Instance {
  readonly id: string;
  readonly sheet?: readonly [number, number];
  readonly kerf?: number;
  readonly items: readonly (readonly [number, number, number?])[];
  readonly og: { readonly lb: number; readonly ub: number };
  readonly rg: { readonly lb: number; readonly ub: number };
  readonly lb_area?: number;
  readonly lb_dff_o?: number;
  readonly lb_dff_r?: number;
}

/** The sides of the sheets of the ten classes of Berkey and Wang, Martello and Vigo. */
const CLASS_SIDES = [10, 30, 40, 100, 100, 300, 100, 100, 100, 100];

function instancesOf(set: string): readonly Instance[] {
  const path = join(import.meta.dirname, `../../../fixtures/cutting/${set}.json`);
  return (JSON.parse(readFileSync(path, 'utf8')) as { instances: Instance[] }).instances;
}

function problemOf({ id, sheet, items, kerf = 0 }: Instance, mayTurn: boolean): SheetProblem {
  const side = CLASS_SIDES[Number(/^cl(\d\d)/.exec(id)?.[1] ?? 1) - 1] ?? 0;
  const [width, length] = sheet ?? [side, side];
  return {
    sheets: [{ id: 'sheet', width, length, cost: 1 }],
    blanks: items.map(([w, l, count = 1], place) => ({ id: `${place}`, width: w, length: l, count, mayTurn })),
    kerf,
  };
}

/** Sources of the values: tests/fixtures/cutting/README.md. */
describe.each(['2bp', 'furniture-a', 'gcut-bin-packing', 'kerf-2d'])('published problems of %s', (set) => {
  it.each([false, true])('bounds lie between the simple ones and the best plan known (turning: %s)', (mayTurn) => {
    for (const instance of instancesOf(set)) {
      const problem = problemOf(instance, mayTurn);
      const { plan, bound } = lastAnswer(problem, 3);
      const best = mayTurn ? instance.rg : instance.og;
      const simple = Math.max(instance.lb_area ?? 0, (mayTurn ? instance.lb_dff_r : instance.lb_dff_o) ?? 0);
      expect(checkSheetPlan(problem, plan)).toEqual([]);
      expect(plan.unplaced).toEqual([]);
      expect(bound, instance.id).toBeGreaterThanOrEqual(simple);
      expect(bound, instance.id).toBeLessThanOrEqual(best.ub);
      expect(plan.cost, instance.id).toBeGreaterThanOrEqual(best.lb);
    }
  });
});

describe('large orders', () => {
  it('669 blanks of ten sizes: 294 sheets, proved least', () => {
    const [order] = instancesOf('gcut-cutting-stock');
    if (order === undefined) throw new Error('no orders');
    const problem = problemOf({ ...order, sheet: [250, 250] }, false);
    const { plan, provedLeast } = lastAnswer(problem, 400);
    expect(checkSheetPlan(problem, plan)).toEqual([]);
    // The best in three stages, which the bound shows to be the best of all.
    expect(plan.sheets.length).toBe(294);
    expect(provedLeast).toBe(true);
  });
});
