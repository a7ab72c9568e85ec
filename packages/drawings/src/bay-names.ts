import type { LaidCell } from '@fettle/engine';
import { type Lettering, letteringInside } from './front-lettering.ts';
import { cleanName } from './lettering.ts';
import { boxOnPaper, type PartInView, type Projection } from './parts-in-view.ts';
import type { Box, Group } from './primitives.ts';
import { realMm } from './shown-lengths.ts';

/** Letters the maker's names of open spaces in the spaces themselves, clear of their shelves. */

export interface Bays {
  /** Of every open space, with a name or without. */
  readonly spaces: readonly Box[];
  readonly names: readonly { readonly id: string; readonly lettering: Lettering }[];
  readonly leftOut: number;
}

export function bayNames(face: LaidCell | undefined, parts: readonly PartInView[], to: Projection): Bays {
  const spaces: Box[] = [];
  const names: { id: string; lettering: Lettering }[] = [];
  let leftOut = 0;
  for (const { cell, opening } of openCells(face)) {
    const space = boxOnPaper(
      {
        x0: realMm(opening.x.start.length),
        x1: realMm(opening.x.end.length),
        y0: realMm(opening.y.start.length),
        y1: realMm(opening.y.end.length),
      },
      to,
    );
    if (!(space.left < space.right && space.top < space.bottom)) continue;
    spaces.push(space);
    const name = cleanName(cell.name ?? '');
    if (name === '') continue;
    const shelves = parts.filter(({ part }) => part.role === 'shelf' && part.cell === cell.id);
    const free = highestBetween(
      space,
      shelves.map(({ slab }) => boxOnPaper(slab, to)),
    );
    const { lettering } = letteringInside(free, name, '', undefined, []);
    if (lettering === undefined) leftOut += 1;
    else names.push({ id: cell.id, lettering });
  }
  return { spaces, names, leftOut };
}

export function bayGroups({ names }: Bays): readonly Group[] {
  return names.map(({ id, lettering }): Group => {
    return { kind: 'group', id: `bay-${id}`, name: 'bay', children: lettering.texts };
  });
}

function openCells(face: LaidCell | undefined): readonly LaidCell[] {
  if (face === undefined) return [];
  if (face.cell.kind === 'front') return [];
  return face.cell.kind === 'open' ? [face] : face.cells.flatMap(openCells);
}

/** Of the spaces that shelves leave one over another the highest; of equal ones the upper. */
function highestBetween(space: Box, shelves: readonly Box[]): Box {
  let best = { ...space, bottom: space.top };
  let top = space.top;
  const floor = { ...space, top: space.bottom };
  for (const shelf of [...[...shelves].sort((a, b) => a.top - b.top), floor]) {
    const bottom = Math.min(shelf.top, space.bottom);
    if (bottom - top > best.bottom - best.top + 0.01) best = { ...space, top, bottom };
    top = Math.max(top, shelf.bottom);
  }
  return best;
}
