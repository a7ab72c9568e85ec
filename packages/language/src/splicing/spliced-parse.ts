import { type CstNode, GrammarUtils, type LangiumParser, type ParseResult, RootCstNodeImpl } from 'langium';
import type { Statement, Text } from '../generated/ast.ts';
import type { StructureReport } from '../tokens/fettle-lexer.ts';
import { mostTokens } from '../tokens/limits.ts';
import type { Slip } from '../tokens/slips.ts';
import { countLeaves, type Move, moveTree } from './moved-tree.ts';

/**
 * What a key typed inside the braces of one piece asks of the parser: that piece alone. All others are taken over from
 * the tree of before, moved to where they stand now; what is kept for their statements is kept with them. The tree of
 * before is of no use afterwards.
 *
 * The outcome is the tree that parsing the whole text gives. Where that cannot be promised, because braces or remarks
 * do not close and what stands around them decides, the answer is undefined and the old tree is as it was.
 */
export function spliceParse(
  parser: LangiumParser,
  before: ParseResult<Text>,
  text: string,
): ParseResult<Text> | undefined {
  const root = before.value.$cstNode?.root;
  const report = before.lexerReport as StructureReport | undefined;
  if (root === undefined || report === undefined || before.parserErrors.length > 0) return undefined;
  if (!report.slips.every(isLocal) || report.tokens > mostTokens / 2) return undefined;
  const change = changeBetween(root.fullText, text);
  const index = before.value.statements.findIndex((each) => isWithinBraces(each, change, root.fullText));
  const old = before.value.statements[index];
  const place = old?.$cstNode;
  const at = place === undefined ? -1 : root.content.indexOf(place);
  if (old === undefined || place === undefined || at < 0) return undefined;
  const [start, oldEnd, from] = [place.offset, place.end, place.range];
  const grown = text.length - root.fullText.length;
  const words = text.slice(start, oldEnd + grown);
  if (remarksReachOut(words, text.slice(Math.max(0, change.start - 1), change.oldEnd + grown + 1))) return undefined;
  const own = parser.parse<Text>(words);
  const slips = ownSlips(own, oldEnd + grown - start);
  const [statement] = own.value.statements;
  const cst = statement?.$cstNode;
  if (slips === undefined || statement === undefined || cst === undefined) return undefined;

  const { line, character } = from.start;
  const lines = cst.range.end.line - (from.end.line - line);
  const tokens = report.tokens + countLeaves(cst as typeof root) - countLeaves(place as typeof root);
  moveTree(cst, { offset: start, lines: line, columns: character, onLine: 0 });
  const behind: Move = { offset: grown, lines, columns: 0, onLine: -1 };
  for (const each of root.content.slice(at + 1)) moveTree(each, behind);

  const content = root.content.map((each, i) => (i === at ? cst : each));
  const statements = before.value.statements.map((each, i) => (i === index ? statement : each));
  const spliced: StructureReport = {
    diagnostics: [],
    tokens,
    slips: [
      ...report.slips.filter((slip) => slip.end <= start),
      ...slips.map((slip) => movedSlip(slip, start)),
      ...report.slips.filter((slip) => slip.start >= oldEnd).map((slip) => movedSlip(slip, grown)),
    ],
  };
  const value = textOf(text, content, statements);
  return { ...before, value, lexerReport: spliced };
}

interface Change {
  /** Up to here both texts are the same. */
  readonly start: number;
  /** From here on, counted in the old text, they are the same again. */
  readonly oldEnd: number;
}

/** In characters: texts are compared by so many at once until they differ. */
const block = 4096;

function changeBetween(before: string, now: string): Change {
  const shorter = Math.min(before.length, now.length);
  let start = 0;
  while (start + block < shorter && now.startsWith(before.slice(start, start + block), start)) start += block;
  while (start < shorter && before.charCodeAt(start) === now.charCodeAt(start)) start++;
  let same = 0;
  while (
    same + block < shorter - start &&
    now.endsWith(before.slice(before.length - same - block, before.length - same), now.length - same)
  ) {
    same += block;
  }
  while (
    same < shorter - start &&
    before.charCodeAt(before.length - 1 - same) === now.charCodeAt(now.length - 1 - same)
  ) {
    same++;
  }
  return { start, oldEnd: before.length - same };
}

/** Behind the opening brace and before the closing one, in a statement that shares its first and last line with nothing. */
function isWithinBraces({ $cstNode: cst }: Statement, { start, oldEnd }: Change, text: string): boolean {
  if (cst === undefined || start <= cst.offset || oldEnd >= cst.end || text[cst.end - 1] !== '}') return false;
  const open = GrammarUtils.findNodeForProperty(cst, 'open');
  if (open === undefined || open.length === 0 || start < open.end) return false;
  const lineStart = Math.max(text.lastIndexOf('\n', cst.offset - 1), text.lastIndexOf('\r', cst.offset - 1)) + 1;
  return text.slice(lineStart, cst.offset).trim() === '' && /[^\S\r\n]*(?:[\r\n]|$)/y.test(text.slice(cst.end));
}

/**
 * A remark that opens in the piece may close behind it; an end that was just written may close one that opened before
 * it. `changed` holds the new words and one character at each side.
 */
function remarksReachOut(piece: string, changed: string): boolean {
  const opens = piece.lastIndexOf('/*');
  return changed.includes('*/') || (opens >= 0 && piece.lastIndexOf('*/') < opens + 2);
}

/** Undefined unless what was parsed is one statement that fills its text and could not have been read otherwise. */
function ownSlips(
  { value, parserErrors, lexerReport }: ParseResult<Text>,
  length: number,
): readonly Slip[] | undefined {
  const [statement, ...others] = value.statements;
  const cst = statement?.$cstNode;
  if (cst === undefined || others.length > 0 || parserErrors.length > 0) return undefined;
  if (statement?.open === undefined || cst.offset !== 0 || cst.end !== length) return undefined;
  const { slips } = lexerReport as StructureReport;
  return slips.every(isLocal) && value.$cstNode?.root.content.length === 1 ? slips : undefined;
}

/** Whether a slip was mended by its own line alone. */
function isLocal({ kind }: Slip): boolean {
  switch (kind) {
    case 'name-not-closed':
    case 'name-not-opened':
    case 'hyphen-left-out':
    case 'stray-mark':
      return true;
    case 'brace-not-closed':
    case 'brace-not-opened':
    case 'stray-brace':
    case 'half-marked-remark':
    case 'too-deep':
    case 'too-long':
      return false;
    default:
      return kind satisfies never;
  }
}

function movedSlip(slip: Slip, by: number): Slip {
  return { ...slip, start: slip.start + by, end: slip.end + by };
}

function textOf(text: string, content: readonly CstNode[], statements: Statement[]): Text {
  const root = new RootCstNodeImpl(text);
  root.content = [...content];
  for (const each of content) Object.assign(each, { container: root });
  const value = { $type: 'Text', statements, $cstNode: root } as unknown as Text;
  for (const [at, each] of statements.entries()) {
    Object.assign(each, { $container: value, $containerProperty: 'statements', $containerIndex: at });
  }
  root.astNode = value;
  return value;
}
