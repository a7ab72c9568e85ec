import { describe, expect, test } from 'vitest';
import { BarExchanges } from '../../../../packages/engine/src/stock/lengths/bar-exchanges.ts';
import { effectiveLengths } from '../../../../packages/engine/src/stock/lengths/effective-lengths.ts';
import { fillBars } from '../../../../packages/engine/src/stock/lengths/greedy-filling.ts';
import type { LengthProblem } from '../../../../packages/engine/src/stock/lengths/length-problem.ts';
import { SeededRandom } from '../../../../packages/engine/src/stock/seeded-random.ts';
import { planWithin } from './planning.ts';

/**
 * Problems as E. Falkenauer (Journal of Heuristics 2(1), 1996) and A. Scholl, R. Klein and C. Jürgens (Computers &
 * Operations Research 24(7), 1997) describe them, but drawn here.
 */

function problemOf(lengths: readonly number[], stock: number): LengthProblem {
  return {
    stocks: [{ id: 'stock', length: stock, cost: 1 }],
    items: lengths.map((length, at) => ({ id: `piece ${at}`, length, count: 1 })),
    kerf: 0,
    trim: 0,
  };
}

/** Three pieces fill each length of 1000 without any waste. */
function triplets(count: number, seed: number): LengthProblem {
  const random = new SeededRandom(seed);
  const lengths = Array.from({ length: count }, () => {
    const first = 380 + random.below(111);
    const rest = 1000 - first;
    const second = 250 + random.below(Math.floor(rest / 2) - 249);
    return [first, second, rest - second];
  });
  return problemOf(lengths.flat(), 1000);
}

/** About three pieces, of half to one and a half thirds, in each length of 1000. */
function aboutThirds(count: number, seed: number): LengthProblem {
  const random = new SeededRandom(seed);
  return problemOf(
    Array.from({ length: count }, () => 167 + random.below(334)),
    1000,
  );
}

describe('where nothing may be left over', () => {
  for (const count of [40, 83, 167]) {
    test(`${count} lengths that are full to the last are found among ${3 * count} pieces`, () => {
      const { plan } = planWithin(triplets(count, count), 250);
      expect(plan.cost).toBe(count);
      expect(plan.cuts.every(({ left }) => left === 0)).toBe(true);
    });
  }
});

describe('where a little is left over', () => {
  test('two hundred pieces about as long as a third go into as few lengths as their sum asks for', () => {
    const problem = aboutThirds(200, 5);
    const sum = problem.items.reduce((total, { length }) => total + length, 0);
    expect(planWithin(problem, 250).plan.cost).toBe(Math.ceil(sum / 1000));
  });
});

describe('moving pieces between bars', () => {
  test('is not tried with several kinds of stock', () => {
    const problem = triplets(5, 1);
    const { sizes } = effectiveLengths({ ...problem, stocks: [...problem.stocks, { id: 'b', length: 900, cost: 1 }] });
    expect(new BarExchanges(sizes, new SeededRandom(1)).isPossible).toBe(false);
  });

  test('gives plans of all pieces, each within its length, and ever fewer lengths', () => {
    const { sizes } = effectiveLengths(aboutThirds(120, 3));
    const asked = Array.from(sizes.demand);
    const exchanges = new BarExchanges(sizes, new SeededRandom(2));
    let best = fillBars(sizes, sizes.demand, Float64Array.of(Number.POSITIVE_INFINITY));
    const least = Math.ceil(asked.reduce((sum, count, at) => sum + count * (sizes.size[at] ?? 0), 0) / 1000);
    let plans = 0;
    for (let turn = 0; turn < 300 && best.cost > least; turn += 1) {
      const plan = exchanges.run(least, best, 10_000);
      if (plan === undefined) continue;
      plans += 1;
      const cut = asked.map(() => 0);
      for (const { filling, times } of plan.bars) {
        let length = 0;
        for (let at = 0; at < filling.length; at += 2) {
          const [index = 0, count = 0] = filling.slice(at, at + 2);
          length += (sizes.size[index] ?? 0) * count;
          cut[index] = (cut[index] ?? 0) + count * times;
        }
        expect(length).toBeLessThanOrEqual(sizes.stocks[0]?.capacity ?? 0);
      }
      expect(cut).toEqual(asked);
      expect(plan.cost).toBe(plan.bars.reduce((sum, { times }) => sum + times, 0));
      if (plan.cost < best.cost) best = plan;
    }
    expect(plans).toBeGreaterThan(0);
    expect(best.cost).toBe(least);
  });
});
