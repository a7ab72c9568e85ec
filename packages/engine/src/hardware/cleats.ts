import { derive, less, plus } from '../design/derive.ts';
import type { Cell } from '../design/design.ts';
import { cellsWithin } from '../design/inside-design.ts';
import type { CleatsDesign } from '../design/shelf-design.ts';
import type { HardwareCase } from './fit-hardware.ts';
import type { FittedHardware, PlacedHardware } from './placed-hardware.ts';
import { screwsThrough } from './wooden-runners.ts';

/** Cleats under shelves, with the screws that the text names for them. The cleats themselves are among the parts. */
export function fitCleats({ design, layout, parts }: HardwareCase): FittedHardware {
  const asked = new Map<string, CleatsDesign>();
  if (design.face !== undefined) collect(design.face.root, asked);
  const placed = parts.flatMap((part): readonly PlacedHardware[] => {
    const cleats = part.role === 'cleat' && part.cell !== undefined ? asked.get(part.cell) : undefined;
    if (cleats?.screws === undefined) return [];
    const { x, y, z } = part.box;
    const isLeft = part.id.endsWith('-left');
    return [
      {
        id: `${part.id}/set`,
        kind: 'cleat',
        label: part.label,
        ...(part.cell === undefined ? {} : { cell: part.cell }),
        on: [part.id],
        set: [
          {
            words: 'upper edge above the bottom of the case',
            figure: derive('above the bottom', [
              plus('upper edge of the cleat', y.end),
              less('upper face of the bottom', layout.interior.y.start),
            ]),
          },
        ],
        screws: screwsThrough(
          part.id,
          cleats,
          { plane: isLeft ? x.start : x.end, towards: isLeft ? '-x' : '+x', y, z },
          layout,
        ),
        origin: cleats.origin,
      },
    ];
  });
  return { placed, features: [] };
}

function collect(cell: Cell, asked: Map<string, CleatsDesign>): void {
  for (const inner of cellsWithin(cell)) collect(inner, asked);
  if ((cell.kind === 'open' || cell.kind === 'front') && cell.shelves?.cleats !== undefined)
    asked.set(cell.id, cell.shelves.cleats);
}
