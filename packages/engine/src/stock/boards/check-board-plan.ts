import type { BoardPlan, BoardProblem, CutBoard } from './board-problem.ts';

/** What is wrong with a plan, in plain words; nothing if it can be sawn. Shares no code with the search. */
export function checkBoardPlan(problem: BoardProblem, plan: BoardPlan): readonly string[] {
  const wrong: string[] = [];
  const used = new Map<string, number>();
  const placed = new Map<string, number>();
  let cost = 0;
  for (const cut of plan.boards) {
    used.set(cut.board, (used.get(cut.board) ?? 0) + 1);
    cost += problem.boards.find(({ id }) => id === cut.board)?.cost ?? 0;
    wrong.push(...checkBoard(problem, cut));
    for (const { blank } of cut.bands.flatMap(({ blanks }) => blanks)) placed.set(blank, (placed.get(blank) ?? 0) + 1);
  }
  for (const { id, available } of problem.boards) {
    const count = used.get(id) ?? 0;
    if (available !== undefined && count > available) wrong.push(`${count} of ${id} are used, there are ${available}`);
  }
  for (const { blank, count } of plan.unplaced) placed.set(blank, (placed.get(blank) ?? 0) + count);
  for (const { id, count } of problem.blanks) {
    if ((placed.get(id) ?? 0) !== count) wrong.push(`${id} is there ${placed.get(id) ?? 0} times, not ${count}`);
  }
  if (cost !== plan.cost) wrong.push(`the plan says it costs ${plan.cost}, it costs ${cost}`);
  return wrong;
}

function checkBoard(problem: BoardProblem, { board, order, bands }: CutBoard): readonly string[] {
  const kind = problem.boards.find(({ id }) => id === board);
  if (kind === undefined) return [`there is no board ${board}`];
  const wrong: string[] = [];
  if (bands.every(({ blanks }) => blanks.length === 0)) wrong.push(`${board} is used for nothing`);
  const { ripKerf, crosscutKerf, endTrim, edgeTrim } = problem;
  const byLength = order === 'crosscut first';
  const [firstKerf, secondKerf] = byLength ? [crosscutKerf, ripKerf] : [ripKerf, crosscutKerf];
  let free = byLength ? endTrim : edgeTrim;
  const end = byLength ? kind.length - endTrim : kind.width - edgeTrim;
  for (const { at, size, blanks } of bands) {
    if (at < free) wrong.push(`a band of ${board} begins ${free - at} too soon`);
    if (at + size > end) wrong.push(`a band of ${board} ends ${at + size - end} too late`);
    free = at + size + firstKerf;
    let freeInside = byLength ? edgeTrim : endTrim;
    const endInside = byLength ? kind.width - edgeTrim : kind.length - endTrim;
    for (const { blank, at: place } of blanks) {
      const sizes = problem.blanks.find(({ id }) => id === blank);
      if (sizes === undefined) {
        wrong.push(`there is no blank ${blank}`);
        continue;
      }
      const [across, along] = byLength ? [sizes.length, sizes.width] : [sizes.width, sizes.length];
      if (across > size) wrong.push(`${blank} is ${across - size} larger than its band`);
      if (place < freeInside) wrong.push(`${blank} begins ${freeInside - place} too soon`);
      if (place + along > endInside) wrong.push(`${blank} ends ${place + along - endInside} too late`);
      freeInside = place + along + secondKerf;
      const [from, left] = byLength ? [at, place] : [place, at];
      for (const defect of kind.defects ?? []) {
        if (defect.to <= defect.from || defect.right <= defect.left) continue;
        const meets =
          defect.from < from + sizes.length &&
          from < defect.to &&
          defect.left < left + sizes.width &&
          left < defect.right;
        if (meets) wrong.push(`${blank} has a defect of ${board} in it`);
      }
    }
  }
  return wrong;
}
