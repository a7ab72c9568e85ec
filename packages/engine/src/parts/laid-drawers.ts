import type { DrawerDesign, FaceDesign, FrontCell, GroupCell } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { CarcaseLayout, LaidCell } from '../evaluation.ts';
import { cellWord, plainCellLabel } from '../layout/cell-names.ts';
import { reachBehind } from '../layout/front-thickness.ts';
import { BOX_SIDES, usual } from '../tables/trade-habits.ts';
import { type DrawerBox, drawerBox } from './drawer-box.ts';

/** The drawers of a face, each with its opening and the box that stands in it. */

export interface LaidDrawer {
  readonly cell: FrontCell;
  readonly drawer: DrawerDesign;
  readonly laid: LaidCell;
  /** How far the back of its front lies behind the front of the body, as terms of a sum. */
  readonly reach: readonly Operand[];
  readonly box: DrawerBox;
  /** The thickness of its sides. */
  readonly sides: Figure;
  /** What it is called where it has no name. */
  readonly words: string;
}

/** Every drawer that has a box and an opening, in the order they are written. Openings without size are left out. */
export function laidDrawers(face: FaceDesign, layout: CarcaseLayout, root: LaidCell): readonly LaidDrawer[] {
  const drawers: LaidDrawer[] = [];
  collect(face, layout, root, undefined, drawers);
  return drawers;
}

/** The box as these slides and what else is said make it. */
export function boxOnSlides(
  { drawer, reach, laid }: Pick<LaidDrawer, 'drawer' | 'reach' | 'laid'>,
  layout: CarcaseLayout,
): DrawerBox {
  return drawerBox(drawer, reach, layout, laid.opening);
}

function collect(
  face: FaceDesign,
  layout: CarcaseLayout,
  laid: LaidCell,
  group: GroupCell | undefined,
  drawers: LaidDrawer[],
): void {
  const cell = laid.cell;
  if (cell.kind === 'row' || cell.kind === 'stack') {
    for (const inner of laid.cells) collect(face, layout, inner, cell, drawers);
    return;
  }
  for (const inner of laid.cells) collect(face, layout, inner, undefined, drawers);
  if (cell.kind !== 'front' || cell.what !== 'drawer') return;
  const drawer = cell.drawer ?? face.drawers;
  const { x, y } = laid.opening;
  if (drawer === undefined || !x.size.length.isPositive() || !y.size.length.isPositive()) return;
  const words = group === undefined ? `the ${cellWord(cell)}` : plainCellLabel(cell, group);
  const placed = { cell, drawer, laid, reach: reachBehind(cell, face, layout) };
  drawers.push({
    ...placed,
    box: boxOnSlides(placed, layout),
    sides: drawer.sides?.thickness ?? usual(BOX_SIDES, layout.unit),
    words,
  });
}
