import { workerReady } from '@fettle/protocol';
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { ClientFiles } from './client-files.ts';
import { startFettleServer } from './start-server.ts';

/** Entry of the server as a web worker: talks by messages, asks the editor for files. */
declare const self: { postMessage(message: unknown): void };

const port = self as never;
const connection = createConnection(new BrowserMessageReader(port), new BrowserMessageWriter(port));
startFettleServer(connection, new ClientFiles(connection));
self.postMessage(workerReady);
