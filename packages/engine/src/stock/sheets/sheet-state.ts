import type { SeededRandom } from '../seeded-random.ts';
import { cell } from './cells.ts';
import { BEHIND, CuttingForest, NONE, Recording, SIDE_BY_SIDE } from './cutting-forest.ts';
import { LooseBlanks } from './loose-blanks.ts';
import { cutsReach, type PreparedKind, type PreparedSheets } from './prepare-sheets.ts';

/** How waste is chosen for a blank. */
export type Fit = 'shortest side' | 'least area' | 'longest side' | 'kept together';

const NO_PLACE = -1;

/** Sheets with blanks in them, the blanks that are in none, and what the sheets cost: what every method changes. */
export class SheetState {
  readonly forest: CuttingForest;
  readonly loose: LooseBlanks;
  /** How many sheets of each kind are open. */
  readonly opened: Int32Array;
  cost = 0;
  readonly problem: PreparedSheets;
  private readonly widths: Int32Array;
  private readonly lengths: Int32Array;
  private readonly turns: Int32Array;
  private readonly limited: boolean;
  /** What `choosePlace` found. */
  private placeTurned = false;

  constructor(problem: PreparedSheets, worths: Float64Array) {
    const { types, kinds, limits } = problem;
    const widths = types.map(({ width, length, mayTurn }) => (mayTurn ? Math.min(width, length) : width));
    const lengths = types.map(({ width, length, mayTurn }) => (mayTurn ? Math.min(width, length) : length));
    const unit = kinds.reduce((largest, { width, length }) => Math.max(largest, width * length), 1);
    this.problem = problem;
    this.forest = new CuttingForest(least(widths), least(lengths), unit);
    this.loose = new LooseBlanks(types, worths);
    this.opened = new Int32Array(kinds.length);
    this.widths = Int32Array.from(types, ({ width }) => width);
    this.lengths = Int32Array.from(types, ({ length }) => length);
    this.turns = Int32Array.from(types, ({ mayTurn }) => (mayTurn ? 1 : 0));
    this.limited =
      Number.isFinite(limits.longestRip) || Number.isFinite(limits.longestCrosscut) || Number.isFinite(limits.stages);
  }

  open(kind: number): number {
    const { width, length, cost } = this.problem.kinds[kind] as PreparedKind;
    this.opened[kind] = cell(this.opened, kind) + 1;
    this.cost += cost;
    return this.forest.openSheet(kind, width, length);
  }

  close(sheet: number): void {
    const kind = cell(this.forest.sheetKind, sheet);
    this.opened[kind] = cell(this.opened, kind) - 1;
    this.cost -= (this.problem.kinds[kind] as PreparedKind).cost;
    this.forest.closeSheet(sheet);
  }

  /** Opens a sheet as `CuttingForest.write` wrote it. */
  reopen(from: Recording): number {
    const sheet = this.forest.read(from);
    const kind = cell(this.forest.sheetKind, sheet);
    this.opened[kind] = cell(this.opened, kind) + 1;
    this.cost += (this.problem.kinds[kind] as PreparedKind).cost;
    return sheet;
  }

  canOpen(kind: number, budget: number): boolean {
    const { cost, available } = this.problem.kinds[kind] as PreparedKind;
    return cell(this.opened, kind) < available && this.cost + cost <= budget;
  }

  /** Whether a blank of this type can be cut from an empty sheet of this kind. */
  holds(kind: number, type: number): boolean {
    const sheet = this.problem.kinds[kind] as PreparedKind;
    const width = cell(this.widths, type);
    const length = cell(this.lengths, type);
    if (!this.limited) {
      return (
        (width <= sheet.width && length <= sheet.length) ||
        (cell(this.turns, type) === 1 && length <= sheet.width && width <= sheet.length)
      );
    }
    return (
      cutsReach(sheet, width, length, this.problem.limits) ||
      (cell(this.turns, type) === 1 && cutsReach(sheet, length, width, this.problem.limits))
    );
  }

