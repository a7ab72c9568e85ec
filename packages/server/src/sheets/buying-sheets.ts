import {
  cutListCsv,
  cuttingTable,
  type Drawing,
  planOfStock,
  shoppingTable,
  type Table,
  toSvg,
} from '@fettle/drawings';
import { type BuyingPlan, type Evaluation, isTogether } from '@fettle/engine';
import type { EvaluatedPiece } from '@fettle/language';
import type { PlanSheetMaker, SheetOption } from './sheet-maker.ts';

/** What to buy, how it is cut, and the cuts in their order. Nothing is planned until somebody looks at one of them. */

function tableSheet(
  id: string,
  title: string,
  table: (evaluation: Evaluation, plan: BuyingPlan) => Table,
): PlanSheetMaker {
  return {
    id,
    title,
    shows: 'table',
    needs: 'plan',
    suits: ({ evaluation }) => evaluation.parts.length > 0,
    make({ evaluation }, plan) {
      const { columns, rows } = table(evaluation, plan);
      return { kind: 'table', title, columns, rows };
    },
    files: { csv: ({ evaluation }, plan) => cutListCsv(table(evaluation, plan)) },
  };
}

/** Stocks that parts are made of, in the order of the parts: known without any plan. */
function stocks({ evaluation }: EvaluatedPiece): readonly SheetOption[] {
  return stockNames(evaluation).map((name) => ({ id: name, words: `“${name}”` }));
}

const knownNames = new WeakMap<Evaluation, readonly string[]>();

/** Of all pieces as one those of each, most of which an edit leaves as they were. */
function stockNames(evaluation: Evaluation): readonly string[] {
  const known = knownNames.get(evaluation);
  if (known !== undefined) return known;
  const names = isTogether(evaluation)
    ? evaluation.pieces.flatMap(stockNames)
    : evaluation.parts.flatMap(({ stock, edging }) =>
        [stock, ...edging.map((strip) => strip.stock)].flatMap((each) => each?.name ?? []),
      );
  const distinct = [...new Set(names)];
  knownNames.set(evaluation, distinct);
  return distinct;
}

function drawn(evaluation: Evaluation, plan: BuyingPlan, stock: string | undefined): Drawing {
  const first = evaluation.parts.find((part) => part.stock !== undefined)?.stock?.name ?? '';
  return planOfStock(evaluation, plan, stock ?? first);
}

const cutting: PlanSheetMaker = {
  id: 'cutting',
  title: 'Cutting',
  shows: 'drawing',
  needs: 'plan',
  choice: { label: 'Stock', options: stocks },
  suits: ({ evaluation }) => evaluation.parts.length > 0,
  make({ evaluation }, plan, stock) {
    const drawing = drawn(evaluation, plan, stock);
    return { kind: 'drawing', title: 'Cutting', svg: toSvg(drawing), description: drawing.description, divisions: [] };
  },
  files: { svg: ({ evaluation }, plan, stock) => toSvg(drawn(evaluation, plan, stock), { standalone: true }) },
};

export const buyingSheets: readonly PlanSheetMaker[] = [
  tableSheet('shopping', 'Shopping', shoppingTable),
  cutting,
  tableSheet('cuts', 'Cut order', cuttingTable),
];
