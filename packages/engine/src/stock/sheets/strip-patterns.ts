import { cell, realCell } from './cells.ts';
import { placeAtLeast, placeAtMost } from './cut-positions.ts';
import { BEHIND, BLANK, SIDE_BY_SIDE } from './cutting-forest.ts';
import { joined, type PatternNode, waste } from './pattern-nodes.ts';
import type { PreparedSheets } from './prepare-sheets.ts';
import { evenPlaces, NOTHING, restsOf, type Sides, type StripPlaces, sidesOf } from './strip-places.ts';

/** Beyond so many sums for one filling its places become coarser. */
const MOST_SUMS = 4_000_000;
const FEWEST_PLACES = 40;

/**
 * Valuable patterns in few stages: strips from edge to edge, each crosscut into lengths, each of these ripped into blanks,
 * which are trimmed if they are shorter than their length (after P. C. Gilmore and R. E. Gomory, Operations Research 13(1),
 * 1965). Three knapsacks in place of one table for all rectangles: not always the most valuable pattern of all, but nearly,
 * in a small part of the time. Each type as often as one likes.
 */
export class StripPatterns {
  private readonly direction: typeof SIDE_BY_SIDE | typeof BEHIND;
  private readonly sheets: readonly Placed[];
  private readonly across: Int32Array;
  private readonly along: Int32Array;
  private readonly blanks: readonly LyingBlank[];
  /** `[size * places + i]`: the place that is left of place i beside a piece of that size; negative if there is none. */
  private readonly acrossRests: Int32Array;
  private readonly alongRests: Int32Array;
  /** The row of `acrossRests` at which the widths of strips begin. */
  private readonly stripSize: number;
  /** Places across of the strips' widths, and places along of the lengths they are crosscut to. */
  private readonly strips: Int32Array;
  private readonly lengths: Int32Array;

  /** `[length * places across + i]`: blanks beside each other in a piece of a strip. */
  private readonly pieceValues: Float64Array;
  private readonly pieceChoices: Int32Array;
  /** `[strip * places along + j]`: lengths behind each other in a strip. */
  private readonly stripValues: Float64Array;
  private readonly stripChoices: Int32Array;
  private readonly sheetValues: Float64Array;
  private readonly sheetChoices: Int32Array;
  /** About how many sums the last filling took. */
  effort = 0;

  /**
   * Patterns whose first cuts are rips (`SIDE_BY_SIDE`) or crosscuts (`BEHIND`). Without places to cut at, some at equal
   * distances.
   */
  static for(
    problem: PreparedSheets,
    direction: typeof SIDE_BY_SIDE | typeof BEHIND,
    places: StripPlaces | undefined,
  ): StripPatterns {
    const isRip = direction === SIDE_BY_SIDE;
    const sheets = problem.kinds.map((kind) => sidesOf(kind, isRip));
    const lying = problem.types.flatMap(({ width, length, mayTurn }, type) => {
      const straight = { type, ...sidesOf({ width, length }, isRip) };
      return mayTurn ? [straight, { type, across: straight.along, along: straight.across }] : [straight];
    });
    const most = Math.max(FEWEST_PLACES, Math.floor(MOST_SUMS / Math.max(1, lying.length) ** 2));
    const across = places?.across ?? evenPlaces(Math.max(...sheets.map((sheet) => sheet.across)), most);
    const along = places?.along ?? evenPlaces(Math.max(...sheets.map((sheet) => sheet.along)), most);
    return new StripPatterns(direction, sheets, lying, across, along);
  }

  private constructor(
    direction: typeof SIDE_BY_SIDE | typeof BEHIND,
    sheets: readonly Sides[],
    lying: readonly (Sides & { readonly type: number })[],
    across: Int32Array,
    along: Int32Array,
  ) {
    this.direction = direction;
    this.across = across;
    this.along = along;
    this.sheets = sheets.map((sheet) => ({
      ...sheet,
      i: placeAtMost(across, sheet.across),
      j: placeAtMost(along, sheet.along),
    }));
    const fitting = lying.flatMap((blank) => {
      const i = placeAtLeast(across, blank.across);
      const j = placeAtLeast(along, blank.along);
      return i < across.length && j < along.length ? [{ ...blank, i, j }] : [];
    });
    this.strips = Int32Array.from(new Set(fitting.map(({ i }) => i))).sort();
    this.lengths = Int32Array.from(new Set(fitting.map(({ j }) => j))).sort();
    const widths = [...new Set(fitting.map((blank) => blank.across))];
    this.blanks = fitting.map((blank) => ({ ...blank, size: widths.indexOf(blank.across) }));
    this.acrossRests = restsOf(across, [...widths, ...Array.from(this.strips, (i) => cell(across, i))]);
    this.stripSize = widths.length;
    this.alongRests = restsOf(
      along,
      Array.from(this.lengths, (j) => cell(along, j)),
    );
    this.pieceValues = new Float64Array(this.lengths.length * across.length);
    this.pieceChoices = new Int32Array(this.pieceValues.length);
    this.stripValues = new Float64Array(this.strips.length * along.length);
    this.stripChoices = new Int32Array(this.stripValues.length);
    this.sheetValues = new Float64Array(across.length);
    this.sheetChoices = new Int32Array(across.length);
  }

