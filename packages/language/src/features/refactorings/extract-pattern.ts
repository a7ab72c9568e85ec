import { exactSource } from '@fettle/engine';
import { AstUtils } from 'langium';
import { isQuantity } from '../../generated/ast.ts';
import { fileDeclarations } from '../../names/declarations.ts';
import { expressionIn } from '../../reading/phrases.ts';
import { propertyRange } from '../spot.ts';
import { type Asked, indentAt, phrasesOf, type Refactoring, wordOf } from './refactoring.ts';

/**
 * Afterwards the piece is made from a pattern that says all it said, and gives only its width; another piece of another
 * width is one line. The piece itself comes out as before.
 */
export function extractPattern({ statement, text, piece }: Asked): Refactoring | undefined {
  if (statement !== piece.statement || wordOf(statement) !== 'piece' || statement.name === undefined) return undefined;
  const head = propertyRange(statement, 'head');
  const named = propertyRange(statement, 'name');
  const cst = statement.$cstNode;
  // A piece from a pattern has one already.
  if (head === undefined || named === undefined || cst === undefined || statement.parts.length > 0) return undefined;
  const open = text.indexOf('{', named.end);
  if (statement.open === undefined || open < 0 || open > cst.end || !cst.text.endsWith('}')) return undefined;
  const size = statement.statements.find((each) => wordOf(each) === 'size');
  const wide = size && phrasesOf(size).find(({ phrase }) => phrase.pattern === '<length> wide');
  const width = expressionIn(wide)?.$cstNode;
  const figure = piece.evaluation.design.size.width;
  // A width that is worked out from named values of the piece would lose them.
  const expression = expressionIn(wide);
  if (width === undefined || figure === undefined || expression === undefined) return undefined;
  if (![expression, ...AstUtils.streamAllContents(expression)].some(isQuantity)) return undefined;
  const declared = fileDeclarations(AstUtils.getDocument(statement));
  const name = freeName(`${statement.name} pattern`, (each) => declared.get('pattern')?.has(each) === true);
  const own = statement.statements.some((each) => each.name === 'width' && /^(let|takes)$/.test(wordOf(each)));
  if (own || declared.get('value')?.has('width') === true) return undefined;
  const indent = indentAt(text, cst.offset);
  const given = exactSource(figure.length, piece.evaluation.design.units.unit);
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  const isLines = text.slice(open, cst.end).includes('\n');
  const takes = isLines ? `${lineEnd}${indent}  takes "width"` : ' takes "width"  ';
  const quoted = text.slice(named.start, named.end);
  return {
    title: `Make a pattern of "${statement.name}" that takes its width`,
    kind: 'refactor.extract',
    edits: [
      { start: head.start, end: head.end, words: 'pattern' },
      { start: named.start, end: named.end, words: `"${name}"` },
      { start: open + 1, end: open + 1, words: takes },
      { start: width.offset, end: width.end, words: '"width"' },
      {
        start: cst.end,
        end: cst.end,
        words: `${lineEnd}${lineEnd}${indent}piece ${quoted} from "${name}" with "width" ${given}`,
      },
    ],
  };
}

function freeName(wanted: string, isTaken: (name: string) => boolean): string {
  if (!isTaken(wanted)) return wanted;
  let count = 2;
  while (isTaken(`${wanted} ${count}`)) count++;
  return `${wanted} ${count}`;
}
