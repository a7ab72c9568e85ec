import type { SeededRandom } from '../seeded-random.ts';
import type { BarPlan, FilledBar, Sizes } from './effective-lengths.ts';
import { tableCells } from './filling-table.ts';
import { fillBars, lengthOf, onCheapestStock, takeFilling, timesIn } from './greedy-filling.ts';
import type { PatternProgram } from './pattern-program.ts';
import type { ValueCorrection } from './value-correction.ts';

/** Cells of tables that are filled in some hundredths of a second. */
const MOST_CELLS = 15_000_000;

/**
 * Whole plans from the relaxation: what is cut whole times stays, some of the rest is rounded up, and what then waits is
 * planned by value correction, starting from the relaxation's prices; largest first where that would take too long.
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
    if (cellsFor(sizes, waiting) > MOST_CELLS) {
      const rest = fillBars(sizes, waiting, free);
      yield onCheapestStock(sizes, available, { bars: [...bars, ...rest.bars], cost: 0, missing: rest.missing });
      continue;
    }
    for (let again = 0; again < 2; again += 1) {
      correction.begin(again % 2 === 0 ? prices : undefined);
      const rest = correction.next(waiting, free);
      yield onCheapestStock(sizes, available, { bars: [...bars, ...rest.bars], cost: 0, missing: rest.missing });
    }
  }
}

/** What value correction fills of tables, one for each bar and kind of stock. */
function cellsFor(sizes: Sizes, waiting: Int32Array): number {
  const capacity = sizes.stocks.reduce((most, bar) => Math.max(most, bar.capacity), 1);
  const pieces = [...waiting].flatMap((count, index) => (count > 0 ? [index, count] : []));
  const bars = lengthOf(sizes, pieces) / capacity;
  return (bars * sizes.stocks.length * tableCells(pieces.length / 2, capacity)) / 2;
}
