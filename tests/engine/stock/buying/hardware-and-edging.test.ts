import { shoppingList } from '@fettle/engine';
import { expect, test } from 'vitest';
import { pieceOfText, planned } from './evaluating.ts';

/** What is bought besides sheets and boards: hardware by its entry, edging by its length. */

const chest = (slides: string, doors: string) => `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each
board "ash" any thickness, 8 wide, 96 long, costs 6 a board foot
${slides}
${doors}
piece "chest" {
  size 30 wide, 36 high, 18 deep
  case {
    sides "ply" thick 3/4
    bottom "ply" thick 3/4, between sides
    top "ply" thick 3/4, between sides
  }
  face inset, gap 3/32 {
    stack {
      drawer "one" front 6 high
      drawer "two" front 7 high
      door "three" rest { single   hinges "butt" }
    }
    fronts "ply" thick 3/4
    drawers { sides "ply" thick 3/4   bottom "ply" thick 3/4   slides "slide 16" }
  }
}`;
const slide = 'slide "slide 16" side mount, 16 long, takes 1/2 each side, costs 14 each';
const hinge = 'hinge "butt" butt, 2-1/2 long, leaf 5/8 wide, 1/8 closed, costs 6 each';

async function hardware(text: string) {
  const piece = await pieceOfText(text);
  const { rows, isWholeCost } = shoppingList(piece, planned(piece));
  return {
    isWholeCost,
    rows: rows.flatMap((row) =>
      row.kind === 'hardware' ? [[row.what, row.entry, row.quantity, row.cost?.toString()]] : [],
    ),
  };
}

test('slides are counted and paid in pairs, hinges one by one', async () => {
  const { rows, isWholeCost } = await hardware(chest(slide, hinge));
  expect(rows).toContainEqual(['slide', 'slide 16', 2, '28']);
  expect(rows).toContainEqual(['hinge', 'butt', 2, '12']);
  expect(isWholeCost).toBe(true);
});

test('a runner below the middle of a drawer is no pair', async () => {
  const { rows } = await hardware(chest(slide.replace('side mount', 'centre mount'), hinge));
  expect(rows).toContainEqual(['slide', 'slide 16', 2, '28']);
});

test('hardware without a price is told apart from the cost', async () => {
  const { rows, isWholeCost } = await hardware(chest(slide, hinge.replace(', costs 6 each', '')));
  expect(rows).toContainEqual(['hinge', 'butt', 2, undefined]);
  expect(isWholeCost).toBe(false);
});

const edged = (edging: string) => `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each
board "ash" any thickness, 8 wide, 96 long, costs 6 a board foot
veneer "ash tape"
piece "box" {
  size 30 wide, 36 high, 12 deep
  case {
    sides "ply" thick 3/4 { edging ${edging} }
    bottom "ply" thick 3/4, between sides
  }
}`;

test('edging of boards is as long as its edges, and paid with the boards it is ripped from', async () => {
  const piece = await pieceOfText(edged('of "ash" thick 1/4 at front'));
  const list = shoppingList(piece, planned(piece));
  const rows = list.rows.flatMap((row) => (row.kind === 'edging' ? [row] : []));
  expect(
    rows.map(({ stock, strips, length, width, thickness, isFromBoards }) => [
      stock.name,
      strips,
      ...[length, width, thickness].map(({ exactInches }) => exactInches),
      isFromBoards,
    ]),
  ).toEqual([['ash', 2, '72', '3/4', '1/4', true]]);
  expect(list.rows.some((row) => row.kind === 'board')).toBe(true);
  expect(list.isWholeCost).toBe(true);
});

test('edging that comes in no boards is bought by its length, and not left out', async () => {
  const piece = await pieceOfText(edged('of "ash tape" thick 1/42 at front'));
  const plan = planned(piece);
  const rows = shoppingList(piece, plan).rows.flatMap((row) => (row.kind === 'edging' ? [row] : []));
  expect(rows.map(({ isFromBoards, length }) => [isFromBoards, length.exactInches])).toEqual([[false, '72']]);
  expect(plan.unplanned).toEqual([]);
  expect(plan.boards).toEqual([]);
});
