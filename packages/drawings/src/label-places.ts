import type { Bays } from './bay-names.ts';
import type { MovedLabel } from './moved-labels.ts';
import type { NearRoom } from './near-labels.ts';
import type { PartLettering } from './part-groups.ts';
import { boxOnPaper, type PartInView, type Projection, type ViewOfParts } from './parts-in-view.ts';
import type { Box } from './primitives.ts';

/** Where a label goes that does not fit into its part: to which side of the view, or beside the part inside it. */

/** Deeper inside the view than this on paper a part is labelled where it stands. */
const DEEP_MM = 8;

/**
 * Parts that stand over one another are labelled at the nearer side, the right for those in the middle; parts that
 * stand beside one another above, unless they are low and a side is near.
 */
export function sidesOfLabels(moved: readonly MovedLabel[], outside: Box) {
  const above: MovedLabel[] = [];
  const left: MovedLabel[] = [];
  const right: MovedLabel[] = [];
  const middle = (outside.left + outside.right) / 2;
  for (const label of moved) {
    const { box } = label;
    // A foot is far from the upper edge and near to a side: it is labelled there, whatever it stands in a row with.
    const isLow = box.top - outside.top > DEEP_MM;
    const isAtSide = box.left - outside.left < DEEP_MM || outside.right - box.right < DEEP_MM;
    if (standsInRow(label, moved) && !(isLow && isAtSide)) above.push(label);
    else if ((box.left + box.right) / 2 < middle - 0.01) left.push(label);
    else right.push(label);
  }
  return { above, left, right };
}

/** Labels whose leader would run through the view farther than a mere edge is deep. */
export function deepInside(sides: ReturnType<typeof sidesOfLabels>, outside: Box): readonly MovedLabel[] {
  return [
    ...sides.above.filter(({ box }) => box.top - outside.top > DEEP_MM),
    ...sides.left.filter(({ box }) => box.left - outside.left > DEEP_MM),
    ...sides.right.filter(({ box }) => outside.right - box.right > DEEP_MM),
  ];
}

/** Open spaces first, off their shelves; then the fronts. */
export function nearRoom(view: ViewOfParts, bays: Bays, lettering: PartLettering, to: Projection): NearRoom {
  const boxes = (wanted: (entry: PartInView) => boolean): readonly Box[] =>
    view.parts.filter(wanted).map(({ slab }) => boxOnPaper(slab, to));
  const inTheWay = boxes(({ part, isFront, edges }) => !isFront && part.role !== 'back' && edges.seen.length > 0);
  return {
    spaces: [
      ...bays.spaces.map((space) => ({ space, avoid: inTheWay })),
      ...boxes(({ isFront }) => isFront).map((space) => ({ space, avoid: [] })),
    ],
    taken: [...lettering.boxes, ...bays.names.map((bay) => bay.lettering.box)],
  };
}

/** Only parts of a like shape count: a rail between two stiles does not stand in a row with them. */
function standsInRow({ id, box }: MovedLabel, moved: readonly MovedLabel[]): boolean {
  let over = 0;
  let besides = 0;
  for (const other of moved) {
    if (other.id === id || isUpright(other.box) !== isUpright(box)) continue;
    if (box.left < other.box.right && other.box.left < box.right) over += 1;
    if (box.top < other.box.bottom && other.box.top < box.bottom) besides += 1;
  }
  return over === besides ? isUpright(box) : besides > over;
}

function isUpright(box: Box): boolean {
  return box.right - box.left < box.bottom - box.top;
}
