import { cutListCsv, cuttingTable, planOfStock, shoppingTable, type Table } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import type { EvaluatedPiece } from '@fettle/language';
import { planOf } from '../plans/kept-plans.ts';
import { drawingSheet } from './drawing-sheet.ts';
import type { SheetMaker, SheetOption } from './sheet-maker.ts';

/** What to buy, how it is cut, and the cuts in their order. Nothing is planned until somebody looks at one of them. */

function tableSheet(id: string, title: string, table: (evaluation: Evaluation) => Table): SheetMaker {
  return {
    id,
    title,
    shows: 'table',
    suits: ({ evaluation }) => evaluation.parts.length > 0,
    make({ evaluation }) {
      const { columns, rows } = table(evaluation);
      return { kind: 'table', title, columns, rows };
    },
    files: { csv: ({ evaluation }) => cutListCsv(table(evaluation)) },
  };
}

/** Stocks that parts are made of, in the order of the parts: known without any plan. */
function stocks({ evaluation }: EvaluatedPiece): readonly SheetOption[] {
  const names = evaluation.parts.flatMap(({ stock, edging }) => [stock, ...edging.map((strip) => strip.stock)]);
  return [...new Set(names.flatMap((stock) => stock?.name ?? []))].map((name) => ({ id: name, words: `“${name}”` }));
}

export const buyingSheets: readonly SheetMaker[] = [
  tableSheet('shopping', 'Shopping', (evaluation) => shoppingTable(evaluation, planOf(evaluation))),
  drawingSheet({
    id: 'cutting',
    title: 'Cutting',
    choice: { label: 'Stock', options: stocks },
    draw: (evaluation, option) => {
      const first = evaluation.parts.find(({ stock }) => stock !== undefined)?.stock?.name ?? '';
      return planOfStock(evaluation, planOf(evaluation), option ?? first);
    },
  }),
  tableSheet('cuts', 'Cuts', (evaluation) => cuttingTable(evaluation, planOf(evaluation))),
];
