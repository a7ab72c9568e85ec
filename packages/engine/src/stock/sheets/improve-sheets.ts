import { SeededRandom } from '../seeded-random.ts';
import { cell } from './cells.ts';
import { NONE } from './cutting-forest.ts';
import type { PreparedSheets } from './prepare-sheets.ts';
import { RuinAndRecreate } from './ruin-and-recreate.ts';
import { SheetState, type StateRecord } from './sheet-state.ts';

/** What of 1 the gathered waste of one whole sheet counts, against the area of loose blanks. */
const GATHERED_WORTH = 0.1;

/**
 * How long a worse plan is remembered as good enough. Which is best differs from problem to problem, so every new beginning
 * takes another one.
 */
const LATENESSES = [20, 200, 10, 60];

/** Begins anew from the best plan after so many steps, and so many for each plan remembered, that brought nothing. */
const PATIENCE = 3_000;
const PATIENCE_PER_LATENESS = 100;

/**
 * Looks for a cheaper plan than the best one: takes the emptiest sheets away and tries to find room for what was in them
 * elsewhere. As long as blanks are loose for want of sheets, it looks for more of them in the sheets there are.
 */
export class SheetImprover {
  best: StateRecord;
  /** The area of what is loose in the best plan. */
  private bestLoose: number;
  private readonly state: SheetState;
  private readonly search: RuinAndRecreate;
  private readonly step: number;
  private readonly areas: Float64Array;
  private list: Int32Array = new Int32Array(64);
  private sinceNews = 0;
  private beginnings = 0;
  private readonly random: SeededRandom;
  private least = Number.POSITIVE_INFINITY;

  constructor(problem: PreparedSheets, areas: Float64Array, best: StateRecord, step: number, seed: number) {
    this.areas = areas;
    this.random = new SeededRandom(seed);
    this.state = new SheetState(problem, areas);
    this.search = new RuinAndRecreate(this.state, this.random, GATHERED_WORTH);
    this.step = step;
    this.best = best;
    this.bestLoose = 0;
    this.adopt(best);
  }

  /** Goes on from a plan that another method found. */
  adopt(record: StateRecord): void {
    this.best = record;
    this.state.restore(record);
    this.bestLoose = this.state.loose.worth;
    this.aim();
  }

  /** Some steps of the search; answers whether there is a better plan. */
  run(steps: number): boolean {
    for (let left = steps; left > 0; left--) {
      const complete = this.search.step();
      if (complete || (this.bestLoose > 0 && this.state.loose.worth < this.bestLoose)) {
        this.best = this.state.record();
        this.bestLoose = complete ? 0 : this.state.loose.worth;
        this.aim();
        return true;
      }
      if (this.state.loose.worth < this.least) {
        this.least = this.state.loose.worth;
        this.sinceNews = 0;
      } else if (++this.sinceNews > PATIENCE + PATIENCE_PER_LATENESS * this.search.lateness) {
        this.state.restore(this.best);
        this.aim();
      }
    }
    return false;
  }

  /** Sets the budget below the best plan and takes sheets away until it is kept. */
  private aim(): void {
    this.sinceNews = 0;
    this.least = Number.POSITIVE_INFINITY;
    if (this.bestLoose > 0) this.search.budget = Number.POSITIVE_INFINITY;
    else {
      this.search.budget = this.best.cost - (this.step > 0 ? this.step : this.best.cost * 1e-9);
      while (this.state.cost > this.search.budget && this.dropOne());
    }
    this.search.begin(LATENESSES[this.beginnings++ % LATENESSES.length] as number);
  }

  /**
   * Takes away the emptiest sheet, or, the later it begins anew the rather, another one. Answers whether there was one that
   * costs anything.
   */
  private dropOne(): boolean {
    const { forest } = this.state;
    let emptiest = NONE;
    let leastFilled = Number.POSITIVE_INFINITY;
    for (let place = 0; place < forest.openCount; place++) {
      const sheet = cell(forest.open, place);
      const { cost } = this.state.problem.kinds[cell(forest.sheetKind, sheet)] as { cost: number };
      if (cost === 0) continue;
      const chance = Math.min(0.5, 0.1 * this.beginnings) * this.random.fraction();
      const filled = (this.areaIn(sheet) / cost) * (1 - chance);
      if (filled < leastFilled) {
        leastFilled = filled;
        emptiest = sheet;
      }
    }
    if (emptiest === NONE) return false;
    forest.clear(cell(forest.root, emptiest), (type) => this.state.loose.add(type, 1));
    this.state.close(emptiest);
    return true;
  }

  private areaIn(sheet: number): number {
    const { forest } = this.state;
    const root = cell(forest.root, sheet);
    this.list = forest.roomForBlanks(this.list);
    const count = forest.blanksIn(root, this.list, 0);
    let area = 0;
    for (let place = 0; place < count; place++) area += this.areas[cell(forest.type, cell(this.list, place))] as number;
    return area;
  }
}
