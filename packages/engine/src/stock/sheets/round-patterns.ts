import type { SeededRandom } from '../seeded-random.ts';
import { cell } from './cells.ts';
import { BLANK, NONE, Recording } from './cutting-forest.ts';
import { planOnce } from './first-plan.ts';
import type { PatternGeneration } from './generate-patterns.ts';
import { SheetImprover } from './improve-sheets.ts';
import type { FractionalPlan, PatternColumn, PatternEffort } from './pattern-columns.ts';
import type { PatternNode } from './pattern-nodes.ts';
import type { PreparedSheets } from './prepare-sheets.ts';
import { SheetState, type StateRecord } from './sheet-state.ts';

/**
 * A whole plan from a fractional one: its patterns as often as they are cut whole, and searches of their own for what is
 * then missing, which is few sheets however large the order is.
 */
export class RoundedPlan {
  private readonly fixed: StateRecord;
  private readonly missing: PreparedSheets;
  private readonly areas: Float64Array;
  private best: StateRecord;

  /**
   * `release` is how often, of 1, a pattern is cut once less than it might be: what is missing is then found room for in
   * more ways.
   */
  constructor(
    problem: PreparedSheets,
    areas: Float64Array,
    plan: FractionalPlan,
    random: SeededRandom,
    release: number,
  ) {
    const state = new SheetState(problem, areas);
    problem.types.forEach(({ count }, type) => {
      state.loose.add(type, count);
    });
    for (const { column, amount } of plan) {
      const whole = wholeOf(amount) - (random.fraction() < release ? 1 : 0);
      for (let left = whole; left > 0; left--) addPattern(state, column);
    }
    this.areas = areas;
    this.fixed = state.record();
    this.missing = {
      ...problem,
      types: problem.types.map((type, index) => ({ ...type, count: cell(state.loose.counts, index) })),
      kinds: problem.kinds.map((kind, index) => ({ ...kind, available: kind.available - cell(state.opened, index) })),
    };
    this.best = planOnce(this.missing, areas, ({ width, length }) => width * length, 'kept together');
  }

  /** All sheets, with the others as they are now. */
  record(): StateRecord {
    return together(this.fixed, this.best);
  }

  /**
   * Solves the program for what is missing, takes its patterns as often as they are whole, or else the one that is
   * nearest to being so, and goes on with what is then missing. Each time with at most so much effort for new patterns.
   */
  *dive(generation: PatternGeneration, effort: PatternEffort, random: SeededRandom): Generator<void, void> {
    const state = new SheetState(this.missing, this.areas);
    this.missing.types.forEach(({ count }, type) => {
      state.loose.add(type, count);
    });
    while (!state.loose.areNone()) {
      const solving = generation.solve(state.loose.counts.slice(), effort, () => false);
      let step = solving.next();
      while (step.done !== true) {
        yield;
        step = solving.next();
      }
      const before = state.forest.openCount;
      let nearest: PatternColumn | undefined;
      let most = 0;
      for (const { column, amount } of step.value) {
        for (let left = wholeOf(amount); left > 0; left--) addPattern(state, column);
        const near = amount * (0.8 + 0.2 * random.fraction());
        if (near <= most) continue;
        most = near;
        nearest = column;
      }
      if (state.forest.openCount === before && nearest !== undefined) addPattern(state, nearest);
      if (state.forest.openCount === before) return;
      yield;
    }
    const record = state.record();
    if (record.cost <= this.best.cost) this.best = record;
  }

  /** A search that moves blanks between the sheets that are not fixed; its plans go through `adopt`. */
  improver(step: number, seed: number): SheetImprover {
    return new SheetImprover(this.missing, this.areas, this.best, step, seed);
  }

  adopt(record: StateRecord): void {
    this.best = record;
  }
}

/** The program asks for a little more than is asked for, and rounds a little. */
function wholeOf(amount: number): number {
  return Math.floor(amount + 1e-3);
}

/** Cuts a pattern from one more sheet, without the blanks nobody asks for. */
function addPattern(state: SheetState, column: PatternColumn): void {
  const { kind, pattern } = column;
  const sheet = state.problem.kinds[kind];
  if (pattern === undefined || sheet === undefined || cell(state.opened, kind) >= sheet.available) return;
  const written = new Recording();
  written.put(kind);
  writePattern(pattern, written);
  const at = state.reopen(written);
  const { forest, loose } = state;
  const blanks = forest.roomForBlanks(new Int32Array(0));
  const count = forest.blanksIn(cell(forest.root, at), blanks, 0);
  for (let place = 0; place < count; place++) loose.add(cell(forest.type, cell(blanks, place)), -1);
  for (let place = 0; place < count; place++) {
    const node = cell(blanks, place);
    // A blank that was joined with the waste around it is gone: the others keep their nodes.
    if (cell(forest.kind, node) === BLANK && cell(loose.counts, cell(forest.type, node)) < 0) {
      forest.clear(node, (type) => loose.add(type, 1));
    }
  }
  if (cell(forest.root, at) !== NONE && forest.isEmptySheet(at)) state.close(at);
}

/** As `CuttingForest.write` writes nodes. */
function writePattern(node: PatternNode, into: Recording): void {
  into.put(node.kind);
  into.put(node.width);
  into.put(node.length);
  into.put(node.kind === BLANK ? node.type : node.children.length);
  for (const child of node.children) writePattern(child, into);
}

function together(one: StateRecord, other: StateRecord): StateRecord {
  const sheets = one.sheets.copy();
  for (let at = 0; at < other.sheets.end; at++) sheets.put(cell(other.sheets.cells, at));
  return {
    sheets: sheets.copy(),
    sheetCount: one.sheetCount + other.sheetCount,
    loose: other.loose,
    cost: one.cost + other.cost,
  };
}
