import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { pictureNotification, type Verdict, verdictNotification, watchPicturesNotification } from '@fettle/protocol';
import {
  createProtocolConnection,
  type Diagnostic,
  DiagnosticSeverity,
  type Position,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
} from 'vscode-languageserver/node';
import { serveFilesOfMachine } from '../protocol/files-of-machine.ts';
import { type Bundle, type RunningServer, startServer } from '../protocol/server-bundles.ts';
import { processorMs, residentMegabytes } from './process-figures.ts';

/** The bundled server, either way it is shipped, and what an editor says to it. Measures from the words sent to the words received. */
export class EditorSession {
  readonly #server: RunningServer;
  readonly #connection: ProtocolConnection;
  readonly #waiting = new Set<(method: string, params: unknown) => void>();
  #version = 0;

  private constructor(server: RunningServer, connection: ProtocolConnection) {
    this.#server = server;
    this.#connection = connection;
    for (const method of ['textDocument/publishDiagnostics', verdictNotification, pictureNotification]) {
      connection.onNotification(method, (params: unknown) => {
        for (const hear of [...this.#waiting]) hear(method, params);
      });
    }
  }

  /** From the start of the process or worker to its answer. */
  static async start(
    repository: string,
    bundle: Bundle,
    folder: string,
  ): Promise<{ readonly session: EditorSession; readonly tookMs: number }> {
    const began = performance.now();
    const server = await startServer(bundle, join(repository, 'dist'));
    const connection = createProtocolConnection(server.reader, server.writer);
    serveFilesOfMachine(connection);
    connection.listen();
    const session = new EditorSession(server, connection);
    const uri = pathToFileURL(folder).href;
    await connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: uri,
      workspaceFolders: [{ uri, name: 'bench' }],
      capabilities: {},
    });
    const tookMs = performance.now() - began;
    await connection.sendNotification('initialized', {});
    return { session, tookMs };
  }

  /** Until its first squiggles have arrived. */
  async open(uri: string, text: string): Promise<number> {
    this.#version = 1;
    const arrival = this.#squiggles(uri);
    const began = performance.now();
    const textDocument = { uri, languageId: 'fettle', version: this.#version, text };
    await this.#connection.sendNotification('textDocument/didOpen', { textDocument });
    await arrival;
    return performance.now() - began;
  }

  /**
   * Replaces `deleted` characters at `at` by `typed`, and waits for the squiggles of just that version. `picture`: and
   * for its picture.
   */
  async key(
    uri: string,
    at: Position,
    deleted: number,
    typed: string,
    wanted: 'squiggles' | 'picture' = 'squiggles',
  ): Promise<{ readonly tookMs: number; readonly afterSquigglesMs: number; readonly errors: number }> {
    const version = this.#version + 1;
    const arrival = this.#squiggles(uri);
    const verdict = this.#verdict(version);
    const picture =
      wanted === 'picture'
        ? this.#heard(pictureNotification, (params) => (params as { version: number }).version === version)
        : undefined;
    const began = performance.now();
    await this.#change(uri, at, deleted, typed);
    const diagnostics = await arrival;
    const squiggles = performance.now();
    if (picture !== undefined) await picture;
    const ended = performance.now();
    const [tookMs, afterSquigglesMs] = [ended - began, ended - squiggles];
    await verdict;
    return {
      tookMs,
      afterSquigglesMs,
      errors: diagnostics.filter(({ severity }) => severity === DiagnosticSeverity.Error).length,
    };
  }

  /** As `key`, but asks for the completion behind the key at once, as an editor does, and waits for its list. */
  async complete(
    uri: string,
    at: Position,
    typed: string,
  ): Promise<{ readonly tookMs: number; readonly items: number }> {
    const verdict = this.#verdict(this.#version + 1);
    const position = { ...at, character: at.character + typed.length };
    const began = performance.now();
    const changed = this.#change(uri, at, 0, typed);
    const answer = this.#connection.sendRequest<{ readonly items: readonly unknown[] }>('textDocument/completion', {
      textDocument: { uri },
      position,
    });
    const { items } = await answer;
    const tookMs = performance.now() - began;
    await changed;
    await verdict;
    return { tookMs, items: items.length };
  }

  /** The hover at a place of a text that rests. */
  async hover(uri: string, position: Position): Promise<{ readonly tookMs: number; readonly says: boolean }> {
    const began = performance.now();
    const answer = await this.#connection.sendRequest('textDocument/hover', { textDocument: { uri }, position });
    return { tookMs: performance.now() - began, says: answer !== null };
  }

  /**
   * Types these letters behind each other, one every `everyMs`, whatever the server does meanwhile. `settledMs`: from the
   * last one sent until the verdict on it; `verdicts`: how many came in all, the last one included: each is one build.
   */
  async burst(
    uri: string,
    at: Position,
    letters: string,
    everyMs: number,
  ): Promise<{ readonly settledMs: number; readonly verdicts: number }> {
    let verdicts = 0;
    const count = (method: string) => {
      if (method === verdictNotification) verdicts += 1;
    };
    this.#waiting.add(count);
    const settled = this.#verdict(this.#version + letters.length);
    const first = performance.now();
    let last = first;
    for (const [place, letter] of [...letters].entries()) {
      const wait = first + place * everyMs - performance.now();
      if (wait > 0) await new Promise((resolve) => setTimeout(resolve, wait));
      last = performance.now();
      void this.#change(uri, { ...at, character: at.character + place }, 0, letter);
    }
    await settled;
    const settledMs = performance.now() - last;
    this.#waiting.delete(count);
    return { settledMs, verdicts };
  }

  /** `piece`: the one that is looked at, by its name. */
  async watchPicture(uri: string, piece: string): Promise<void> {
    const arrival = this.#heard(pictureNotification, () => true);
    await this.#connection.sendNotification(watchPicturesNotification, {
      pictures: [{ uri, shown: [{ piece, sheet: '' }], afresh: true }],
    });
    await arrival;
  }

  /** Undefined of a worker, and where the system does not tell. */
  residentMegabytes(): number | undefined {
    return residentMegabytes(this.#server.processId);
  }

  /** That the server has used so far; undefined of a worker, and where the system does not tell. */
  processorMs(): number | undefined {
    return processorMs(this.#server.processId);
  }

  async end(): Promise<void> {
    await this.#connection.sendRequest('shutdown');
    await this.#connection.sendNotification('exit');
    this.#connection.dispose();
    await this.#server.kill();
  }

  #change(uri: string, at: Position, deleted: number, typed: string): Promise<void> {
    this.#version += 1;
    return this.#connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version: this.#version },
      contentChanges: [
        { range: { start: at, end: { line: at.line, character: at.character + deleted } }, text: typed },
      ],
    });
  }

  #verdict(version: number): Promise<unknown> {
    return this.#heard(verdictNotification, (params) => (params as Verdict).version === version);
  }

  async #squiggles(uri: string): Promise<readonly Diagnostic[]> {
    const method = 'textDocument/publishDiagnostics';
    const params = await this.#heard(method, (each) => (each as PublishDiagnosticsParams).uri === uri);
    return (params as PublishDiagnosticsParams).diagnostics;
  }

  #heard(method: string, isIt: (params: unknown) => boolean): Promise<unknown> {
    return new Promise((resolve, reject) => {
      const tooLong = setTimeout(() => reject(new Error(`no ${method} within a minute`)), 60_000);
      const hear = (heard: string, params: unknown) => {
        if (heard !== method || !isIt(params)) return;
        clearTimeout(tooLong);
        this.#waiting.delete(hear);
        resolve(params);
      };
      this.#waiting.add(hear);
    });
  }
}
