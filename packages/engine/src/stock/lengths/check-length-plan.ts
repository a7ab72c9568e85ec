import type { LengthPlan, LengthProblem } from './length-problem.ts';

/** What is wrong with a plan, in plain words; nothing if it can be sawn. Shares no code with the search. */
export function checkLengthPlan(problem: LengthProblem, plan: LengthPlan): readonly string[] {
  const wrong: string[] = [];
  const stocks = new Map(problem.stocks.map((stock) => [stock.id, stock]));
  const items = new Map(problem.items.map((item) => [item.id, item]));
  const used = new Map<string, number>();
  const placed = new Map<string, number>();
  let cost = 0;
  for (const cut of plan.cuts) {
    const stock = stocks.get(cut.stock);
    if (stock === undefined) {
      wrong.push(`there is no stock ${cut.stock}`);
      continue;
    }
    if (!Number.isSafeInteger(cut.times) || cut.times < 1) wrong.push(`${cut.stock} is cut ${cut.times} times`);
    used.set(cut.stock, (used.get(cut.stock) ?? 0) + cut.times);
    cost += stock.cost * cut.times;
    let at = 0;
    let pieces = 0;
    for (const { item, count } of cut.pieces) {
      const length = items.get(item)?.length;
      if (length === undefined) {
        wrong.push(`there is no item ${item}`);
        continue;
      }
      if (!Number.isSafeInteger(count) || count < 1) wrong.push(`${item} is cut ${count} times`);
      placed.set(item, (placed.get(item) ?? 0) + count * cut.times);
      at += count * length;
      pieces += count;
    }
    if (pieces === 0) wrong.push(`${cut.stock} is used for nothing`);
    const room = stock.length - problem.trim;
    const needed = at + Math.max(0, pieces - 1) * problem.kerf;
    if (needed > room) wrong.push(`${needed - room} too much on ${cut.stock}`);
    const left = Math.max(0, room - needed - problem.kerf);
    if (cut.left !== left) wrong.push(`${cut.left} is said to be left of ${cut.stock}, it is ${left}`);
  }
  for (const { id, available } of stocks.values()) {
    const count = used.get(id) ?? 0;
    if (available !== undefined && count > available) wrong.push(`${count} of ${id} are used, there are ${available}`);
  }
  for (const { item, count } of plan.unplaced) placed.set(item, (placed.get(item) ?? 0) + count);
  for (const { id, count } of items.values()) {
    if ((placed.get(id) ?? 0) !== count) wrong.push(`${id} is there ${placed.get(id) ?? 0} times, not ${count}`);
  }
  if (cost !== plan.cost) wrong.push(`the plan says it costs ${plan.cost}, it costs ${cost}`);
  return wrong;
}
