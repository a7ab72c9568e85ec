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
 * that nothing is cut before it is there; among cuts that may come in any order those with the same setting follow each
 * other, the wider first.
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
  return all
    .sort(
      (a, b) =>
        groupOf(a.from) - groupOf(b.from) ||
        a.cut.depth - b.cut.depth ||
        (a.cut.direction === b.cut.direction ? 0 : a.cut.direction === 'rip' ? -1 : 1) ||
        b.cut.setting.compare(a.cut.setting) ||
        a.at - b.at ||
        a.turn - b.turn,
    )
    .map(({ from, cut }, at) => ({
      number: at + 1,
      from,
      cut,
      isWithoutWayBack: cut.blanks.length === 1 && cut.blanks.some((blank) => without.has(blank)),
    }));
}

function groupKey({ stock, thickness }: Pick<LaidStock, 'stock' | 'thickness'>): string {
  return JSON.stringify([stock.form, stock.name, thickness?.exactInches]);
}