  /** Fills pieces and strips for these worths of the types; a type that is worth nothing is in no pattern. */
  fill(worths: Float64Array): void {
    this.effort = 0;
    this.fillPieces(worths);
    this.fillStrips();
  }

  private fillPieces(worths: Float64Array): void {
    const { across, lengths, pieceValues, pieceChoices, acrossRests } = this;
    const n = across.length;
    for (let length = 0; length < lengths.length; length++) {
      const from = length * n;
      if (length === 0) {
        pieceValues.fill(0, 0, n);
        pieceChoices.fill(NOTHING, 0, n);
      } else {
        // What goes into a shorter piece goes into a longer one.
        pieceValues.copyWithin(from, from - n, from);
        pieceChoices.copyWithin(from, from - n, from);
      }
      for (let at = 0; at < this.blanks.length; at++) {
        const { type, i, j, size } = this.blanks[at] as LyingBlank;
        const worth = realCell(worths, type);
        // What shorter blanks beside each other are worth in the same room need not be had from this one.
        if (j !== cell(lengths, length) || worth <= realCell(pieceValues, from + i)) continue;
        const rests = size * n;
        for (let place = i; place < n; place++) {
          const value = realCell(pieceValues, from + cell(acrossRests, rests + place)) + worth;
          if (value <= realCell(pieceValues, from + place)) continue;
          pieceValues[from + place] = value;
          pieceChoices[from + place] = at;
        }
        this.effort += n - i;
      }
    }
  }

  private fillStrips(): void {
    const { across, along, lengths, strips, pieceValues, stripValues, stripChoices, alongRests } = this;
    const n = across.length;
    const m = along.length;
    for (let strip = 0; strip < strips.length; strip++) {
      const from = strip * m;
      const i = cell(strips, strip);
      stripValues.fill(0, from, from + m);
      stripChoices.fill(NOTHING, from, from + m);
      for (let length = 0; length < lengths.length; length++) {
        const worth = realCell(pieceValues, length * n + i);
        // A piece that holds no more than shorter ones behind each other do is never better.
        if (worth <= realCell(stripValues, from + cell(lengths, length))) continue;
        const rests = length * m;
        for (let place = cell(lengths, length); place < m; place++) {
          const value = realCell(stripValues, from + cell(alongRests, rests + place)) + worth;
          if (value <= realCell(stripValues, from + place)) continue;
          stripValues[from + place] = value;
          stripChoices[from + place] = length;
        }
        this.effort += m - cell(lengths, length);
      }
    }
  }

  /**
   * Valuable patterns for a kind of sheet, each worth more than `moreThan`, the most valuable first, at most `most`: the best
   * one with each width of strip. Each blank is counted where the strips have it.
   */
  bestOn(kind: number, moreThan: number, most: number): readonly StripPattern[] {
    const { i: whole } = this.sheets[kind] as Placed;
    const candidates = this.fillSheet(kind);
    return candidates
      .filter(({ worth }) => worth > moreThan)
      .sort((a, b) => b.worth - a.worth)
      .slice(0, most)
      .map(({ strip, worth }) => ({ worth, pattern: this.patternOf(kind, strip, whole) }));
  }

