import { derive, less, plus } from '../design/derive.ts';
import type { FrontCell, OpenCell, ShelfDesign } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { CarcaseLayout, Rectangle } from '../evaluation.ts';
import { turned } from '../layout/front-edges.ts';
import { spanFrom, toInterior } from '../layout/spans.ts';
import { Rational } from '../length/rational.ts';
import { SHELF_CLEAR, usual } from '../tables/trade-habits.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/**
 * Shelves stand evenly spread over the height of their opening. Behind a front they begin a little behind it, and behind
 * the front of the body; in an open space they come forward to the front of the body. Behind a face frame they reach
 * from side to side of the case.
 */

/** More than this in one opening is a slip of the pen, and drawing them would only take time. */
const MOST_SHELVES = 200;

export function shelfCount(shelves: ShelfDesign): number {
  return Number.isSafeInteger(shelves.count) ? Math.min(Math.max(shelves.count, 0), MOST_SHELVES) : 0;
}

/** The free height between one shelf and the next, the lowest and the floor, the topmost and what is above it. */
export function shelfSpacing(shelves: ShelfDesign, opening: Rectangle): Figure {
  const count = shelfCount(shelves);
  const spaces = Rational.of(1, count + 1);
  return derive('free height between shelves', [
    plus('height of the opening', opening.y.size, spaces),
    less('thickness of the shelves', shelves.material.thickness, Rational.of(count).times(spaces)),
  ]);
}

/**
 * `reach`: how far the back of the front lies behind the front of the body; absent where there is no front. No shelves
 * where they would leave no height between them: the checks say so. */
export function shelfParts(
  cell: OpenCell | FrontCell,
  shelves: ShelfDesign,
  reach: readonly Operand[] | undefined,
  layout: CarcaseLayout,
  opening: Rectangle,
): readonly UnmarkedPart[] {
  const spacing = shelfSpacing(shelves, opening);
  if (!spacing.length.isPositive()) return [];
  const across = toInterior(opening.x, 'x', layout);
  const clearOfFront = usual(SHELF_CLEAR, layout.unit);
  const isShy = !shelves.shyEachEnd.length.isZero();
  const x = spanFrom(
    derive('where the shelf begins', [
      plus('where the opening begins', across.start),
      ...(isShy ? [plus('shy at its end', shelves.shyEachEnd)] : []),
    ]),
    derive('width of the shelf', [
      plus('width of the opening', across.size),
      ...(isShy ? [less('shy at each end', shelves.shyEachEnd, 2)] : []),
    ]),
  );
  const inside = layout.inside.z;
  const into = reach !== undefined && derive('', reach).length.isPositive() ? reach : [];
  const z =
    reach === undefined
      ? inside
      : spanFrom(
          derive('behind the front', [
            plus('the front of the body', inside.start),
            ...into,
            plus('clear of the front', clearOfFront),
          ]),
          derive('depth of the shelf', [
            plus('depth inside', inside.size),
            ...turned(into),
            less('clear of the front', clearOfFront),
          ]),
        );
  const kind = shelves.adjustable ? 'adjustable shelf' : 'shelf';
  return Array.from({ length: shelfCount(shelves) }, (_, at) => {
    const foot = derive('where the shelf lies', [
      plus('where the opening begins', opening.y.start),
      plus('free height between shelves', spacing, at + 1),
      plus('thickness of the shelves below', shelves.material.thickness, at),
    ]);
    return slab({
      id: `${cell.id}/shelf-${at + 1}`,
      label: cell.name === undefined ? kind : `${kind} in "${cell.name}"`,
      role: 'shelf',
      stock: shelves.material.stock,
      edging: shelves.edging,
      x,
      y: spanFrom(foot, shelves.material.thickness),
      z,
      thin: 'y',
      grain: 'x',
      origin: shelves.origin,
      cell: cell.id,
    });
  });
}
