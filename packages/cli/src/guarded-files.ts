import type { FileSystemNode, URI } from 'langium';
import { NodeFileSystemProvider } from 'langium/node';
import { readText } from './read-text.ts';

/**
 * The files that a text reaches by `use`, read with the same care as those given by hand. What is there and cannot be
 * read is remembered; what is not there is a finding of the text that names it.
 */
export class GuardedFiles extends NodeFileSystemProvider {
  readonly refused = new Map<string, string>();

  override readFileSync(uri: URI): string {
    const read = readText(uri.fsPath);
    if (read.kind === 'text') return read.text;
    if (!read.missing) this.refused.set(uri.fsPath, read.why);
    throw new Error(`${uri.fsPath} ${read.why}`);
  }

  override async readFile(uri: URI): Promise<string> {
    return this.readFileSync(uri);
  }

  /** Nothing is looked for beyond what is named. */
  override async readDirectory(): Promise<FileSystemNode[]> {
    return [];
  }

  /** Only the names, for a name that was misspelt; a folder that cannot be listed holds nothing. */
  override readDirectorySync(uri: URI): FileSystemNode[] {
    try {
      return super.readDirectorySync(uri);
    } catch {
      return [];
    }
  }
}