  /**
   * The waste where a blank fits best, or NONE. Looks at the last `window` pieces of waste; passes one over now and then
   * (`blink` of 1) so that the same blanks do not always meet the same places.
   */
  choosePlace(type: number, fit: Fit, window: number, blink: number, random: SeededRandom | undefined): number {
    const { forest } = this;
    const width = cell(this.widths, type);
    const length = cell(this.lengths, type);
    const turns = cell(this.turns, type) === 1;
    let best = NONE;
    let bestScore = Number.POSITIVE_INFINITY;
    let turned = false;
    const from = Math.max(0, forest.wasteCount - window);
    for (let place = forest.wasteCount - 1; place >= from; place--) {
      const node = cell(forest.waste, place);
      const w = cell(forest.width, node);
      const l = cell(forest.length, node);
      if (width <= w && length <= l) {
        const score = misfit(fit, w, l, width, length);
        if (
          score < bestScore &&
          (random === undefined || random.fraction() >= blink) &&
          (!this.limited || this.isWithinLimits(node, width, length))
        ) {
          bestScore = score;
          best = node;
          turned = false;
        }
      }
      if (turns && length <= w && width <= l) {
        const score = misfit(fit, w, l, length, width);
        if (
          score < bestScore &&
          (random === undefined || random.fraction() >= blink) &&
          (!this.limited || this.isWithinLimits(node, length, width))
        ) {
          bestScore = score;
          best = node;
          turned = true;
        }
      }
    }
    this.placeTurned = turned;
    return best;
  }

  /** Puts a blank where `choosePlace` said. `contrary` turns the usual order of the two cuts round. */
  placeAt(waste: number, type: number, contrary: boolean): void {
    const width = cell(this.placeTurned ? this.lengths : this.widths, type);
    const length = cell(this.placeTurned ? this.widths : this.lengths, type);
    this.insert(waste, type, width, length, contrary);
  }

  private insert(waste: number, type: number, width: number, length: number, contrary: boolean): void {
    const restWidth = cell(this.forest.width, waste) - width;
    const restLength = cell(this.forest.length, waste) - length;
    // The larger of the two pieces of waste stays as large as possible.
    let ripFirst = restWidth * cell(this.forest.length, waste) > restLength * cell(this.forest.width, waste);
    if (contrary) ripFirst = !ripFirst;
    if (this.limited && !this.mayCut(waste, width, length, ripFirst)) ripFirst = !ripFirst;
    this.forest.insert(waste, type, width, length, ripFirst);
    this.loose.add(type, -1);
  }

  private isWithinLimits(waste: number, width: number, length: number): boolean {
    const { lastStageTrims, stages } = this.problem.limits;
    if (lastStageTrims && this.forest.depth(waste) >= stages) return false;
    return this.mayCut(waste, width, length, true) || this.mayCut(waste, width, length, false);
  }

  private mayCut(waste: number, width: number, length: number, ripFirst: boolean): boolean {
    const { forest } = this;
    const { limits } = this.problem;
    const wholeWidth = cell(forest.width, waste);
    const wholeLength = cell(forest.length, waste);
    const rips = width < wholeWidth;
    const crosscuts = length < wholeLength;
    if (rips && (ripFirst || !crosscuts ? wholeLength : length) > limits.longestRip) return false;
    if (crosscuts && (ripFirst && rips ? width : wholeWidth) > limits.longestCrosscut) return false;
    if (limits.stages === Number.POSITIVE_INFINITY) return true;
    const above = cell(forest.parent, waste);
    const direction = above === NONE ? NONE : cell(forest.kind, above);
    const firstIsRip = rips && (ripFirst || !crosscuts);
    const cuts = (rips ? 1 : 0) + (crosscuts ? 1 : 0);
    const joins = cuts > 0 && direction === (firstIsRip ? SIDE_BY_SIDE : BEHIND) ? 1 : 0;
    return forest.depth(waste) + cuts - joins <= limits.stages;
  }

