import { exactSource, Length, type MovedDivision, moveDivision, type WhyNot } from '@fettle/engine';
import type { EvaluatedPiece } from '@fettle/language';
import type { DivisionAnswer, TextSpan } from '@fettle/protocol';

/** A line moved in the picture as edits of the text, or the sentence that says why it cannot be. Lengths go in exactly. */
export function divisionAnswer(
  piece: EvaluatedPiece,
  document: { readonly uri: string; readonly text: string },
  division: string,
  steps: number,
): DivisionAnswer {
  const { evaluation, say } = piece;
  const { unit, ruler } = evaluation.design.units;
  const step = Length.of(ruler, unit);
  const by = step.times(steps);
  if (by.isZero()) return { kind: 'refused', sentence: 'The line stays where it is' };
  const moved = moveDivision(evaluation, division, by);
  if (moved.kind === 'refused') return { kind: 'refused', sentence: whyNotWords(moved.why) };
  const edits = moved.changes.flatMap((change) => {
    if (change.kind !== 'set-length') return [];
    const place = piece.locate(change.at);
    const length = Length.fromMeasure(change.to);
    if (place?.uri !== document.uri || length === undefined) return [];
    const words = document.text.slice(place.start, place.end);
    return [{ span: { start: place.start, end: place.end }, text: asWritten(words, exactSource(length, unit)) }];
  });
  if (edits.length !== moved.changes.length || overlap(edits.map(({ span }) => span))) {
    return { kind: 'refused', sentence: 'The size is written where it cannot be changed from here' };
  }
  return { kind: 'edits', edits, sentence: sizesWords(moved, say) };
}

/** Who wrote a bare number gets a bare number back. */
function asWritten(before: string, length: string): string {
  return /^[\d\s./\u2044-]+$/.test(before) && !length.includes("'") ? length.replace(/(?:"|mm|cm)$/, '') : length;
}

function overlap(spans: readonly TextSpan[]): boolean {
  return spans.some((one, at) => spans.slice(at + 1).some((other) => one.start < other.end && other.start < one.end));
}

function sizesWords(
  { before, after }: Extract<MovedDivision, { kind: 'changes' }>,
  say: EvaluatedPiece['say'],
): string {
  return `${before.label} ${say.length(before.size)}, ${after.label} ${say.length(after.size)}`;
}

function whyNotWords(why: WhyNot): string {
  switch (why.kind) {
    case 'no-such-line':
      return 'There is no such line any more';
    case 'no-size':
      return `Neither ${why.before} nor ${why.after} has a size of its own: give one of them a size in the text first`;
    case 'written-elsewhere':
      return `The size of ${why.label} is written outside this piece, where others use it too`;
    case 'measured':
      return `${why.label} is as it was measured: change that in the text if it was measured anew`;
    case 'held':
      return `Something else in the text holds the line between ${why.before} and ${why.after} where it is`;
    case 'no-room':
      return `So far over, there is no room left for ${why.label}`;
    default:
      return why satisfies never;
  }
}
