import { BLANK, type Recording, SIDE_BY_SIDE, WASTE } from './cutting-forest.ts';
import type { PreparedKind, PreparedSheets, PreparedType } from './prepare-sheets.ts';
import type { CutSheet, CuttingNode, SheetPlan, UnplacedBlank } from './sheet-plan.ts';
import type { StateRecord } from './sheet-state.ts';

/** The plan in the sizes of the problem: without the kerf that every piece was larger by, and inside the trim. */
export function planFromRecord(problem: PreparedSheets, record: StateRecord): SheetPlan {
  const names = problem.types.map((type) => namesInOrder(type));
  const from = record.sheets;
  from.at = 0;
  const sheets: CutSheet[] = [];
  for (let left = record.sheetCount; left > 0; left--) {
    const { sheet } = problem.kinds[from.take()] as PreparedKind;
    const root = nodeFrom(problem, from, names, sheet.trim?.left ?? 0, sheet.trim?.near ?? 0);
    if (root !== undefined) sheets.push({ sheet: sheet.id, root });
  }
  const unplaced: UnplacedBlank[] = [...problem.unplaced];
  for (const left of names) {
    const counts = new Map<string, number>();
    for (const { id } of left) counts.set(id, (counts.get(id) ?? 0) + 1);
    for (const [blank, count] of counts) unplaced.push({ blank, count, why: 'no sheet is left' });
  }
  return { sheets, cost: record.cost, unplaced, refused: problem.refused };
}

interface NamedBlank {
  readonly id: string;
  readonly width: number;
  readonly length: number;
}

/** The blanks of a type, the one to place next at the end. */
function namesInOrder(type: PreparedType): NamedBlank[] {
  return type.blanks.flatMap((blank) => Array.from({ length: blank.count }, () => blank)).reverse();
}

/** Reads one node and all below it; undefined if nothing is left of it beside the kerf. */
function nodeFrom(
  problem: PreparedSheets,
  from: Recording,
  names: readonly NamedBlank[][],
  x: number,
  y: number,
): CuttingNode | undefined {
  const kind = from.take();
  const width = from.take() - problem.kerf;
  const length = from.take() - problem.kerf;
  const last = from.take();
  if (kind === WASTE) return width > 0 && length > 0 ? { kind: 'offcut', x, y, width, length } : undefined;
  if (kind === BLANK) {
    const blank = names[last]?.pop();
    if (blank === undefined) throw new Error('more blanks lie in the sheets than were asked for');
    return { kind: 'blank', blank: blank.id, turned: blank.width !== width, x, y, width, length };
  }
  const rip = kind === SIDE_BY_SIDE;
  const pieces: CuttingNode[] = [];
  // What is left over goes to the end, wherever it came about: there it may be less than a kerf.
  let offcut: CuttingNode | undefined;
  let at = rip ? x : y;
  const end = at + (rip ? width : length) + problem.kerf;
  for (let left = last; left > 0; left--) {
    const size = from.cells[from.at + (rip ? 1 : 2)] as number;
    const isWaste = from.cells[from.at] === WASTE;
    const start = isWaste ? end - size : at;
    const piece = nodeFrom(problem, from, names, rip ? start : x, rip ? y : start);
    if (isWaste) offcut = piece;
    else {
      at += size;
      if (piece !== undefined) pieces.push(piece);
    }
  }
  if (offcut !== undefined) pieces.push(offcut);
  return { kind: 'cut', direction: rip ? 'rip' : 'crosscut', x, y, width, length, pieces };
}
