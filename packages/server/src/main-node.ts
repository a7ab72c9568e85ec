import { Worker } from 'node:worker_threads';
import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { ClientFiles } from './client-files.ts';
import { FilesByPlace } from './files-by-place.ts';
import { SearchInThread } from './plans/search-in-thread.ts';
import type { FromPlanner, PlannerThread } from './plans/search-messages.ts';
import { startFettleServer } from './start-server.ts';

/** Entry of the server as a process: talks over what its command line says, reads this machine's files itself. */
const connection = createConnection(ProposedFeatures.all);

/** The same bundle once more: what it is there for it sees by its data. It does not keep the process from ending. */
function plannerThread(): PlannerThread {
  const worker = new Worker(__filename, { workerData: { fettle: 'plans' } });
  worker.unref();
  return {
    send: (message) => worker.postMessage(message),
    listen(heard, broken) {
      worker.on('message', (message: FromPlanner) => heard(message));
      worker.on('error', (error) => broken(error instanceof Error ? error.message : String(error)));
      worker.on('exit', () => broken('it has ended'));
    },
    end: () => void worker.terminate(),
  };
}

startFettleServer(
  connection,
  new FilesByPlace(NodeFileSystem.fileSystemProvider(), new ClientFiles(connection)),
  new SearchInThread(plannerThread, (why) => connection.console.log(`plans are searched for without a thread: ${why}`)),
);
