import { workerReady } from '@fettle/protocol';
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { ClientFiles } from './client-files.ts';
import { answerSearches } from './plans/answer-searches.ts';
import { SearchInThread } from './plans/search-in-thread.ts';
import type { FromPlanner, PlannerThread, ToPlanner } from './plans/search-messages.ts';
import { startFettleServer } from './start-server.ts';

/** Entry as a web worker: the server, which talks by messages and asks the editor for files, or its planning thread. */

/** What is used here of the browser's own worker scope, and of a worker within it. */
interface MessageEnd<Sent, Heard> {
  postMessage(message: Sent): void;
  addEventListener(event: 'message', listener: (event: { readonly data: Heard }) => void): void;
}
declare const self: MessageEnd<unknown, ToPlanner> & {
  readonly name?: string;
  readonly location?: { readonly href: string };
};
declare const Worker: new (
  address: string,
  options: { readonly name: string },
) => MessageEnd<ToPlanner, FromPlanner> & {
  addEventListener(event: 'error', listener: () => void): void;
  terminate(): void;
};

const planner = 'fettle-plans';

/** The same bundle once more: what it is there for it sees by its name. Fails where there are no workers in workers. */
function plannerThread(): PlannerThread {
  const worker = new Worker(self.location?.href ?? '', { name: planner });
  return {
    send: (message) => worker.postMessage(message),
    listen(heard, broken) {
      worker.addEventListener('message', ({ data }) => heard(data));
      worker.addEventListener('error', () => broken('it could not be loaded, or has ended'));
    },
    end: () => worker.terminate(),
  };
}

if (self.name === planner) {
  const answer = answerSearches((message) => self.postMessage(message));
  self.addEventListener('message', ({ data }) => answer(data));
  self.postMessage({ kind: 'ready' } satisfies FromPlanner);
} else {
  const port = self as never;
  const connection = createConnection(new BrowserMessageReader(port), new BrowserMessageWriter(port));
  const searcher = new SearchInThread(plannerThread, (why) =>
    connection.console.log(`plans are searched for without a thread: ${why}`),
  );
  startFettleServer(connection, new ClientFiles(connection), searcher);
  self.postMessage(workerReady);
}
