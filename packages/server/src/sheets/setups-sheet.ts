import { cutListCsv, setupsTable } from '@fettle/drawings';
import type { SheetMaker } from './sheet-maker.ts';

/** How to set the machines, each setting once. */
export const setupsSheet: SheetMaker = {
  id: 'setups',
  title: 'Set-ups',
  shows: 'table',
  suits: ({ evaluation }) => evaluation.parts.length > 0,
  make({ evaluation }) {
    const { columns, rows } = setupsTable(evaluation);
    return { kind: 'table', title: 'Set-ups', columns, rows };
  },
  files: { csv: ({ evaluation }) => cutListCsv(setupsTable(evaluation)) },
};
