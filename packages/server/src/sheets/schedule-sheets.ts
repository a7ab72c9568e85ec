import { cutListCsv, doorTable, drawerTable, hardwareTable, type Table, ventTable } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import type { SheetMaker } from './sheet-maker.ts';

/** The lists that drawers and doors are made by, and where all hardware is set. */

function scheduleSheet(
  id: string,
  title: string,
  suits: (evaluation: Evaluation) => boolean,
  table: (evaluation: Evaluation) => Table,
): SheetMaker {
  return {
    id,
    title,
    shows: 'table',
    suits: ({ evaluation }) => suits(evaluation),
    make({ evaluation }) {
      const { columns, rows } = table(evaluation);
      return { kind: 'table', title, columns, rows };
    },
    files: { csv: ({ evaluation }) => cutListCsv(table(evaluation)) },
  };
}

export const scheduleSheets: readonly SheetMaker[] = [
  scheduleSheet('drawers', 'Drawers', ({ parts }) => parts.some(({ role }) => role === 'drawer-front'), drawerTable),
  scheduleSheet(
    'doors',
    'Doors',
    ({ parts }) => parts.some(({ role }) => role === 'door' || role === 'lid'),
    doorTable,
  ),
  scheduleSheet('hardware', 'Hardware', ({ hardware }) => hardware.length > 0, hardwareTable),
  scheduleSheet('vents', 'Vents', ({ hardware }) => hardware.some(({ kind }) => kind === 'vent'), ventTable),
];
