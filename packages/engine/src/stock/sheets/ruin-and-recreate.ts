import type { SeededRandom } from '../seeded-random.ts';
import { cell, grown, realCell } from './cells.ts';
import { NONE, Recording } from './cutting-forest.ts';
import type { PreparedKind, PreparedSheets } from './prepare-sheets.ts';
import type { Fit, PlaceOptions, SheetState } from './sheet-state.ts';

const FITS: readonly Fit[] = ['shortest side', 'least area', 'longest side', 'kept together'];

/**
 * Takes blanks out of a few sheets and puts them back another way, over and over, within a budget that is too small for
 * the sheets it began with: until everything has found its place. After T. Gardeyn and T. Wauters, A goal-driven ruin and
 * recreate heuristic for the 2D variable-sized bin packing problem with guillotine constraints, European Journal of
 * Operational Research 301(2), 2022; changes are kept by late acceptance (E. K. Burke and Y. Bykov, EJOR 258(1), 2017).
 */
export class RuinAndRecreate implements PlaceOptions {
  readonly random: SeededRandom;
  readonly state: SheetState;
  readonly window = 4096;
  blink = 0.02;
  contrary = 0.15;
  budget = Number.POSITIVE_INFINITY;
  /** What waste that lies together is worth, as a share of a sheet's area. */
  gatheredWorth: number;

  private readonly problem: PreparedSheets;
  private readonly areas: Float64Array;
  private readonly unit: number;
  private readonly undo = new Recording();
  private readonly touchedSheets: number[] = [];
  private readonly openedSheets: number[] = [];
  private stamps: Int32Array = new Int32Array(64);
  private stamp = 0;
  private readonly looseBefore: Int32Array;
  private blanks: Int32Array = new Int32Array(64);
  private readonly order: number[] = [];
  private readonly keys: Float64Array;
  private late: Float64Array = new Float64Array(1);
  private steps = 0;
  private value = 0;

  constructor(state: SheetState, random: SeededRandom, gatheredWorth: number) {
    this.state = state;
    this.problem = state.problem;
    this.random = random;
    this.gatheredWorth = gatheredWorth;
    const { types, kinds } = this.problem;
    this.areas = Float64Array.from(types, ({ width, length }) => width * length);
    this.unit = kinds.reduce((largest, { width, length }) => Math.max(largest, width * length), 1);
    this.looseBefore = new Int32Array(types.length);
    this.keys = new Float64Array(types.length);
  }

  get lateness(): number {
    return this.late.length;
  }

  /**
   * To be called when the state or the budget was changed from outside. A change is kept if it is no worse than the plan so
   * many steps ago.
   */
  begin(lateness: number): void {
    this.value = this.evaluate();
    this.late = new Float64Array(lateness).fill(this.value);
    this.steps = 0;
  }

  private evaluate(): number {
    return this.state.loose.worth / this.unit - this.gatheredWorth * this.state.forest.gathered;
  }

  /** One ruin and one recreation. Answers whether nothing is loose now. */
  step(): boolean {
    const { state } = this;
    this.stamp++;
    this.undo.clear();
    this.touchedSheets.length = 0;
    this.openedSheets.length = 0;
    this.looseBefore.set(state.loose.counts);
    const worthBefore = state.loose.worth;
    this.ruin();
    this.recreate();
    const value = this.evaluate();
    const place = this.steps++ % this.late.length;
    const kept = value <= this.value || value <= realCell(this.late, place);
    if (kept) this.value = value;
    else this.takeBack(worthBefore);
    this.late[place] = this.value;
    return kept && state.loose.areNone();
  }

  private takeBack(worthBefore: number): void {
    const { state } = this;
    for (const sheet of this.openedSheets) if (cell(state.forest.root, sheet) !== NONE) state.close(sheet);
    for (const sheet of this.touchedSheets) if (cell(state.forest.root, sheet) !== NONE) state.close(sheet);
    this.undo.at = 0;
    for (let left = this.touchedSheets.length; left > 0; left--) state.reopen(this.undo);
    state.loose.counts.set(this.looseBefore);
    state.loose.worth = worthBefore;
  }

