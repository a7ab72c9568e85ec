import type { LangiumDocument, LangiumDocuments } from 'langium';
import type { DocumentLinkProvider } from 'langium/lsp';
import type { DocumentLink } from 'vscode-languageserver';
import type { FettleServices } from '../fettle-module.ts';
import { isPlainText } from '../generated/ast.ts';
import { documentsAt, useStatements } from '../names/used-files.ts';

/** The path of a `use` opens the file it names; a folder has no page to open. */
export class FettleDocumentLinkProvider implements DocumentLinkProvider {
  readonly #documents: LangiumDocuments;

  constructor(services: FettleServices) {
    this.#documents = services.shared.workspace.LangiumDocuments;
  }

  getDocumentLinks(document: LangiumDocument): DocumentLink[] {
    return useStatements(document).flatMap(({ statement, path }) => {
      const range = statement.parts.find(isPlainText)?.$cstNode?.range;
      const [used, ...others] = documentsAt(this.#documents, document, path);
      if (range === undefined || used === undefined || others.length > 0) return [];
      return [{ range, target: used.uri.toString() }];
    });
  }
}
