import {
  type FileKind,
  type FileParams,
  type FolderEntry,
  fileKindRequest,
  readFileRequest,
  readFolderRequest,
} from '@fettle/protocol';
import { type FileSystemNode, type FileSystemProvider, type URI, UriUtils } from 'langium';
import type { Connection } from 'vscode-languageserver';

/**
 * Files as the editor sees them, asked for over the connection: in the browser, and for folders that are not on this
 * machine. What asks at once and cannot wait is refused; nothing in Langium's building of documents does.
 */
export class ClientFiles implements FileSystemProvider {
  readonly #connection: Connection;

  constructor(connection: Connection) {
    this.#connection = connection;
  }

  async stat(uri: URI): Promise<FileSystemNode> {
    const kind = await this.#kind(uri);
    if (kind === 'missing') throw new Error(`there is no file ${uri.toString()}`);
    return { uri, isFile: kind === 'file', isDirectory: kind === 'folder' };
  }

  async exists(uri: URI): Promise<boolean> {
    return (await this.#kind(uri)) !== 'missing';
  }

  /** Throws when there is no such text: the caller must not take a missing file for an empty one. */
  async readFile(uri: URI): Promise<string> {
    const text = await this.#connection.sendRequest<string | null>(readFileRequest, paramsFor(uri));
    if (text === null) throw new Error(`the file ${uri.toString()} cannot be read`);
    return text;
  }

  async readBinary(uri: URI): Promise<Uint8Array> {
    return new TextEncoder().encode(await this.readFile(uri));
  }

  async readDirectory(uri: URI): Promise<FileSystemNode[]> {
    const entries = await this.#connection.sendRequest<readonly FolderEntry[]>(readFolderRequest, paramsFor(uri));
    return entries.map(({ name, kind }) => ({
      uri: UriUtils.joinPath(uri, name),
      isFile: kind === 'file',
      isDirectory: kind === 'folder',
    }));
  }

  statSync(uri: URI): FileSystemNode {
    return refuse(uri);
  }

  existsSync(uri: URI): boolean {
    return refuse(uri);
  }

  readBinarySync(uri: URI): Uint8Array {
    return refuse(uri);
  }

  readFileSync(uri: URI): string {
    return refuse(uri);
  }

  readDirectorySync(uri: URI): FileSystemNode[] {
    return refuse(uri);
  }

  #kind(uri: URI): Promise<FileKind> {
    return this.#connection.sendRequest<FileKind>(fileKindRequest, paramsFor(uri));
  }
}

function paramsFor(uri: URI): FileParams {
  return { uri: uri.toString() };
}

function refuse(uri: URI): never {
  throw new Error(`${uri.toString()} can only be read with patience: files are asked for over the connection`);
}
