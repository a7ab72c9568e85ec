import { workerReady } from '@fettle/protocol';
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { startExtension } from './extension.ts';
import type { LanguageSession } from './language-session.ts';

/** Entry in the browser: the server is a worker. */

/** What is used here of the browser's own `Worker`. */
interface ServerWorker {
  addEventListener(event: 'message' | 'error', listener: (event: { readonly data?: unknown }) => void): void;
  removeEventListener(event: 'message', listener: (event: { readonly data?: unknown }) => void): void;
  terminate(): void;
}
declare const Worker: new (address: string) => ServerWorker;

let session: LanguageSession | undefined;

/** A worker that already listens; one that does not say so in time is given up. */
function startWorker(address: string): Promise<ServerWorker> {
  const worker = new Worker(address);
  return new Promise((resolve, reject) => {
    const giveUp = (why: string) => {
      worker.terminate();
      reject(new Error(why));
    };
    const timer = setTimeout(() => giveUp('the server did not answer within 20 seconds'), 20_000);
    const listener = (event: { readonly data?: unknown }) => {
      if (event.data !== workerReady) return;
      clearTimeout(timer);
      worker.removeEventListener('message', listener);
      resolve(worker);
    };
    worker.addEventListener('message', listener);
    worker.addEventListener('error', () => {
      clearTimeout(timer);
      giveUp('the server could not be loaded');
    });
  });
}

export function activate(context: ExtensionContext): void {
  const address = Uri.joinPath(context.extensionUri, 'dist/server.js').toString(true);
  let worker: ServerWorker | undefined;
  session = startExtension(context, async (options) => {
    worker?.terminate();
    worker = await startWorker(address);
    const client = new LanguageClient('fettle', 'Fettle', worker as never, options);
    return client;
  });
  context.subscriptions.push({ dispose: () => worker?.terminate() });
}

export async function deactivate(): Promise<void> {
  await session?.stop();
}
