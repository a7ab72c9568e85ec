import { catalogue, type Finding } from '@fettle/findings';
import { say } from '../reading-layouts.ts';

/** The sentence of a finding with all its lengths as exact inches. */
export function sentence(finding: Finding): string {
  return entryOf(finding).headline(finding.facts, say);
}

export function mendTitles(finding: Finding): readonly string[] {
  return finding.mends.map((mend) => {
    const words = entryOf(finding).mends[mend.how];
    if (words === undefined) throw new Error(`${finding.code} has no words for ${mend.how}`);
    return words(mend.values, say);
  });
}

export function relatedSentences(finding: Finding): readonly string[] {
  return finding.related.map((related) => {
    const words = entryOf(finding).related[related.role];
    if (words === undefined) throw new Error(`${finding.code} has no words for ${related.role}`);
    return words(related.values, say);
  });
}

function entryOf(finding: Finding) {
  const entry = catalogue.get(finding.code);
  if (entry === undefined) throw new Error(`no catalogue entry for ${finding.code}`);
  return entry;
}
