import { parentPort } from 'node:worker_threads';
import { answerSearches } from './plans/answer-searches.ts';
import type { FromPlanner, ToPlanner } from './plans/search-messages.ts';

/** Entry of the thread that searches for cutting plans beside the server's process. */
const tell = (message: FromPlanner) => parentPort?.postMessage(message);
const answer = answerSearches(tell);
parentPort?.on('message', (message: ToPlanner) => answer(message));
tell({ kind: 'ready' });
