import type { Cell, PieceDesign } from '../../design/design.ts';
import type { Price } from '../../design/shop.ts';

/** Prices of the hardware that a design names, by the name of its entry. */
export function hardwarePrices({ face }: PieceDesign): ReadonlyMap<string, Price> {
  const prices = new Map<string, Price>();
  const note = (entry: { readonly name: string; readonly price?: Price } | undefined) => {
    if (entry?.price !== undefined) prices.set(entry.name, entry.price);
  };
  const visit = (cell: Cell): void => {
    if (cell.kind === 'row' || cell.kind === 'stack') for (const inner of cell.cells) visit(inner);
    if (cell.kind === 'front') {
      note(cell.hinges);
      note(cell.drawer?.slides);
    }
  };
  note(face?.drawers?.slides);
  if (face !== undefined) visit(face.root);
  return prices;
}
