import { type EvaluatedTexts, evaluateTexts, type NamedText } from './evaluated-texts.ts';
import type { CheckJson, FindingJson } from './finding-json.ts';
import { annotationLines } from './findings-as-annotations.ts';
import { sarifLog } from './findings-as-sarif.ts';
import { findingLines, onTerminal, summaryWords } from './findings-as-text.ts';
import { jsonText } from './length-json.ts';
import { FindingReporter } from './report-findings.ts';
import { type ExitCode, exit, type Terminal } from './terminal.ts';

export const checkFormats = ['text', 'json', 'sarif', 'github'] as const;
export type CheckFormat = (typeof checkFormats)[number];

/** `fettle check`: tells what is wrong with the named texts. */
export async function check(named: readonly NamedText[], format: CheckFormat, terminal: Terminal): Promise<ExitCode> {
  const evaluated = await evaluateTexts(named);
  const { texts, refusals } = evaluated;
  const findings = new FindingReporter(evaluated.documents, texts).all(texts);
  for (const { name, why } of refusals) terminal.err(onTerminal(`${name} ${why}`));
  switch (format) {
    case 'json':
      terminal.out(jsonText(checkJson(evaluated, findings)));
      break;
    case 'sarif':
      terminal.out(`${JSON.stringify(sarifLog(checkJson(evaluated, findings)), undefined, 2)}\n`);
      break;
    case 'github':
      terminal.out(annotationLines(checkJson(evaluated, findings)));
      break;
    case 'text':
      terminal.out(findings.map(findingLines).join(''));
      if (texts.length > 0) terminal.err(summaryWords(findings, texts.length));
      break;
    default: {
      const unknown: never = format;
      return unknown;
    }
  }
  if (refusals.length > 0) return exit.unable;
  return findings.some((finding) => finding.severity === 'error') ? exit.errors : exit.clean;
}

function checkJson({ texts, refusals }: EvaluatedTexts, findings: readonly FindingJson[]): CheckJson {
  const count = (severity: FindingJson['severity']) => findings.filter((each) => each.severity === severity).length;
  return {
    format: 'fettle-check',
    version: 1,
    files: texts.map((text) => (text.name === '-' ? text.path : text.name)),
    findings,
    refused: refusals.map(({ name, why }) => ({ file: name, why })),
    errors: count('error'),
    warnings: count('warning'),
    notes: count('note'),
  };
}
