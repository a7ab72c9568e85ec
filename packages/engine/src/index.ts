/**
 * The engine: design -> layout, parts, checks. Pure; knows nothing of the parser, the protocol, an editor, files or the DOM.
 */
export * from './design/design.ts';
export * from './design/figure.ts';
export * from './design/shop.ts';
export * from './evaluation.ts';
export * from './length/length.ts';
export * from './length/rational.ts';
export * from './length/trade-formats.ts';
export * from './parts/part.ts';
export { evaluatePiece } from './evaluate-piece.ts';
export { explain } from './design/explain.ts';
