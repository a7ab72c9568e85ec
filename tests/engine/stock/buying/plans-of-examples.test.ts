import {
  type BuyingPlan,
  type CuttingNode,
  type Part,
  Rational,
  type SheetOrder,
  shoppingList,
  sizeOfBlank,
} from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { checkBoardPlan } from '../../../../packages/engine/src/stock/boards/check-board-plan.ts';
import { checkSheetPlan } from '../../../../packages/engine/src/stock/sheets/check-sheet-plan.ts';
import { piecesOfExample, planned } from './evaluating.ts';

/** Every example, from its words to plans that a saw can follow. */

function blanksIn(node: CuttingNode): readonly string[] {
  if (node.kind === 'blank') return [node.blank];
  return node.kind === 'cut' ? node.pieces.flatMap(blanksIn) : [];
}

/** How often each piece stands in the plans or among what is not planned, by its id; of staves each counts. */
function timesOf(plan: BuyingPlan): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  const count = (id: string) => times.set(id, (times.get(id) ?? 0) + 1);
  const countAll = (blanks: SheetOrder['blanks'], id: string) =>
    blanks.get(id)?.pieces.forEach(({ blank }) => {
      count(blank.id);
    });
  for (const { order, plan: sheets } of plan.sheets) {
    for (const id of sheets.sheets.flatMap(({ root }) => blanksIn(root))) countAll(order.blanks, id);
  }
  for (const { order, plan: boards } of plan.boards) {
    for (const { bands } of boards.boards)
      for (const { blanks } of bands) for (const { blank } of blanks) countAll(order.blanks, blank);
  }
  for (const { piece } of plan.unplanned) count(piece.blank.id);
  return times;
}

function expectSound(plan: BuyingPlan, parts: readonly Part[]): void {
  for (const { order, plan: sheets, bound } of plan.sheets) {
    expect(checkSheetPlan(order.problem, sheets)).toEqual([]);
    expect(bound).toBeLessThanOrEqual(sheets.cost);
  }
  for (const { order, plan: boards, bound } of plan.boards) {
    expect(checkBoardPlan(order.prepared.problem, boards)).toEqual([]);
    expect(bound).toBeLessThanOrEqual(boards.cost);
  }
  const times = timesOf(plan);
  const staves = new Map(plan.boards.flatMap(({ order }) => [...order.prepared.glueUps]));
  for (const { id } of parts) expect([id, times.get(id)]).toEqual([id, staves.get(id)?.staves ?? 1]);
}

describe('plans of the examples', () => {
  for (const name of ['sideboard', 'vanity', 'wall-cupboard', 'chest', 'linen-press']) {
    it(`${name}: each part once, as it is in the cut list, and no bound above its plan`, {
      timeout: 120_000,
    }, async () => {
      for (const piece of await piecesOfExample(name)) {
        const plan = planned(piece);
        expectSound(plan, piece.parts);
        const parts = new Map(piece.parts.map((part) => [part.id, part]));
        for (const { order } of [...plan.sheets, ...plan.boards]) {
          for (const { blank, what } of order.pieces) {
            const part = parts.get(blank.id);
            if (what !== 'part' || part === undefined || part.edging.length > 0) continue;
            const { width, length } = sizeOfBlank(blank);
            expect([width.exactInches, length.exactInches]).toEqual([
              part.width.length.exactInches,
              part.length.length.exactInches,
            ]);
          }
        }
      }
    });
  }

  it('the sideboard is bought in plywood, ash, poplar and maple, and nothing of it is left out', {
    timeout: 120_000,
  }, async () => {
    const [piece] = await piecesOfExample('sideboard');
    if (piece === undefined) throw new Error('the sideboard is not there');
    const list = shoppingList(piece, planned(piece));
    const names = list.rows.flatMap((row) => (row.kind === 'hardware' ? [] : [row.stock.name]));
    expect([...new Set(names)].sort()).toEqual([
      'ash',
      'ash panel',
      'ash panel 1/2',
      'birch ply 1/4',
      'maple',
      'poplar',
    ]);
    expect(list.unplanned).toEqual([]);
    // Sheets cost what each costs, boards what they are tallied at.
    const costs = list.rows.map(({ cost }) => cost?.toNumber() ?? 0);
    expect(list.cost?.toNumber()).toBe(costs.reduce((sum, cost) => sum + cost));
    expect(costs.slice(0, 3)).toEqual([118, 38, 96]);
    for (const row of list.rows) {
      if (row.kind === 'hardware' || row.kind === 'edging') continue;
      expect(row.waste.sign()).toBe(1);
      expect(row.waste.compare(Rational.one)).toBe(-1);
    }
  });
});
