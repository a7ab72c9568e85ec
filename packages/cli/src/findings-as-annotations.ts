import { sep } from 'node:path';
import { catalogue } from '@fettle/findings';
import type { CheckJson, FindingJson } from './finding-json.ts';
import { onTerminal } from './findings-as-text.ts';

/**
 * Findings as workflow commands, which GitHub's runners read from the output of a step and show beside the lines of a
 * change: `::error file=..,line=..,col=..,title=..::sentence`.
 */

const commands = { error: 'error', warning: 'warning', note: 'notice' } as const;

/** One line each; what could not be read comes last, without a place. Ways out follow the sentence, a line each. */
export function annotationLines(report: CheckJson): string {
  const findings = report.findings.map(annotation);
  const refused = report.refused.map(({ file, why }) => command('error', {}, `${file} ${why}`));
  return [...findings, ...refused].map((line) => `${line}\n`).join('');
}

function annotation(finding: FindingJson): string {
  const { code, end, file, mends, sentence, severity, start } = finding;
  // Columns mean something to the runner only within one line.
  const ends = end.line === start.line ? { endColumn: end.column } : {};
  const place = { file: forwardSlashes(file), line: start.line, endLine: end.line, col: start.column, ...ends };
  const lines = [sentence, ...mends.map(({ title }) => `mend: ${title}`)];
  return command(
    commands[severity],
    { ...place, title: catalogue.get(code)?.title ?? code },
    lines.map(onTerminal).join('\n'),
  );
}

function command(name: string, properties: Readonly<Record<string, string | number>>, data: string): string {
  const given = Object.entries(properties).map(([key, value]) => `${key}=${escapedProperty(String(value))}`);
  return `::${name}${given.length === 0 ? '' : ` ${given.join(',')}`}::${escapedData(data)}`;
}

function forwardSlashes(file: string): string {
  return onTerminal(file.replaceAll(sep, '/'));
}

function escapedData(words: string): string {
  return words.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

/** A comma would end the property, a colon the command. */
function escapedProperty(words: string): string {
  return escapedData(words).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
