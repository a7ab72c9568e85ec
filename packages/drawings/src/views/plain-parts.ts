import type { Part } from '@fettle/engine';
import { boxCell } from '../shapes/convex-cell.ts';
import { extentOf, type PartCells } from '../shapes/part-cells.ts';

/**
 * A piece with thousands of joints would take its sheets seconds, and on paper they would be specks: what a section does
 * not cut is then drawn as plain blocks, and the sheet says so.
 */

const MOST_CUTS = 1500;

export function isDrawnPlain(parts: readonly Part[]): boolean {
  return parts.reduce((cuts, { features }) => cuts + features.length, 0) > MOST_CUTS;
}

export function plainCells(part: Part): PartCells {
  const blank = extentOf(part.blank);
  return { cells: blank === undefined ? [] : [boxCell(blank)], bores: [] };
}

/** For the notes of the sheet; empty where every cut is drawn. */
export function plainNotes(parts: readonly Part[]): readonly string[] {
  return isDrawnPlain(parts) ? ['Too many joints to draw them all: parts that are not cut are plain blocks.'] : [];
}