  /** Puts strips beside each other; answers what the best pattern with each is worth. */
  private fillSheet(kind: number): { readonly strip: number; readonly worth: number }[] {
    const { strips, along, acrossRests, stripValues, sheetValues, sheetChoices, stripSize } = this;
    const { i: whole, j } = this.sheets[kind] as Placed;
    const n = this.across.length;
    const m = along.length;
    sheetValues.fill(0);
    sheetChoices.fill(NOTHING);
    const useful: number[] = [];
    let before = 0;
    for (let strip = 0; strip < strips.length && cell(strips, strip) <= whole; strip++) {
      const worth = realCell(stripValues, strip * m + j);
      if (worth <= before) continue;
      before = worth;
      useful.push(strip);
      // A strip that holds no more than narrower ones beside each other do is only of use for the variety of patterns.
      if (worth <= realCell(sheetValues, cell(strips, strip))) continue;
      const rests = (stripSize + strip) * n;
      for (let place = cell(strips, strip); place <= whole; place++) {
        const value = realCell(sheetValues, cell(acrossRests, rests + place)) + worth;
        if (value <= realCell(sheetValues, place)) continue;
        sheetValues[place] = value;
        sheetChoices[place] = strip;
      }
      this.effort += whole;
    }
    return useful.map((strip) => ({
      strip,
      worth:
        realCell(stripValues, strip * m + j) +
        realCell(sheetValues, cell(acrossRests, (stripSize + strip) * n + whole)),
    }));
  }

  private patternOf(kind: number, first: number, whole: number): PatternNode {
    const { across, strips, acrossRests, stripSize, sheetChoices, sheetValues } = this;
    const sheet = this.sheets[kind] as Placed;
    const nodes: PatternNode[] = [];
    let strip = first;
    for (let place = whole; ; ) {
      nodes.push(this.stripOf(strip, cell(across, cell(strips, strip)), sheet));
      place = this.lastUseful(0, cell(acrossRests, (stripSize + strip) * across.length + place), sheetValues);
      if (place === 0) break;
      strip = cell(sheetChoices, place);
    }
    return this.joined(this.direction, sheet.across, sheet.along, nodes);
  }

  private stripOf(strip: number, width: number, sheet: Placed): PatternNode {
    const { along, alongRests, stripChoices } = this;
    const m = along.length;
    const nodes: PatternNode[] = [];
    for (let place = this.lastUseful(strip * m, sheet.j, this.stripValues); place > 0; ) {
      const length = cell(stripChoices, strip * m + place);
      if (length === NOTHING) break;
      nodes.push(this.pieceOf(length, cell(this.strips, strip), width));
      place = this.lastUseful(strip * m, cell(alongRests, length * m + place), this.stripValues);
    }
    return this.joined(this.crosswise, width, sheet.along, nodes);
  }

  private pieceOf(length: number, i: number, width: number): PatternNode {
    const { across, along, acrossRests, pieceChoices } = this;
    const n = across.length;
    const long = cell(along, cell(this.lengths, length));
    const nodes: PatternNode[] = [];
    for (let place = this.lastUseful(length * n, i, this.pieceValues); place > 0; ) {
      const choice = cell(pieceChoices, length * n + place);
      if (choice === NOTHING) break;
      const blank = this.blanks[choice] as LyingBlank;
      nodes.push(this.joined(this.crosswise, blank.across, long, [this.leaf(blank)]));
      place = this.lastUseful(length * n, cell(acrossRests, blank.size * n + place), this.pieceValues);
    }
    return this.joined(this.direction, width, long, nodes);
  }

  /** The first place with the same value: there the choice that made it is written. */
  private lastUseful(from: number, place: number, values: Float64Array): number {
    let at = place;
    while (at > 0 && realCell(values, from + at - 1) === realCell(values, from + at)) at--;
    return at;
  }

  private get crosswise(): typeof SIDE_BY_SIDE | typeof BEHIND {
    return this.direction === SIDE_BY_SIDE ? BEHIND : SIDE_BY_SIDE;
  }

  private leaf({ type, across, along }: LyingBlank): PatternNode {
    const [width, length] = this.direction === SIDE_BY_SIDE ? [across, along] : [along, across];
    return { kind: BLANK, width, length, type, children: [] };
  }

  private joined(direction: number, across: number, along: number, nodes: readonly PatternNode[]): PatternNode {
    const [width, length] = this.direction === SIDE_BY_SIDE ? [across, along] : [along, across];
    return nodes.length === 0 ? waste(width, length) : joined(direction, width, length, nodes);
  }
}

export interface StripPattern {
  readonly worth: number;
  readonly pattern: PatternNode;
}

/** A sheet with the last places inside it. */
interface Placed extends Sides {
  readonly i: number;
  readonly j: number;
}

/** A blank as it lies, with the first places where it fits and the row of its width in `acrossRests`. */
interface LyingBlank extends Placed {
  readonly type: number;
  readonly size: number;
}
