import { LARGEST_PIECE, Length, limitIn, parseTradeLength, SMALLEST_PIECE, type Units } from '@fettle/engine';
import { type Finding, type Mend, sizeAbsurd } from '@fettle/findings';
import { withUnit } from './notation.ts';
import { pieceUnitId } from './text-units.ts';

/**
 * A size that can hardly be meant speaks of what is written, `1200"` in a piece in millimetres, and is offered the same
 * number in the piece's own unit where that makes a usual size. `text`: the words of the piece.
 */
export function absurdAsWritten(findings: readonly Finding[], text: string, units: Units): readonly Finding[] {
  return findings.map((finding) => {
    if (finding.code !== sizeAbsurd.code || finding.origin.unit !== pieceUnitId) return finding;
    const written = text.slice(finding.origin.start, finding.origin.end);
    const number = parseTradeLength(written);
    if (number?.unit === undefined || number.unit === units.unit) return finding;
    const meant = Length.of(number.value, units.unit);
    const isUsual =
      meant.compare(limitIn(SMALLEST_PIECE, units.unit)) >= 0 && meant.compare(limitIn(LARGEST_PIECE, units.unit)) <= 0;
    // Feet and inches together have no number of their own.
    const bare = /^([\d\s./-]+)(?:mm|cm|[^\d\s])$/.exec(written.trim())?.[1]?.trim();
    const words = bare === undefined ? undefined : withUnit(bare, units.unit);
    const mends: readonly Mend[] =
      words === undefined || !isUsual
        ? []
        : [{ how: 'other-unit', values: { words }, changes: [{ kind: 'set-words', at: finding.origin, words }] }];
    return { ...finding, facts: { ...finding.facts, written }, mends: [...mends, ...finding.mends] };
  });
}
