import type { FaceDesign } from '../design/design.ts';
import type { LaidCell } from '../evaluation.ts';
import { doorFrame } from '../layout/front-thickness.ts';
import { leafId } from '../layout/leaf-ids.ts';
import type { FrontsInSequence } from './front-sequences.ts';

/**
 * Pairs of doors that are glued up, edged and flattened as one and then cut through where they meet: their grain and
 * their strips run on from leaf to leaf. Leaves of a frame are two frames and cannot be.
 */
export function pairsInOne(face: FaceDesign, root: LaidCell): FrontsInSequence {
  const found = new Map<string, ReturnType<FrontsInSequence['get']> & object>();
  const visit = ({ cell, leaves, cells }: LaidCell): void => {
    for (const inner of cells) visit(inner);
    if (cell.kind !== 'front' || cell.madeAsOne === undefined || doorFrame(cell, face) !== undefined) return;
    if (leaves.length !== 2) return;
    leaves.forEach((_, place) => {
      found.set(leafId(cell, leaves.length, place), {
        grain: 'y',
        run: {
          id: `pair ${cell.id}`,
          label: `pair${cell.name === undefined ? '' : ` "${cell.name}"`}`,
          place,
          order: 'across',
          isSplit: true,
        },
      });
    });
  };
  visit(root);
  return found;
}
