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
 * it would in a browser.
 */
const browserLikeWorker = `
  const { readFileSync } = require('node:fs');
  const { createContext, runInContext } = require('node:vm');
  const { parentPort, workerData } = require('node:worker_threads');
  const world = { console, setTimeout, clearTimeout, setInterval, clearInterval, queueMicrotask, structuredClone,
    TextEncoder, TextDecoder, URL, URLSearchParams, AbortController, performance, crypto,
    addEventListener: () => {}, removeEventListener: () => {},
    postMessage: (message) => parentPort.postMessage(message) };
  world.self = world;
  world.globalThis = world;
  createContext(world);
  parentPort.on('message', (data) => world.onmessage?.({ data }));
  runInContext(readFileSync(workerData, 'utf8'), world, { filename: 'server.js' });
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
