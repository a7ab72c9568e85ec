import { cutListSheet } from './cut-list-sheet.ts';
import { elevationSheet } from './elevation-sheet.ts';
import type { SheetMaker } from './sheet-maker.ts';

/** The sheets of the picture, in the order of their tabs. A further sheet is added by standing here. */
export const sheetMakers: readonly SheetMaker[] = [elevationSheet, cutListSheet];
