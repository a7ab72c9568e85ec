import { derive, less, plus } from '../design/derive.ts';
import type { DrawerDesign, FaceDesign, FrontCell, OpenCell } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { CarcaseLayout, LaidCell } from '../evaluation.ts';
import { turned } from '../layout/front-edges.ts';
import { reachBefore, reachBehind } from '../layout/front-thickness.ts';
import { withinInterior } from '../layout/spans.ts';
import { compartmentSizes } from '../parts/compartments.ts';
import { bottomUp, drawerBox } from '../parts/drawer-box.ts';
import { clearHeights } from '../parts/shelf-places.ts';
import { BOX_SIDES, usual } from '../tables/trade-habits.ts';

/** The clear room that an opening has for what it holds, and how many such rooms: one more than it has shelves. */
export interface RoomInside {
  readonly width: Figure;
  readonly depth: Figure;
  /** Of each of them, from below. */
  readonly heights: readonly Figure[];
  /** Of a drawer with compartments: what is clear in each, from the left or from the front. */
  readonly compartments?: { readonly way: 'across' | 'behind'; readonly sizes: readonly Figure[] };
}

export function roomInside(
  laid: LaidCell & { readonly cell: FrontCell | OpenCell },
  face: FaceDesign,
  layout: CarcaseLayout,
): RoomInside {
  const { cell } = laid;
  const drawer = cell.kind === 'front' && cell.what === 'drawer' ? (cell.drawer ?? face.drawers) : undefined;
  return drawer === undefined || cell.kind !== 'front'
    ? roomOfOpening(laid, face, layout)
    : roomInBox(laid, cell, drawer, face, layout);
}

function roomOfOpening(
  laid: LaidCell & { readonly cell: FrontCell | OpenCell },
  face: FaceDesign,
  layout: CarcaseLayout,
): RoomInside {
  const { cell } = laid;
  const opening = withinInterior(laid.opening, layout);
  const reach = reachBefore(cell, face, layout) ?? [];
  const into = derive('', reach).length.isPositive() ? reach : [];
  return {
    width: opening.x.size,
    depth: derive('depth for what it holds', [plus('depth inside', layout.inside.z.size), ...turned(into)]),
    heights: cell.shelves === undefined ? [opening.y.size] : clearHeights(cell.shelves, laid.opening, layout.unit),
  };
}

/** What lies in a drawer may stand higher than its sides, but not higher than its opening. */
function roomInBox(
  laid: LaidCell,
  cell: FrontCell,
  drawer: DrawerDesign,
  face: FaceDesign,
  layout: CarcaseLayout,
): RoomInside {
  const box = drawerBox(drawer, reachBehind(cell, face, layout), layout, laid.opening);
  const thick = drawer.sides?.thickness ?? usual(BOX_SIDES, layout.unit);
  const opening = withinInterior(laid.opening, layout);
  return {
    width: derive('width inside the box', [
      plus('width of the box', box.x.size),
      less('thickness of its sides', thick, 2),
    ]),
    depth: derive('depth inside the box', [
      plus('depth of the box', box.z.size),
      less('thickness of its front and back', thick, 2),
    ]),
    heights: [
      derive('height over the bottom of the box', [
        plus('height of the opening', opening.y.size),
        less('free under the box', drawer.clearBelow),
        ...turned(bottomUp(drawer, layout.unit)),
      ]),
    ],
    ...(drawer.compartments === undefined
      ? {}
      : {
          compartments: { way: drawer.compartments.way, sizes: compartmentSizes(drawer.compartments, box, thick) },
        }),
  };
}
