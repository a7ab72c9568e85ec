import type { Origin } from '@fettle/findings';
import type { Cell, FrontCell, GroupCell } from './design.ts';
import type { Figure } from './figure.ts';

/** What stands behind a door: spaces of its own, with fronts that one sees when it is open. */
export interface InsideDesign {
  readonly origin: Origin;
  /** Its word, after which more may be said. */
  readonly wordOrigin: Origin;
  /** From the back of the closed door to the fronts in here. */
  readonly behindDoor: Figure;
  /** How far drawers in here stay away from each end of the opening, where that is said. */
  readonly clear: { readonly left?: Figure; readonly right?: Figure };
  /** From top to bottom. */
  readonly root: GroupCell;
}

/** The door before a space, as far as it tells where the space begins. */
export interface DoorBefore {
  readonly door: Pick<FrontCell, 'front' | 'fit' | 'behind'>;
  /** From the back of the closed door to the fronts behind it. */
  readonly behindDoor: Figure;
}

/** The cells that stand in a cell: those of a row or stack, or what stands behind a door. */
export function cellsWithin(cell: Cell): readonly Cell[] {
  switch (cell.kind) {
    case 'row':
    case 'stack':
      return cell.cells;
    case 'front':
      return cell.inside === undefined ? [] : [cell.inside.root];
    case 'open':
      return [];
    default: {
      const unknown: never = cell;
      return unknown;
    }
  }
}
