import type { LangiumDocument } from 'langium';
import type { Text } from '../generated/ast.ts';
import type { FettleLexer, StructureReport } from '../tokens/fettle-lexer.ts';
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

/** As `caretAt`, but of a long text reads only the piece around the caret, where what stands before it is whole. */
export function caretIn(lexer: FettleLexer, document: LangiumDocument, offset: number): Caret | undefined {
  const text = document.textDocument.getText();
  const from = wholeUpTo(document, text, offset);
  const caret = caretAt(lexer, text.slice(from), offset - from);
  if (caret === undefined || from === 0) return caret;
  const { standing, range } = caret;
  return {
    ...caret,
    standing: { ...standing, start: standing.start === undefined ? undefined : standing.start + from },
    range: { start: range.start + from, end: range.end + from },
  };
}

/** Nothing that is longer is a word. */
const longestWord = 200;

/** The beginning of the last outermost statement before `offset`, or 0 where something before it was mended. */
function wholeUpTo({ parseResult }: LangiumDocument, text: string, offset: number): number {
  const { statements, $cstNode: root } = parseResult.value as Text;
  if (root?.root.fullText !== text) return 0;
  // A first word that is being typed may still be one of the statement before it.
  const typing = offset - (/\S*$/.exec(text.slice(Math.max(0, offset - longestWord), offset))?.[0].length ?? 0);
  const start = statements.findLast(({ $cstNode }) => ($cstNode?.offset ?? typing) < typing)?.$cstNode?.offset ?? 0;
  // Braces are mended by how far lines are indented: only what begins its line stands there alone as it does here.
  if (start === 0 || !/[\r\n]/.test(text[start - 1] ?? '')) return 0;
  // A remark that was opened before it may have no end yet.
  if (text.lastIndexOf('/*', start) > text.lastIndexOf('*/', start)) return 0;
  const { slips = [] } = (parseResult.lexerReport ?? {}) as Partial<StructureReport>;
  const isWhole = slips.every(({ kind, start: at }) => at >= start && kind !== 'too-long' && kind !== 'too-deep');
  return isWhole ? start : 0;
}

function isInComment({ words, hidden }: Structured, before: string): boolean {
  const opens = before.lastIndexOf('/*');
  // Within a name or a remark of one line these marks open nothing.
  const opensNothing = [...words.filter(({ image }) => isQuote(image[0])), ...hidden].some(
    ({ tokenType, startOffset, image }) =>
      tokenType.name !== 'OTHER' && startOffset <= opens && opens < startOffset + image.length,
  );
  if (opens > before.lastIndexOf('*/') && !opensNothing) return true;
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
