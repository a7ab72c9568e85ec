import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import {
  type FrameState,
  type Picture,
  type PictureFrame,
  pictureNotification,
  type Verdict,
  verdictNotification,
  type WatchPictures,
  watchPicturesNotification,
  withFrame,
} from '@fettle/protocol';
import {
  type CodeAction,
  CodeActionRequest,
  ConfigurationRequest,
  createProtocolConnection,
  type Diagnostic,
  DidChangeTextDocumentNotification,
  DidChangeWatchedFilesNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  ExitNotification,
  type FileChangeType,
  type Hover,
  HoverRequest,
  InitializedNotification,
  InitializeRequest,
  type InitializeResult,
  LogMessageNotification,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
  RegistrationRequest,
  ShutdownRequest,
  type TextEdit,
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { serveFilesOfMachine } from './files-of-machine.ts';
import { type Bundle, type RunningServer, startServer } from './server-bundles.ts';

const dist = join(import.meta.dirname, '../../dist');

/**
 * An editor reduced to what a server sees of one: a folder of files, open texts with versions, and what the server
 * published about them. Waits for what is expected instead of for time to pass.
 */
export class SmallEditor {
  readonly folder: string;
  readonly log: string[] = [];
  /** Everything published, in order. */
  readonly published: { readonly uri: string; readonly diagnostics: readonly Diagnostic[] }[] = [];
  /** As they were sent, and put together from that. */
  readonly frames: PictureFrame[] = [];
  readonly pictures: Picture[] = [];
  readonly verdicts: Verdict[] = [];
  /** What the server asked to be asked for again. */
  readonly refreshed: string[] = [];
  initialized: InitializeResult | undefined;
  readonly #server: RunningServer;
  readonly #connection: ProtocolConnection;
  readonly #open = new Map<string, TextDocument>();
  /** How much had been published about each text when it was last opened: what came before speaks of an earlier text. */
  readonly #opened = new Map<string, { readonly pictures: number; readonly verdicts: number }>();
  readonly #received = new Map<string, FrameState>();
  #wake: (() => void)[] = [];
  #isDead = false;

  private constructor(server: RunningServer, folder: string) {
    this.#server = server;
    this.folder = folder;
    this.#connection = createProtocolConnection(server.reader, server.writer);
  }

  /**
   * `files` are written to a fresh folder, which is the workspace. Those that are `unreadable` are listed there and
   * larger than can be read at once (3 GiB of nothing, which take no room on the disk).
   */
  static async start(
    bundle: Bundle,
    files: Readonly<Record<string, string>>,
    unreadable: readonly string[] = [],
    settings?: Readonly<Record<string, unknown>>,
  ): Promise<SmallEditor> {
    const folder = mkdtempSync(join(tmpdir(), 'fettle-'));
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
    for (const name of unreadable) truncateSync(join(folder, name), 3 * 2 ** 30);
    const editor = new SmallEditor(await startServer(bundle, dist), folder);
    await editor.#begin(settings);
    return editor;
  }

  /** With `settings`, the editor is one that can be asked for them. */
  async #begin(settings?: Readonly<Record<string, unknown>>): Promise<void> {
    const connection = this.#connection;
    const note = <T>(list: T[], item: T) => {
      list.push(item);
      this.#stir();
    };
    connection.onNotification(PublishDiagnosticsNotification.type, (params) => note(this.published, params));
    connection.onNotification(pictureNotification, (frame: PictureFrame) => {
      const after = withFrame(this.#received.get(frame.uri), frame);
      if (after === undefined) throw new Error(`frame ${frame.frame} presumes ${frame.since}, which never came`);
      this.#received.set(frame.uri, after);
      this.frames.push(frame);
      note(this.pictures, after.picture);
    });
    connection.onNotification(verdictNotification, (verdict: Verdict) => note(this.verdicts, verdict));
    connection.onNotification(LogMessageNotification.type, ({ message }) => note(this.log, message));
    connection.onRequest(RegistrationRequest.type, () => undefined);
    for (const what of ['workspace/codeLens/refresh', 'workspace/inlayHint/refresh']) {
      connection.onRequest(what, () => {
        note(this.refreshed, what);
        return null;
      });
    }
    connection.onRequest(ConfigurationRequest.type, ({ items }) =>
      items.map(({ section }) => settings?.[section ?? ''] ?? null),
    );
    serveFilesOfMachine(connection);
    connection.listen();
    this.initialized = await connection.sendRequest(InitializeRequest.type, {
      processId: null,
      rootUri: null,
      workspaceFolders: [{ name: 'workshop', uri: pathToFileURL(this.folder).href }],
      capabilities: {
        textDocument: { completion: { completionItem: { resolveSupport: { properties: ['documentation'] } } } },
        workspace: {
          workspaceFolders: true,
          codeLens: { refreshSupport: true },
          inlayHint: { refreshSupport: true },
          didChangeWatchedFiles: { dynamicRegistration: true },
          ...(settings === undefined ? {} : { configuration: true }),
        },
      },
    });
    await connection.sendNotification(InitializedNotification.type, {});
  }

  /** Ends the server at once, as a crash would; what was sent may or may not have arrived. */
  async serverDies(): Promise<void> {
    this.#isDead = true;
    await this.#server.kill();
    this.#connection.dispose();
  }

  async stop(): Promise<void> {
    if (!this.#isDead) {
      await this.#connection.sendRequest(ShutdownRequest.type);
      await this.#connection.sendNotification(ExitNotification.type);
      this.#connection.dispose();
      await this.#server.kill();
    }
    rmSync(this.folder, { recursive: true, force: true });
  }

  uri(name: string): string {
    return name.includes(':') ? name : pathToFileURL(join(this.folder, name)).href;
  }

  text(name: string): string {
    return this.#document(name).getText();
  }

  version(name: string): number {
    return this.#document(name).version;
  }

  /** Opens a file of the folder, or `text` under a name or uri of its own. */
  async open(name: string, text?: string): Promise<void> {
    const uri = this.uri(name);
    const document = TextDocument.create(uri, 'fettle', 1, text ?? readFileSync(fileURLToPath(uri), 'utf8'));
    this.#open.set(uri, document);
    this.#opened.set(uri, { pictures: this.pictures.length, verdicts: this.verdicts.length });
    await this.#connection.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: { uri, languageId: 'fettle', version: 1, text: document.getText() },
    });
  }

  async close(name: string): Promise<void> {
    const uri = this.uri(name);
    this.#open.delete(uri);
    await this.#connection.sendNotification(DidCloseTextDocumentNotification.type, { textDocument: { uri } });
  }

  /** Replaces the one place where `words` stand. */
  async edit(name: string, words: string, replacement: string): Promise<void> {
    await this.apply(name, [{ range: this.#rangeOf(name, words), newText: replacement }]);
  }

  async apply(name: string, edits: readonly TextEdit[]): Promise<void> {
    const document = this.#document(name);
    // From the last to the first, so that no edit moves the place of another.
    const ordered = [...edits].sort((a, b) => document.offsetAt(b.range.start) - document.offsetAt(a.range.start));
    const changes = ordered.map(({ range, newText }) => ({ range, text: newText }));
    const version = document.version + 1;
    TextDocument.update(document, changes, version);
    await this.#connection.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: document.uri, version },
      contentChanges: changes,
    });
  }

  /** Wants pictures of these texts and no others, of the first sheet of their first piece. */
  async watch(...names: string[]): Promise<void> {
    await this.look(...names.map((name) => ({ name, piece: '', sheet: '' })));
  }

  /** Wants pictures in which just these sheets are drawn. */
  async look(
    ...shown: readonly { readonly name: string; readonly piece: string; readonly sheet: string }[]
  ): Promise<void> {
    const pictures = shown.map(({ name, piece, sheet }) => ({
      uri: this.uri(name),
      shown: [{ piece, sheet }],
      afresh: false,
    }));
    const params: WatchPictures = { pictures };
    await this.#connection.sendNotification(watchPicturesNotification, params);
  }

  /** Replaces stretches of the text, given by their offsets. */
  async replace(
    name: string,
    edits: readonly { readonly span: { readonly start: number; readonly end: number }; readonly text: string }[],
  ): Promise<void> {
    const document = this.#document(name);
    const at = (offset: number) => document.positionAt(offset);
    const changes = edits.map(({ span, text }) => ({
      range: { start: at(span.start), end: at(span.end) },
      newText: text,
    }));
    await this.apply(name, changes);
  }

  /** Sends a notification as it is, sensible or not. */
  async tell(method: string, params: object): Promise<void> {
    await this.#connection.sendNotification(method, params);
  }

  async tellOfFile(name: string, type: FileChangeType): Promise<void> {
    const changes = [{ uri: this.uri(name), type }];
    await this.#connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes });
  }

  /** The hover over the middle of `words`. */
  async hover(name: string, words: string): Promise<Hover | null> {
    const range = this.#rangeOf(name, words);
    const middle = this.#document(name).offsetAt(range.start) + Math.floor(words.length / 2);
    return this.#connection.sendRequest(HoverRequest.type, {
      textDocument: { uri: this.uri(name) },
      position: this.#document(name).positionAt(middle),
    });
  }

  async codeActions(name: string, diagnostic: Diagnostic): Promise<readonly CodeAction[]> {
    const answer = await this.#connection.sendRequest(CodeActionRequest.type, {
      textDocument: { uri: this.uri(name) },
      range: diagnostic.range,
      context: { diagnostics: [diagnostic] },
    });
    return (answer ?? []).filter((each): each is CodeAction => 'edit' in each || 'kind' in each);
  }

  request<T>(method: string, params: object): Promise<T> {
    return this.#connection.sendRequest<T>(method, params);
  }

  notify(method: string, params: object): Promise<void> {
    return this.#connection.sendNotification(method, params);
  }

  /** The words a diagnostic stands under, in the text as it is now. */
  wordsUnder(name: string, diagnostic: Diagnostic): string {
    return this.#document(name).getText(diagnostic.range);
  }

  /** What was published last; undefined when nothing was yet. */
  diagnostics(name: string): readonly Diagnostic[] | undefined {
    return this.published.findLast((each) => each.uri === this.uri(name))?.diagnostics;
  }

  /** Settles with the first thing `find` finds; fails after a minute and a half with what the server logged. */
  async until<T>(what: string, find: () => T | undefined | false): Promise<T> {
    const deadline = Date.now() + 90_000;
    for (;;) {
      const found = find();
      if (found !== undefined && found !== false) return found;
      const left = deadline - Date.now();
      if (left <= 0) throw new Error(`${what} did not come. The server said: ${this.log.join('\n') || 'nothing'}`);
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, left);
        this.#wake.push(() => {
          clearTimeout(timer);
          resolve();
        });
      });
    }
  }

  /** The verdict on the text as it is now. */
  verdictNow(name: string): Promise<Verdict> {
    const uri = this.uri(name);
    const version = this.version(name);
    return this.until(`the verdict on ${name} at version ${version}`, () =>
      this.verdicts
        .slice(this.#opened.get(uri)?.verdicts)
        .findLast((each) => each.uri === uri && each.version === version),
    );
  }

  /** The picture of the text as it is now. */
  pictureNow(name: string): Promise<Picture> {
    const uri = this.uri(name);
    const version = this.version(name);
    return this.until(`the picture of ${name} at version ${version}`, () =>
      this.pictures
        .slice(this.#opened.get(uri)?.pictures)
        .findLast((each) => each.uri === uri && each.version === version),
    );
  }

  #stir(): void {
    const waiting = this.#wake;
    this.#wake = [];
    for (const wake of waiting) wake();
  }

  #document(name: string): TextDocument {
    const document = this.#open.get(this.uri(name));
    if (document === undefined) throw new Error(`${name} is not open`);
    return document;
  }

  #rangeOf(name: string, words: string) {
    const document = this.#document(name);
    const text = document.getText();
    const start = text.indexOf(words);
    if (start < 0 || text.indexOf(words, start + 1) >= 0) throw new Error(`${words} must stand once in ${name}`);
    return { start: document.positionAt(start), end: document.positionAt(start + words.length) };
  }
}
