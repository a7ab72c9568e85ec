import type { Cell, Divider, FaceDesign, FrontCell, FrontFit, GroupCell } from '../design/design.ts';

/** Which fronts lie along an edge of a cell or of a divider, whatever rows and stacks they are in. */

export type Side = 'left' | 'right' | 'top' | 'bottom';

export function fitOf(cell: Pick<FrontCell, 'fit'>, face: Pick<FaceDesign, 'fit'>): FrontFit {
  return cell.fit ?? face.fit;
}

/** The fronts of a cell that reach its edge on this side: itself, or those of its rows and stacks. */
export function frontsAlong(cell: Cell, side: Side): readonly FrontCell[] {
  switch (cell.kind) {
    case 'front':
      return [cell];
    case 'open':
      return [];
    case 'row':
    case 'stack': {
      const isAlong = cell.kind === 'row' ? side === 'left' || side === 'right' : side === 'top' || side === 'bottom';
      if (!isAlong) return cell.cells.flatMap((inner) => frontsAlong(inner, side));
      const outermost = side === 'left' || side === 'top' ? cell.cells[0] : cell.cells.at(-1);
      return outermost === undefined ? [] : frontsAlong(outermost, side);
    }
    default: {
      const unknown: never = cell;
      return unknown;
    }
  }
}

/** At the divider after cell `at` of the group: the fronts that end there, and those that begin there. */
export function frontsAtDivider(
  group: GroupCell,
  at: number,
): { readonly before: readonly FrontCell[]; readonly after: readonly FrontCell[] } {
  const [first, second] = [group.cells[at], group.cells[at + 1]];
  const [end, start]: readonly [Side, Side] = group.kind === 'row' ? ['right', 'left'] : ['bottom', 'top'];
  return {
    before: first === undefined ? [] : frontsAlong(first, end),
    after: second === undefined ? [] : frontsAlong(second, start),
  };
}

/** The divider's place in its group; -1 when it is none of this group. */
export function placeOf(divider: Divider, group: GroupCell): number {
  return group.dividers.indexOf(divider);
}

/**
 * A divider behind its fronts stops behind them. An overlay or lipped front lies on it instead: then it comes forward,
 * and an inset front beside it stays a gap away.
 */
export function isBehindFronts(group: GroupCell, at: number, face: Pick<FaceDesign, 'fit'>): boolean {
  if (group.dividers[at]?.mode !== 'behind') return false;
  const { before, after } = frontsAtDivider(group, at);
  return [...before, ...after].every((cell) => fitOf(cell, face).kind === 'inset');
}
