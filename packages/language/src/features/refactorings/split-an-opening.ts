import { AstUtils } from 'langium';
import { isReference, type Statement } from '../../generated/ast.ts';
import { propertyRange } from '../spot.ts';
import {
  type Asked,
  endOfHead,
  indentAt,
  isCell,
  isHeld,
  laidCell,
  type Refactoring,
  rangeOfPhrase,
  sizePhrase,
  wordOf,
} from './refactoring.ts';

/**
 * Afterwards two spaces stand where one stood, equal and with a divider of the stock of the sides between them: one
 * above the other in a row, side by side in a stack. Offered for an open space or a front of which no size is written
 * for the front itself, since a row or stack has no front.
 */
export function splitOpening(asked: Asked): Refactoring | undefined {
  const { statement, text, piece } = asked;
  const cst = statement.$cstNode;
  const parent = statement.$container;
  if (cst === undefined || !isCell(statement) || parent.$type !== 'Statement' || isHeld(statement)) return undefined;
  const inRow = wordOf(parent as Statement) === 'row';
  if (['row', 'stack'].includes(wordOf(statement))) return undefined;
  const laid = laidCell(asked, statement);
  const size = sizePhrase(statement);
  const isSized = size?.phrase.pattern.startsWith('opening ') === true;
  // A space alone takes all there is; one among others keeps its place only by an opening of its own.
  const isAlone = (parent as Statement).statements.filter(isCell).length === 1;
  if (laid === undefined || !(isSized || isAlone)) return undefined;
  if (statement.name !== undefined && isReferredTo(statement)) return undefined;
  const board = boardOfSides(piece.statement, text);
  if (board === undefined) return undefined;
  const into = inRow ? 'stack' : 'row';
  const divider = inRow ? `divider panel ${board}, shown` : `partition ${board}, shown`;
  const asks = size === undefined ? '' : ` ${text.slice(rangeOfPhrase(size).start, rangeOfPhrase(size).end)}`;
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  const indent = indentAt(text, cst.offset);
  const first = withoutSize(asked, statement, false);
  const second = withoutSize(asked, statement, true);
  const words = [`${into}${asks} {`, ...[first, divider, second].map((each) => `${indent}  ${each}`), `${indent}}`];
  return {
    title: inRow ? 'Split it in two, one above the other' : 'Split it in two, side by side',
    kind: 'refactor.rewrite',
    edits: [{ start: cst.offset, end: cst.end, words: words.join(lineEnd) }],
  };
}

function withoutSize({ text }: Asked, statement: Statement, isSecond: boolean): string {
  const cst = statement.$cstNode;
  const start = cst?.offset ?? 0;
  const end = cst?.end ?? start;
  const named = propertyRange(statement, 'name');
  const head = propertyRange(statement, 'head');
  const from = named?.end ?? head?.end ?? start;
  const size = sizePhrase(statement);
  const said = size === undefined ? undefined : rangeOfPhrase(size);
  const rest = endOfHead(statement);
  const before = said === undefined ? '' : text.slice(from, said.start).replace(/[\s,]+$/, '');
  const behind = said === undefined ? text.slice(from, end) : text.slice(said.end, end).replace(/^\s*,\s*/, ' ');
  const label = isSecond || named === undefined ? '' : ` ${text.slice(named.start, named.end)}`;
  return `${text.slice(start, head?.end ?? rest)}${label}${before}${behind}`;
}

/** What the sides say of themselves, on one line. */
function boardOfSides(piece: Statement, text: string): string | undefined {
  const carcase = piece.statements.find((each) => wordOf(each) === 'case');
  const sides = carcase?.statements.find((each) => wordOf(each) === 'sides');
  const [first, last] = [sides?.parts[0]?.$cstNode, sides?.parts.at(-1)?.$cstNode];
  return first === undefined || last === undefined
    ? undefined
    : text.slice(first.offset, last.end).replace(/\s+/g, ' ');
}

/** Others follow it or list it by its name. */
function isReferredTo(statement: Statement): boolean {
  const document = AstUtils.getDocument(statement);
  return AstUtils.streamAllContents(document.parseResult.value).some(
    (node) => isReference(node) && node.target.$refText === statement.name,
  );
}
