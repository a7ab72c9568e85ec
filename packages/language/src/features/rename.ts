import { AstUtils, type LangiumDocument, type LangiumDocuments, type References, UriUtils } from 'langium';
import type { RenameProvider } from 'langium/lsp';
import type { Position, TextDocumentPositionParams } from 'vscode-languageserver';
import {
  ErrorCodes,
  type Range,
  type RenameParams,
  ResponseError,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { FettleServices } from '../fettle-module.ts';
import { isReference, type Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { nameKindWords, visibleNames } from '../names/visible-names.ts';
import { isQuote } from '../tokens/name-pattern.ts';
import { nameInQuotes } from '../tokens/names-in-quotes.ts';
import { type SpotRange, spotAt } from './spot.ts';

/** Renames a thing everywhere, in every file that says its name; quotation marks stay as each place has them. */
export class FettleRenameProvider implements RenameProvider {
  readonly #references: References;
  readonly #documents: LangiumDocuments;

  constructor(services: FettleServices) {
    this.#references = services.references.References;
    this.#documents = services.shared.workspace.LangiumDocuments;
  }

  /** The name at the caret without its quotation marks, where it is the name of something known. */
  prepareRename(document: LangiumDocument, params: TextDocumentPositionParams): Range | undefined {
    const named = this.#named(document, params.position);
    return named === undefined ? undefined : rangeOf(document, withoutMarks(document, named.range));
  }

  rename(document: LangiumDocument, params: RenameParams): WorkspaceEdit | undefined {
    const named = this.#named(document, params.position);
    if (named === undefined) return undefined;
    const name = nameInQuotes(params.newName.trim());
    this.#refuseBadName(named.declaration, name);
    const changes: Record<string, TextEdit[]> = {};
    for (const found of this.#references.findReferences(named.declaration, { includeDeclaration: true })) {
      const home = this.#documents.getDocument(found.sourceUri);
      if (home === undefined) continue;
      const { offset, end } = found.segment;
      const range = rangeOf(home, withoutMarks(home, { start: offset, end }));
      const uri = found.sourceUri.toString();
      changes[uri] = [...(changes[uri] ?? []), { range, newText: name }];
    }
    return { changes };
  }

  #named(
    document: LangiumDocument,
    position: Position,
  ): { readonly declaration: Statement; readonly range: SpotRange } | undefined {
    const spot = spotAt(document, document.textDocument.offsetAt(position));
    if (spot?.kind === 'name' && spot.spec.declares !== undefined) {
      return { declaration: spot.statement, range: spot.range };
    }
    if (spot?.kind !== 'part' || !isReference(spot.part)) return undefined;
    const declaration = spot.part.target.ref;
    return declaration === undefined ? undefined : { declaration, range: spot.range };
  }

  /** @throws {ResponseError} with a sentence for the reader */
  #refuseBadName(declaration: Statement, name: string): void {
    const refuse = (why: string) => {
      throw new ResponseError(ErrorCodes.InvalidParams, why);
    };
    if (name === '') refuse('a name has at least one letter');
    if (/["“”{}\r\n]/.test(name)) refuse('a name has no quotation marks, braces or line ends');
    const kind = specOf(declaration).spec.declares;
    if (kind === undefined) return;
    const home = AstUtils.getDocument(declaration);
    const taken = visibleNames(this.#documents, home, declaration, kind).get(name);
    if (taken !== undefined && taken.statement !== declaration) {
      refuse(
        `there is a ${nameKindWords[kind]} called "${name}" already, in ${UriUtils.basename(home.uri)} or a file it uses`,
      );
    }
  }
}

function withoutMarks(document: LangiumDocument, { start, end }: SpotRange): SpotRange {
  const words = document.textDocument.getText().slice(start, end);
  const first = isQuote(words[0]) ? 1 : 0;
  const last = words.length > first && isQuote(words.at(-1)) ? 1 : 0;
  return { start: start + first, end: end - last };
}

function rangeOf(document: LangiumDocument, { start, end }: SpotRange): Range {
  return { start: document.textDocument.positionAt(start), end: document.textDocument.positionAt(end) };
}
