import { type Finding, revealLeavesNoLap } from '@fettle/findings';
import { derive, rootOrigin } from '../design/derive.ts';
import type { Cell, FaceDesign, FrontCell, GroupCell } from '../design/design.ts';
import type { CarcaseLayout } from '../evaluation.ts';
import { type CellEdges, edgesAgainstCase, lapAt } from '../layout/front-edges.ts';
import { edgesOfCells } from '../layout/group-axis.ts';
import { fitOf } from '../layout/touching-fronts.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { whoIs } from './trade/alike.ts';
import { givenAt } from './written-sizes.ts';

/**
 * Whether a full overlay front still lies on the edges it leaves a reveal of. Each reveal is reported once, where it has
 * least wood.
 */
export function revealFindings(face: FaceDesign, carcase: CarcaseLayout): readonly Finding[] {
  const worst = new Map<string, Trouble>();
  for (const trouble of troublesIn(face, face.root, undefined, edgesAgainstCase(carcase.edges))) {
    const key = JSON.stringify(rootOrigin(trouble.reveal) ?? trouble.front.origin);
    const known = worst.get(key);
    if (known === undefined || trouble.edge.compare(known.edge) < 0) worst.set(key, trouble);
  }
  return [...worst.values()].map(({ front, group, side, reveal, edge }) => {
    const who = whoIs(front, group);
    const at = givenAt(reveal);
    const size = edge.times(Rational.of(1, 4));
    return revealLeavesNoLap.at(
      rootOrigin(reveal) ?? front.origin,
      { ...who, side, reveal: reveal.length, edge },
      {
        related: [{ role: 'front', values: who, origin: front.origin }],
        mends:
          at === undefined
            ? []
            : [{ how: 'reveal-less', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    );
  });
}

type OverlayFull = Extract<ReturnType<typeof fitOf>, { kind: 'overlay' }>;

interface Trouble {
  readonly front: FrontCell;
  readonly group: GroupCell | undefined;
  readonly side: 'left' | 'right' | 'top' | 'bottom';
  readonly reveal: OverlayFull['reveal'];
  /** What of the edge is the front's own. */
  readonly edge: Length;
}

function troublesIn(face: FaceDesign, cell: Cell, group: GroupCell | undefined, edges: CellEdges): readonly Trouble[] {
  if (cell.kind === 'open') return [];
  if (cell.kind !== 'front') {
    const inner = edgesOfCells(cell, edges, face);
    return cell.cells.flatMap((each, at) => {
      const edge = inner[at];
      return edge === undefined ? [] : troublesIn(face, each, cell, edge);
    });
  }
  const fit = fitOf(cell, face);
  if (fit.kind !== 'overlay' || fit.how !== 'full') return [];
  return (['left', 'right', 'top', 'bottom'] as const).flatMap((side): Trouble[] => {
    const laps = lapAt(edges[side], fit);
    const wood = laps.filter(({ sign }) => sign === '+');
    const hasReveal = laps.some(({ sign, figure }) => sign === '-' && figure === fit.reveal);
    if (wood.length === 0 || !hasReveal || derive('', laps).length.isPositive()) return [];
    return [{ front: cell, group, side, reveal: fit.reveal, edge: derive('', wood).length }];
  });
}
