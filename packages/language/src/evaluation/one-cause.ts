import {
  type Finding,
  sizeAbsurd,
  sizeLooksLikeOtherUnit,
  sizeOfWhat,
  sizesNotPositive,
  thicknessAbsurd,
  unitApart,
  unitsMixedInSum,
  unknownWord,
  valueNotUnderstood,
  wordBelongsElsewhere,
} from '@fettle/findings';

/**
 * One cause, one finding, between what the words of a piece show and what comes of working them out. Where the unit of
 * the whole is in doubt, so is everything that was worked out with it; where words could not be read, what was meant by
 * them is not known, and no proportion can be judged.
 */
const onTheNumberAlone: ReadonlySet<string> = new Set([sizeAbsurd.code, thicknessAbsurd.code]);
const isProportion = ({ severity, code }: Finding) => severity === 'warning' && !onTheNumberAlone.has(code);
const follows: ReadonlyMap<string, (worked: Finding) => boolean> = new Map([
  [sizeLooksLikeOtherUnit.code, (worked: Finding) => worked.severity !== 'note'],
  ...[unknownWord, wordBelongsElsewhere, sizeOfWhat, unitApart, valueNotUnderstood].map(
    ({ code }) => [code, isProportion] as const,
  ),
  [unitsMixedInSum.code, ({ code }: Finding) => code === sizeAbsurd.code || code === sizesNotPositive.code],
]);

/** What only follows from a slip of the words goes, and the slip weighs as much as the gravest of it. */
export function causesOnly(words: readonly Finding[], worked: readonly Finding[]): readonly Finding[] {
  const gone = new Set<Finding>();
  const causes = words.map((cause) => {
    const results = worked.filter((each) => follows.get(cause.code)?.(each) === true);
    for (const each of results) gone.add(each);
    return results.some((each) => each.severity === 'error') ? { ...cause, severity: 'error' as const } : cause;
  });
  return [...causes, ...worked.filter((each) => !gone.has(each))];
}
