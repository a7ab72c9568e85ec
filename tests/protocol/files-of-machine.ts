import { readdirSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type FileParams, fileKindRequest, readFileRequest, readFolderRequest } from '@fettle/protocol';
import type { ProtocolConnection } from 'vscode-languageserver/node';

/** Answers what a server without files of its own asks its editor: from the files of this machine. */
export function serveFilesOfMachine(connection: ProtocolConnection): void {
  connection.onRequest(fileKindRequest, ({ uri }: FileParams) => kindOf(uri));
  connection.onRequest(readFileRequest, ({ uri }: FileParams) => orNothing(() => readText(fileURLToPath(uri))));
  connection.onRequest(readFolderRequest, ({ uri }: FileParams) =>
    readdirSync(fileURLToPath(uri)).map((name) => ({ name, kind: kindOf(`${uri}/${name}`) })),
  );
}

/** Throws for what is larger than a string can be, before a byte of it is read. */
function readText(file: string): string {
  if (statSync(file).size > 2 ** 29) throw new Error(`${file} is too large`);
  return readFileSync(file, 'utf8');
}

function kindOf(uri: string): 'file' | 'folder' | 'missing' {
  const stat = orNothing(() => statSync(fileURLToPath(uri)));
  if (stat === null) return 'missing';
  return stat.isDirectory() ? 'folder' : 'file';
}

function orNothing<T>(read: () => T): T | null {
  try {
    return read();
  } catch {
    return null;
  }
}
