import type { IToken } from 'chevrotain';
import { nearestName } from '../names/nearest.ts';
import type { Noun, Phrase, PhraseItem, StatementSpec } from '../schema/phrase.ts';
import { deepestParentheses, longestSum } from './limits.ts';

/** Reads phrases off a list of raw tokens. Knows the kinds of tokens, not their meaning. */

export interface TokenView {
  readonly tokens: readonly IToken[];
  readonly firstOnLine: readonly boolean[];
}

export interface PhraseMatch {
  readonly phrase: Phrase;
  /** Index behind the last token. */
  readonly end: number;
  /** Indices of quoted tokens that are plain text rather than a reference. */
  readonly texts: readonly number[];
}

export function isWord(token: IToken | undefined): token is IToken {
  return token?.tokenType.name === 'WORD';
}
export function isQuoted(token: IToken | undefined): token is IToken {
  return token?.tokenType.name === 'NAME';
}
export function isMark(token: IToken | undefined, mark: string): boolean {
  return token !== undefined && token.tokenType.name === mark;
}

const operators = new Set(['+', '-', '*', '/']);
export function isOperator(token: IToken | undefined): boolean {
  return token !== undefined && operators.has(token.tokenType.name);
}

/** Index behind the expression that starts at `start`, or undefined when none does. Numbers, names, + - * / and ( ). */
export function skipExpression(tokens: readonly IToken[], start: number, depth = 0): number | undefined {
  let at = skipOperand(tokens, start, depth);
  if (at === undefined) return undefined;
  for (let terms = 1; terms < longestSum && isOperator(tokens[at]); terms++) {
    const next = skipOperand(tokens, at + 1, depth);
    if (next === undefined) break;
    at = next;
  }
  return at;
}

function skipOperand(tokens: readonly IToken[], start: number, depth: number): number | undefined {
  const token = tokens[start];
  if (token === undefined || depth > deepestParentheses) return undefined;
  if (token.tokenType.name === 'NUMBER' || isQuoted(token)) return start + 1;
  // One minus sign: a row of them is a slip, and would recurse.
  if (isMark(token, '-')) {
    const next = tokens[start + 1];
    return isMark(next, '-') ? undefined : skipOperand(tokens, start + 1, depth + 1);
  }
  if (isMark(token, '(')) {
    const inner = skipExpression(tokens, start + 1, depth + 1);
    return inner !== undefined && isMark(tokens[inner], ')') ? inner + 1 : undefined;
  }
  return undefined;
}

/** The longest phrase of `spec` that starts at `start`. */
export function matchPhrase(view: TokenView, spec: StatementSpec, start: number, noun: Noun): PhraseMatch | undefined {
  return longest(spec, (phrase) => tryPhrase(view, phrase, start, noun, () => false));
}

/**
 * As `matchPhrase`, with one word of the phrase misspelt: `1/2 n from back edge`. Words that mean something here
 * are never taken for others.
 */
export function matchMisspeltPhrase(
  view: TokenView,
  spec: StatementSpec,
  start: number,
  noun: Noun,
): PhraseMatch | undefined {
  return longest(spec, (phrase) => {
    if (phrase.items.length < 2) return undefined;
    let slips = 0;
    return tryPhrase(view, phrase, start, noun, (word, wanted) => {
      const meansSomething = noun.statements.has(word) || beginsPhrase(spec, word);
      if (meansSomething || nearestName(word, [wanted]) === undefined) return false;
      return ++slips === 1;
    });
  });
}

/**
 * As `matchPhrase`, with one word more among those of the phrase: `over the sides`, `same as drawer "a"`. A statement's
 * own word is only taken for one where two words of the phrase stand before it.
 */
export function matchPhraseAroundWord(
  view: TokenView,
  spec: StatementSpec,
  start: number,
  noun: Noun,
): PhraseMatch | undefined {
  return longest(spec, (phrase) => {
    if (phrase.items.length < 2) return undefined;
    let more = 0;
    const isOneMore = (word: string, before: number) =>
      !beginsPhrase(spec, word) && (before > 1 || !noun.statements.has(word)) && ++more === 1;
    return tryPhrase(view, phrase, start, noun, () => false, isOneMore);
  });
}

function longest(spec: StatementSpec, match: (phrase: Phrase) => PhraseMatch | undefined): PhraseMatch | undefined {
  let best: PhraseMatch | undefined;
  for (const phrase of spec.phrases) {
    const found = match(phrase);
    if (found !== undefined && (best === undefined || found.end > best.end)) best = found;
  }
  return best;
}

function tryPhrase(
  view: TokenView,
  phrase: Phrase,
  start: number,
  noun: Noun,
  forgives: (word: string, wanted: string) => boolean,
  isOneMore: (word: string, before: number) => boolean = () => false,
): PhraseMatch | undefined {
  const { tokens, firstOnLine } = view;
  const texts: number[] = [];
  let at = start;
  for (const [before, item] of phrase.items.entries()) {
    if (before > 0 && isBeside(item, tokens[at]) && firstOnLine[at] !== true) {
      if (isOneMore((tokens[at] as IToken).image.toLowerCase(), before)) at++;
    }
    const token = tokens[at];
    if (item.kind === 'word') {
      if (!isWord(token)) return undefined;
      const word = token.image.toLowerCase();
      if (word !== item.word && !forgives(word, item.word)) return undefined;
      // 'between' at the end of a half-typed line must not swallow the statement 'sides' below it.
      if (at > start && firstOnLine[at] && noun.statements.has(word)) return undefined;
      at++;
    } else if (item.refers || item.slot === 'path') {
      if (!isQuoted(token)) return undefined;
      if (!item.refers) texts.push(at);
      at++;
    } else {
      // A value never starts a line of its own in the middle of a phrase: `shelves` above `12 wide` stay apart.
      const end = skipExpression(tokens, at);
      if (end === undefined || (at > start && firstOnLine[at] === true && noun.bare !== undefined)) return undefined;
      at = end;
    }
  }
  return { phrase, end: at, texts };
}

/** A word where the phrase goes on otherwise. */
function isBeside(item: PhraseItem, token: IToken | undefined): boolean {
  return isWord(token) && (item.kind !== 'word' || token.image.toLowerCase() !== item.word);
}

/** Whether some phrase of `spec` begins with this word: half-typed text keeps its word. */
export function beginsPhrase(spec: StatementSpec, word: string): boolean {
  const lower = word.toLowerCase();
  return spec.phrases.some((phrase) => phrase.items.some((item) => item.kind === 'word' && item.word === lower));
}
