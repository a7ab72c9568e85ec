/**
 * The typed messages between server, extension and page: the only shapes that cross a process border. Every message
 * names its document and the document's version; a receiver drops what is older than what it has. This room knows
 * nothing of the engine, the language or any editor.
 */
export * from './file-requests.ts';
export * from './new-piece.ts';
export * from './page-memory.ts';
export * from './page-messages.ts';
export * from './picture.ts';
export * from './picture-frame.ts';
export * from './picture-requests.ts';
export * from './read-picture.ts';
