import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { workerReady } from '@fettle/protocol';
import {
  type MessageReader,
  type MessageWriter,
  PortMessageReader,
  PortMessageWriter,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';

/** The server as it is shipped, both ways: as a process over its standard streams, and as a worker over messages. */

export const bundles = ['process', 'worker'] as const;
export type Bundle = (typeof bundles)[number];

export interface RunningServer {
  /** Of the process the server has for itself; a worker has none. */
  readonly processId?: number;
  readonly reader: MessageReader;
  readonly writer: MessageWriter;
  /** Ends it at once, whether or not it was asked to shut down. */
  kill(): Promise<void>;
}

function bundled(dist: string, name: string): string {
  const file = join(dist, name);
  if (!existsSync(file)) throw new Error(`${file} is missing: run npm run build first`);
  return file;
}

async function startProcess(dist: string): Promise<RunningServer> {
  const child = spawn(process.execPath, [bundled(dist, 'server.js'), '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  return {
    ...(child.pid === undefined ? {} : { processId: child.pid }),
    reader: new StreamMessageReader(child.stdout),
    writer: new StreamMessageWriter(child.stdin),
    kill: () => {
      child.kill();
      return ended;
    },
  };
}

/**
 * What a web worker has, and nothing of Node: a bundle that reaches for `process`, `require` or `Buffer` fails here as
 * it would in a browser. What only Node has is taken out of the thread's own globals: in a context of its own each look
 * at a global is slow, and the bundle would be measured and waited for several times as long as in a browser.
 */
const browserLikeWorker = `
  const { readFileSync } = require('node:fs');
  const { runInNewContext, runInThisContext } = require('node:vm');
  const { parentPort, workerData } = require('node:worker_threads');
  const bundle = readFileSync(workerData, 'utf8');
  const kept = new Set([...runInNewContext('Object.getOwnPropertyNames(globalThis)'),
    'console', 'setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'queueMicrotask', 'structuredClone',
    'TextEncoder', 'TextDecoder', 'URL', 'URLSearchParams', 'AbortController', 'performance', 'crypto']);
  const world = globalThis;
  for (const name of Object.getOwnPropertyNames(world)) if (!kept.has(name)) delete world[name];
  Object.assign(world, { self: world, addEventListener: () => {}, removeEventListener: () => {},
    postMessage: (message) => parentPort.postMessage(message) });
  parentPort.on('message', (data) => world.onmessage?.({ data }));
  runInThisContext(bundle, { filename: 'server.js' });
`;

async function startWorker(dist: string): Promise<RunningServer> {
  const worker = new Worker(browserLikeWorker, { eval: true, workerData: bundled(dist, 'server.js') });
  await new Promise<void>((resolve, reject) => {
    worker.once('error', reject);
    worker.once('message', (first: unknown) => {
      if (first === workerReady) resolve();
      else reject(new Error(`the worker began with ${JSON.stringify(first)}`));
    });
  });
  return {
    reader: new PortMessageReader(worker),
    writer: new PortMessageWriter(worker),
    kill: async () => {
      await worker.terminate();
    },
  };
}

/** `dist`: the folder of the bundles. */
export function startServer(bundle: Bundle, dist: string): Promise<RunningServer> {
  return bundle === 'process' ? startProcess(dist) : startWorker(dist);
}
