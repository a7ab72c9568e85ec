import { type BuildOptions, DefaultDocumentBuilder, type LangiumDocument } from 'langium';
import type { CancellationToken } from 'vscode-jsonrpc';
import { resolveUse, useStatements } from './used-files.ts';

/** Loads the files that a text uses before it is built, also where no folder is open. */
export class UsingDocumentBuilder extends DefaultDocumentBuilder {
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
        const uri = resolveUse(document, path);
        if (uri === undefined || seen.has(uri.toString()) || this.langiumDocuments.hasDocument(uri)) continue;
        seen.add(uri.toString());
        try {
          all.push(await this.langiumDocuments.getOrCreateDocument(uri, token));
        } catch {
          // A file that is not there is a finding of the text that uses it.
        }
      }
    }
    await super.buildDocuments(all, options, token);
  }
}
