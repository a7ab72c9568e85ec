import type { LangiumDocument } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import { type CodeAction, CodeActionKind, type CodeActionParams, type TextEdit } from 'vscode-languageserver';
import type { DocumentEvaluator } from '../evaluation/evaluate-document.ts';
import type { FettleServices } from '../fettle-module.ts';
import { safeEdits } from './fix-all.ts';
import { FettleCodeActionProvider } from './quick-fixes.ts';
import { refactoringsAt } from './refactorings/index.ts';
import { statementAt } from './spot.ts';

/** The source action that applies every safe fix of a text. */
export const fixAllKind = 'source.fixAll.fettle';

/** What a text can be changed by at one stroke: fixes of findings, all safe fixes together, and refactorings. */
export class FettleCodeActions implements CodeActionProvider {
  readonly #quickFixes: FettleCodeActionProvider;
  readonly #evaluator: DocumentEvaluator;

  constructor(services: FettleServices) {
    this.#quickFixes = new FettleCodeActionProvider(services);
    this.#evaluator = services.evaluation.DocumentEvaluator;
  }

  getCodeActions(document: LangiumDocument, params: CodeActionParams): CodeAction[] {
    return [
      ...this.#quickFixes.getCodeActions(document, params),
      ...this.#refactorings(document, params),
      ...this.#fixAll(document, params),
    ];
  }

  #refactorings(document: LangiumDocument, { range, context }: CodeActionParams): CodeAction[] {
    if (!isWanted(context.only, CodeActionKind.Refactor)) return [];
    const offset = document.textDocument.offsetAt(range.start);
    const statement = statementAt(document, offset);
    const { pieces, readable } = this.#evaluator.evaluate(document);
    const piece = pieces.find((each) => each.range.start <= offset && offset <= each.range.end);
    // Where braces had to be guessed, so would be what moves with a statement.
    if (statement === undefined || piece === undefined || !readable) return [];
    const text = document.textDocument.getText();
    return refactoringsAt({ text, statement, piece })
      .filter(({ kind }) => isWanted(context.only, kind))
      .map(({ title, kind, edits }) => ({
        title,
        kind,
        edit: { changes: { [document.uri.toString()]: edits.map(toEdit) } },
      }));

    function toEdit({ start, end, words }: { start: number; end: number; words: string }): TextEdit {
      const { textDocument } = document;
      return { range: { start: textDocument.positionAt(start), end: textDocument.positionAt(end) }, newText: words };
    }
  }

  /** Asked for by its kind only, as editors do on saving: in the light bulb of one finding it would be in the way. */
  #fixAll(document: LangiumDocument, { context }: CodeActionParams): CodeAction[] {
    if (context.only === undefined || !isWanted(context.only, fixAllKind)) return [];
    const edits = safeEdits(document, this.#evaluator.evaluate(document).findings);
    if (edits.length === 0) return [];
    const count = edits.length === 1 ? 'the one safe fix' : `${edits.length} safe fixes`;
    return [
      {
        title: `Apply ${count}`,
        kind: fixAllKind,
        edit: { changes: { [document.uri.toString()]: edits.flatMap((each) => [...each]) } },
      },
    ];
  }
}

/** A kind is wanted when it, or a kind it belongs to, is; `refactor` stands for all that begin with it. */
function isWanted(only: readonly string[] | undefined, kind: string): boolean {
  if (only === undefined) return true;
  return only.some(
    (each) => each === '' || each === kind || kind.startsWith(`${each}.`) || each.startsWith(`${kind}.`),
  );
}
