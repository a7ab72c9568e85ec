/**
 * Requests from server to extension for files it cannot reach itself: always in the browser, and on the desktop for
 * documents that live in no folder of this machine. The extension only reads; nothing here writes.
 */

export interface FileParams {
  readonly uri: string;
}

/** `missing` also for what may not be read. */
export type FileKind = 'file' | 'folder' | 'missing';

export const fileKindRequest = 'fettle/fileKind';

/** Answers the text, or null when there is none to be had. */
export const readFileRequest = 'fettle/readFile';

/** Answers the entries of a folder; none when it cannot be read. */
export const readFolderRequest = 'fettle/readFolder';

export interface FolderEntry {
  readonly name: string;
  readonly kind: FileKind;
}

/** The worker's first message, sent once it listens; a message sent to it earlier could be lost. */
export const workerReady = 'fettle/ready';
