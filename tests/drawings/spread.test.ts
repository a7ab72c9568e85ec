import fc from 'fast-check';
import { expect, it } from 'vitest';
import { spread } from '../../packages/drawings/src/spread.ts';

const wishes = fc
  .array(fc.record({ centre: fc.integer({ min: -500, max: 500 }), size: fc.integer({ min: 1, max: 20 }) }), {
    maxLength: 30,
  })
  .map((list) => list.sort((a, b) => a.centre - b.centre));

it('keeps labels apart, in order and within bounds', () => {
  fc.assert(
    fc.property(wishes, (list) => {
      const [low, high] = [-400, 400];
      const at = spread(list, low, high);
      expect(at).toHaveLength(list.length);
      list.forEach((wish, index) => {
        const middle = at[index] ?? Number.NaN;
        expect(middle - wish.size / 2).toBeGreaterThanOrEqual(low - 1e-6);
        expect(middle + wish.size / 2).toBeLessThanOrEqual(high + 1e-6);
        const next = list[index + 1];
        if (next === undefined) return;
        expect((at[index + 1] ?? Number.NaN) - middle).toBeGreaterThanOrEqual((wish.size + next.size) / 2 - 1e-6);
      });
    }),
  );
});

it('leaves alone what has room', () => {
  expect(
    spread(
      [
        { centre: 0, size: 4 },
        { centre: 10, size: 4 },
      ],
      -100,
      100,
    ),
  ).toEqual([0, 10]);
});

it('moves two that collide by equal amounts, and three about their middle', () => {
  expect(
    spread(
      [
        { centre: 0, size: 4 },
        { centre: 2, size: 4 },
      ],
      -100,
      100,
    ),
  ).toEqual([-1, 3]);
  expect(
    spread(
      [
        { centre: 5, size: 4 },
        { centre: 5, size: 4 },
        { centre: 5, size: 4 },
      ],
      -100,
      100,
    ),
  ).toEqual([1, 5, 9]);
});

it('moves no more in all than any other arrangement that keeps apart', () => {
  fc.assert(
    fc.property(
      wishes,
      fc.array(fc.double({ min: -15, max: 15, noNaN: true }), { minLength: 30, maxLength: 30 }),
      (list, shifts) => {
        const at = spread(list, -1e6, 1e6);
        // Any other arrangement: shifted at will, then pushed apart from the left.
        let edge = Number.NEGATIVE_INFINITY;
        const other = list.map((wish, index) => {
          const start = Math.max(edge, (at[index] ?? 0) + (shifts[index] ?? 0) - wish.size / 2);
          edge = start + wish.size;
          return start + wish.size / 2;
        });
        const moved = (places: readonly number[]) =>
          list.reduce((sum, wish, index) => sum + ((places[index] ?? 0) - wish.centre) ** 2, 0);
        expect(moved(at)).toBeLessThanOrEqual(moved(other) + 1e-6);
      },
    ),
  );
});
