import type { Cell, GroupCell } from '../design/design.ts';

/**
 * The written sizes that make a row or stack as large as it is, where it asks for none of its own: seen from outside it
 * is one fixed size, and these are the numbers a maker can change.
 */
export interface InnerSize {
  readonly cell: Cell & { readonly along: Extract<Cell['along'], { readonly kind: 'fixed' }> };
  readonly group: GroupCell;
}

/** `kind`: of the row or stack whose sum is looked at. Of spaces seen across it, the first that says a size decides. */
export function innerSizes(cell: Cell, kind: GroupCell['kind']): readonly InnerSize[] {
  if ((cell.kind !== 'row' && cell.kind !== 'stack') || cell.along.kind !== 'rest') return [];
  return sizesIn(cell, kind);
}

function sizesIn(group: GroupCell, kind: GroupCell['kind']): readonly InnerSize[] {
  if (group.kind !== kind) {
    const first = group.cells.map((inner) => groupSizes(inner, kind)).find((sizes) => sizes.length > 0);
    return first ?? [];
  }
  return group.cells.flatMap((inner): readonly InnerSize[] => {
    const { along } = inner;
    if (along.kind === 'fixed') return [{ cell: { ...inner, along }, group }];
    return along.kind === 'rest' ? groupSizes(inner, kind) : [];
  });
}

function groupSizes(cell: Cell, kind: GroupCell['kind']): readonly InnerSize[] {
  return cell.kind === 'row' || cell.kind === 'stack' ? sizesIn(cell, kind) : [];
}
