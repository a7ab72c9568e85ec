import { type Finding, sizeAbsurd } from '@fettle/findings';
import { Length } from '../../length/length.ts';
import { limitIn, type TradeLimit } from '../../tables/trade-limits.ts';
import { cellsIn, whoIs } from './alike.ts';
import type { TradeCase } from './case-facts.ts';

/** Openings that are hardly there. */

/** No source: an opening narrower or lower than this is a slit. */
const SMALLEST_OPENING: TradeLimit = { inches: Length.inches(1, 4), metric: Length.millimetres(6) };

/** Only the first of a piece: the others most often follow from the same slip. */
export function absurdOpenings({ design, face }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  const limit = limitIn(SMALLEST_OPENING, design.units.unit);
  for (const { laid, group } of cellsIn(face.root)) {
    const { cell, opening } = laid;
    if (cell.kind === 'row' || cell.kind === 'stack') continue;
    for (const [axis, span] of [
      ['width', opening.x],
      ['height', opening.y],
    ] as const) {
      const size = span.size.length;
      if (!size.isPositive() || size.compare(limit) >= 0) continue;
      return [sizeAbsurd.at(cell.sizeOrigin, { ...whoIs(cell, group), axis, size, limit, tooMuch: false })];
    }
  }
  return [];
}
