import type { LangiumDocument, LangiumDocuments } from 'langium';
import { URI } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import type { CodeAction, CodeActionParams, Diagnostic, Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { DocumentEvaluator } from '../evaluation/evaluate-document.ts';
import type { PlacedFinding, TextChange } from '../evaluation/placed-findings.ts';
import type { FettleServices } from '../fettle-module.ts';

const quickFix = 'quickfix';

/**
 * The light bulb. Fixes come from the findings of the document as it is now; a squiggle only says, by its code and
 * place, which finding it shows. Errors before warnings, and within one finding the best way out first.
 */
export class FettleCodeActionProvider implements CodeActionProvider {
  readonly #evaluator: DocumentEvaluator;
  readonly #documents: LangiumDocuments;

  constructor(services: FettleServices) {
    this.#evaluator = services.evaluation.DocumentEvaluator;
    this.#documents = services.shared.workspace.LangiumDocuments;
  }

  getCodeActions(document: LangiumDocument, params: CodeActionParams): CodeAction[] {
    const { only, diagnostics } = params.context;
    if (only !== undefined && !only.some((kind) => kind === '' || kind === quickFix)) return [];
    const uri = document.uri.toString();
    const [start, end] = [
      document.textDocument.offsetAt(params.range.start),
      document.textDocument.offsetAt(params.range.end),
    ];
    return this.#evaluator
      .evaluate(document)
      .findings.filter((placed) => placed.uri === uri)
      .map((placed) => ({ placed, shown: diagnostics.filter((each) => shows(each, placed)) }))
      .filter(({ placed, shown }) => shown.length > 0 || (placed.start <= end && start <= placed.end))
      .sort((a, b) => rank(a.placed) - rank(b.placed))
      .flatMap(({ placed, shown }) => this.#actions(placed, shown));
  }

  #actions(placed: PlacedFinding, diagnostics: Diagnostic[]): CodeAction[] {
    return placed.fixes.flatMap((fix) => {
      const edit = this.#workspaceEdit(fix.edits);
      if (edit === undefined) return [];
      return [{ title: fix.title, kind: quickFix, diagnostics, isPreferred: fix.preferred, edit }];
    });
  }

  /** Undefined when a file that would change is not loaded any more. */
  #workspaceEdit(edits: readonly TextChange[]): WorkspaceEdit | undefined {
    const changes: Record<string, TextEdit[]> = {};
    for (const edit of edits) {
      const document = this.#documents.getDocument(URI.parse(edit.uri));
      if (document === undefined) return undefined;
      changes[edit.uri] = [...(changes[edit.uri] ?? []), { range: rangeOf(document, edit), newText: edit.text }];
    }
    return { changes };
  }
}

function shows(diagnostic: Diagnostic, placed: PlacedFinding): boolean {
  const data: unknown = diagnostic.data;
  if (typeof data !== 'object' || data === null) return false;
  const { code, start, end } = data as Readonly<Record<string, unknown>>;
  return code === placed.code && start === placed.start && end === placed.end;
}

function rank({ severity }: PlacedFinding): number {
  return { error: 0, warning: 1, note: 2 }[severity];
}

function rangeOf(document: LangiumDocument, { start, end }: TextChange): Range {
  return { start: document.textDocument.positionAt(start), end: document.textDocument.positionAt(end) };
}
