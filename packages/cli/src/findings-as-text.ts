import type { FindingJson, PlaceJson } from './finding-json.ts';

/** Findings as lines for people and for whatever reads `file:line:column`. */

/** `file:line:column severity code sentence`; below it, indented, the other words concerned and the ways out. */
export function findingLines(finding: FindingJson): string {
  const lines = [`${placeWords(finding)} ${finding.severity} ${finding.code} ${finding.sentence}`];
  for (const related of finding.related) lines.push(`    ${placeWords(related)} ${related.sentence}`);
  for (const mend of finding.mends) lines.push(`    mend: ${mend.title}`);
  return lines.map((line) => `${onTerminal(line)}\n`).join('');
}

function placeWords({ file, start }: PlaceJson): string {
  return `${file}:${start.line}:${start.column}`;
}

/** `2 errors, 1 note in 3 files`. */
export function summaryWords(findings: readonly FindingJson[], files: number): string {
  const counts = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [counted(count, severity)];
  });
  return `${counts.length === 0 ? 'nothing to mend' : counts.join(', ')} in ${counted(files, 'file')}`;
}

export function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}

/** Names come from the text: nothing in them may steer a terminal or start a line of its own. */
export function onTerminal(words: string): string {
  return words.replaceAll(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, '\ufffd');
}
