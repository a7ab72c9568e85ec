import { cutSequence, laidOut, reservesFor, sparesOf } from '@fettle/engine';
import { expect, test } from 'vitest';
import { pieceOfText, planned } from './evaluating.ts';

/** What there is to make a spoiled part again, and the least to buy where there is nothing. */

const shop = (ash: string) => `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide
board "ash" any thickness, 10 wide, 120 long, costs 7 a board foot${ash}
machine "saw" kerf 1/8
`;

/** A plinth 60 long: its rails come out of a board of 72 that is 10 wide, side by side. */
const plinth = (ash = '', high = '1-1/2') => `${shop(ash)}
piece "box" {
  size 60 wide, 36 high, 12 deep
  case { plinth ${high} high of "ash" thick 3/4   sides "ply" thick 3/4   bottom "ply" thick 3/4, between sides }
}`;

async function plannedText(text: string) {
  const plan = planned(await pieceOfText(text));
  expect(plan.unplanned).toEqual([]);
  return plan;
}

const ofAsh = (plan: Awaited<ReturnType<typeof plannedText>>) =>
  sparesOf(laidOut(plan)).filter(({ from }) => from.stock.name === 'ash');

test('the strip beside a part is a spare, when it is as wide', async () => {
  const wide = await plannedText(plinth());
  expect(ofAsh(wide).map(({ spare }) => spare?.kind)).toEqual(ofAsh(wide).map(() => 'left over'));
  const narrow = await plannedText(plinth('', '6'));
  expect(ofAsh(narrow).every(({ spare }) => spare === undefined)).toBe(true);
});

test('an offcut on hand that no plan takes is a spare', async () => {
  const none = await plannedText(plinth('', '6'));
  expect(reservesFor(none).map(({ stock }) => stock.name)).toEqual(['ash']);
  // 3/4 comes out of 1: one that is 1-1/2 thick would do, but boards to buy are 1 thick, and it stays for a mistake.
  const offcut = await plannedText(plinth(' { offcut 66 long, 9 wide, 1-1/2 thick }', '6'));
  expect(ofAsh(offcut).map(({ spare }) => spare?.kind)).toContain('on hand');
  expect(reservesFor(offcut)).toEqual([]);
  const thin = await plannedText(plinth(' { offcut 66 long, 9 wide, 1/2 thick }', '6'));
  expect(reservesFor(thin)).toHaveLength(1);
});

test('the least to buy is the shortest board sold that holds each part without a spare', async () => {
  const plan = await plannedText(plinth('', '6'));
  const longest = ofAsh(plan).reduce(
    (most, { piece }) => Math.max(most, piece.part.length.length.approximateInches),
    0,
  );
  const [reserve] = reservesFor(plan);
  // An inch to trim on the part and one at each end of the board, in whole feet (common practice, no source).
  expect(reserve?.buy?.length.approximateInches).toBe(Math.max(48, Math.ceil((longest + 3) / 12) * 12));
  expect(reserve?.buy?.thickness?.exactInches).toBe('1');
  // 10 wide and 6 feet long of 4/4 are 5 board feet, at 7 each.
  expect(reserve?.buy?.cost?.toString()).toBe('35');
});

test('one thick board may cover a thinner part too, where that is less wood than two boards', async () => {
  const text = plinth('', '6').replace('sides "ply"', 'top "ash" thick 7/8, over sides   sides "ply"');
  const plan = await plannedText(text);
  const lacking = ofAsh(plan).filter(({ spare }) => spare === undefined);
  const thick = new Set(lacking.map(({ from }) => from.thickness?.exactInches));
  expect(thick).toEqual(new Set(['1', '5/4']));
  const bought = reservesFor(plan).flatMap(({ buy, covers }) => (buy === undefined ? [] : [{ buy, covers }]));
  expect(bought.map(({ buy }) => buy.thickness?.exactInches)).toEqual(['5/4']);
  expect(new Set(bought.flatMap(({ covers }) => covers))).toEqual(new Set(lacking.map(({ piece }) => piece)));
});

test('cuts that free a part without a spare have no way back', async () => {
  const plan = await plannedText(plinth('', '6'));
  const without = new Set(ofAsh(plan).map(({ piece }) => piece.blank.id));
  const marked = cutSequence(plan).filter(({ isWithoutWayBack }) => isWithoutWayBack);
  expect(marked.length).toBeGreaterThan(0);
  for (const { cut } of marked) expect(cut.blanks.some((blank) => without.has(blank))).toBe(true);
});

test('what is trimmed off boards is said: one end and one edge always, the others where something ends with them', async () => {
  const plan = await plannedText(plinth('', '6'));
  for (const stock of laidOut(plan).filter(({ kind }) => kind === 'board')) {
    const trims = stock.cuts.filter(({ gives }) => gives === 'trimmed board');
    expect(trims.map(({ direction, at }) => [direction, at.exactInches]).slice(0, 1)).toEqual([['rip', '1/4']]);
    expect(trims.filter(({ direction }) => direction === 'crosscut')[0]?.at.exactInches).toBe('1');
    // Every piece begins behind them.
    for (const { along, across } of stock.pieces) {
      expect([along.approximateInches >= 1, across.approximateInches >= 0.25]).toEqual([true, true]);
    }
  }
});

test('rough sizes of boards end on marks of the ruler, the finished ones of sheets do not', async () => {
  const plan = await plannedText(plinth('', '6-1/64').replace('36 high', '36-1/64 high'));
  for (const { kind, pieces } of laidOut(plan)) {
    for (const { length, width } of pieces) {
      const onMarks = [length, width].map((size) => Number.isInteger(size.approximateInches * 32));
      if (kind === 'board') expect(onMarks).toEqual([true, true]);
    }
  }
});
