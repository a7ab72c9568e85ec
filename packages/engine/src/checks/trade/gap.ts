import { type Finding, gapUnusual } from '@fettle/findings';
import type { Cell } from '../../design/design.ts';
import { cellsWithin } from '../../design/inside-design.ts';
import { limitIn, NARROWEST_GAP, USUAL_GAP, WIDEST_GAP } from '../../tables/trade-limits.ts';
import { givenAt } from '../written-sizes.ts';
import type { TradeCase } from './case-facts.ts';

/** The gap around inset fronts, where it is written. */
export function gapFindings({ design, face }: TradeCase): readonly Finding[] {
  if (face === undefined || face.design.fit.kind !== 'inset') return [];
  const { gap } = face.design.fit;
  const at = givenAt(gap);
  if (at === undefined || gap.length.isNegative()) return [];
  const { unit } = design.units;
  const [narrowest, widest] = [limitIn(NARROWEST_GAP, unit), limitIn(WIDEST_GAP, unit)];
  const tooWide = gap.length.compare(widest) > 0;
  if (!tooWide && gap.length.compare(narrowest) >= 0) return [];
  const limit = tooWide ? widest : narrowest;
  const size = limitIn(USUAL_GAP, unit);
  return [
    gapUnusual.at(
      at,
      { gap: gap.length, limit, difference: gap.length.minus(limit).abs(), tooWide },
      {
        mends: canGive(face.design.root)
          ? [{ how: 'usual-gap', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }]
          : [],
      },
    ),
  ];
}

/** Whether each row and stack has something that takes the rest, so that another gap breaks no sum. */
function canGive(cell: Cell): boolean {
  if (cell.kind !== 'row' && cell.kind !== 'stack') return cellsWithin(cell).every(canGive);
  const gives = cell.cells.some(
    ({ along, atLeast, atMost, measured }) =>
      (along.kind === 'rest' || along.kind === 'share') &&
      atLeast === undefined &&
      atMost === undefined &&
      measured === undefined,
  );
  return gives && cell.cells.every(canGive);
}
