import type { Cell, GroupCell } from '../design/design.ts';

/** How a cell is called in derivations and findings, also when the maker gave it no name. */

const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** `"cards"`, or `the third drawer` counted along its row or stack. */
export function cellLabel(cell: Cell, group: GroupCell): string {
  return cell.name === undefined ? plainCellLabel(cell, group) : `"${cell.name}"`;
}

/** `the third drawer`: counted along its row or stack, whatever its name. */
export function plainCellLabel(cell: Cell, group: GroupCell): string {
  const at = group.cells.indexOf(cell);
  const ordinal = ordinals[at];
  return ordinal === undefined ? `${cellWord(cell)} ${at + 1}` : `the ${ordinal} ${cellWord(cell)}`;
}

export function cellWord(cell: Cell): string {
  switch (cell.kind) {
    case 'row':
    case 'stack':
      return cell.kind;
    case 'open':
      return 'opening';
    case 'front':
      return cell.what === 'false-front' ? 'false front' : cell.what;
    default: {
      const unknown: never = cell;
      return unknown;
    }
  }
}

/** `divider under "cards"`, `partition left of "right"`: by the named neighbour, else by its place. */
export function dividerLabel(group: GroupCell, at: number): string {
  const word = group.dividers[at]?.form === 'partition' ? 'partition' : 'divider';
  const [before, after] = [group.cells[at]?.name, group.cells[at + 1]?.name];
  if (before !== undefined) return `${word} ${group.kind === 'row' ? 'right of' : 'under'} "${before}"`;
  if (after !== undefined) return `${word} ${group.kind === 'row' ? 'left of' : 'over'} "${after}"`;
  return `${word} ${at + 1}`;
}