  /** Puts loose blanks of a type into sheets, new ones if the budget allows, until none is left or fits. */
  placeAll(type: number, fit: Fit, options: PlaceOptions): void {
    const { random, blink, contrary, window, budget } = options;
    while (cell(this.loose.counts, type) > 0) {
      let place = this.choosePlace(type, fit, window, blink, random);
      if (place === NONE) {
        const kind = options.chooseKind(type, budget);
        if (kind === NO_PLACE) return;
        const sheet = this.open(kind);
        place = this.choosePlaceIn(cell(this.forest.root, sheet), type);
        options.opened?.(sheet);
      } else options.touched?.(cell(this.forest.sheet, place));
      this.placeAt(place, type, contrary > 0 && random !== undefined && random.fraction() < contrary);
    }
  }

  private choosePlaceIn(waste: number, type: number): number {
    const { forest, limited } = this;
    const width = cell(this.widths, type);
    const length = cell(this.lengths, type);
    const w = cell(forest.width, waste);
    const l = cell(forest.length, waste);
    const straight = width <= w && length <= l && (!limited || this.isWithinLimits(waste, width, length));
    const turned =
      cell(this.turns, type) === 1 &&
      length <= w &&
      width <= l &&
      (!limited || this.isWithinLimits(waste, length, width));
    this.placeTurned = turned && (!straight || Math.min(w - length, l - width) < Math.min(w - width, l - length));
    return waste;
  }

  /** All sheets and what is loose. */
  record(): StateRecord {
    const sheets = new Recording();
    for (let place = 0; place < this.forest.openCount; place++) {
      this.forest.write(cell(this.forest.open, place), sheets);
    }
    return {
      sheets: sheets.copy(),
      sheetCount: this.forest.openCount,
      loose: this.loose.counts.slice(),
      cost: this.cost,
    };
  }

  restore(record: StateRecord): void {
    while (this.forest.openCount > 0) this.close(cell(this.forest.open, 0));
    const from = record.sheets;
    from.at = 0;
    for (let left = record.sheetCount; left > 0; left--) this.reopen(from);
    this.loose.set(record.loose);
  }
}

export interface PlaceOptions {
  readonly random: SeededRandom | undefined;
  readonly blink: number;
  /** How often the order of two cuts is turned round, of 1. */
  readonly contrary: number;
  readonly window: number;
  readonly budget: number;
  /** The kind of sheet to open for a blank, or -1. */
  chooseKind(type: number, budget: number): number;
  /** Called before a sheet changes. */
  touched?(sheet: number): void;
  opened?(sheet: number): void;
}

export interface StateRecord {
  readonly sheets: Recording;
  readonly sheetCount: number;
  readonly loose: Int32Array;
  readonly cost: number;
}

/** How badly a blank fits into waste; less is better. */
function misfit(fit: Fit, wasteWidth: number, wasteLength: number, width: number, length: number): number {
  const w = wasteWidth - width;
  const l = wasteLength - length;
  switch (fit) {
    case 'shortest side':
      return Math.min(w, l);
    case 'longest side':
      return Math.max(w, l);
    case 'least area':
      return wasteWidth * wasteLength - width * length;
    case 'kept together': {
      // What the square of the waste's area loses: the place that breaks up the least.
      const whole = wasteWidth * wasteLength;
      const ripFirst = w * wasteLength > l * wasteWidth;
      const one = ripFirst ? w * wasteLength : l * wasteWidth;
      const other = ripFirst ? l * width : w * length;
      return whole * whole - one * one - other * other;
    }
    default: {
      const never: never = fit;
      return never;
    }
  }
}

function least(sizes: readonly number[]): number {
  return sizes.reduce((smallest, size) => Math.min(smallest, size), Number.POSITIVE_INFINITY);
}
