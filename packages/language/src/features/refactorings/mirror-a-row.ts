import type { Statement } from '../../generated/ast.ts';
import { type Asked, around, isCell, phrasesOf, type Refactoring, wordOf } from './refactoring.ts';

/**
 * Afterwards the row, and every row inside it, reads from left to right what it read from right to left. A row that is
 * graded, or that counts its sizes from one end, is not offered.
 */
export function mirrorRow({ statement, text }: Asked): Refactoring | undefined {
  const row = around(statement, (each) => wordOf(each) === 'row' && isCell(each));
  if (row === undefined || !canTurn(row)) return undefined;
  const cst = row.$cstNode;
  if (cst === undefined || row.statements.filter(isCell).length < 2) return undefined;
  const words = mirrored(row, text);
  if (words === cst.text) return undefined;
  return {
    title: 'Mirror the row, left to right',
    kind: 'refactor.rewrite',
    edits: [{ start: cst.offset, end: cst.end, words }],
  };
}

function isInOrder(statement: Statement): boolean {
  return isCell(statement) || wordOf(statement) === 'partition' || wordOf(statement) === 'divider';
}

function canTurn(group: Statement): boolean {
  const isGraded =
    wordOf(group) === 'row' && phrasesOf(group).some(({ phrase }) => phrase.pattern.startsWith('graded '));
  return !isGraded && group.statements.every(canTurn);
}

/** The statement's own words with its spaces in reverse order where it is a row. */
function mirrored(statement: Statement, text: string): string {
  const start = statement.$cstNode?.offset ?? 0;
  const end = statement.$cstNode?.end ?? start;
  const isRow = wordOf(statement) === 'row' && isCell(statement);
  const changes: { readonly start: number; readonly end: number; readonly words: string }[] = [];
  const ordered = isRow ? statement.statements.filter(isInOrder) : [];
  ordered.forEach((each, at) => {
    const other = ordered[ordered.length - 1 - at] as Statement;
    changes.push({ start: each.$cstNode?.offset ?? 0, end: each.$cstNode?.end ?? 0, words: mirrored(other, text) });
  });
  for (const each of statement.statements) {
    if (ordered.includes(each)) continue;
    changes.push({ start: each.$cstNode?.offset ?? 0, end: each.$cstNode?.end ?? 0, words: mirrored(each, text) });
  }
  for (const { phrase, parts } of phrasesOf(statement)) {
    const side = /^(left|right) face on gap$/.exec(phrase.pattern)?.[1];
    const cst = parts[0]?.$cstNode;
    if (side === undefined || cst === undefined) continue;
    changes.push({ start: cst.offset, end: cst.end, words: side === 'left' ? 'right' : 'left' });
  }
  let words = '';
  let at = start;
  for (const change of changes.sort((a, b) => a.start - b.start)) {
    words += text.slice(at, change.start) + change.words;
    at = change.end;
  }
  return words + text.slice(at, end);
}
