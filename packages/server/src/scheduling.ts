import { type FileSystemProvider, type Module, URI, UriUtils } from 'langium';
import {
  DefaultDocumentUpdateHandler,
  type LangiumSharedServices,
  type PartialLangiumSharedServices,
} from 'langium/lsp';
import {
  type Connection,
  type DidChangeWatchedFilesParams,
  FileChangeType,
  type FileEvent,
  type TextDocumentChangeEvent,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { ForgivingWorkspace } from './forgiving-workspace.ts';
import { describeError } from './guarded-connection.ts';

/**
 * When texts are built anew. A burst of edits becomes one build: a timer without delay collects whatever has already
 * arrived, so that a single key waits for nothing and thirty keys are not thirty builds. Files that are none of ours do
 * not disturb a build under way. Knows nothing of what a build finds.
 */

/** In characters. A text larger than this is built once typing pauses, not at every key. */
const largestWhileTyping = 500_000;
/** How long nothing may arrive before that counts as a pause, in milliseconds. */
const pause = 600;

/**
 * What is not built yet: from the first edit that arrives until the builder has taken it up. A request that looked at
 * the text in between would answer with places that are no longer there.
 */
export class Backlog {
  readonly #uris = new Set<string>();
  #takenUp: Promise<void> = Promise.resolve();
  #release: (() => void) | undefined;

  /** Settled while nothing waits. */
  get takenUp(): Promise<void> {
    return this.#takenUp;
  }

  /** True for the first of a burst: it is up to the caller to drain it later. */
  add(uri: string): boolean {
    const isFirst = this.#uris.size === 0;
    this.#uris.add(uri);
    if (this.#release === undefined) {
      this.#takenUp = new Promise((resolve) => {
        this.#release = resolve;
      });
    }
    return isFirst;
  }

  drain(): readonly string[] {
    const uris = [...this.#uris];
    this.#uris.clear();
    return uris;
  }

  /** The builder knows of everything drained; what came since goes on waiting. */
  release(): void {
    if (this.#uris.size > 0) return;
    this.#release?.();
    this.#release = undefined;
  }
}

class JoinedUpdates extends DefaultDocumentUpdateHandler {
  readonly #backlog: Backlog;
  readonly #files: FileSystemProvider;
  readonly #documents: LangiumSharedServices['workspace']['LangiumDocuments'];
  readonly #open: LangiumSharedServices['workspace']['TextDocuments'];
  readonly #services: LangiumSharedServices;
  #largest = largestWhileTyping;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #waitsForPause = false;
  /** Updates are numbered as they are asked for; the one under way. */
  #asked = 0;
  #turn = 0;

  constructor(services: LangiumSharedServices, backlog: Backlog) {
    super(services);
    this.#backlog = backlog;
    this.#services = services;
    services.workspace.DocumentBuilder.onUpdate(() => this.#takenUp(this.#turn));
    this.#files = services.workspace.FileSystemProvider;
    this.#documents = services.workspace.LangiumDocuments;
    this.#open = services.workspace.TextDocuments;
    const { ConfigurationProvider } = services.workspace;
    ConfigurationProvider.onConfigurationSectionUpdate(({ section, configuration }) => {
      if (section === 'fettle') this.#limit((configuration as { check?: unknown } | null)?.check);
    });
    ConfigurationProvider.ready
      .then(() => ConfigurationProvider.getConfiguration('fettle', 'check'))
      .then(
        (check: unknown) => this.#limit(check),
        () => this.#limit(undefined),
      );
  }

  /** What the maker sets as `fettle.check`; anything but a whole number of characters leaves the usual limit. */
  #limit(check: unknown): void {
    const largest = (check as { largestText?: unknown } | null | undefined)?.largestText;
    this.#largest = typeof largest === 'number' && largest >= 0 ? largest : largestWhileTyping;
  }

  /** As the default, but whatever becomes of the update, nobody goes on waiting for it. */
  protected override fireDocumentUpdate(changed: URI[], deleted: URI[]): void {
    const turn = ++this.#asked;
    this.workspaceManager.ready
      .then(() =>
        this.workspaceLock.write((token) => {
          this.#turn = turn;
          return this.documentBuilder.update(changed, deleted, token);
        }),
      )
      .catch((error) => {
        const uris = [...changed, ...deleted].map((uri) => uri.toString()).join(', ');
        this.#services.lsp.Connection?.console.error(`building ${uris} failed: ${describeError(error)}`);
      })
      .finally(() => this.#takenUp(turn));
  }

  /** An update that ends while a later one has still to begin says nothing about the edits of that one. */
  #takenUp(turn: number): void {
    if (turn === this.#asked) this.#backlog.release();
  }

  override didChangeContent(change: TextDocumentChangeEvent<TextDocument>): void {
    const { document } = change;
    const isFirst = this.#backlog.add(document.uri);
    // An opened text is built at once, whatever its size; only typing waits.
    const isTyped = this.#documents.getDocument(URI.parse(document.uri)) !== undefined;
    const waits = isTyped && document.getText().length > this.#largest;
    // A small text does not wait for a large one, and a large one waits from its last key on.
    if (!isFirst && !this.#waitsForPause) return;
    clearTimeout(this.#timer);
    this.#waitsForPause = waits;
    this.#timer = setTimeout(
      () => {
        this.#waitsForPause = false;
        this.fireDocumentUpdate(
          this.#backlog.drain().map((uri) => URI.parse(uri)),
          [],
        );
      },
      waits ? pause : 0,
    );
  }

  /** What was open and edited but not saved is gone: the file on disk holds again, or nothing does. */
  didCloseDocument(event: TextDocumentChangeEvent<TextDocument>): void {
    const uri = URI.parse(event.document.uri);
    void this.#files
      .exists(uri)
      .catch(() => false)
      .then((exists) => {
        // It may have been opened again meanwhile; then the open text holds.
        if (this.#open.get(uri) !== undefined) return;
        if (exists) this.fireDocumentUpdate([uri], []);
        else this.fireDocumentUpdate([], [uri]);
      });
  }

  override didChangeWatchedFiles(params: DidChangeWatchedFilesParams): void {
    this.onWatchedFilesChangeEmitter.fire(params);
    void this.#relevant(params.changes).then((changes) => {
      if (changes.length > 0) super.didChangeWatchedFiles({ changes: [...changes] });
    });
  }

  /**
   * Our own files that are not open (an open text holds against its file), and folders, which come and go without word
   * of what is in them.
   */
  async #relevant(changes: readonly FileEvent[]): Promise<readonly FileEvent[]> {
    const kept = await Promise.all(
      changes.map(async (change) => {
        const uri = URI.parse(change.uri);
        if (this.#open.get(uri) !== undefined) return [];
        if (this.#services.ServiceRegistry.hasServices(uri)) return [change];
        switch (change.type) {
          case FileChangeType.Deleted:
            return this.#folderGone(change, uri);
          case FileChangeType.Created:
            return (await this.#isFolder(uri)) ? [change] : [];
          default:
            return [];
        }
      }),
    );
    return kept.flat();
  }

  /** Texts of a folder that went away are forgotten, but for those that are open. */
  #folderGone(change: FileEvent, folder: URI): readonly FileEvent[] {
    const inside = this.#documents.all.filter((document) => isWithin(document.uri, folder)).toArray();
    const open = inside.filter((document) => this.#open.get(document.uri) !== undefined);
    if (inside.length === 0) return [];
    return [change, ...open.map(({ uri }): FileEvent => ({ uri: uri.toString(), type: FileChangeType.Changed }))];
  }

  async #isFolder(uri: URI): Promise<boolean> {
    try {
      return (await this.#files.stat(uri)).isDirectory;
    } catch {
      return false;
    }
  }
}

function isWithin(uri: URI, folder: URI): boolean {
  return UriUtils.normalize(uri).startsWith(`${UriUtils.normalize(folder).replace(/\/$/, '')}/`);
}

/** Folders that join or leave the workspace count as folders that come and go. */
export function followWorkspaceFolders(shared: LangiumSharedServices, connection: Connection): void {
  let announced = false;
  shared.lsp.LanguageServer.onInitialize((params) => {
    announced = params.capabilities.workspace?.workspaceFolders === true;
  });
  shared.lsp.LanguageServer.onInitialized(() => {
    if (!announced) return;
    connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
      const came = added.map(({ uri }): FileEvent => ({ uri, type: FileChangeType.Created }));
      const went = removed.map(({ uri }): FileEvent => ({ uri, type: FileChangeType.Deleted }));
      shared.lsp.DocumentUpdateHandler.didChangeWatchedFiles?.({ changes: [...went, ...came] });
    });
  });
}

/** The services that decide when to build, and from what. */
export function schedulingModule(backlog: Backlog): Module<LangiumSharedServices, PartialLangiumSharedServices> {
  return {
    lsp: { DocumentUpdateHandler: (services) => new JoinedUpdates(services, backlog) },
    workspace: { WorkspaceManager: (services) => new ForgivingWorkspace(services) },
  };
}
