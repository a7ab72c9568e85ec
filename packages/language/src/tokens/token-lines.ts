import type { IToken } from 'chevrotain';
import { isMark } from './phrase-matching.ts';

/** The lines of a text as its indentation shows them. */
export interface TokenLine {
  readonly tokens: readonly IToken[];
  /** Column of the first word, from 0. A mark thrown in before it does not count. */
  readonly indent: number;
  /** Nothing but braces. */
  readonly onlyBraces: boolean;
}

/**
 * A line that ends with a comma goes on in the next one, where that stands farther in. `strays` are the offsets of marks
 * that were taken out: one before the first word has pushed it to the right.
 */
export function toLines(tokens: readonly IToken[], strays: readonly number[]): TokenLine[] {
  const lines: TokenLine[] = [];
  let from = 0;
  while (from < tokens.length) {
    let to = from + 1;
    while (isOnLine(tokens, from, to)) to++;
    lines.push(toLine(tokens.slice(from, to), strays));
    from = to;
  }
  return lines;
}

/** Whether the token there belongs to the line that begins at `from`. */
function isOnLine(tokens: readonly IToken[], from: number, at: number): boolean {
  const [first, before, token] = [tokens[from], tokens[at - 1], tokens[at]];
  if (first === undefined || before === undefined || token === undefined) return false;
  if (token.startLine === before.startLine) return true;
  return isMark(before, ',') && (token.startColumn ?? 1) > (first.startColumn ?? 1);
}

function toLine(tokens: readonly IToken[], strays: readonly number[]): TokenLine {
  const wordAt = tokens.findIndex((token) => !isBrace(token));
  if (wordAt < 0) return { tokens, indent: indentOfBraces(tokens), onlyBraces: true };
  const word = tokens[wordAt] as IToken;
  const column = (word.startColumn ?? 1) - 1;
  const pushed = strays.filter((at) => at < word.startOffset && at >= word.startOffset - column).length;
  return { tokens, indent: Math.max(0, column - wordAt - pushed), onlyBraces: false };
}

/** Of two braces that touch, the second was where the first is now; otherwise the last one stands where it stood. */
function indentOfBraces(tokens: readonly IToken[]): number {
  const columns = tokens.map((token) => (token.startColumn ?? 1) - 1);
  const [first = 0, second] = columns;
  if (second === undefined || second === first + 1) return first;
  return Math.max(0, (columns.at(-1) ?? 0) - (tokens.length - 1));
}

export function isBrace(token: IToken): boolean {
  return isMark(token, '{') || isMark(token, '}');
}

export interface BraceCount {
  /** Closing braces whose opening one is not on the line. */
  readonly closes: number;
  /** Opening braces whose closing one is not on the line. */
  readonly opens: number;
}

export function countBraces(tokens: readonly IToken[]): BraceCount {
  let [closes, opens] = [0, 0];
  for (const token of tokens) {
    if (isMark(token, '{')) opens++;
    else if (isMark(token, '}')) {
      if (opens > 0) opens--;
      else closes++;
    }
  }
  return { closes, opens };
}
