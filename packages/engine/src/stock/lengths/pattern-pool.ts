import type { FillingSearch } from './filling-search.ts';
import type { Pattern } from './pattern-program.ts';
import { PatternProgram } from './pattern-program.ts';
import type { Relaxed } from './relaxation.ts';

const MOST_PATTERNS = 15_000;
/** A size is worth at least this, so that it is in the fillings even where the relaxation has too much of it. */
const LEAST_WORTH = 1e-9;

export interface PatternPool {
  readonly patterns: PatternProgram;
  /** Whether every plan of at most the target can be made from it. */
  readonly isComplete: boolean;
}

/** The patterns a plan of at most `target` can use, or, where those are too many, the likeliest of them. */
export function poolOf(
  known: PatternProgram,
  search: FillingSearch,
  relaxed: Relaxed,
  available: Float64Array,
  target: number,
): PatternPool {
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
      const fillings = search.all(bar.capacity, atLeast, MOST_PATTERNS - found.length);
      if (fillings === undefined) return undefined;
      for (const filling of fillings) found.push({ stock, filling });
    }
    return found;
  };
  const patterns = new PatternProgram(sizes, sizes.demand, available, false);
  for (const share of relaxed.complete ? [1, 0.3, 0.1, 0.03, 0.01, 0] : [0.3, 0.1, 0.03, 0.01, 0]) {
    const found = listed(share);
    if (found === undefined) continue;
    for (const { stock, filling } of found) patterns.add(stock, filling);
    if (share === 1) return { patterns, isComplete: true };
    break;
  }
  for (const { stock, filling } of known.patterns) if (stock >= 0) patterns.add(stock, filling);
  return { patterns, isComplete: false };
}
