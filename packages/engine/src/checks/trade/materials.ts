import type { Origin } from '@fettle/findings';
import type { Cell, DrawerDesign, Material, PieceDesign } from '../../design/design.ts';
import { cellsWithin } from '../../design/inside-design.ts';

/** Every material a design names, with the statement that names it. Things that borrow another's material are left out. */
export interface NamedMaterial {
  readonly material: Material;
  readonly origin: Origin;
}

export function materialsOf(design: PieceDesign): readonly NamedMaterial[] {
  const found: NamedMaterial[] = [];
  const add = (material: Material | undefined, origin: Origin | undefined): void => {
    if (material !== undefined && origin !== undefined) found.push({ material, origin });
  };
  const addDrawer = (drawer: DrawerDesign | undefined): void => {
    add(drawer?.sides, drawer?.sides?.origin);
    add(drawer?.bottom, drawer?.bottom?.origin);
  };
  // Whatever belongs to the case and has an origin of its own is a panel; a word added to the case is found as well.
  for (const part of Object.values(design.carcase)) {
    if (typeof part === 'object' && 'thickness' in part) add(part, part.origin);
  }
  const { face } = design;
  add(face?.fronts, face?.fronts?.origin);
  addDrawer(face?.drawers);
  const dividers = new Set<Material>();
  const visit = (cell: Cell): void => {
    switch (cell.kind) {
      case 'row':
      case 'stack':
        for (const divider of cell.dividers) {
          if (divider.form === 'none' || dividers.has(divider.material)) continue;
          dividers.add(divider.material);
          add(divider.material, divider.origin);
        }
        for (const inner of cell.cells) visit(inner);
        return;
      case 'open':
        add(cell.shelves?.material, cell.shelves?.origin);
        return;
      case 'front':
        add(cell.shelves?.material, cell.shelves?.origin);
        add(cell.front, cell.front?.origin);
        addDrawer(cell.drawer);
        for (const inner of cellsWithin(cell)) visit(inner);
        return;
      default: {
        const unknown: never = cell;
        void unknown;
      }
    }
  };
  if (face !== undefined) visit(face.root);
  return found;
}
