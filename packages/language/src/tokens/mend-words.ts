import type { IToken, TokenType } from 'chevrotain';
import { vocabulary } from '../schema/vocabulary.ts';
import { isQuote } from './name-pattern.ts';
import { isMark, isWord } from './phrase-matching.ts';
import type { Slip } from './slips.ts';
import { endOf, partOf, retag, spanOf, tokenAcross } from './token-places.ts';

/**
 * Words and numbers that one wrong character broke in two become one misspelt word again, and a name that lost its
 * first quotation mark becomes a name again. One slip of the pen is then one finding, not three.
 */
export interface MendedWords {
  readonly tokens: IToken[];
  readonly slips: Slip[];
  /** Where the marks stood that are part of a word, a number or a name now. */
  readonly absorbed: ReadonlySet<number>;
}

export interface WordKinds {
  readonly word: TokenType;
  readonly number: TokenType;
  readonly name: TokenType;
}

/** `others` are marks that mean nothing to the lexer. Tokens are in the order of the text. */
export function mendWords(
  text: string,
  raw: readonly IToken[],
  others: readonly IToken[],
  kinds: WordKinds,
): MendedWords {
  const tokens: IToken[] = [];
  const slips: Slip[] = [];
  const absorbed = new Set<number>();
  const all = others.length === 0 ? raw : [...raw, ...others].sort((a, b) => a.startOffset - b.startOffset);
  for (let at = 0; at < all.length; at++) {
    const token = all[at] as IToken;
    const remarkEnds = halfMarkedRemark(text, token);
    if (remarkEnds !== undefined) {
      slips.push({ kind: 'half-marked-remark', start: token.startOffset, end: remarkEnds });
      while ((all[at + 1]?.startOffset ?? Number.POSITIVE_INFINITY) < remarkEnds)
        absorbed.add(all[++at]?.startOffset ?? -1);
      continue;
    }
    const isOther = token.tokenType.name === 'OTHER';
    const badNumber = brokenNumber(text, all, at, kinds.number);
    if (badNumber !== undefined) {
      tokens.push(badNumber.token);
      at += badNumber.count - 1;
      continue;
    }
    if (token.tokenType.name === 'WORD') {
      const parts = joinedNumber(text, all, at, kinds);
      tokens.push(...(parts?.tokens ?? [token]));
      at += (parts?.count ?? 1) - 1;
      continue;
    }
    if (!isOther && !isMark(token, '{') && !isMark(token, '}')) {
      tokens.push(token);
      continue;
    }
    const glued = glue(text, tokens, all, at, kinds);
    if (glued !== undefined) {
      tokens.splice(tokens.length - glued.before, glued.before, glued.token);
      absorbed.add(token.startOffset);
      at += glued.after;
    } else if (!isOther) {
      tokens.push(token);
    } else if (isQuote(token.image) && openName(text, tokens, token, kinds.name)) {
      absorbed.add(token.startOffset);
      slips.push({ kind: 'name-not-opened', ...spanOf(tokens.at(-1) as IToken) });
    } else {
      slips.push({ kind: 'stray-mark', ...spanOf(token), mark: token.image });
    }
  }
  return { tokens, slips, absorbed };
}

/** Where the line ends whose remark lost one of its two strokes: nothing else begins a line with one. */
function halfMarkedRemark(text: string, token: IToken): number | undefined {
  if (!isMark(token, '/')) return undefined;
  const lineStart =
    Math.max(text.lastIndexOf('\n', token.startOffset - 1), text.lastIndexOf('\r', token.startOffset - 1)) + 1;
  if (text.slice(lineStart, token.startOffset).trim() !== '') return undefined;
  const rest = /[\r\n]/.exec(text.slice(token.startOffset));
  return rest === null ? text.length : token.startOffset + rest.index;
}

interface Glued {
  readonly token: IToken;
  /** How many tokens before the mark and after it went into one. */
  readonly before: number;
  readonly after: number;
}

const mostFragments = 4;
const numberParts = new Set(['NUMBER', '-', '/']);
const wordParts = new Set(['WORD', ...numberParts]);

/** The word or number that stands around the mark at `at` without a blank. */
function glue(
  text: string,
  done: readonly IToken[],
  all: readonly IToken[],
  at: number,
  kinds: WordKinds,
): Glued | undefined {
  const mark = all[at] as IToken;
  const [previous, next] = [done.at(-1), all[at + 1]];
  if (previous === undefined || next === undefined || !touch(previous, mark) || !touch(mark, next)) return undefined;
  const before = run(done.slice(-mostFragments).reverse());
  const after = run(all.slice(at + 1, at + 1 + mostFragments));
  for (const [left, right] of [
    [before, after],
    [before.slice(0, 1), after.slice(0, 1)],
  ] as const) {
    const [first, last] = [left.at(-1), right.at(-1)];
    if (first === undefined || last === undefined) return undefined;
    const written = text.slice(first.startOffset, mark.startOffset) + text.slice(next.startOffset, endOf(last));
    const kind = vocabulary().words.has(written.toLowerCase())
      ? kinds.word
      : isNumber(written, kinds.number)
        ? kinds.number
        : undefined;
    if (kind !== undefined) {
      return { token: oneToken(text, first, last, kind), before: left.length, after: right.length };
    }
  }
  return undefined;
}

