import type { PlacedFinding } from './placed-findings.ts';

/**
 * What a note says of the words of a pattern it says of every piece made from it. A file that makes forty pieces of one
 * pattern hears it once, at the first of them, with how many more there are. Errors and warnings stay one for each piece:
 * each of them has to be mended or lived with.
 */
export function gatherNotes(findings: readonly PlacedFinding[]): readonly PlacedFinding[] {
  const alike = new Map<string, PlacedFinding[]>();
  for (const finding of findings) {
    const key = keyOf(finding);
    if (key === undefined) continue;
    const group = alike.get(key);
    if (group === undefined) alike.set(key, [finding]);
    else group.push(finding);
  }
  return findings.flatMap((finding): readonly PlacedFinding[] => {
    const key = keyOf(finding);
    const group = key === undefined ? undefined : alike.get(key);
    if (group === undefined) return [finding];
    return group[0] === finding ? [together(finding, group.slice(1))] : [];
  });
}

/** Each finding at every place where it holds, for whoever looks at one piece alone. */
export function whereverTheyHold(findings: readonly PlacedFinding[]): readonly PlacedFinding[] {
  return findings.flatMap((finding) => [finding, ...(finding.others ?? [])]);
}

function keyOf({ severity, code, sentence, pattern }: PlacedFinding): string | undefined {
  if (severity !== 'note' || pattern === undefined) return undefined;
  return JSON.stringify([code, pattern.uri, pattern.start, pattern.end, sentence]);
}

/** As many as one follows; the others are counted. */
const mostRelated = 5;

function together(first: PlacedFinding, others: readonly PlacedFinding[]): PlacedFinding {
  if (others.length === 0) return first;
  const more = others.length === 1 ? 'one more piece' : `${others.length} more pieces`;
  return {
    ...first,
    sentence: `${first.sentence}; the same holds for ${more} of this pattern`,
    related: [
      ...first.related,
      ...others
        .slice(0, mostRelated)
        .map(({ uri, start, end }) => ({ uri, start, end, sentence: 'and for this piece of the pattern' })),
    ],
    others,
  };
}
