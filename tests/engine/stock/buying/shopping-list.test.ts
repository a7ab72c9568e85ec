import { pieceWeight, shoppingList, standingOfSheets, standingWords } from '@fettle/engine';
import { expect, test } from 'vitest';
import { pieceOfText, planned } from './evaluating.ts';

const shop = `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each
sheet "thin ply" actual 1/4, 96 long, 48 wide
board "ash" any thickness, 8 wide, 96 long, costs 6 a board foot
`;

const box = (sides: string, size = 'size 30 wide, 36 high, 12 deep') => `${shop}
piece "box" {
  ${size}
  case { sides "${sides}" thick 3/4   bottom "${sides}" thick 3/4, between sides }
}`;

test('two sides and a bottom of plywood are one sheet, proved least, with its price and its waste', async () => {
  const piece = await pieceOfText(box('ply'));
  const plan = planned(piece);
  const list = shoppingList(piece, plan);
  expect(list.rows).toHaveLength(1);
  const [row] = list.rows;
  if (row?.kind !== 'sheet') throw new Error('no sheet is bought');
  expect([row.quantity, row.cost?.toString(), list.cost?.toString(), list.isWholeCost]).toEqual([1, '80', '80', true]);
  // Two sides of 36 by 12 and a bottom of 28-1/2 by 12 are 1206 of 4608 square inches: 3402/4608 are left.
  expect(row.waste.toString()).toBe('189/256');
  expect(plan.sheets.map((each) => standingWords(standingOfSheets(each)))).toEqual(['proved least']);
});

test('boards are counted in board feet, exact and as they are tallied, and paid by the tally', async () => {
  const piece = await pieceOfText(box('ash'));
  const list = shoppingList(piece, planned(piece));
  const boards = list.rows.flatMap((row) => (row.kind === 'board' ? [row] : []));
  expect(boards.length).toBeGreaterThan(0);
  for (const { quantity, thickness, width, length, boardFeet, cost } of boards) {
    // 3/4 finished comes out of 4/4 rough; the widest board is 8 wide.
    expect([thickness?.exactInches, width.exactInches]).toEqual(['1', '8']);
    const feet = Number(length.exactInches) / 12;
    expect(boardFeet?.exact.toNumber()).toBeCloseTo((quantity * feet * 8) / 12, 12);
    expect(boardFeet?.tallied.toNumber()).toBe(quantity * Math.round((feet * 8) / 12));
    expect(cost?.toNumber()).toBe((boardFeet?.tallied.toNumber() ?? 0) * 6);
  }
  // Of 12 wide boards of 8 give two staves each: six staves.
  const staves = planned(piece).boards.flatMap(({ order }) => [...order.prepared.glueUps.values()]);
  expect(staves.map(({ staves: count }) => count)).toEqual([2, 2, 2]);
});

test('what has no price is said to be missing from the cost', async () => {
  const text = box('ply').replace(
    'between sides }',
    'between sides   back "thin ply" in groove 1/4 deep, 1/2 in from back edge }',
  );
  const piece = await pieceOfText(text);
  const list = shoppingList(piece, planned(piece));
  expect([list.cost?.toString(), list.isWholeCost]).toEqual(['80', false]);
});

test('a negative price is no price', async () => {
  const piece = await pieceOfText(box('ply').replace('costs 80', 'costs -80'));
  const list = shoppingList(piece, planned(piece));
  expect([list.cost, list.isWholeCost]).toEqual([undefined, false]);
});

test('what no stock can give is told with its reason, never left out in silence', async () => {
  const unplanned = async (text: string) => {
    const plan = planned(await pieceOfText(text));
    return plan.unplanned.map(({ piece, why }) => `${piece.part.role}: ${why}`);
  };
  const tall = 'size 30 wide, 100 high, 12 deep';
  expect(await unplanned(box('ply', tall))).toEqual(['side: larger than every sheet', 'side: larger than every sheet']);
  expect(await unplanned(box('ash', tall))).toEqual(['side: longer than any board', 'side: longer than any board']);
  expect(await unplanned(box('ply').replace('96 long, 48 wide, costs 80', 'costs 80'))).toEqual([
    'side: its stock has no size',
    'side: its stock has no size',
    'bottom: its stock has no size',
  ]);
  const unknown = box('ply').replaceAll('"ply" thick', '"nothing" thick');
  expect(new Set(await unplanned(unknown))).toEqual(
    new Set(['side: its material is not chosen', 'bottom: its material is not chosen']),
  );
});

test('what has a grain lies along the sheet, however it would fit across', async () => {
  const plan = planned(await pieceOfText(box('ply', 'size 30 wide, 40 high, 12 deep')));
  const nodes = plan.sheets.flatMap(({ plan: { sheets } }) => sheets.map(({ root }) => JSON.stringify(root)));
  expect(nodes.join()).not.toContain('"turned":true');
});

test('the kerf is that of the widest blade of the shop, or an assumed one that says so', async () => {
  const bare = planned(await pieceOfText(box('ply'))).request.kerf;
  expect([bare.length.exactInches, bare.reason.kind]).toEqual(['1/8', 'assumed']);
  const text = box('ply').replace('piece', 'machine "saw" kerf 3/32\nmachine "track saw" kerf 7/64\npiece');
  const known = planned(await pieceOfText(text)).request.kerf;
  expect([known.length.exactInches, known.reason.kind]).toEqual(['7/64', 'shop']);
});

test('a box of plywood weighs its volume by the mean density of plywood', async () => {
  const { parts } = await pieceOfText(box('ply'));
  const { kilograms, takenFor, unweighed } = pieceWeight(parts);
  // 1206 square inches of 3/4 are 904.5 cubic inches of 16.387064 cm3; plywood 400 to 600 kg/m3 (Wood Handbook, 2010, table 12-1).
  expect(kilograms.toNumber()).toBeCloseTo(904.5 * 16.387064e-6 * 500, 9);
  expect([...takenFor]).toEqual([['ply', 'plywood']]);
  expect(unweighed).toEqual([]);
});
