import { groupedBy } from '../../grouping.ts';
import type { Length } from '../../length/length.ts';
import type { LaidStock, SawCut } from './laid-stock.ts';
import { layOutBoards } from './lay-out-boards.ts';
import { layOutSheets } from './lay-out-sheets.ts';
import type { BuyingPlan } from './plan-buying.ts';
import { sparesOf } from './spares.ts';

/** Lists, drawings and spares of one plan all begin with it. */
const laidOutOf = new WeakMap<BuyingPlan, readonly LaidStock[]>();
const sequenceOf = new WeakMap<BuyingPlan, readonly NumberedCut[]>();

/** All stock of a plan as it is cut: sheets, then boards, numbered through. */
export function laidOut(plan: BuyingPlan): readonly LaidStock[] {
  const known = laidOutOf.get(plan);
  if (known !== undefined) return known;
  const laid: LaidStock[] = [];
  for (const sheets of plan.sheets) laid.push(...layOutSheets(sheets, laid.length + 1));
  for (const boards of plan.boards) laid.push(...layOutBoards(boards, laid.length + 1));
  laidOutOf.set(plan, laid);
  return laid;
}

/** A cut in its turn. */
export interface NumberedCut {
  /** From 1, through all stock. */
  readonly number: number;
  readonly from: LaidStock;
  readonly cut: SawCut;
  /** What comes off cannot be made again from what is left over: if it is spoiled, stock has to be bought. */
  readonly isWithoutWayBack: boolean;
}

/**
 * In which order to cut: stock of one kind after the other, and of each first what parts it, then what parts the pieces, so
 * that nothing is cut before it is there, and what lies side by side in one piece comes off in that order, as it is drawn;
 * among cuts that may come in any order those with the same setting follow each other, the wider first.
 */
export function cutSequence(plan: BuyingPlan): readonly NumberedCut[] {
  const known = sequenceOf.get(plan);
  if (known !== undefined) return known;
  const sequence = sequenceOfCuts(plan);
  sequenceOf.set(plan, sequence);
  return sequence;
}

function sequenceOfCuts(plan: BuyingPlan): readonly NumberedCut[] {
  const laid = laidOut(plan);
  const without = new Set(sparesOf(laid).flatMap((each) => (each.spare === undefined ? [each.piece.blank.id] : [])));
  const all = laid.flatMap((from, at) => from.cuts.map((cut, turn) => ({ from, cut, at, turn })));
  const groups = new Map<string, number>();
  for (const { stock, thickness } of laid) {
    const key = groupKey({ stock, ...(thickness === undefined ? {} : { thickness }) });
    if (!groups.has(key)) groups.set(key, groups.size);
  }
  const groupOf = (from: LaidStock) => groups.get(groupKey(from)) ?? 0;
  const inTurn = [...all].sort(
    (a, b) =>
      groupOf(a.from) - groupOf(b.from) ||
      a.cut.depth - b.cut.depth ||
      (a.cut.direction === b.cut.direction ? 0 : a.cut.direction === 'rip' ? -1 : 1) ||
      a.at - b.at ||
      a.turn - b.turn,
  );
  const rounds = groupedBy(inTurn, ({ from, cut }) => `${groupOf(from)} ${cut.depth} ${cut.direction}`);
  return [...rounds.values()].flatMap(likeSettingsTogether).map(({ from, cut }, at) => ({
    number: at + 1,
    from,
    cut,
    isWithoutWayBack:
      (cut.blanks.length === 1 || cut.run !== undefined) && cut.blanks.some((blank) => without.has(blank)),
  }));
}

/**
 * Cuts of one direction that may come in any order, but for those beside each other in one piece: these come off as they
 * lie. The setting stays while it serves; then the widest of those that are next.
 */
function likeSettingsTogether<One extends { readonly from: LaidStock; readonly cut: SawCut }>(
  cuts: readonly One[],
): readonly One[] {
  const rows = [
    ...groupedBy(cuts, ({ from, cut }) => `${from.number} ${cut.from.exactInches} ${cut.to.exactInches}`).values(),
  ].map((row) => [...row]);
  // By the setting of the cut that is next in each: there are few settings, whatever is cut.
  const waiting = new Map<string, One[][]>();
  const wait = (row: One[]): void => {
    const [next] = row;
    if (next === undefined) return;
    const key = next.cut.setting.exactInches;
    const beside = waiting.get(key);
    if (beside === undefined) waiting.set(key, [row]);
    else beside.push(row);
  };
  for (const row of rows) wait(row);
  const ordered: One[] = [];
  let setting: string | undefined;
  while (waiting.size > 0) {
    if (setting === undefined || !waiting.has(setting)) setting = widestOf(waiting);
    const row = waiting.get(setting)?.shift();
    if (waiting.get(setting)?.length === 0) waiting.delete(setting);
    const taken = row?.shift();
    if (row === undefined || taken === undefined) break;
    ordered.push(taken);
    wait(row);
  }
  return ordered;
}

function widestOf(waiting: ReadonlyMap<string, readonly (readonly { readonly cut: SawCut }[])[]>): string {
  let [widest, words] = [undefined as Length | undefined, ''];
  for (const [key, rows] of waiting) {
    const setting = rows[0]?.[0]?.cut.setting;
    if (setting !== undefined && (widest === undefined || setting.compare(widest) > 0))
      [widest, words] = [setting, key];
  }
  return words;
}

function groupKey({ stock, thickness }: Pick<LaidStock, 'stock' | 'thickness'>): string {
  return JSON.stringify([stock.form, stock.name, thickness?.exactInches]);
}
