import { createFettleServices, type FettleServices } from '@fettle/language';
import { EmptyFileSystem, type LangiumDocument, URI, UriUtils } from 'langium';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { Fixture, FixtureFile } from './fixture.ts';

/** The files of a fixture, built in memory by the services the editor uses. */
export interface Workbench {
  readonly services: FettleServices;
  /** In the order of the fixture. */
  readonly documents: readonly LangiumDocument[];
  document(name: string): LangiumDocument;
}

const { shared, Fettle } = createFettleServices(EmptyFileSystem);
export const services: FettleServices = Fettle;
let fixtures = 0;

/** Each fixture has a folder of its own, so that names and files of one never reach another. */
export async function openFixture(fixture: Pick<Fixture, 'files'>): Promise<Workbench> {
  const folder = `file:///fixture-${++fixtures}/`;
  const documents = fixture.files.map(({ name, text }) =>
    shared.workspace.LangiumDocumentFactory.fromString(text, URI.parse(folder + name)),
  );
  for (const document of documents) shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build(documents, { validation: true });
  return {
    services: Fettle,
    documents,
    document: (name) => {
      const found = documents.find((each) => UriUtils.basename(each.uri) === name);
      if (found === undefined) throw new Error(`the fixture has no file ${name}`);
      return found;
    },
  };
}

export function fileName(uri: string): string {
  return UriUtils.basename(URI.parse(uri));
}

/** The files of a workbench after an edit. Edits that overlap are refused by the text library. */
export function filesAfter(workbench: Workbench, edit: WorkspaceEdit): FixtureFile[] {
  const known = new Set(workbench.documents.map((each) => each.uri.toString()));
  const stray = Object.keys(edit.changes ?? {}).filter((uri) => !known.has(uri));
  if (stray.length > 0) throw new Error(`the edit touches ${stray.join(', ')}, which is no file of the fixture`);
  return workbench.documents.map((document) => ({
    name: fileName(document.uri.toString()),
    text: textAfter(document, edit.changes?.[document.uri.toString()] ?? []),
  }));
}

export function textAfter(document: LangiumDocument, edits: readonly TextEdit[]): string {
  return TextDocument.applyEdits(document.textDocument, [...edits]);
}
