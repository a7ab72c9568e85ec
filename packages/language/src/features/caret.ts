import type { FettleLexer } from '../tokens/fettle-lexer.ts';
import { isQuote } from '../tokens/name-pattern.ts';
import type { Standing, Structured } from '../tokens/structure.ts';
import type { SpotRange } from './spot.ts';

/** What is being typed at the caret, and where in the language that is. Only the text before the caret counts. */
export interface Caret {
  readonly standing: Standing;
  /** A word, or a name whose quotation mark is open. */
  readonly typing: 'word' | 'name';
  /** What would be replaced: a half-typed word, or a name with its marks. */
  readonly range: SpotRange;
  /** Nothing stands before the word on its line. */
  readonly isFirstOnLine: boolean;
}

/** Undefined where nothing can be offered: in a comment, in a number, behind a closed name without a blank. */
export function caretAt(lexer: FettleLexer, text: string, offset: number): Caret | undefined {
  const before = text.slice(0, offset);
  const written = lexer.structure(before);
  if (isInComment(written, before)) return undefined;
  const lineStart = Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1;
  const quote = openQuote(written, before, lineStart);
  if (quote !== undefined) {
    const rest = /^[^"“”{},\r\n]*["“”]/.exec(text.slice(offset))?.[0];
    // Only a mark that closes this very name is taken along; a blank before it belongs to what follows.
    const isOwn = rest !== undefined && !/^\s+\S/.test(rest) && !/\s["“”]$/.test(rest);
    return {
      standing: lexer.standBehind(before.slice(0, quote)),
      typing: 'name',
      range: { start: quote, end: offset + (isOwn ? rest.length : 0) },
      isFirstOnLine: false,
    };
  }
  const word = /[A-Za-z\u00C0-\u024F][A-Za-z0-9_\u00C0-\u024F-]*$/.exec(before)?.[0] ?? '';
  const start = offset - word.length;
  const beside = before[start - 1];
  if (beside !== undefined && /[0-9½¼¾⅓⅔⅛⅜⅝⅞"“”″′'./)]/.test(beside)) return undefined;
  return {
    standing: lexer.standBehind(before.slice(0, start)),
    typing: 'word',
    range: { start, end: offset },
    isFirstOnLine: before.slice(lineStart, start).trim() === '',
  };
}

function isInComment({ hidden }: Structured, before: string): boolean {
  if (before.lastIndexOf('/*') > before.lastIndexOf('*/') && !/\/\/[^\n]*\/\*[^\n]*$/.test(before)) return true;
  const last = hidden.at(-1);
  return last?.tokenType.name === 'LINE_COMMENT' && last.startOffset + last.image.length === before.length;
}

/** The offset of a quotation mark on this line that opens a name nobody has closed yet. */
function openQuote({ words }: Structured, before: string, lineStart: number): number | undefined {
  const taken = words
    .filter((token) => token.startOffset >= lineStart)
    .filter((token) => token.tokenType.name === 'NUMBER' || isClosed(token.image));
  for (let at = before.length - 1; at >= lineStart; at--) {
    if (!isQuote(before[at])) continue;
    const isTaken = taken.some((token) => token.startOffset <= at && at < token.startOffset + token.image.length);
    return isTaken ? undefined : at;
  }
  return undefined;
}

function isClosed(image: string): boolean {
  return image.length > 1 && isQuote(image[0]) && isQuote(image.at(-1));
}
