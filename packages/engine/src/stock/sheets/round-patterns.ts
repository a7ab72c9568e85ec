import type { SeededRandom } from '../seeded-random.ts';
import { cell } from './cells.ts';
import { BLANK, NONE, Recording } from './cutting-forest.ts';
import { planOnce } from './first-plan.ts';
import type { FractionalPlan, PatternColumn } from './generate-patterns.ts';
import { SheetImprover } from './improve-sheets.ts';
import type { PatternNode } from './pattern-nodes.ts';
import type { PreparedSheets } from './prepare-sheets.ts';
import { SheetState, type StateRecord } from './sheet-state.ts';

/**
 * A whole plan from a fractional one: its patterns as often as they are cut whole, and a search of its own for what is
 * then missing, which is few sheets however large the order is.
 */
export class RoundedPlan {
  private readonly fixed: StateRecord;
  private readonly rest: SheetImprover;

  /**
   * `release` is how often, of 1, a pattern is cut once less than it might be: what is missing is then found room for in
   * more ways.
   */
  constructor(
    problem: PreparedSheets,
    areas: Float64Array,
    plan: FractionalPlan,
    step: number,
    random: SeededRandom,
    release: number,
  ) {
    const state = new SheetState(problem, areas);
    problem.types.forEach(({ count }, type) => {
      state.loose.add(type, count);
    });
    for (const { column, amount } of plan) {
      const whole = Math.floor(amount + 1e-6) - (random.fraction() < release ? 1 : 0);
      for (let left = whole; left > 0; left--) addPattern(state, column);
    }
    this.fixed = state.record();
    const missing: PreparedSheets = {
      ...problem,
      types: problem.types.map((type, index) => ({ ...type, count: cell(state.loose.counts, index) })),
      kinds: problem.kinds.map((kind, index) => ({ ...kind, available: kind.available - cell(state.opened, index) })),
    };
    const first = planOnce(missing, areas, ({ width, length }) => width * length, 'kept together');
    this.rest = new SheetImprover(missing, areas, first, step, random.below(2 ** 30));
  }

  /** The fixed sheets and the others as they are now. */
  record(): StateRecord {
    return together(this.fixed, this.rest.best);
  }

  run(steps: number): boolean {
    return this.rest.run(steps);
  }
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
