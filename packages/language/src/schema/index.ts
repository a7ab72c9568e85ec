/** Finding one's way in the vocabulary: which statement a word opens inside which braces, and which word was meant. */
export * from './phrase.ts';
export { fileNoun, pieceNoun, unknownNoun } from './piece.ts';

import { nearestName } from '../names/nearest.ts';
import { type Noun, type StatementSpec, statement } from './phrase.ts';
import { unknownNoun } from './piece.ts';
import { sameWords } from './trade-words.ts';

/** Stands in for a word that means nothing here, so that what follows it still has a shape. */
export const unknownStatement: StatementSpec = statement('', 'Not known here.', { body: () => unknownNoun });

export interface FoundStatement {
  readonly spec: StatementSpec;
  /** False when the word was taken for its nearest neighbour, or for nothing at all. */
  readonly exact: boolean;
}

/** What follows a word, for telling which of two was meant. */
export interface AfterWord {
  readonly hasName: boolean;
  readonly hasBody: boolean;
}

/**
 * The statement a word opens in this noun; another word of the trade is taken for the language's own, a misspelt one for the
 * nearest that suits what follows it.
 */
export function findStatement(noun: Noun, word: string, after: AfterWord): FoundStatement {
  const lower = word.toLowerCase();
  const exact = noun.statements.get(lower);
  if (exact !== undefined) return { spec: exact, exact: true };
  const key = `${after.hasName} ${after.hasBody} ${lower}`;
  const known = takenFor.get(noun)?.get(key);
  if (known !== undefined) return known;
  const suiting = [...noun.statements.values()].sort((a, b) => misfits(a, after) - misfits(b, after));
  const near =
    sameWords(lower).find((same) => noun.statements.has(same)) ??
    nearestName(
      lower,
      suiting.map((spec) => spec.word),
    );
  const spec = near === undefined ? undefined : noun.statements.get(near);
  const found: FoundStatement = { spec: spec ?? unknownStatement, exact: false };
  remember(noun, key, found);
  return found;
}

/** What misspelt words were taken for: in a text that is no text of ours there are thousands of them. */
const takenFor = new WeakMap<Noun, Map<string, FoundStatement>>();
const mostRemembered = 500;

function remember(noun: Noun, key: string, found: FoundStatement): void {
  let words = takenFor.get(noun);
  if (words === undefined || words.size >= mostRemembered) {
    words = new Map();
    takenFor.set(noun, words);
  }
  words.set(key, found);
}

function misfits(spec: StatementSpec, after: AfterWord): number {
  const body = (spec.body !== undefined) === after.hasBody ? 0 : 2;
  return body + ((spec.declares !== undefined) === after.hasName ? 0 : 1);
}

export function bareStatement(noun: Noun): StatementSpec {
  return noun.bare ?? unknownStatement;
}

export function bodyOf(spec: StatementSpec): Noun {
  return spec.body?.() ?? unknownNoun;
}
