import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { effectiveLengths } from '../../../../packages/engine/src/stock/lengths/effective-lengths.ts';
import { FillingSearch } from '../../../../packages/engine/src/stock/lengths/filling-search.ts';
import { Landmarks, landmarkCounts } from '../../../../packages/engine/src/stock/lengths/landmarks.ts';
import type { LengthProblem } from '../../../../packages/engine/src/stock/lengths/length-problem.ts';
import { PatternProgram } from '../../../../packages/engine/src/stock/lengths/pattern-program.ts';
import { type Relaxed, relax } from '../../../../packages/engine/src/stock/lengths/relaxation.ts';
import { lengthInstances, problemOf } from '../../../fixtures/cutting/length-instances.ts';
import { arbitraryLengthProblem } from './arbitrary-lengths.ts';
import { planWithin } from './planning.ts';

/** Relaxations in which few sizes stand for all, and patterns found for what still waits. */

function relaxedAt(problem: LengthProblem, count: number, known?: Relaxed): Relaxed {
  const { sizes } = effectiveLengths(problem);
  const available = Float64Array.from(sizes.stocks, (stock) => stock.available);
  const capacity = sizes.stocks.reduce((most, stock) => Math.max(most, stock.capacity), 0);
  const patterns = new PatternProgram(sizes, sizes.demand, available, new Landmarks(sizes, count));
  const search = new FillingSearch(sizes.size, capacity);
  const relaxing = relax(patterns, search, sizes.demand, available, 'to the end', known);
  for (let step = relaxing.next(); ; step = relaxing.next()) if (step.done === true) return step.value;
}

describe('landmarks', () => {
  const sizes = { size: Float64Array.from([90, 70, 50, 45, 10]), demand: Int32Array.from([1, 1, 1, 1, 1]), stocks: [] };

  test('give a size between two of them its share of both, by its length', () => {
    const landmarks = new Landmarks(sizes, 3);
    expect([...landmarks.chosen]).toEqual([0, 2, 4]);
    const worth = [9, 5, 3];
    const worths = [0, 1, 2, 3, 4].map((index) => landmarks.worthOf(index, (row) => worth[row] ?? Number.NaN));
    expect(worths).toEqual([9, 7, 5, expect.closeTo(4.75, 12), 3]);
    // 70 is half way from 90 to 50, 45 an eighth of the way from 50 to 10.
    expect(landmarks.entriesOf([1, 2, 3, 1])).toEqual([0, 1, 1, 1.875, 2, 0.125]);
    expect([...landmarks.spread(sizes.demand)]).toEqual([1.5, 2.375, 1.125]);
  });

  test('are rising numbers of them, none for a handful of sizes', () => {
    expect(landmarkCounts(200, 450)).toEqual([25, 50, 100]);
    expect(landmarkCounts(1600, 450)).toEqual([200, 400]);
    expect(landmarkCounts(20, 450)).toEqual([]);
  });

  test('never prove more than all sizes do, and all sizes together give back what was asked', () => {
    fc.assert(
      fc.property(arbitraryLengthProblem, fc.integer({ min: 2, max: 6 }), (problem, count) => {
        const { sizes } = effectiveLengths(problem);
        if (sizes.size.length === 0) return;
        const few = relaxedAt(problem, count);
        const all = relaxedAt(problem, sizes.size.length, few);
        expect(few.lowest).toBeLessThanOrEqual(relaxedAt(problem, sizes.size.length).lowest * (1 + 1e-6) + 1e-6);
        expect(all.lowest).toBeGreaterThanOrEqual(few.lowest);
        const spread = new Landmarks(sizes, count).spread(sizes.demand);
        const asked = sizes.demand.reduce((sum, demand) => sum + demand, 0);
        expect(spread.reduce((sum, amount) => sum + amount, 0)).toBeCloseTo(asked, 6);
      }),
      { numRuns: 150 },
    );
  });

  test('a quarter of the sizes proves 56 lengths for HARD0, where length alone proves 55', () => {
    const folder = join(import.meta.dirname, '../../../fixtures/cutting');
    const instance = lengthInstances(folder, '1d').find(({ id }) => id === 'HARD0') ?? expect.fail('no HARD0');
    const problem = problemOf(instance);
    const total = problem.items.reduce((sum, { length, count }) => sum + length * count, 0);
    expect(Math.ceil(total / (instance.c ?? Number.NaN))).toBe(55);
    expect(relaxedAt(problem, 50).bound).toBe(56);
  });
});

describe('three pieces in every length, none left over', () => {
  /** Made as Falkenauer's triplets are (1996, from memory): a bar of 1000 is parted in three, none of them shorter than 250. */
  function triplets(bars: number, seed: number): LengthProblem {
    let state = seed;
    const between = (from: number, to: number) => {
      state = (state * 48_271) % 2_147_483_647;
      return from + (state % (to - from + 1));
    };
    const lengths = Array.from({ length: bars }, () => {
      const longest = between(380, 490);
      const second = between(250, Math.floor((1000 - longest) / 2));
      return [longest, second, 1000 - longest - second];
    }).flat();
    return {
      stocks: [{ id: 'bar', length: 1000, cost: 1 }],
      items: lengths.map((length, at) => ({ id: `piece ${at}`, length, count: 1 })),
      kerf: 0,
      trim: 0,
    };
  }

  test.each([1, 2])('are found again for 83 lengths of 249 pieces, %#', (seed) => {
    const { plan, bound } = planWithin(triplets(83, seed), 900);
    expect(plan.cost).toBe(83);
    expect(bound).toBe(83);
  });
});
