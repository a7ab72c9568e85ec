import { assumed } from '../design/derive.ts';
import type { FaceDesign, FrontCell, PanelDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { LaidCell } from '../evaluation.ts';
import { Length } from '../length/length.ts';

/** How thick the fronts are, which is where everything behind an inset front begins. */

/** What the front is made of; undefined while nothing is said. */
export function frontMaterial(cell: FrontCell, face: FaceDesign): PanelDesign | undefined {
  return cell.front ?? face.fronts;
}

export function frontThickness(cell: FrontCell, face: FaceDesign): Figure {
  return frontMaterial(cell, face)?.thickness ?? threeQuarters;
}

const threeQuarters = assumed(
  Length.inches(3, 4),
  'fronts are 3/4 inch thick unless something is said, common practice',
);

/** The thickest front among these cells and all within them; undefined where there are none. */
export function thickestFront(cells: readonly LaidCell[], face: FaceDesign): Figure | undefined {
  let thickest: Figure | undefined;
  const waiting = [...cells];
  for (let laid = waiting.pop(); laid !== undefined; laid = waiting.pop()) {
    waiting.push(...laid.cells);
    if (laid.cell.kind !== 'front') continue;
    const thickness = frontThickness(laid.cell, face);
    if (thickest === undefined || thickest.length.compare(thickness.length) < 0) thickest = thickness;
  }
  return thickest;
}
