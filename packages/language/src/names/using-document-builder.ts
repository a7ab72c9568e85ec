import {
  type BuildOptions,
  DefaultDocumentBuilder,
  DocumentState,
  type FileSystemProvider,
  type LangiumDocument,
  type LangiumSharedCoreServices,
  type URI,
} from 'langium';
import type { CancellationToken } from 'vscode-jsonrpc';
import { isFolderPath, resolveUse, useStatements } from './used-files.ts';

/** Loads the files that a text uses into the build of that text, also where no folder is open. */
export class UsingDocumentBuilder extends DefaultDocumentBuilder {
  readonly #files: FileSystemProvider;
  #options: BuildOptions = {};

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.#files = services.workspace.FileSystemProvider;
  }

  protected override async buildDocuments(
    documents: LangiumDocument[],
    options: BuildOptions,
    token: CancellationToken,
  ): Promise<void> {
    this.#options = options;
    await super.buildDocuments(documents, options, token);
  }

  /**
   * Every document is parsed by the time contents are indexed, so what each uses is read from the text of now; what is
   * loaded then joins the documents under way.
   */
  protected override async runCancelable(
    documents: LangiumDocument[],
    target: DocumentState,
    token: CancellationToken,
    callback: (document: LangiumDocument) => unknown,
  ): Promise<void> {
    if (target === DocumentState.IndexedContent) {
      const loaded = await this.#loadUsed(documents, token);
      this.prepareBuild(loaded, this.#options);
      documents.push(...loaded);
    }
    await super.runCancelable(documents, target, token, callback);
  }

  /** The used documents that were not known yet, and those that they use. */
  async #loadUsed(documents: readonly LangiumDocument[], token: CancellationToken): Promise<LangiumDocument[]> {
    const loaded: LangiumDocument[] = [];
    const waiting = [...documents];
    for (let document = waiting.shift(); document !== undefined; document = waiting.shift()) {
      for (const { path } of useStatements(document)) {
        for (const uri of await this.#urisAt(document, path)) {
          if (this.langiumDocuments.hasDocument(uri)) continue;
          try {
            const used = await this.langiumDocuments.getOrCreateDocument(uri, token);
            loaded.push(used);
            waiting.push(used);
          } catch {
            // A file that is not there is a finding of the text that uses it.
          }
        }
      }
    }
    return loaded;
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
