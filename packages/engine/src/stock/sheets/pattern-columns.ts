import { gridOf, type PatternNode } from './pattern-nodes.ts';
import type { PreparedKind, PreparedSheets, PreparedType } from './prepare-sheets.ts';

/** A pattern of a sheet with what the linear program knows of it. */
export interface PatternColumn {
  readonly kind: number;
  /** How many of each type it holds. */
  readonly counts: Float64Array;
  /** Missing if the places of cuts were too coarse to tell. */
  readonly pattern?: PatternNode;
}

/** The patterns of the fractional plan and how often each is cut; all of them can be cut. */
export type FractionalPlan = readonly { readonly column: PatternColumn; readonly amount: number }[];

/** As many of one type as go on one sheet in rows and columns, on the kind where each costs least. */
export function firstColumn(problem: PreparedSheets, type: number): PatternColumn | undefined {
  const { width, length, mayTurn } = problem.types[type] as PreparedType;
  let best: PatternColumn | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let kind = 0; kind < problem.kinds.length; kind++) {
    const sheet = problem.kinds[kind] as PreparedKind;
    if (sheet.available !== Number.POSITIVE_INFINITY) continue;
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
      best = { kind, counts, pattern: gridOf(type, blank, sheet) };
    }
  }
  return best;
}
