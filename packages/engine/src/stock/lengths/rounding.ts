import type { SeededRandom } from '../seeded-random.ts';
import type { BarPlan, FilledBar } from './effective-lengths.ts';
import { onCheapestStock, takeFilling, timesIn } from './greedy-filling.ts';
import type { PatternProgram } from './pattern-program.ts';
import type { ValueCorrection } from './value-correction.ts';

/**
 * Whole plans from the relaxation: what is cut whole times stays, some of the rest is rounded up, and what then waits is
 * planned by value correction, starting from the relaxation's prices.
 */
export function* roundings(
  patterns: PatternProgram,
  correction: ValueCorrection,
  demand: Int32Array,
  available: Float64Array,
  random: SeededRandom,
  rounds: number,
): Generator<BarPlan> {
  const { sizes, program } = patterns;
  const used: { column: number; level: number }[] = [];
  program.forEachUsed((column, level) => used.push({ column, level }));
  const prices = new Float64Array(sizes.size.length);
  patterns.copyValues(prices);
  for (let round = 0; round < rounds; round += 1) {
    const waiting = demand.slice();
    const free = available.slice();
    const bars: FilledBar[] = [];
    const cut = (column: number, times: number) => {
      const pattern = patterns.patterns[column];
      if (pattern === undefined) return;
      const most = Math.min(times, free[pattern.stock] as number, timesIn(waiting, pattern.filling));
      if (most <= 0) return;
      bars.push({ ...pattern, times: most });
      takeFilling(waiting, pattern.filling, most);
      free[pattern.stock] = (free[pattern.stock] as number) - most;
    };
    for (const { column, level } of used) cut(column, Math.floor(level + 1e-6));
    // At first the plain rounding, then more and more of the large fractions, in an order that chance disturbs.
    const share = (round % 6) / 6;
    const byFraction = used
      .map(({ column, level }) => ({ column, fraction: (level % 1) + (round < 6 ? 0 : 0.5 * random.fraction()) }))
      .sort((a, b) => b.fraction - a.fraction);
    for (const { column } of byFraction.slice(0, Math.ceil(share * byFraction.length))) cut(column, 1);
    for (let again = 0; again < 2; again += 1) {
      correction.begin(again % 2 === 0 ? prices : undefined);
      const rest = correction.next(waiting, free);
      yield onCheapestStock(sizes, available, { bars: [...bars, ...rest.bars], cost: 0, missing: rest.missing });
    }
  }
}
