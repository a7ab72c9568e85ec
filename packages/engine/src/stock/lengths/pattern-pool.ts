import type { FillingSearch } from './filling-search.ts';
import type { Pattern, PatternProgram } from './pattern-program.ts';
import type { Relaxed } from './relaxation.ts';

const MOST_PATTERNS = 15_000;
/** Where they are only the likeliest: more are found when they are needed. */
const MOST_LIKELY = 1_500;
/** A size is worth at least this, so that it is in the fillings even where the relaxation has too much of it. */
const LEAST_WORTH = 1e-9;

/**
 * Adds the patterns a plan of at most `target` can use, or, where those are too many, the likeliest of them. True if every
 * such plan can then be made.
 */
export function addPool(
  known: PatternProgram,
  search: FillingSearch,
  relaxed: Relaxed,
  available: Float64Array,
  target: number,
): boolean {
  const { sizes } = known;
  const gap = target - relaxed.lowest;
  search.prepare(
    relaxed.values.map((value) => Math.max(value, LEAST_WORTH)),
    sizes.demand,
  );
  const listed = (share: number): readonly Pattern[] | undefined => {
    const found: Pattern[] = [];
    for (let stock = 0; stock < sizes.stocks.length; stock += 1) {
      const bar = sizes.stocks[stock];
      if (bar === undefined || available[stock] === 0) continue;
      const atLeast = (relaxed.worth[stock] as number) - gap * share - 1e-6 * Math.max(1, bar.cost);
      const fillings = search.all(bar.capacity, atLeast, (share === 1 ? MOST_PATTERNS : MOST_LIKELY) - found.length);
      if (fillings === undefined) return undefined;
      for (const filling of fillings) found.push({ stock, filling });
    }
    return found;
  };
  for (const share of relaxed.complete ? [1, 0.3, 0.1, 0.03, 0.01, 0] : [0.3, 0.1, 0.03, 0.01, 0]) {
    const found = listed(share);
    if (found === undefined) continue;
    for (const { stock, filling } of found) known.add(stock, filling);
    return share === 1;
  }
  return false;
}
