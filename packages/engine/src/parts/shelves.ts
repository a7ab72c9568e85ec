import { derive, less, plus } from '../design/derive.ts';
import type { FrontCell, OpenCell, ShelfDesign } from '../design/design.ts';
import type { Operand } from '../design/figure.ts';
import type { CleatsDesign } from '../design/shelf-design.ts';
import type { CarcaseLayout, Rectangle, Span } from '../evaluation.ts';
import { turned } from '../layout/front-edges.ts';
import { spanFrom, spanUpTo, toInterior } from '../layout/spans.ts';
import { SHELF_CLEAR, usual } from '../tables/trade-habits.ts';
import { shelfSpacing, undersides } from './shelf-places.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/**
 * Shelves, and the cleats that carry them. Behind a front they begin a little behind it, and behind the front of the
 * body; in an open space they come forward to the front of the body. Behind a face frame they reach from side to side
 * of the case.
 */

/**
 * `reach`: how far the back of the front lies behind the front of the body; absent where there is no front. No shelves
 * where they would leave no height between them: the checks say so.
 */
export function shelfParts(
  cell: OpenCell | FrontCell,
  shelves: ShelfDesign,
  reach: readonly Operand[] | undefined,
  layout: CarcaseLayout,
  opening: Rectangle,
): readonly UnmarkedPart[] {
  if (shelves.heights === undefined && !shelfSpacing(shelves, opening).length.isPositive()) return [];
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
  const into = reachInto(reach);
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
  return undersides(shelves, opening, layout.unit).flatMap((up, at) => {
    const foot = derive('where the shelf lies', [
      plus('where the opening begins', opening.y.start),
      plus('underside of the shelf', up),
    ]);
    const of = cell.name === undefined ? '' : ` in "${cell.name}"`;
    const shelf = slab({
      id: `${cell.id}/shelf-${at + 1}`,
      label: `${kind}${of}`,
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
    return shelves.cleats === undefined ? [shelf] : [shelf, ...cleatsUnder(shelf, shelves.cleats, across, of)];
  });
}

/** How far a front reaches behind the front of the body; nothing where it lies on it. */
export function reachInto(reach: readonly Operand[] | undefined): readonly Operand[] {
  return reach !== undefined && derive('', reach).length.isPositive() ? reach : [];
}

/** One at each end, against what stands there, from a little behind the front of the shelf to the back. */
function cleatsUnder(shelf: UnmarkedPart, cleats: CleatsDesign, across: Span, of: string): readonly UnmarkedPart[] {
  const z = spanFrom(
    derive('where the cleat begins', [
      plus('the front of the shelf', shelf.box.z.start),
      plus('it begins behind it', cleats.setBack),
    ]),
    derive('length of the cleat', [
      plus('depth of the shelf', shelf.box.z.size),
      less('it begins behind the front of the shelf', cleats.setBack),
    ]),
  );
  return (['left', 'right'] as const).map((end) =>
    slab({
      id: `${shelf.id}/cleat-${end}`,
      label: `${end} cleat${of}`,
      role: 'cleat',
      stock: cleats.stock,
      x: end === 'left' ? spanFrom(across.start, cleats.thickness) : spanUpTo(across.end, cleats.thickness),
      y: spanUpTo(shelf.box.y.start, cleats.height),
      z,
      thin: 'x',
      grain: 'z',
      origin: cleats.origin,
      ...(shelf.cell === undefined ? {} : { cell: shelf.cell }),
    }),
  );
}
