import { describe, expect, test } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import { exactBoardFeet, surfaceMeasure, talliedBoardFeet } from '../../../packages/engine/src/stock/board-feet.ts';
import { roughThicknessFor } from '../../../packages/engine/src/stock/rough-thickness.ts';
import { HARDWOOD_THICKNESSES, SOFTWOOD_THICKNESSES } from '../../../packages/engine/src/tables/lumber-thickness.ts';
import { surfacedBoard } from '../../../packages/engine/src/tables/trade-limits.ts';

/** Board feet and thicknesses against worked examples of NHLA practice, and against the tables themselves. */

const feet = (n: number, d = 1) => Length.inches(n * 12, d);

describe('board feet', () => {
  test.each([
    // thickness, width, length, tallied, surface measure, unrounded
    ['1 × 6" × 8 ft', Length.inches(1), Length.inches(6), feet(8), 4, 4, 4],
    ['5/4, 7.25" × 10.7 ft', Length.inches(5, 4), Length.inches(29, 4), feet(107, 10), 7.5, 6, 8.081],
    ['8/4, 9.5" × 8 ft', Length.inches(2), Length.inches(19, 2), feet(8), 12, 6, 12.667],
    ['3/4 rough, 8" × 9.9 ft, which counts as 1"', Length.inches(3, 4), Length.inches(8), feet(99, 10), 6, 6, 6.6],
  ])('of %s', (_, thickness, width, length, tallied, surface, unrounded) => {
    const board = { thickness, width, length };
    expect(talliedBoardFeet(board).toNumber()).toBe(tallied);
    expect(surfaceMeasure(board).toNumber()).toBe(surface);
    expect(exactBoardFeet(board).toNumber()).toBeCloseTo(unrounded, 3);
  });

  test('a half of surface measure is rounded up', () => {
    expect(surfaceMeasure({ width: Length.inches(9), length: feet(6) }).toNumber()).toBe(5);
  });

  test('a board without size has none', () => {
    const none = { thickness: Length.inches(1), width: Length.inches(-3), length: feet(8) };
    expect(exactBoardFeet(none)).toEqual(Rational.zero);
    expect(talliedBoardFeet(none)).toEqual(Rational.zero);
  });
});

describe('rough thickness', () => {
  test('the table says what the rule for surfacing says', () => {
    for (const { nominal, surfaced } of HARDWOOD_THICKNESSES) {
      expect(surfacedBoard(nominal).exactInches).toBe(surfaced.exactInches);
    }
  });

  test('each size yields its own surfaced thickness, and a hair more asks for the next one', () => {
    for (const [kind, sizes] of [
      ['hardwood', HARDWOOD_THICKNESSES],
      ['softwood', SOFTWOOD_THICKNESSES],
    ] as const) {
      sizes.forEach((size, place) => {
        expect(roughThicknessFor(size.surfaced, kind)?.name).toBe(size.name);
        expect(roughThicknessFor(size.surfaced.plus(Length.inches(1, 1000)), kind)?.name).toBe(sizes[place + 1]?.name);
      });
    }
  });

  test('3/4" comes out of 4/4, 7/8" needs 5/4, and nothing yields 4"', () => {
    expect(roughThicknessFor(Length.inches(3, 4), 'hardwood')?.name).toBe('4/4');
    expect(roughThicknessFor(Length.inches(7, 8), 'hardwood')?.name).toBe('5/4');
    expect(roughThicknessFor(Length.inches(4), 'hardwood')).toBeUndefined();
  });
});
