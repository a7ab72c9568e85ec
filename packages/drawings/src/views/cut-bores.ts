import { type ConvexCell, heightOver, lessConvex, type Plane } from '../shapes/convex-cell.ts';
import { type Bore, boreOutline, borePlanes, type PartCells } from '../shapes/part-cells.ts';

/** The wood less the round holes that a plane cuts; the others do not show in its face. */
export function withBores({ cells, bores }: PartCells, plane: Plane): readonly ConvexCell[] {
  return bores
    .filter((bore) => isCrossed(bore, plane))
    .reduce((rest, bore) => {
      const planes = borePlanes(bore);
      return rest.flatMap((cell) => lessConvex(cell, planes));
    }, cells);
}

function isCrossed(bore: Bore, plane: Plane): boolean {
  const heights = bore.along.flatMap((at) => boreOutline(bore, at).map((point) => heightOver(plane, point)));
  return Math.min(...heights) < 0 && Math.max(...heights) > 0;
}
