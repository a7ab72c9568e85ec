/**
 * The language server: connects the language to an editor, decides when texts are built, draws the pictures of watched
 * ones. Glue only; whatever is worth a unit test lives further in. Bundles start at main-node.ts and main-worker.ts.
 */
export { DrawnPieces } from './drawn-pieces.ts';
export { pictureOfDocument, pieceKeys } from './picture-of-document.ts';
export { sheetMakers } from './sheets/index.ts';
export { startFettleServer } from './start-server.ts';
