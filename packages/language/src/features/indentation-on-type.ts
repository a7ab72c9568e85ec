import type { LangiumDocument } from 'langium';
import type { DocumentOnTypeFormattingParams, TextEdit } from 'vscode-languageserver';
import type { FettleLexer } from '../tokens/fettle-lexer.ts';

/**
 * The indentation of the line one stands on, set when a line is begun or a brace closes it. No other white space is
 * touched: a half-typed line is no place to move words about.
 */
export const indentingCharacters = { firstTriggerCharacter: '}', moreTriggerCharacter: ['\n'] };

const perDepth = 2;
const continued = 4;

export function indentationOnType(
  lexer: FettleLexer,
  document: LangiumDocument,
  { ch, position }: DocumentOnTypeFormattingParams,
): TextEdit[] {
  const { textDocument } = document;
  const text = textDocument.getText();
  const start = textDocument.offsetAt({ line: position.line, character: 0 });
  const line = /^[^\r\n]*/.exec(text.slice(start))?.[0] ?? '';
  const blanks = /^[ \t]*/.exec(line)?.[0] ?? '';
  const closes = line[blanks.length] === '}';
  // A brace further on in its line changes nothing about how that line begins.
  if (ch === '}' && (!closes || position.character !== blanks.length + 1)) return [];
  const { words, hidden } = lexer.structure(text.slice(0, start));
  const lastComment = hidden.findLast(({ tokenType }) => tokenType.name === 'BLOCK_COMMENT');
  if (lastComment !== undefined && !lastComment.image.endsWith('*/')) return [];
  let depth = 0;
  for (const { image } of words) {
    if (image === '{') depth++;
    else if (image === '}') depth = Math.max(0, depth - 1);
  }
  const last = words.at(-1);
  const goesOn = last?.image === ',' && !closes;
  const wanted = ' '.repeat(Math.max(0, depth - (closes ? 1 : 0)) * perDepth + (goesOn ? continued : 0));
  if (wanted === blanks) return [];
  const at = (character: number) => ({ line: position.line, character });
  return [{ range: { start: at(0), end: at(blanks.length) }, newText: wanted }];
}
