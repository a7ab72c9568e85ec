/** A new piece: what is asked, and what is written from the answers. */
export { isRuler, type NewPieceAnswers, type Ruler } from './answers.ts';
export { makeNewPiece, type NewFile, type NewPiece } from './new-piece.ts';
export { type Next, nextQuestion, type Option, problemWith, type Question } from './questions.ts';
export type { FirstDesign } from './write-piece.ts';
