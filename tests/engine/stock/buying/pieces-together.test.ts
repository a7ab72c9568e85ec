import { type Evaluation, laidOut, piecesTogether, shoppingList } from '@fettle/engine';
import { expect, test } from 'vitest';
import { pieceOfText, piecesOfExample, planned } from './evaluating.ts';

/** Pieces of one text that are bought and cut together. */

const shop = `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each
pull "knob" 3/4 wide, round, stands out 7/8, thread 3/8 deep, costs 3 each
`;
const box = `${shop}
piece "box" {
  size 30 wide, 36 high, 11 deep
  case { sides "ply" thick 3/4   bottom "ply" thick 3/4, between sides }
}`;

test('three boxes of three parts, of which each alone takes a sheet, are one sheet together', async () => {
  const piece = await pieceOfText(box);
  const all = piecesTogether('All pieces', [piece, piece, piece]);
  if (all === undefined) throw new Error('three pieces are several');
  // Each: two sides of 36 by 11 and a bottom of 28-1/2 by 11. Four strips of 11 with three kerfs are 44-3/8 of 48.
  // Three hold two sides of 36 each, one three bottoms, 85-1/2 and two kerfs of 96.
  expect(planned(piece).sheets[0]?.plan.sheets).toHaveLength(1);
  const plan = planned(all);
  expect(plan.sheets[0]?.plan.sheets).toHaveLength(1);
  expect(shoppingList(all, plan).cost?.toString()).toBe('80');
  // Nine marks, each of which tells whose part it is.
  const marks = laidOut(plan).flatMap(({ pieces }) => pieces.map(({ piece: { mark } }) => mark));
  expect(marks.toSorted()).toEqual(['1-A1', '1-A2', '1-B', '2-A1', '2-A2', '2-B', '3-A1', '3-A2', '3-B']);
});

test('one piece, or one with parts among others without, is nothing to cut together', async () => {
  const piece = await pieceOfText(box);
  const empty = { ...piece, parts: [] };
  expect(piecesTogether('All pieces', [piece])).toBeUndefined();
  expect(piecesTogether('All pieces', [empty, piece])).toBeUndefined();
});

test('of the wall of forty every part is cut once, from fewer sheets than case by case, with all its hardware', async () => {
  const pieces = await piecesOfExample('wall');
  const all = piecesTogether('All pieces', pieces);
  if (all === undefined) throw new Error('forty pieces are several');
  expect(new Set(all.parts.map(({ id }) => id)).size).toBe(all.parts.length);
  const plan = planned(all);
  const cut = laidOut(plan).flatMap(({ pieces: laid }) => laid.map(({ piece: { part } }) => part.id));
  expect(cut.toSorted()).toEqual(all.parts.map(({ id }) => id).toSorted());
  // No case alone takes less than one sheet of each of its stocks.
  const alone = pieces.map(({ parts }) => new Set(parts.map(({ stock }) => stock?.name)).size);
  const together = plan.sheets.reduce((sum, each) => sum + each.plan.sheets.length, 0);
  expect(together).toBeLessThan(alone.reduce((sum, each) => sum + each));
  const hardware = (piece: Evaluation) =>
    shoppingList(piece, planned({ ...piece, parts: [] }))
      .rows.flatMap((row) => (row.kind === 'hardware' ? [row.quantity] : []))
      .reduce((sum, quantity) => sum + quantity, 0);
  expect(hardware(all)).toBeGreaterThan(0);
  expect(hardware(all)).toBe(pieces.map(hardware).reduce((sum, each) => sum + each));
});
