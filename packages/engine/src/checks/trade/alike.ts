import type { Origin } from '@fettle/findings';
import type { Cell, GroupCell } from '../../design/design.ts';
import type { LaidCell } from '../../evaluation.ts';
import { cellWord, plainCellLabel } from '../../layout/cell-names.ts';

/** The cells of a face, and how a finding names them: what is wrong in the same way is one finding, the others beside it. */

export interface NamedCell {
  readonly laid: LaidCell;
  /** Absent for the root of the face. */
  readonly group?: GroupCell;
  /** All rows and stacks it stands in, the innermost last. */
  readonly within: readonly GroupCell[];
}

/** Every cell of a face, groups too, as they are written. */
export function cellsIn(root: LaidCell): readonly NamedCell[] {
  const found: NamedCell[] = [];
  const visit = (laid: LaidCell, within: readonly GroupCell[]): void => {
    const group = within.at(-1);
    found.push({ laid, within, ...(group === undefined ? {} : { group }) });
    const { cell } = laid;
    const around = cell.kind === 'row' || cell.kind === 'stack' ? [...within, cell] : within;
    for (const inner of laid.cells) visit(inner, around);
  };
  visit(root, []);
  return found;
}

export function whoIs(cell: Cell, group: GroupCell | undefined): { readonly name?: string; readonly words: string } {
  const words = group === undefined ? `the ${cellWord(cell)}` : plainCellLabel(cell, group);
  return cell.name === undefined ? { words } : { name: cell.name, words };
}

/** The other cells of a group, as parties to its finding. */
export function alsoRelated(others: readonly NamedCell[]): readonly {
  readonly role: 'also';
  readonly values: { readonly name?: string; readonly words: string };
  readonly origin: Origin;
}[] {
  return others.map(({ laid, group }) => ({
    role: 'also',
    values: whoIs(laid.cell, group),
    origin: laid.cell.origin,
  }));
}

/** Each place once, so that a mend changes nothing twice. */
export function distinctOrigins(origins: readonly (Origin | undefined)[]): readonly Origin[] | undefined {
  const found = new Map<string, Origin>();
  for (const origin of origins) {
    if (origin === undefined) return undefined;
    found.set(`${origin.unit} ${origin.start} ${origin.end}`, origin);
  }
  return [...found.values()];
}
