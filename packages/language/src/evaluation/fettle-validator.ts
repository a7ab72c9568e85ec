import {
  type DocumentValidator,
  delayNextTick,
  interruptAndCheck,
  type LangiumDocument,
  type ValidationOptions,
} from 'langium';
import type { CancellationToken } from 'vscode-jsonrpc';
import { type Diagnostic, DiagnosticSeverity, Range } from 'vscode-languageserver-types';
import type { FettleAddedServices } from '../fettle-module.ts';
import type { PlacedFinding } from './placed-findings.ts';

const severities = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  note: DiagnosticSeverity.Hint,
} as const;

/** Every squiggle is a finding of the catalogue; the parser and the linker have no voice of their own. */
export class FettleValidator implements DocumentValidator {
  readonly #services: FettleAddedServices;

  constructor(services: FettleAddedServices) {
    this.#services = services;
  }

  async validateDocument(
    document: LangiumDocument,
    _options?: ValidationOptions,
    token?: CancellationToken,
  ): Promise<Diagnostic[]> {
    // Evaluating is the longest thing that is done at a stretch: a key or a question that has arrived meanwhile goes first.
    await delayNextTick();
    if (token !== undefined) await interruptAndCheck(token);
    const { findings } = this.#services.evaluation.DocumentEvaluator.evaluate(document);
    return findings.filter((each) => each.uri === document.uri.toString()).map((each) => toDiagnostic(each, document));
  }
}

function toDiagnostic(placed: PlacedFinding, document: LangiumDocument): Diagnostic {
  const range = (start: number, end: number): Range =>
    Range.create(document.textDocument.positionAt(start), document.textDocument.positionAt(Math.max(end, start)));
  const related = placed.related
    .filter((each) => each.uri === placed.uri)
    .map((each) => ({ location: { uri: each.uri, range: range(each.start, each.end) }, message: each.sentence }));
  return {
    severity: severities[placed.severity],
    range: range(placed.start, placed.end),
    message: placed.sentence,
    source: 'fettle',
    code: placed.code,
    ...(related.length > 0 ? { relatedInformation: related } : {}),
    // The fix is made from the finding itself, found again by its code and place; never from the sentence.
    data: { code: placed.code, start: placed.start, end: placed.end },
  };
}
