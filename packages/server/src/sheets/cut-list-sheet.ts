import { cutListCsv, cutListTable } from '@fettle/drawings';
import type { SheetMaker } from './sheet-maker.ts';

/** What to cut, a row for parts that are cut alike. */
export const cutListSheet: SheetMaker = {
  id: 'cut-list',
  title: 'Cut list',
  shows: 'table',
  suits: ({ evaluation }) => evaluation.parts.length > 0,
  make({ evaluation }) {
    const { columns, rows } = cutListTable(evaluation);
    return { kind: 'table', title: 'Cut list', columns, rows };
  },
  files: { csv: ({ evaluation }) => cutListCsv(cutListTable(evaluation)) },
};
