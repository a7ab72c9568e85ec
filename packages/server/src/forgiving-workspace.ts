import { DefaultWorkspaceManager, type LangiumDocument, type Stream, type URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import { describeError } from './guarded-connection.ts';

/**
 * Loads the texts of the workspace one by one: a file that cannot be read is logged and left out. By default it would
 * end the loading of all of them, and no text would ever be checked.
 */
export class ForgivingWorkspace extends DefaultWorkspaceManager {
  readonly #services: LangiumSharedServices;

  constructor(services: LangiumSharedServices) {
    super(services);
    this.#services = services;
  }

  protected override async loadWorkspaceDocuments(
    uris: Stream<URI>,
    collector: (document: LangiumDocument) => void,
  ): Promise<void> {
    await Promise.all(
      uris.map(async (uri) => {
        try {
          collector(await this.langiumDocuments.getOrCreateDocument(uri));
        } catch (error) {
          this.#services.lsp.Connection?.console.error(`${uri.toString()} was left out: ${describeError(error)}`);
        }
      }),
    );
  }
}
