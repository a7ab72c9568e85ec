import {
  type PictureFrame,
  pictureNotification,
  type StopPlanning,
  stopPlanningNotification,
  type Verdict,
  verdictNotification,
  type WatchedPicture,
  type WatchPictures,
  watchPicturesNotification,
} from '@fettle/protocol';
import * as vscode from 'vscode';
import { type BaseLanguageClient, type LanguageClientOptions, State } from 'vscode-languageclient';
import { clientOptions } from './client-options.ts';
import { serveFiles } from './serve-files.ts';

/** The conversation with the server: started, restarted and ended here, and nowhere else. */

export type MakeClient = (options: LanguageClientOptions) => Promise<BaseLanguageClient>;

export interface SessionListener {
  picture(frame: PictureFrame): void;
  verdict(verdict: Verdict): void;
  /** The server runs and knows nothing yet of what is wanted. */
  started(): void;
  stopped(): void;
}

export class LanguageSession {
  readonly #makeClient: MakeClient;
  readonly #log: vscode.LogOutputChannel;
  readonly #listener: SessionListener;
  #client: BaseLanguageClient | undefined;
  #crashShown = false;

  constructor(makeClient: MakeClient, log: vscode.LogOutputChannel, listener: SessionListener) {
    this.#makeClient = makeClient;
    this.#log = log;
    this.#listener = listener;
  }

  /** A server that cannot be started is reported like one that crashed. */
  async start(): Promise<void> {
    try {
      const client = await this.#makeClient(clientOptions(this.#log, () => this.#crashed()));
      this.#client = client;
      client.onNotification(pictureNotification, (frame: PictureFrame) => this.#listener.picture(frame));
      client.onNotification(verdictNotification, (verdict: Verdict) => this.#listener.verdict(verdict));
      serveFiles(client);
      await client.start();
      this.#listener.started();
    } catch (error) {
      this.#log.error('The language server could not be started', error instanceof Error ? error : String(error));
      this.#crashed();
    }
  }

  /** Waits until the server has ended, so that the editor does not cut it off. */
  async stop(): Promise<void> {
    const client = this.#client;
    this.#client = undefined;
    this.#listener.stopped();
    try {
      await client?.dispose();
    } catch (error) {
      // A server that crashed cannot be asked to end.
      this.#log.debug('The language server was gone already', String(error));
    }
  }

  async restart(): Promise<void> {
    this.#log.info('Restarting the language server');
    await this.stop();
    await this.start();
  }

  /** Rejects while there is no server. */
  async request<Answer>(method: string, params: object, token?: vscode.CancellationToken): Promise<Answer> {
    if (this.#client?.state !== State.Running) throw new Error('the language server does not run');
    return await this.#client.sendRequest<Answer>(method, params, token);
  }

  watchPictures(pictures: readonly WatchedPicture[]): void {
    if (this.#client?.state !== State.Running) return;
    const params: WatchPictures = { pictures };
    this.#client.sendNotification(watchPicturesNotification, params).catch((error: unknown) => {
      this.#log.warn('The wish for pictures did not reach the language server', String(error));
    });
  }

  stopPlanning(params: StopPlanning): void {
    if (this.#client?.state !== State.Running) return;
    this.#client.sendNotification(stopPlanningNotification, params).catch((error: unknown) => {
      this.#log.warn('That planning should stop did not reach the language server', String(error));
    });
  }

  #crashed(): void {
    this.#listener.stopped();
    if (this.#crashShown) return;
    this.#crashShown = true;
    void this.#offerRestart().finally(() => {
      this.#crashShown = false;
    });
  }

  async #offerRestart(): Promise<void> {
    const restart = 'Restart';
    const log = 'Show the Log';
    const words = 'Fettle no longer checks: its language server ended unexpectedly. Your texts are untouched.';
    const choice = await vscode.window.showErrorMessage(words, restart, log);
    if (choice === log) this.#log.show();
    if (choice === restart) await this.restart();
  }
}
