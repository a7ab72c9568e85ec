import { createTokenInstance, type IToken, type TokenType } from 'chevrotain';

/** Where tokens stand, and tokens that stand for nothing written. */

export interface TokenSpan {
  readonly start: number;
  readonly end: number;
}

export function spanOf(token: IToken | undefined): TokenSpan {
  return token === undefined ? { start: 0, end: 0 } : { start: token.startOffset, end: endOf(token) };
}

export function endOf(token: IToken): number {
  return token.startOffset + token.image.length;
}

export function retag(token: IToken, kind: TokenType): IToken {
  return { ...token, tokenType: kind, tokenTypeIdx: kind.tokenTypeIdx as number };
}

/** A token that takes no room, placed at `offset` on the line of `beside`. */
export function zeroWidth(kind: TokenType, offset: number, beside: IToken): IToken {
  const line = (offset > beside.startOffset ? beside.endLine : beside.startLine) ?? 1;
  const column = (beside.startColumn ?? 1) + (offset - beside.startOffset);
  return createTokenInstance(kind, '', offset, offset, line, line, column, column);
}

/** The letters of a token from `from` to `to`, as a token of its own. */
export function partOf(token: IToken, from: number, to: number, kind: TokenType): IToken {
  const column = token.startColumn ?? 1;
  return {
    ...retag(token, kind),
    image: token.image.slice(from, to),
    startOffset: token.startOffset + from,
    endOffset: token.startOffset + to - 1,
    startColumn: column + from,
    endColumn: column + to - 1,
  };
}

/** Whether one blank stands between two tokens. */
export function isBehind(before: IToken | undefined, token: IToken): boolean {
  return before !== undefined && endOf(before) + 1 === token.startOffset && before.endLine === token.startLine;
}

/** One token from the first to the last of some, of what `image` says; it has as many letters as they take up. */
export function tokenAcross(first: IToken, last: IToken, image: string): IToken {
  return {
    ...first,
    image,
    endOffset: endOf(last) - 1,
    ...(last.endLine === undefined ? {} : { endLine: last.endLine }),
    ...(last.endColumn === undefined ? {} : { endColumn: last.endColumn }),
  };
}
