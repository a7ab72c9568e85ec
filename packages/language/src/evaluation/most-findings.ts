import { type Say, type Severity, textTooLarge } from '@fettle/findings';
import { fileUnitId } from '../reading/text-units.ts';
import type { PlacedFinding } from './placed-findings.ts';

/** More than anyone reads; a list that grows with the text would only make the editor slow. */
export const mostFindings = 500;

const rank: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/** The gravest of them in their own order, and a last one that says how many more there are. */
export function mostImportant(findings: readonly PlacedFinding[], say: Say): readonly PlacedFinding[] {
  if (findings.length <= mostFindings) return findings;
  const byRank = [...findings].sort((a, b) => rank[a.severity] - rank[b.severity]);
  const kept = new Set(byRank.slice(0, mostFindings));
  const [first] = byRank.slice(mostFindings);
  if (first === undefined) return findings;
  const facts = { what: 'findings', limit: mostFindings, count: findings.length - mostFindings } as const;
  const { uri, start, end, severity } = first;
  const finding = textTooLarge.at({ unit: fileUnitId, start, end }, facts, { severity });
  const last: PlacedFinding = {
    uri,
    start,
    end,
    code: finding.code,
    severity,
    sentence: textTooLarge.headline(facts, say),
    brief: textTooLarge.brief?.(facts, say) ?? '',
    related: [],
    fixes: [],
    finding,
  };
  return [...findings.filter((each) => kept.has(each)), last];
}
