import {
  type BuildOptions,
  DefaultDocumentBuilder,
  type FileSystemProvider,
  type LangiumDocument,
  type LangiumSharedCoreServices,
  type URI,
} from 'langium';
import type { CancellationToken } from 'vscode-jsonrpc';
import { isFolderPath, resolveUse, useStatements } from './used-files.ts';

/** Loads the files that a text uses before it is built, also where no folder is open. */
export class UsingDocumentBuilder extends DefaultDocumentBuilder {
  readonly #files: FileSystemProvider;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.#files = services.workspace.FileSystemProvider;
  }

  protected override async buildDocuments(
    documents: LangiumDocument[],
    options: BuildOptions,
    token: CancellationToken,
  ): Promise<void> {
    const all = [...documents];
    const seen = new Set(all.map((each) => each.uri.toString()));
    for (let at = 0; at < all.length; at++) {
      const document = all[at] as LangiumDocument;
      for (const { path } of useStatements(document)) {
        for (const uri of await this.#urisAt(document, path)) {
          if (seen.has(uri.toString()) || this.langiumDocuments.hasDocument(uri)) continue;
          seen.add(uri.toString());
          try {
            all.push(await this.langiumDocuments.getOrCreateDocument(uri, token));
          } catch {
            // A file that is not there is a finding of the text that uses it.
          }
        }
      }
    }
    await super.buildDocuments(all, options, token);
  }

  async #urisAt(document: LangiumDocument, path: string): Promise<URI[]> {
    const uri = resolveUse(document, path);
    if (uri === undefined) return [];
    if (!isFolderPath(path)) return [uri];
    try {
      const entries = await this.#files.readDirectory(uri);
      return entries.filter((each) => each.isFile && each.uri.path.endsWith('.fettle')).map((each) => each.uri);
    } catch {
      return [];
    }
  }
}
