import { buyingSheets } from './buying-sheets.ts';
import { cutListSheet } from './cut-list-sheet.ts';
import { elevationSheet } from './elevation-sheet.ts';
import { scheduleSheets } from './schedule-sheets.ts';
import { setupsSheet } from './setups-sheet.ts';
import type { SheetMaker } from './sheet-maker.ts';
import { workshopSheets } from './workshop-sheets.ts';

/**
 * The sheets of the picture, in the order of their tabs. A further sheet is added by standing here, and nowhere else:
 * the page, the exports and the commands know of sheets only what these makers say.
 */
export const sheetMakers: readonly SheetMaker[] = [
  ...inGroup('Drawings', [elevationSheet, ...workshopSheets]),
  ...inGroup('Tables', [cutListSheet, setupsSheet, ...scheduleSheets]),
  ...inGroup('Buying and cutting', buyingSheets),
];

function inGroup(group: string, makers: readonly SheetMaker[]): readonly SheetMaker[] {
  return makers.map((maker) => ({ ...maker, group }));
}
