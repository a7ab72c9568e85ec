import { cell, realCell } from './cells.ts';
import { type CutPositions, cutPositions, placeAtLeast, placeAtMost } from './cut-positions.ts';
import { BEHIND, SIDE_BY_SIDE } from './cutting-forest.ts';
import { cornerBlank, joined, type PatternNode, waste } from './pattern-nodes.ts';
import type { PreparedSheets } from './prepare-sheets.ts';

/** So many sums and comparisons between two pauses. */
const WORK_PER_STEP = 600_000;

const MOST_PLACES_ALONG = 1_000;

/**
 * The most valuable pattern of guillotine cuts for every kind of sheet at once, each type as often as one likes, by
 * dynamic programming over the places of cuts (P. C. Gilmore and R. E. Gomory, Multistage cutting stock problems of two
 * and more dimensions, Operations Research 13(1), 1965). Knows nothing of limits on cuts: with them it is a bound.
 */
export class BestPatterns {
  readonly exact: boolean;
  private readonly problem: PreparedSheets;
  private readonly across: CutPositions;
  private readonly along: CutPositions;
  private readonly values: Float64Array;
  /** Where the types begin to fit, each way they may lie. */
  private readonly starts: readonly CornerBlank[];
  private worths: Float64Array = new Float64Array(0);

  /**
   * At most so many places across, and more of them along if that leaves room for it. Undefined if there are too many places
   * to cut at.
   */
  static for(problem: PreparedSheets, most: number): BestPatterns | undefined {
    const { kinds, types } = problem;
    const turning = types.filter(({ mayTurn }) => mayTurn);
    const widths = [...types.map(({ width }) => width), ...turning.map(({ length }) => length)];
    const lengths = [...types.map(({ length }) => length), ...turning.map(({ width }) => width)];
    const across = cutPositions(
      widths,
      kinds.map(({ width }) => width),
      most,
    );
    const along = cutPositions(
      lengths,
      kinds.map(({ length }) => length),
      Math.max(most, Math.min(MOST_PLACES_ALONG, Math.floor((most * most) / (across?.places.length ?? most)))),
    );
    return across === undefined || along === undefined ? undefined : new BestPatterns(problem, across, along);
  }

  private constructor(problem: PreparedSheets, across: CutPositions, along: CutPositions) {
    this.problem = problem;
    this.across = across;
    this.along = along;
    this.exact = across.exact && along.exact;
    this.values = new Float64Array(across.places.length * along.places.length);
    this.starts = problem.types.flatMap(({ width, length, mayTurn }, type) => {
      const corner = (w: number, l: number): CornerBlank => ({
        kind: 'blank',
        type,
        width: w,
        length: l,
        i: placeAtLeast(across.places, w),
        j: placeAtLeast(along.places, l),
      });
      return mayTurn ? [corner(width, length), corner(length, width)] : [corner(width, length)];
    });
  }

  get places(): { readonly across: Int32Array; readonly along: Int32Array } {
    return { across: this.across.places, along: this.along.places };
  }

  /** Fills the table for these worths of the types; pauses now and then. */
  *fill(worths: Float64Array): Generator<void, void> {
    const { values } = this;
    const n = this.across.places.length;
    const m = this.along.places.length;
    this.worths = worths;
    values.fill(0);
    for (const { type, i, j } of this.starts) {
      if (i < n && j < m) values[i * m + j] = Math.max(realCell(values, i * m + j), realCell(worths, type));
    }
    const { rest: acrossRest, from: acrossFrom, to: acrossTo } = this.across;
    const { rest: alongRest, from: alongFrom, to: alongTo } = this.along;
    let work = 0;
    for (let i = 1; i < n; i++) {
      const iFrom = cell(acrossFrom, i);
      const iTo = cell(acrossTo, i);
      for (let j = 1; j < m; j++) {
        const here = i * m + j;
        let best = Math.max(realCell(values, here), realCell(values, here - m), realCell(values, here - 1));
        for (let k = iFrom; k < iTo; k++) {
          const value = realCell(values, k * m + j) + realCell(values, cell(acrossRest, i * n + k) * m + j);
          if (value > best) best = value;
        }
        const jTo = cell(alongTo, j);
        for (let k = cell(alongFrom, j); k < jTo; k++) {
          const value = realCell(values, i * m + k) + realCell(values, i * m + cell(alongRest, j * m + k));
          if (value > best) best = value;
        }
        work += 2 + iTo - iFrom + jTo;
        values[i * m + j] = best;
      }
      if (work > WORK_PER_STEP) {
        work = 0;
        yield;
      }
    }
  }

