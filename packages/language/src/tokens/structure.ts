import type { IToken } from 'chevrotain';
import type { Noun, StatementSpec } from '../schema/index.ts';
import { mostTokens } from './limits.ts';
import { mendBraces } from './mend-braces.ts';
import { mendWords, type WordKinds } from './mend-words.ts';
import type { Slip } from './slips.ts';
import { type TokenKinds, WordSorter } from './sort-words.ts';
import { spanOf } from './token-places.ts';

/**
 * The structure pass, between lexer and parser: words that a slip broke are mended, then braces, then the words are
 * sorted by the vocabulary. Whatever text it is given, the tokens it returns form a tree the grammar accepts; what it
 * had to mend or leave out is told as slips.
 */
export interface Structured {
  /** Every word as written, in the order of the text; a word that a slip broke in two is one again. */
  readonly words: readonly IToken[];
  /** Comments, and marks that mean nothing. */
  readonly hidden: IToken[];
  /** What the parser sees. */
  readonly tokens: IToken[];
  readonly slips: readonly Slip[];
}

/** `hidden` holds the comments and the marks the lexer could make nothing of. */
export function structure(
  text: string,
  raw: readonly IToken[],
  hidden: readonly IToken[],
  kinds: TokenKinds & WordKinds,
): Structured {
  const others = hidden.filter((token) => token.tokenType.name === 'OTHER');
  const cut = raw.length > mostTokens;
  const words = mendWords(text, cut ? raw.slice(0, mostTokens) : raw, cut ? [] : others, kinds);
  const braces = mendBraces(words.tokens, strayPlaces(words.slips), kinds);
  const sorter = new WordSorter(kinds);
  sorter.feed(braces.tokens);
  const slips: Slip[] = [...words.slips, ...braces.slips, ...sorter.slips];
  if (cut) slips.push({ kind: 'too-long', ...spanOf(raw[mostTokens - 1]), limit: mostTokens });
  return {
    words: words.tokens,
    hidden: hidden.filter((token) => !words.absorbed.has(token.startOffset)),
    tokens: sorter.out,
    slips,
  };
}

/** Where one stands behind the last word of a text that goes on. */
export interface Standing {
  /** What the braces around it enclose. */
  readonly noun: Noun;
  /** The statement that may still take words. */
  readonly spec: StatementSpec | undefined;
  /** Where that statement begins. */
  readonly start: number | undefined;
  /** What that statement says so far, without its word and its name. */
  readonly parts: readonly IToken[];
}

export function standBehind(
  text: string,
  raw: readonly IToken[],
  hidden: readonly IToken[],
  kinds: TokenKinds & WordKinds,
): Standing {
  const others = hidden.filter((token) => token.tokenType.name === 'OTHER');
  const words = mendWords(text, raw.slice(0, mostTokens), others, kinds);
  const { tokens } = mendBraces(words.tokens, strayPlaces(words.slips), kinds, true);
  const sorter = new WordSorter(kinds);
  sorter.feed(tokens);
  const { noun, spec, word } = sorter;
  if (spec === undefined || word === undefined) return { noun, spec: undefined, start: undefined, parts: [] };
  const start = word.startOffset;
  const parts = tokens.filter((token) => token.startOffset >= start);
  // A statement without a word of its own begins with its first value.
  if (spec.word === '') return { noun, spec, start, parts };
  const isNamed = spec.declares !== undefined && parts[1]?.tokenType === kinds.name;
  return { noun, spec, start, parts: parts.slice(isNamed ? 2 : 1) };
}

function strayPlaces(slips: readonly Slip[]): number[] {
  return slips.flatMap((slip) => (slip.kind === 'stray-mark' ? [slip.start] : []));
}
