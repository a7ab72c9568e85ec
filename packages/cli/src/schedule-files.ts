import { cutListCsv, doorTable, drawerTable, hardwareTable, type Table, ventTable } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import { jsonText } from './length-json.ts';
import { schedulesJson } from './schedules-json.ts';
import type { FileToWrite } from './write-whole.ts';

/** The lists of drawers, doors and hardware as files; none where there is nothing to list. */
export function scheduleFiles(
  evaluation: Evaluation,
  name: string,
  warned: (table: Table) => Table,
): readonly FileToWrite[] {
  const tables = [
    ['drawers', drawerTable(evaluation)],
    ['doors', doorTable(evaluation)],
    ['hardware', hardwareTable(evaluation)],
    ['vents', ventTable(evaluation)],
  ] as const;
  const filled = tables.filter(([, { rows }]) => rows.length > 0);
  if (filled.length === 0) return [];
  return [
    ...filled.map(([what, table]) => ({ name: `${name}-${what}.csv`, content: cutListCsv(warned(table)) })),
    { name: `${name}-schedules.json`, content: jsonText(schedulesJson(evaluation)) },
  ];
}
