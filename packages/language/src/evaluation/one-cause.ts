import { type Finding, sizeLooksLikeOtherUnit, sizesNotPositive } from '@fettle/findings';

/** Engine findings that only follow from what the words of the same piece show. Their codes, by the code of the cause. */
const consequences: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  [sizeLooksLikeOtherUnit.code, new Set([sizesNotPositive.code])],
]);

/** One cause, one finding: what follows from a slip of the words goes, and the slip weighs as much as the gravest of it. */
export function causesOnly(words: readonly Finding[], worked: readonly Finding[]): readonly Finding[] {
  const following = new Map<string, Finding[]>();
  for (const { code } of words) {
    const codes = consequences.get(code);
    if (codes !== undefined) {
      following.set(
        code,
        worked.filter((each) => codes.has(each.code)),
      );
    }
  }
  if (following.size === 0) return [...words, ...worked];
  const gone = new Set([...following.values()].flat());
  const causes = words.map((each) =>
    following.get(each.code)?.some((result) => result.severity === 'error') === true
      ? { ...each, severity: 'error' as const }
      : each,
  );
  return [...causes, ...worked.filter((each) => !gone.has(each))];
}
