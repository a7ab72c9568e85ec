import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { pictureNotification, type Verdict, verdictNotification, watchPicturesNotification } from '@fettle/protocol';
import {
  createProtocolConnection,
  type Diagnostic,
  DiagnosticSeverity,
  type Position,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';

/** The bundled server as a process, and what an editor says to it. Measures from the words sent to the words received. */
export class EditorSession {
  readonly #process: ChildProcess;
  readonly #connection: ProtocolConnection;
  readonly #waiting = new Set<(method: string, params: unknown) => void>();
  #version = 0;

  private constructor(process: ChildProcess, connection: ProtocolConnection) {
    this.#process = process;
    this.#connection = connection;
    for (const method of ['textDocument/publishDiagnostics', verdictNotification, pictureNotification]) {
      connection.onNotification(method, (params: unknown) => {
        for (const hear of [...this.#waiting]) hear(method, params);
      });
    }
  }

  /** From the start of the process to its answer. */
  static async start(
    server: string,
    folder: string,
  ): Promise<{ readonly session: EditorSession; readonly tookMs: number }> {
    const began = performance.now();
    const child = spawn(process.execPath, [server, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
    const connection = createProtocolConnection(
      new StreamMessageReader(child.stdout),
      new StreamMessageWriter(child.stdin),
    );
    connection.listen();
    const session = new EditorSession(child, connection);
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
    this.#version += 1;
    const version = this.#version;
    const arrival = this.#squiggles(uri);
    const verdict = this.#heard(verdictNotification, (params) => (params as Verdict).version === version);
    const picture =
      wanted === 'picture'
        ? this.#heard(pictureNotification, (params) => (params as { version: number }).version === version)
        : undefined;
    const began = performance.now();
    await this.#connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [
        { range: { start: at, end: { line: at.line, character: at.character + deleted } }, text: typed },
      ],
    });
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

  /** `piece`: the one that is looked at, by its name. */
  async watchPicture(uri: string, piece: string): Promise<void> {
    const arrival = this.#heard(pictureNotification, () => true);
    await this.#connection.sendNotification(watchPicturesNotification, {
      pictures: [{ uri, shown: [{ piece, sheet: '' }], afresh: true }],
    });
    await arrival;
  }

  /** Undefined where the system does not tell. */
  residentMegabytes(): number | undefined {
    try {
      const status = readFileSync(`/proc/${this.#process.pid}/status`, 'utf8');
      return Number(/^VmRSS:\s+(\d+) kB/m.exec(status)?.[1]) / 1000;
    } catch {
      return undefined;
    }
  }

  /**
   * Time of processors that the server has used so far, all its threads together: unlike times by the clock it hardly
   * depends on what else the machine does. In steps of 10 ms; undefined where the system does not tell.
   */
  processorMs(): number | undefined {
    try {
      const status = readFileSync(`/proc/${this.#process.pid}/stat`, 'utf8');
      // After the name, which may hold anything but ends with the last parenthesis: the 12th and 13th figure.
      const figures = status.slice(status.lastIndexOf(')') + 2).split(' ');
      return (Number(figures[11]) + Number(figures[12])) * 10;
    } catch {
      return undefined;
    }
  }

  async end(): Promise<void> {
    const ended = new Promise((resolve) => this.#process.once('exit', resolve));
    await this.#connection.sendRequest('shutdown');
    await this.#connection.sendNotification('exit');
    await ended;
    this.#connection.dispose();
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
