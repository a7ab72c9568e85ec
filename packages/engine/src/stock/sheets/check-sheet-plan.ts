import type { CutPiece, CuttingNode, SheetPlan } from './sheet-plan.ts';
import type { SheetBlank, SheetKind, SheetProblem } from './sheet-problem.ts';

/**
 * What is wrong with a plan, in words; nothing if it can be cut as it is written. Knows nothing of how plans are found:
 * it follows the cuts from the sheet to the blanks and counts.
 */
export function checkSheetPlan(problem: SheetProblem, plan: SheetPlan): readonly string[] {
  const faults: string[] = [];
  const sheets = new Map(problem.sheets.map((sheet) => [sheet.id, sheet]));
  const blanks = new Map(problem.blanks.map((blank) => [blank.id, blank]));
  const placed = new Map<string, number>();
  const used = new Map<string, number>();
  let cost = 0;
  plan.sheets.forEach(({ sheet: id, root }, place) => {
    const sheet = sheets.get(id);
    if (sheet === undefined) {
      faults.push(`sheet ${place} is of an unknown kind ${id}`);
      return;
    }
    used.set(id, (used.get(id) ?? 0) + 1);
    cost += sheet.cost;
    const says = (fault: string) => faults.push(`sheet ${place} (${id}): ${fault}`);
    checkRoot(sheet, root, says);
    checkNode(problem, blanks, root, 0, placed, says);
  });
  for (const [id, count] of used) {
    const available = sheets.get(id)?.available ?? Number.POSITIVE_INFINITY;
    if (count > available) faults.push(`${count} sheets of ${id}, but there are ${available}`);
  }
  if (Math.abs(cost - plan.cost) > 1e-9 * Math.max(1, cost)) faults.push(`costs ${cost}, not ${plan.cost}`);
  const missing = new Map<string, number>();
  for (const { blank, count } of plan.unplaced) missing.set(blank, (missing.get(blank) ?? 0) + count);
  const asked = new Map<string, number>();
  for (const { id, count } of problem.blanks) {
    if (Number.isInteger(count) && count > 0) asked.set(id, (asked.get(id) ?? 0) + count);
  }
  for (const [id, count] of asked) {
    const there = placed.get(id) ?? 0;
    const left = missing.get(id) ?? 0;
    if (there + left !== count) {
      faults.push(`blank ${id} is asked ${count} times, placed ${there} times, unplaced ${left} times`);
    }
  }
  return faults;
}

function checkRoot(sheet: SheetKind, root: CuttingNode, says: (fault: string) => void): void {
  const { left, right, near, far } = sheet.trim ?? { left: 0, right: 0, near: 0, far: 0 };
  const inside =
    root.x === left &&
    root.y === near &&
    root.width === sheet.width - left - right &&
    root.length === sheet.length - near - far;
  if (!inside) says('its first piece is not the sheet inside its trim');
}

function checkNode(
  problem: SheetProblem,
  blanks: ReadonlyMap<string, SheetBlank>,
  node: CuttingNode,
  stages: number,
  placed: Map<string, number>,
  says: (fault: string) => void,
): void {
  if (!(node.width > 0 && node.length > 0)) says(`a piece of ${node.width} × ${node.length}`);
  switch (node.kind) {
    case 'offcut':
      return;
    case 'blank':
      placed.set(node.blank, (placed.get(node.blank) ?? 0) + 1);
      checkBlank(problem, blanks.get(node.blank), node, says);
      return;
    case 'cut':
      checkCut(problem, node, stages + 1, says);
      for (const piece of node.pieces) checkNode(problem, blanks, piece, stages + 1, placed, says);
      return;
    default: {
      const never: never = node;
      says(`a node that is nothing: ${never}`);
    }
  }
}

function checkBlank(
  problem: SheetProblem,
  blank: SheetBlank | undefined,
  node: CuttingNode & { kind: 'blank' },
  says: (fault: string) => void,
): void {
  if (blank === undefined) {
    says(`an unknown blank ${node.blank}`);
    return;
  }
  const [width, length] = node.turned ? [blank.length, blank.width] : [blank.width, blank.length];
  if (node.width !== width || node.length !== length) {
    says(`blank ${blank.id} is ${node.width} × ${node.length}, not ${width} × ${length}`);
  }
  if (node.turned && !blank.mayTurn) says(`blank ${blank.id} may not turn`);
  if (Math.min(node.width, node.length) < (problem.limits?.narrowestStrip ?? 0)) {
    says(`blank ${blank.id} is narrower than the narrowest strip`);
  }
}

/** The pieces follow each other with a kerf between, and each goes from edge to edge. */
function checkCut(problem: SheetProblem, cut: CutPiece, stages: number, says: (fault: string) => void): void {
  const { kerf, limits } = problem;
  const rip = cut.direction === 'rip';
  const [start, size] = rip ? [cut.x, cut.width] : [cut.y, cut.length];
  const [acrossStart, across] = rip ? [cut.y, cut.length] : [cut.x, cut.width];
  if (cut.pieces.length === 0) says('a cut into nothing');
  const ordered = [...cut.pieces].sort((a, b) => (rip ? a.x - b.x : a.y - b.y));
  let at = start;
  for (const piece of ordered) {
    const [pieceStart, pieceSize] = rip ? [piece.x, piece.width] : [piece.y, piece.length];
    const [pieceAcrossStart, pieceAcross] = rip ? [piece.y, piece.length] : [piece.x, piece.width];
    if (pieceAcrossStart !== acrossStart || pieceAcross !== across)
      says(`a ${cut.direction} that does not go from edge to edge`);
    const gap = pieceStart - at;
    const wanted = at === start ? 0 : kerf;
    if (gap !== wanted) says(`${gap} between two pieces, not a kerf of ${wanted}`);
    at = pieceStart + pieceSize;
  }
  const rest = start + size - at;
  if (rest < 0 || rest > kerf) says(`pieces leave ${rest} of their piece without a name`);
  if (stages > (limits?.stages ?? Number.POSITIVE_INFINITY)) says(`more than ${limits?.stages} stages`);
  const longest = (rip ? limits?.longestRip : limits?.longestCrosscut) ?? Number.POSITIVE_INFINITY;
  if (across > longest) says(`a ${cut.direction} of ${across}, longer than ${longest}`);
}
