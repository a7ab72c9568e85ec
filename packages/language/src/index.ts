/** The language: text -> design -> findings and features of an editor. Knows Langium; knows no editor and no files. */

export {
  DocumentEvaluator,
  type EvaluatedDocument,
  type EvaluatedPiece,
} from './evaluation/evaluate-document.ts';
export { whereverTheyHold } from './evaluation/gathered-notes.ts';
export type { PlacedFinding, PlacedFix, TextChange } from './evaluation/placed-findings.ts';
export { sayIn } from './evaluation/say.ts';
export { shownUnits } from './evaluation/shown-units.ts';
export { statementAround } from './evaluation/statement-around.ts';
export { fixAllKind } from './features/code-actions.ts';
export { FettleCompletionProvider } from './features/completion.ts';
export { selectionRanges } from './features/selection-ranges.ts';
export { type Told, verdictWords } from './features/verdict-words.ts';
export { createFettleServices, type FettleAddedServices, type FettleServices } from './fettle-module.ts';
export * from './new-piece/index.ts';
export type { Place } from './reading/text-units.ts';
export { findingsReference } from './reference/findings-reference.ts';
export { languageReference } from './reference/language-reference.ts';
export { moreSaid as referenceExamples } from './reference/more-said.ts';

import type { LangiumDocument } from 'langium';
import type { EvaluatedDocument } from './evaluation/evaluate-document.ts';
import type { FettleServices } from './fettle-module.ts';

/** Pieces and findings of a document that has been parsed; kept until it or a text it uses changes. */
export function evaluateDocument(services: FettleServices, document: LangiumDocument): EvaluatedDocument {
  return services.evaluation.DocumentEvaluator.evaluate(document);
}
