import { cutListTable } from '@fettle/drawings';
import type { SheetMaker } from './sheet-maker.ts';

/** What to cut, a row for parts that are cut alike. */
export const cutListSheet: SheetMaker = {
  id: 'cut-list',
  make({ evaluation }) {
    const table = cutListTable(evaluation);
    if (table.rows.length === 0) return undefined;
    return { kind: 'table', id: 'cut-list', title: 'Cut list', columns: table.columns, rows: table.rows };
  },
};
