import { type Finding, frontSizeNotMet } from '@fettle/findings';
import type { FrontCell } from '../design/design.ts';
import type { LaidCell } from '../evaluation.ts';
import { frontsAcross } from '../layout/group-axis.ts';
import type { LengthUnit } from '../length/length.ts';
import { exactSource } from '../length/trade-formats.ts';
import { cellsIn, whoIs } from './trade/alike.ts';

/**
 * Whether the fronts of a row or stack have the size that is asked of them together. They stand in openings of one size
 * and may sit in them in different ways. One finding for each row or stack, for the first that differs.
 */
export function frontSizeFindings(root: LaidCell, unit: LengthUnit): readonly Finding[] {
  const all = cellsIn(root);
  return all.flatMap(({ laid, group: parent }): Finding[] => {
    const { cell } = laid;
    if (parent === undefined || (cell.kind !== 'row' && cell.kind !== 'stack')) return [];
    if (cell.measured !== undefined || cell.along.kind !== 'fixed' || cell.along.basis !== 'front') return [];
    const asked = cell.along.figure.length;
    const across = new Set<unknown>(frontsAcross(cell, parent.kind));
    for (const { laid: inner, group } of all) {
      const span = parent.kind === 'row' ? inner.front?.x : inner.front?.y;
      if (span === undefined || !across.has(inner.cell) || span.size.length.equals(asked)) continue;
      const who = whoIs(inner.cell as FrontCell, group);
      const axis = parent.kind === 'row' ? 'wide' : 'high';
      const opening = (parent.kind === 'row' ? laid.opening.x : laid.opening.y).size.length;
      return [
        frontSizeNotMet.at(
          cell.sizeOrigin,
          {
            ...who,
            axis,
            asked,
            front: span.size.length,
            difference: span.size.length.minus(asked).abs(),
          },
          {
            related: [{ role: 'front', values: who, origin: inner.cell.origin }],
            mends: [
              {
                how: 'ask-opening',
                values: { opening, axis },
                changes: [
                  { kind: 'set-words', at: cell.sizeOrigin, words: `opening ${exactSource(opening, unit)} ${axis}` },
                ],
              },
            ],
          },
        ),
      ];
    }
    return [];
  });
}
