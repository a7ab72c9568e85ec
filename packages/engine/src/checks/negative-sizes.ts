import { type Finding, sizeNegative } from '@fettle/findings';
import { rootOrigin } from '../design/derive.ts';
import type { Cell, DrawerDesign, FrontFit, PieceDesign, ShelfDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import { cellsWithin, type InsideDesign } from '../design/inside-design.ts';
import { rowDistances } from '../parts/pin-rows.ts';
import { givenAt } from './written-sizes.ts';

/** Written lengths between one thing and another, which cannot be less than nothing. Each number is reported once. */
export function negativeFindings(design: PieceDesign): readonly Finding[] {
  const said = new Set<string>();
  return distancesOf(design).flatMap(({ words, figure }) => {
    if (!figure.length.isNegative()) return [];
    const origin = rootOrigin(figure);
    const key = JSON.stringify(origin);
    if (origin === undefined || said.has(key)) return [];
    said.add(key);
    const at = givenAt(figure);
    const size = figure.length.abs();
    return [
      sizeNegative.at(
        origin,
        { words, size: figure.length },
        {
          mends:
            at === undefined
              ? []
              : [{ how: 'positive', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
        },
      ),
    ];
  });
}

interface Distance {
  readonly words: string;
  readonly figure: Figure;
}

function distancesOf({ carcase, face }: PieceDesign): readonly Distance[] {
  const { top, plinth, back } = carcase;
  const found: Distance[] = [];
  if (top !== undefined) {
    found.push(
      { words: 'overhang at the front', figure: top.overhangFront },
      { words: 'overhang at the ends', figure: top.overhangEnds },
      { words: 'overhang at the back', figure: top.overhangBack },
    );
  }
  if (plinth !== undefined) found.push({ words: 'set-back of the plinth', figure: plinth.setBack });
  if (back !== undefined) {
    found.push(
      { words: `depth of the ${back.fixing === 'rabbet' ? 'rabbet' : 'groove'}`, figure: back.depth },
      { words: 'distance of the back from the back edge', figure: back.inset },
    );
  }
  if (face === undefined) return found;
  found.push(...ofFit(face.fit));
  if (face.drawers !== undefined) found.push(...ofDrawer(face.drawers));
  const waiting: Cell[] = [face.root];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    waiting.push(...cellsWithin(cell));
    if (cell.kind === 'open' || cell.kind === 'front') found.push(...ofShelves(cell.shelves));
    if (cell.kind !== 'front') continue;
    if (cell.fit !== undefined) found.push(...ofFit(cell.fit));
    if (cell.drawer !== undefined) found.push(...ofDrawer(cell.drawer));
    if (cell.inside !== undefined) found.push(...ofInside(cell.inside));
  }
  return found;
}

function ofInside({ behindDoor, clear }: InsideDesign): readonly Distance[] {
  return [
    { words: 'distance behind the door', figure: behindDoor },
    ...[clear.left, clear.right].flatMap((figure) =>
      figure === undefined ? [] : [{ words: 'clearance at the side', figure }],
    ),
  ];
}

function ofFit(fit: FrontFit): readonly Distance[] {
  const gap = { words: 'gap', figure: fit.gap };
  switch (fit.kind) {
    case 'inset':
      return [gap];
    case 'lipped':
      return [gap, { words: 'lip', figure: fit.lip }];
    case 'overlay': {
      const common = [gap, { words: 'reveal', figure: fit.reveal }];
      return fit.how === 'by' ? [...common, { words: 'overlay', figure: fit.by }] : common;
    }
    default: {
      const unknown: never = fit;
      return unknown;
    }
  }
}

function ofDrawer(drawer: DrawerDesign): readonly Distance[] {
  return [
    { words: 'free height under the box', figure: drawer.clearBelow },
    { words: 'free height over the box', figure: drawer.clearAbove },
  ];
}

function ofShelves(shelves: ShelfDesign | undefined): readonly Distance[] {
  if (shelves === undefined) return [];
  const { shyEachEnd, pins, cleats } = shelves;
  const found: Distance[] = [{ words: 'what shelves are shy', figure: shyEachEnd }];
  if (cleats !== undefined) found.push({ words: 'set-back of the cleats', figure: cleats.setBack });
  if (pins !== undefined) {
    for (const figure of rowDistances(pins)) found.push({ words: 'distance of a row of pin holes', figure });
  }
  return found;
}