  /** What the best pattern on a sheet of this kind is worth. */
  worthOn(kind: number): number {
    const [i, j] = this.placeOf(kind);
    return realCell(this.values, i * this.along.places.length + j);
  }

  private placeOf(kind: number): readonly [number, number] {
    const sheet = this.problem.kinds[kind] as { width: number; length: number };
    const place = ({ exact, places }: CutPositions, size: number) =>
      exact ? placeAtMost(places, size) : placeAtLeast(places, size);
    return [place(this.across, sheet.width), place(this.along, sheet.length)];
  }

  /** How many of each type a best pattern on a sheet of this kind holds. */
  countsOn(kind: number): Float64Array {
    const counts = new Float64Array(this.worths.length);
    const [i, j] = this.placeOf(kind);
    this.countIn(i, j, counts);
    return counts;
  }

  private countIn(fromI: number, fromJ: number, counts: Float64Array): void {
    const choice = this.choiceAt(fromI, fromJ);
    switch (choice.kind) {
      case 'nothing':
        return;
      case 'blank':
        counts[choice.type] = realCell(counts, choice.type) + 1;
        return;
      case 'rip':
        this.countIn(choice.place, choice.j, counts);
        this.countIn(choice.rest, choice.j, counts);
        return;
      case 'crosscut':
        this.countIn(choice.i, choice.place, counts);
        this.countIn(choice.i, choice.rest, counts);
        return;
      default: {
        const never: never = choice;
        throw new Error(`no choice: ${never}`);
      }
    }
  }

  /** A best pattern on a sheet of this kind. Only if `exact`: otherwise its blanks overlap. */
  patternOn(kind: number): PatternNode {
    const { width, length } = this.problem.kinds[kind] as { width: number; length: number };
    return this.patternIn(width, length);
  }

  private patternIn(width: number, length: number): PatternNode {
    const { places: across } = this.across;
    const { places: along } = this.along;
    const choice = this.choiceAt(placeAtMost(across, width), placeAtMost(along, length));
    switch (choice.kind) {
      case 'nothing':
        return waste(width, length);
      case 'blank':
        return cornerBlank(choice.type, choice, { width, length });
      case 'rip': {
        const at = cell(across, choice.place);
        return joined(SIDE_BY_SIDE, width, length, [this.patternIn(at, length), this.patternIn(width - at, length)]);
      }
      case 'crosscut': {
        const at = cell(along, choice.place);
        return joined(BEHIND, width, length, [this.patternIn(width, at), this.patternIn(width, length - at)]);
      }
      default: {
        const never: never = choice;
        return never;
      }
    }
  }

  /** What makes the value of a place of the table. */
  private choiceAt(fromI: number, fromJ: number): Choice {
    const { values } = this;
    const m = this.along.places.length;
    const n = this.across.places.length;
    let i = fromI;
    let j = fromJ;
    const value = realCell(values, i * m + j);
    if (value === 0) return { kind: 'nothing' };
    while (i > 1 && realCell(values, (i - 1) * m + j) === value) i--;
    while (j > 1 && realCell(values, i * m + j - 1) === value) j--;
    for (const start of this.starts) {
      if (start.i === i && start.j === j && realCell(this.worths, start.type) === value) return start;
    }
    for (let k = cell(this.across.from, i); k < cell(this.across.to, i); k++) {
      const rest = cell(this.across.rest, i * n + k);
      if (realCell(values, k * m + j) + realCell(values, rest * m + j) === value)
        return { kind: 'rip', place: k, rest, j };
    }
    for (let k = cell(this.along.from, j); k < cell(this.along.to, j); k++) {
      const rest = cell(this.along.rest, j * m + k);
      if (realCell(values, i * m + k) + realCell(values, i * m + rest) === value) {
        return { kind: 'crosscut', place: k, rest, i };
      }
    }
    throw new Error('a value of the table that nothing explains');
  }
}

/** A blank in the corner of a piece, in its size as it lies there. */
interface CornerBlank {
  readonly kind: 'blank';
  readonly type: number;
  readonly width: number;
  readonly length: number;
  /** The first place of the table where it fits. */
  readonly i: number;
  readonly j: number;
}

type Choice =
  | { readonly kind: 'nothing' }
  | CornerBlank
  | { readonly kind: 'rip'; readonly place: number; readonly rest: number; readonly j: number }
  | { readonly kind: 'crosscut'; readonly place: number; readonly rest: number; readonly i: number };
