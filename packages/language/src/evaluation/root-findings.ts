import type { LangiumDocument } from 'langium';
import type { StructureReport } from '../tokens/fettle-lexer.ts';
import type { PlacedFinding } from './placed-findings.ts';

/**
 * One cause, one finding: what only follows from a slip of the pen is not said again. A name whose quotation mark is
 * missing means nothing either; the last line of a text that ends inside braces may be half typed.
 */
export function withoutConsequences(findings: readonly PlacedFinding[], document: LangiumDocument): PlacedFinding[] {
  const report = document.parseResult.lexerReport as StructureReport | undefined;
  const slips = report?.slips ?? [];
  const endsAt = slips.flatMap((slip) => (slip.kind === 'brace-not-closed' && slip.atEnd ? [slip.closeAt] : []))[0];
  const lastLine = endsAt === undefined ? undefined : document.textDocument.getText().lastIndexOf('\n', endsAt - 1) + 1;
  const names = slips.filter((slip) => slip.kind === 'name-not-closed' || slip.kind === 'name-not-opened');
  const uri = document.uri.toString();
  return findings.filter((finding) => {
    if (finding.uri !== uri) return true;
    if (lastLine !== undefined && lastLine <= finding.start && ofHalfTypedWords.has(finding.code)) return false;
    if (!ofUnknownWords.has(finding.code)) return true;
    return !names.some((name) => name.start < finding.end && finding.start < name.end);
  });
}

const ofUnknownWords: ReadonlySet<string> = new Set([
  'name-empty',
  'name-missing',
  'said-inside-braces',
  'unknown-name',
  'unknown-word',
  'word-belongs-elsewhere',
]);
const ofHalfTypedWords: ReadonlySet<string> = new Set([
  ...ofUnknownWords,
  'name-not-closed',
  'size-of-what',
  'stray-mark',
  'unit-apart',
  'value-not-understood',
]);
