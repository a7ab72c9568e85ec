import { type Finding, pairNotInOne, splitWiderThanGap } from '@fettle/findings';
import { doorFrame } from '../../layout/front-thickness.ts';
import { kerfOf } from '../../stock/buying/buying-request.ts';
import { cellsIn, whoIs } from './alike.ts';
import type { TradeCase } from './case-facts.ts';

/** Whether a pair can be made as one, and whether what the saw takes out is no more than the gap between its leaves. */
export function pairFindings({ face, shop, layout }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  return cellsIn(face.root).flatMap(({ laid: { cell, leaves }, group }): readonly Finding[] => {
    if (cell.kind !== 'front' || cell.madeAsOne === undefined) return [];
    const [left, right] = leaves;
    const at = cell.madeAsOne;
    if (doorFrame(cell, face.design) !== undefined) {
      return [
        pairNotInOne.at(at, whoIs(cell, group), {
          mends: [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at }] }],
        }),
      ];
    }
    if (left === undefined || right === undefined) return [];
    const gap = right.x.start.length.minus(left.x.end.length);
    const kerf = kerfOf(shop.machines ?? [], layout.unit).length;
    if (kerf.compare(gap) <= 0) return [];
    const by = kerf.minus(gap);
    return [splitWiderThanGap.at(at, { ...whoIs(cell, group), kerf, gap, by, each: by.dividedBy(2) })];
  });
}