/** The parts of words and numbers that touch one another, from the first on. */
function run(tokens: readonly IToken[]): IToken[] {
  const parts: IToken[] = [];
  for (const token of tokens) {
    const last = parts.at(-1);
    const apart = last !== undefined && !touch(last, token) && !touch(token, last);
    if (apart || !wordParts.has(token.tokenType.name)) break;
    parts.push(token);
  }
  return parts;
}

function isNumber(written: string, kind: TokenType): boolean {
  return kind.PATTERN instanceof RegExp && new RegExp(`^(?:${kind.PATTERN.source})$`).test(written);
}

/** `2-/2`, `3/` and the like: one number that cannot be read, rather than signs that belong to nothing. */
function brokenNumber(
  text: string,
  all: readonly IToken[],
  at: number,
  kind: TokenType,
): { readonly token: IToken; readonly count: number } | undefined {
  if (!numberParts.has((all[at] as IToken).tokenType.name)) return undefined;
  let end = at + 1;
  while (end < all.length && touch(all[end - 1] as IToken, all[end] as IToken) && isNumberPart(all[end])) end++;
  const parts = all.slice(at, end);
  const isMixed = parts.some((part) => part.tokenType.name === 'NUMBER') && parts.length > 1;
  if (!isMixed) return undefined;
  const names = parts.map((part) => part.tokenType.name);
  const twoSigns = names.some((name, index) => name !== 'NUMBER' && index > 0 && names[index - 1] !== 'NUMBER');
  const startsBadly = names[0] === '/' && !isOperand(all[at - 1]);
  const endsBadly = names.at(-1) === '/' && !isOperand(all[end]);
  if (!twoSigns && !startsBadly && !endsBadly) return undefined;
  return { token: oneToken(text, parts[0] as IToken, parts.at(-1) as IToken, kind), count: parts.length };
}

function isNumberPart(token: IToken | undefined): boolean {
  return token !== undefined && numberParts.has(token.tokenType.name);
}

function isOperand(token: IToken | undefined): boolean {
  return token !== undefined && ['NUMBER', 'NAME', '(', ')'].includes(token.tokenType.name);
}

/** A word and a number whose blank was forgotten: `thick3/4`. */
function joinedNumber(
  text: string,
  all: readonly IToken[],
  at: number,
  kinds: WordKinds,
): { readonly tokens: IToken[]; readonly count: number } | undefined {
  const token = all[at] as IToken;
  const word = token.image.toLowerCase();
  const { words } = vocabulary();
  if (words.has(word)) return undefined;
  const letters = /^([a-z-]+)[0-9]+$/.exec(word)?.[1];
  if (letters === undefined || !words.has(letters)) return undefined;
  const digits = partOf(token, letters.length, word.length, kinds.number);
  let end = at + 1;
  while (end < all.length && touch(all[end - 1] as IToken, all[end] as IToken) && isNumberPart(all[end])) end++;
  const number = end > at + 1 ? oneToken(text, digits, all[end - 1] as IToken, kinds.number) : digits;
  if (!isNumber(number.image, kinds.number)) return undefined;
  return { tokens: [partOf(token, 0, letters.length, kinds.word), number], count: end - at };
}

const mostNameWords = 4;

/** Makes the words before a closing mark a name; false when they are all words of the language. */
function openName(text: string, tokens: IToken[], mark: IToken, kind: TokenType): boolean {
  const { words, declaring } = vocabulary();
  let first: number | undefined;
  let behind = mark.startOffset;
  for (let at = tokens.length - 1; at >= tokens.length - mostNameWords && at >= 0; at--) {
    const token = tokens[at] as IToken;
    const gap = text.slice(endOf(token), behind);
    const apart = behind === mark.startOffset ? gap !== '' : gap !== ' ';
    const kind = token.tokenType.name;
    if (apart || (kind !== 'WORD' && kind !== 'NUMBER')) break;
    const before = tokens[at - 1];
    if (kind === 'WORD' && isWord(before) && declaring.has(before.image.toLowerCase()) && gapIs(text, before, token)) {
      first = at;
      break;
    }
    if (kind === 'WORD' && !words.has(token.image.toLowerCase())) first = at;
    behind = token.startOffset;
  }
  if (first === undefined) return false;
  const name = oneToken(text, tokens[first] as IToken, mark, kind);
  tokens.splice(first, tokens.length - first, name);
  return true;
}

function oneToken(text: string, first: IToken, last: IToken, kind: TokenType): IToken {
  return retag(tokenAcross(first, last, text.slice(first.startOffset, endOf(last))), kind);
}

function gapIs(text: string, before: IToken, after: IToken, gap = ' '): boolean {
  return text.slice(endOf(before), after.startOffset) === gap;
}

function touch(before: IToken, after: IToken): boolean {
  return endOf(before) === after.startOffset;
}
