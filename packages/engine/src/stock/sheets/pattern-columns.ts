import type { CoveringProgram } from '../covering-program.ts';
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

/** How far a search for patterns goes, and what for. */
export interface PatternEffort {
  /** So often the table is filled, at most, and the strips' tables. */
  readonly rounds: number;
  readonly stripRounds: number;
  /** For a bound each type may be in a pattern as often as one likes, and patterns need not be known cut by cut. */
  readonly isForBound: boolean;
}

/** What is known of the linear program while it is solved. */
export interface StandingPatterns {
  readonly program: CoveringProgram;
  /** What the program's columns are, in its order. */
  readonly columns: PatternColumn[];
  /** The row of each kind of which there are only so many; -1 for the others. */
  readonly kindRows: Int32Array;
  /** How many of each type a column may count, at most; missing while it is the bound that is sought. */
  readonly counted: Int32Array | undefined;
}

/** What the program has decided so far. */
export function planOf({ program, columns }: StandingPatterns): FractionalPlan {
  const plan: { column: PatternColumn; amount: number }[] = [];
  program.forEachUsed((column, amount) => plan.push({ column: columns[column] as PatternColumn, amount }));
  return plan;
}

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