  touched(sheet: number): void {
    if (sheet >= this.stamps.length) this.stamps = grown(this.stamps, sheet + 1);
    if (this.stamps[sheet] === this.stamp) return;
    this.stamps[sheet] = this.stamp;
    this.touchedSheets.push(sheet);
    this.state.forest.write(sheet, this.undo);
  }

  opened(sheet: number): void {
    if (sheet >= this.stamps.length) this.stamps = grown(this.stamps, sheet + 1);
    // A sheet opened in this step needs no record; one that was closed and opened again in the same place has its own.
    if (this.stamps[sheet] === this.stamp) {
      if (!this.openedSheets.includes(sheet) && !this.touchedSheets.includes(sheet)) this.openedSheets.push(sheet);
      return;
    }
    this.stamps[sheet] = this.stamp;
    this.openedSheets.push(sheet);
  }

  private readonly removed = (type: number): void => {
    this.state.loose.add(type, 1);
  };

  private ruin(): void {
    const { state, random } = this;
    const { forest } = state;
    const sheets = Math.min(forest.openCount, 1 + random.below(2));
    for (let left = sheets; left > 0 && forest.openCount > 0; left--) {
      const sheet = cell(forest.open, random.below(forest.openCount));
      this.touched(sheet);
      const root = cell(forest.root, sheet);
      if (random.fraction() < 0.15) {
        forest.clear(root, this.removed);
      } else {
        const goal = 1 + random.below(4);
        for (let turn = 0; turn < goal; turn++) {
          const top = cell(forest.root, sheet);
          this.blanks = forest.roomForBlanks(this.blanks);
          const count = forest.blanksIn(top, this.blanks, 0);
          if (count === 0) break;
          let node = cell(this.blanks, random.below(count));
          while (random.fraction() < 0.3 && cell(forest.parent, node) !== NONE) node = cell(forest.parent, node);
          forest.clear(node, this.removed);
        }
      }
      if (forest.isEmptySheet(sheet)) state.close(sheet);
    }
  }

  private recreate(): void {
    const { random, order, keys } = this;
    const { counts } = this.state.loose;
    order.length = 0;
    const mode = random.below(5);
    const noise = random.fraction() * 0.5;
    for (let type = 0; type < counts.length; type++) {
      if (counts[type] === 0) continue;
      order.push(type);
      const { width, length } = this.problem.types[type] as { width: number; length: number };
      const key =
        mode <= 1 ? realCell(this.areas, type) : mode === 2 ? Math.max(width, length) : mode === 3 ? width : length;
      keys[type] = key * (1 - noise * random.fraction());
    }
    order.sort((a, b) => realCell(keys, b) - realCell(keys, a));
    const fit = FITS[random.below(FITS.length)] as Fit;
    for (const type of order) this.state.placeAll(type, fit, this);
  }

  /** Any kind that can hold the blank and that the budget allows, a cheap one for its area more often. */
  chooseKind(type: number, budget: number): number {
    const { kinds } = this.problem;
    if (kinds.length === 1) return this.state.canOpen(0, budget) && this.state.holds(0, type) ? 0 : NONE;
    let best = NONE;
    let bestKey = Number.POSITIVE_INFINITY;
    for (let kind = 0; kind < kinds.length; kind++) {
      if (!this.state.canOpen(kind, budget) || !this.state.holds(kind, type)) continue;
      const { cost, width, length } = kinds[kind] as PreparedKind;
      const key =
        (cost / (width * length)) * (0.7 + 0.6 * this.random.fraction()) - (cost === 0 ? this.random.fraction() : 0);
      if (key < bestKey) {
        bestKey = key;
        best = kind;
      }
    }
    return best;
  }
}
