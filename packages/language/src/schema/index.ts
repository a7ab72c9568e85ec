/** Finding one's way in the vocabulary: which statement a word opens inside which braces, and which word was meant. */
export * from './phrase.ts';
export { fileNoun, pieceNoun, unknownNoun } from './piece.ts';

import { nearestName } from '../names/nearest.ts';
import { type Noun, type StatementSpec, statement } from './phrase.ts';
import { unknownNoun } from './piece.ts';

/** Stands in for a word that means nothing here, so that what follows it still has a shape. */
export const unknownStatement: StatementSpec = statement('', 'Not known here.', { body: () => unknownNoun });

export interface FoundStatement {
  readonly spec: StatementSpec;
  /** False when the word was taken for its nearest neighbour, or for nothing at all. */
  readonly exact: boolean;
}

/** The statement a word opens in this noun; a misspelt word is taken for the nearest one. */
export function findStatement(noun: Noun, word: string): FoundStatement {
  const exact = noun.statements.get(word.toLowerCase());
  if (exact !== undefined) return { spec: exact, exact: true };
  const near = nearestName(word.toLowerCase(), [...noun.statements.keys()]);
  const spec = near === undefined ? undefined : noun.statements.get(near);
  return { spec: spec ?? unknownStatement, exact: false };
}

export function bareStatement(noun: Noun): StatementSpec {
  return noun.bare ?? unknownStatement;
}

export function bodyOf(spec: StatementSpec): Noun {
  return spec.body?.() ?? unknownNoun;
}
