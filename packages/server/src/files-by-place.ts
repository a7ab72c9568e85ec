import type { FileSystemNode, FileSystemProvider, URI } from 'langium';

/** Files of this machine read directly, all others asked of the editor. */
export class FilesByPlace implements FileSystemProvider {
  readonly #here: FileSystemProvider;
  readonly #elsewhere: FileSystemProvider;

  constructor(here: FileSystemProvider, elsewhere: FileSystemProvider) {
    this.#here = here;
    this.#elsewhere = elsewhere;
  }

  #for(uri: URI): FileSystemProvider {
    return uri.scheme === 'file' ? this.#here : this.#elsewhere;
  }

  stat(uri: URI): Promise<FileSystemNode> {
    return this.#for(uri).stat(uri);
  }

  statSync(uri: URI): FileSystemNode {
    return this.#for(uri).statSync(uri);
  }

  exists(uri: URI): Promise<boolean> {
    return this.#for(uri).exists(uri);
  }

  existsSync(uri: URI): boolean {
    return this.#for(uri).existsSync(uri);
  }

  readBinary(uri: URI): Promise<Uint8Array> {
    return this.#for(uri).readBinary(uri);
  }

  readBinarySync(uri: URI): Uint8Array {
    return this.#for(uri).readBinarySync(uri);
  }

  readFile(uri: URI): Promise<string> {
    return this.#for(uri).readFile(uri);
  }

  readFileSync(uri: URI): string {
    return this.#for(uri).readFileSync(uri);
  }

  readDirectory(uri: URI): Promise<FileSystemNode[]> {
    return this.#for(uri).readDirectory(uri);
  }

  readDirectorySync(uri: URI): FileSystemNode[] {
    return this.#for(uri).readDirectorySync(uri);
  }
}
