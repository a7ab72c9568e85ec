import { costStep } from '../sheets/cost-bound.ts';
import { BLANK, type Recording, SIDE_BY_SIDE, WASTE } from '../sheets/cutting-forest.ts';
import { ORDERS, planOnce } from '../sheets/first-plan.ts';
import { SheetImprover } from '../sheets/improve-sheets.ts';
import type { PreparedSheets } from '../sheets/prepare-sheets.ts';
import type { StateRecord } from '../sheets/sheet-state.ts';
import type { Band, BoardPlan, BoardProblem, CutBoard } from './board-problem.ts';
import { boardsAsSheets } from './boards-as-sheets.ts';

const STEPS_OF_A_TURN = 512;
/** Beyond so many blanks one turn would take too long. */
const MOST_BLANKS = 600;

/**
 * Plans of boards from the search that moves blanks from sheet to sheet, where bands and a last trimming cut are all the
 * stages there are. Uses boards without defects only.
 */
export class MovedBlanks {
  private readonly problem: BoardProblem;
  private readonly prepared: PreparedSheets;
  private readonly improver: SheetImprover;

  /** Undefined if boards without defects cannot hold every blank, or there are too many. */
  static for(problem: BoardProblem, seed: number): MovedBlanks | undefined {
    const prepared = boardsAsSheets(problem, 'boards with defects left out');
    const asked = problem.blanks.filter(({ count }) => count > 0);
    const count = asked.reduce((sum, blank) => sum + blank.count, 0);
    if (prepared.types.length === 0 || prepared.types.length < asked.length || count > MOST_BLANKS) return undefined;
    return new MovedBlanks(problem, prepared, seed);
  }

  private constructor(problem: BoardProblem, prepared: PreparedSheets, seed: number) {
    this.problem = problem;
    this.prepared = prepared;
    const areas = Float64Array.from(prepared.types, ({ width, length }) => width * length);
    const first = planOnce(prepared, areas, ORDERS[0] as (typeof ORDERS)[0], 'kept together');
    this.improver = new SheetImprover(prepared, areas, first, costStep(prepared.kinds), seed);
  }

  /** Some steps. Answers the plan if it is cheaper than `than` and leaves nothing out. */
  cheaper(than: number): BoardPlan | undefined {
    this.improver.run(STEPS_OF_A_TURN);
    const { best } = this.improver;
    return best.cost < than && best.loose.every((count) => count === 0) ? this.planOf(best) : undefined;
  }

  private planOf(record: StateRecord): BoardPlan {
    const from = record.sheets;
    from.at = 0;
    const boards: CutBoard[] = [];
    for (let left = record.sheetCount; left > 0; left--) {
      const kind = this.prepared.kinds[from.take()];
      const { order, bands } = this.bandsOf(nodeFrom(from));
      if (kind !== undefined && bands.length > 0) boards.push({ board: kind.sheet.id, order, bands });
    }
    return { boards, unplaced: [], cost: record.cost };
  }

  private bandsOf(root: Node): Pick<CutBoard, 'order' | 'bands'> {
    const { ripKerf, crosscutKerf, endTrim, edgeTrim } = this.problem;
    const isRip = root.kind === SIDE_BY_SIDE;
    const [bandKerf, bandsFrom, insideFrom] = isRip ? [ripKerf, edgeTrim, endTrim] : [crosscutKerf, endTrim, edgeTrim];
    const bands: Band[] = [];
    let start = 0;
    for (const child of root.kind === BLANK ? [root] : root.children) {
      const blanks: Band['blanks'][number][] = [];
      let place = 0;
      let size = 0;
      for (const { type, width, length } of blanksIn(child)) {
        const id = this.prepared.types[type]?.blanks[0]?.id;
        if (id === undefined) continue;
        blanks.push({ blank: id, at: place + insideFrom });
        place += isRip ? length : width;
        size = Math.max(size, isRip ? width : length);
      }
      if (blanks.length === 0) continue;
      bands.push({ at: start + bandsFrom, size: size - bandKerf, blanks });
      start += size;
    }
    return { order: isRip ? 'rip first' : 'crosscut first', bands };
  }
}

interface Node {
  readonly kind: number;
  readonly width: number;
  readonly length: number;
  readonly type: number;
  readonly children: readonly Node[];
}

function nodeFrom(from: Recording): Node {
  const kind = from.take();
  const width = from.take();
  const length = from.take();
  const last = from.take();
  const count = kind === BLANK || kind === WASTE ? 0 : last;
  const children = Array.from({ length: count }, () => nodeFrom(from));
  return { kind, width, length, type: last, children };
}

function blanksIn(node: Node): readonly Node[] {
  return node.kind === BLANK ? [node] : node.children.flatMap(blanksIn);
}
