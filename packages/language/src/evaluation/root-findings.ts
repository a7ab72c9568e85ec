import type { LangiumDocument } from 'langium';
import type { StructureReport } from '../tokens/fettle-lexer.ts';
import type { PlacedFinding } from './placed-findings.ts';

/**
 * One cause, one finding: what only follows from a slip of the pen is not said again. A name whose quotation mark is
 * missing means nothing either; the last word of a text that ends inside braces may be half typed.
 */
export function withoutConsequences(findings: readonly PlacedFinding[], document: LangiumDocument): PlacedFinding[] {
  const report = document.parseResult.lexerReport as StructureReport | undefined;
  const slips = report?.slips ?? [];
  const endsAt = slips.flatMap((slip) => (slip.kind === 'brace-not-closed' && slip.atEnd ? [slip.closeAt] : []))[0];
  const names = slips.filter((slip) => slip.kind === 'name-not-closed' || slip.kind === 'name-not-opened');
  const uri = document.uri.toString();
  return findings.filter((finding) => {
    if (finding.uri !== uri) return true;
    if (endsAt !== undefined && endsAt <= finding.end && ofHalfTypedWords.has(finding.code)) return false;
    if (!ofUnknownWords.has(finding.code)) return true;
    return !names.some((name) => name.start < finding.end && finding.start < name.end);
  });
}

const ofUnknownWords: ReadonlySet<string> = new Set(['unknown-word', 'unknown-name']);
const ofHalfTypedWords: ReadonlySet<string> = new Set([
  ...ofUnknownWords,
  'name-not-closed',
  'stray-mark',
  'value-not-understood',
]);
