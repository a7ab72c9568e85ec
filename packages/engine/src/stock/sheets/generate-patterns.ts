import { BestPatterns } from './best-patterns.ts';
import { realCell } from './cells.ts';
import { leastCost } from './cost-bound.ts';
import { type Column, CoveringProgram } from './covering-program.ts';
import { gridOf, type PatternNode } from './pattern-nodes.ts';
import type { PreparedKind, PreparedSheets, PreparedType } from './prepare-sheets.ts';

/** A pattern of a sheet with what the linear program knows of it. */
export interface PatternColumn extends Column {
  readonly kind: number;
  /** Missing if the places of cuts were too coarse to tell. */
  readonly pattern?: PatternNode;
}

/** The patterns of the fractional plan and how often each is cut; none if they cannot be cut as they are. */
export type FractionalPlan = readonly { readonly column: PatternColumn; readonly amount: number }[];

/** Prices are whole numbers of this fraction of the dearest sheet, so that the table's sums are exact. */
const PRICE_UNITS = 2 ** 32;

/** Programs larger than this take longer than they are worth. */
const MOST_TYPES = 220;

/**
 * Column generation: patterns that are worth more than their sheet costs enter the linear program until there are none.
 * Every round gives a lower bound, which is passed to `raise`: with any prices that are not negative, the blanks' worth
 * cannot exceed that of the sheets' best patterns (A. A. Farley, A note on bounding a class of linear programming
 * problems, Operations Research 38(5), 1990). `asked` is how many of each type.
 */
export function* generatePatterns(
  problem: PreparedSheets,
  asked: readonly number[],
  mostPlaces: number,
  raise: (bound: number) => boolean,
): Generator<void, FractionalPlan> {
  const { kinds, types } = problem;
  const unlimited = kinds.flatMap(({ available }, kind) => (available === Number.POSITIVE_INFINITY ? [kind] : []));
  const usable = unlimited.length > 0 ? unlimited : kinds.map((_, kind) => kind);
  const dearest = Math.max(...kinds.map(({ cost }) => cost));
  if (types.length > MOST_TYPES || usable.some((kind) => kinds[kind]?.cost === 0)) return [];
  const table = BestPatterns.for(problem, mostPlaces);
  if (table === undefined) return [];
  yield;
  const first: PatternColumn[] = [];
  for (let type = 0; type < types.length; type++) {
    const column = firstColumn(problem, type, usable);
    if (column === undefined) return [];
    first.push(column);
  }
  const program = new CoveringProgram(Float64Array.from(asked), first);
  const perPrice = PRICE_UNITS / dearest;
  for (let round = 0; round < 60 * types.length + 200; round++) {
    const prices = program.prices();
    if (program.enterSurplus(prices)) continue;
    const worths = prices.map((price) => Math.max(0, Math.floor(price * perPrice)));
    yield* table.fill(worths);
    const bests = kinds.map((_, kind) => table.worthOn(kind));
    const total = asked.reduce((sum, count, type) => sum + count * realCell(worths, type), 0);
    if (raise(leastCost(total, kinds, bests))) break;
    let entering = -1;
    let most = 1e-7;
    for (const kind of usable) {
      const { cost } = kinds[kind] as { cost: number };
      const gain = ((bests[kind] as number) / perPrice - cost) / cost;
      if (gain > most) {
        most = gain;
        entering = kind;
      }
    }
    if (entering < 0) break;
    const counts = table.countsOn(entering);
    const { cost } = kinds[entering] as PreparedKind;
    const column: PatternColumn = {
      kind: entering,
      counts,
      cost,
      ...(table.exact ? { pattern: table.patternOn(entering) } : {}),
    };
    if (!program.enter(column)) break;
    yield;
  }
  return table.exact ? (program.solution() as FractionalPlan) : [];
}

/** As many of one type as go on one sheet in rows and columns, on the kind where each costs least. */
function firstColumn(problem: PreparedSheets, type: number, usable: readonly number[]): PatternColumn | undefined {
  const { width, length, mayTurn } = problem.types[type] as PreparedType;
  let best: PatternColumn | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const kind of usable) {
    const sheet = problem.kinds[kind] as PreparedKind;
    for (const blank of mayTurn
      ? [
          { width, length },
          { width: length, length: width },
        ]
      : [{ width, length }]) {
      const count = Math.floor(sheet.width / blank.width) * Math.floor(sheet.length / blank.length);
      if (count === 0 || sheet.cost / count >= least) continue;
      least = sheet.cost / count;
      const counts = new Float64Array(problem.types.length);
      counts[type] = count;
      best = { kind, counts, cost: sheet.cost, pattern: gridOf(type, blank, sheet) };
    }
  }
  return best;
}
