import { cutSequence, laidOut, offcutsToKeep, reservesFor, shoppingList, stockAfter } from '@fettle/engine';
import { describe, expect, test } from 'vitest';
import { checkBoardPlan } from '../../../../packages/engine/src/stock/boards/check-board-plan.ts';
import { checkSheetPlan } from '../../../../packages/engine/src/stock/sheets/check-sheet-plan.ts';
import { pieceOfText, planned } from './evaluating.ts';

/** Offcuts of earlier work, trimmed edges, and what the machines can do. */

const sheets = (more: string, machines = '') => `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each${more}
machine "saw" kerf 1/8
${machines}
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply" thick 3/4   bottom "ply" thick 3/4, between sides }
}`;

async function bought(text: string) {
  const piece = await pieceOfText(text);
  const plan = planned(piece);
  for (const { order, plan: each, bound } of plan.sheets) {
    expect(checkSheetPlan(order.problem, each)).toEqual([]);
    expect(bound).toBeLessThanOrEqual(each.cost);
  }
  for (const { order, plan: each, bound } of plan.boards) {
    expect(checkBoardPlan(order.prepared.problem, each)).toEqual([]);
    expect(bound).toBeLessThanOrEqual(each.cost);
  }
  return { plan, list: shoppingList(piece, plan), laid: laidOut(plan) };
}

describe('offcuts on hand', () => {
  test('that hold every part leave nothing to buy', async () => {
    // Two sides of 36 by 12 and a bottom of 28-1/2 by 12: two offcuts hold a side each, one the bottom.
    const { list, plan } = await bought(
      sheets(' { offcut 36 long, 12 wide, 2 of them   offcut 28-1/2 long, 12-1/8 wide }'),
    );
    expect(list.rows.map((row) => (row.kind === 'sheet' ? [row.isOnHand, row.quantity] : []))).toEqual([
      [true, 2],
      [true, 1],
    ]);
    expect([list.cost?.toString(), list.isWholeCost]).toEqual(['0', true]);
    // What is spoiled has to be bought whole.
    expect(reservesFor(plan).map(({ buy }) => [buy?.length.exactInches, buy?.width.exactInches])).toEqual([
      ['96', '48'],
    ]);
  });

  test('are taken first, and no more of them than there are', async () => {
    const { list, plan } = await bought(sheets(' { offcut 36 long, 12 wide }'));
    const rows = list.rows.flatMap((row) => (row.kind === 'sheet' ? [row] : []));
    expect(rows.map(({ isOnHand, quantity, cost }) => [isOnHand, quantity, cost?.toString()])).toEqual([
      [false, 1, '80'],
      [true, 1, '0'],
    ]);
    expect(plan.unplanned).toEqual([]);
  });

  test('of boards serve parts of their thickness only', async () => {
    const text = (thick: string) =>
      sheets('')
        .replaceAll('"ply" thick 3/4', '"ash" thick 3/4')
        .replace(
          'machine',
          `board "ash" any thickness, 14 wide, 96 long, costs 6 a board foot { offcut 40 long, 13 wide, ${thick} thick, 3 of them }\nmachine`,
        );
    const enough = await bought(text('1'));
    expect(enough.list.rows.map((row) => (row.kind === 'board' ? row.isOnHand : row.kind))).toEqual([true]);
    const other = await bought(text('2'));
    expect(other.list.rows.every((row) => row.kind === 'board' && !row.isOnHand)).toBe(true);
  });
});

describe('trimmed edges', () => {
  test('are cut off first, and no part lies in them', async () => {
    const { laid, plan } = await bought(sheets(', trim 1/2'));
    const [sheet] = laid;
    if (sheet === undefined) throw new Error('nothing is cut');
    for (const { along, across, length, width } of [...sheet.pieces, ...sheet.offcuts]) {
      expect(along.compare(plan.request.kerf.length)).toBeGreaterThanOrEqual(0);
      expect([along, across].every((at) => at.approximateInches >= 0.5)).toBe(true);
      expect(along.plus(length).approximateInches).toBeLessThanOrEqual(95.5);
      expect(across.plus(width).approximateInches).toBeLessThanOrEqual(47.5);
    }
    const first = cutSequence(plan).slice(0, 4);
    expect(first.map(({ cut }) => [cut.direction, cut.setting.exactInches])).toEqual([
      ['rip', '95/2'],
      ['rip', '47'],
      ['crosscut', '191/2'],
      ['crosscut', '95'],
    ]);
  });

  test('of a sheet that a part fills leave no room for it', async () => {
    const { plan } = await bought(sheets(', trim 1/2').replace('36 high', '96 high'));
    expect(plan.unplanned.map(({ piece, why }) => `${piece.part.role}: ${why}`)).toEqual([
      'side: larger than every sheet',
      'side: larger than every sheet',
    ]);
  });
});

describe('limits of the machines', () => {
  test('no cut across is longer than the machine takes', async () => {
    const { plan } = await bought(sheets('', 'machine "sled" crosscuts at most 30 wide'));
    expect(plan.unplanned).toEqual([]);
    for (const { cut } of cutSequence(plan).filter(({ cut }) => cut.direction === 'crosscut')) {
      expect(cut.to.minus(cut.from).approximateInches).toBeLessThanOrEqual(30);
    }
  });

  test('no cut along is longer than the machine takes, and without one that does a part cannot be cut', async () => {
    const { plan } = await bought(sheets('', 'machine "track" rips at most 50 long'));
    for (const { cut } of cutSequence(plan).filter(({ cut }) => cut.direction === 'rip')) {
      expect(cut.to.minus(cut.from).approximateInches).toBeLessThanOrEqual(50);
    }
    const none = await bought(sheets('', 'machine "track" rips at most 30 long'));
    expect(new Set(none.plan.unplanned.map(({ piece, why }) => `${piece.part.role}: ${why}`))).toEqual(
      new Set(['side: no cuts make it']),
    );
  });

  test('a strip that is narrower than any machine cuts is not cut', async () => {
    const { plan } = await bought(sheets('', 'machine "saw 2" least width 13'));
    expect(plan.unplanned).toHaveLength(3);
  });
});

describe('what is left over', () => {
  test('is kept where it is large enough, no finer than one measures it, and what was used goes', async () => {
    const { laid } = await bought(sheets(' { offcut 36-1/32 long, 12 wide, 3 of them }'));
    const [after] = stockAfter(laid, 'in');
    expect(after?.used.map(({ count }) => count)).toEqual([laid.filter(({ offcut }) => offcut !== undefined).length]);
    const keep = offcutsToKeep(laid, 'in');
    expect(after?.kept.reduce((sum, { count }) => sum + count, 0)).toBe(keep.length);
    for (const { length, width } of after?.kept ?? []) {
      expect(length.compare(keep[0]?.from.length ?? length)).toBeLessThanOrEqual(0);
      expect([length, width].every((size) => Number.isInteger(size.approximateInches * 16))).toBe(true);
      expect(length.approximateInches >= 12 && width.approximateInches >= 6).toBe(true);
    }
  });
});
