import {
  type FileKind,
  type FileParams,
  type FolderEntry,
  fileKindRequest,
  readFileRequest,
  readFolderRequest,
} from '@fettle/protocol';
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Reads files for a server that cannot reach them itself. Only reads; whatever cannot be read is simply not there. */

function kindOf(type: vscode.FileType): FileKind {
  if ((type & vscode.FileType.Directory) !== 0) return 'folder';
  return (type & vscode.FileType.File) !== 0 ? 'file' : 'missing';
}

async function orElse<T>(read: () => Thenable<T>, otherwise: T): Promise<T> {
  try {
    return await read();
  } catch {
    return otherwise;
  }
}

export function serveFiles(client: BaseLanguageClient): vscode.Disposable {
  const { fs } = vscode.workspace;
  return vscode.Disposable.from(
    client.onRequest(fileKindRequest, ({ uri }: FileParams) =>
      orElse<FileKind>(async () => kindOf((await fs.stat(vscode.Uri.parse(uri))).type), 'missing'),
    ),
    client.onRequest(readFileRequest, ({ uri }: FileParams) =>
      orElse<string | null>(async () => new TextDecoder().decode(await fs.readFile(vscode.Uri.parse(uri))), null),
    ),
    client.onRequest(readFolderRequest, ({ uri }: FileParams) =>
      orElse<readonly FolderEntry[]>(async () => {
        const entries = await fs.readDirectory(vscode.Uri.parse(uri));
        return entries.map(([name, type]) => ({ name, kind: kindOf(type) }));
      }, []),
    ),
  );
}
