import { type Evaluation, exactSource, type Figure, Length, type LengthUnit, parseTradeLength } from '@fettle/engine';
import { AstUtils } from 'langium';
import { type Expression, isExpression, isReference, type Quantity, type Statement } from '../../generated/ast.ts';
import { specOf } from '../../names/declarations.ts';
import { readParts } from '../../reading/phrases.ts';
import { propertyRange } from '../spot.ts';
import { type Asked, type Refactoring, type WordsChange, withPhrase, wordOf } from './refactoring.ts';

/**
 * Afterwards the piece is written in the other system, and all it says is exactly as large as before: 1-1/2" becomes 38.1, and
 * 19 mm become 95/127". Lengths that are products keep their factors. Not offered where a number might be a length or a
 * count, depending on who reads it. The gap is written down where it was assumed, since every front depends on it; what
 * else is left to habit takes the habit of the other system, and the title says so.
 */
export function convertUnits({ statement, piece, text }: Asked): Refactoring | undefined {
  const own = statement === piece.statement || wordOf(statement) === 'units' ? piece.statement : undefined;
  if (own === undefined || wordOf(own) !== 'piece' || own.parts.length > 0 || own.open === undefined) return undefined;
  const { unit } = piece.evaluation.design.units;
  if (unit === 'ft') return undefined;
  const to: LengthUnit = unit === 'in' ? 'mm' : 'in';
  const edits: WordsChange[] = [];
  for (const each of [own, ...AstUtils.streamAllContents(own)]) {
    if (each.$type !== 'Statement' || each === own) continue;
    const changes = inStatement(each as Statement, unit, to);
    if (changes === undefined) return undefined;
    edits.push(...changes);
  }
  const said = own.statements.filter((each) => wordOf(each) === 'units');
  const [first, second] = said;
  if (second !== undefined) return undefined;
  const words = to === 'mm' ? 'mm' : 'inches to 1/32';
  if (first === undefined) {
    const open = text.indexOf('{', propertyRange(own, 'name')?.end ?? own.$cstNode?.offset);
    if (open < 0) return undefined;
    const line = /^[^\S\n]*\r?\n[ \t]*/.exec(text.slice(open + 1))?.[0];
    edits.push({
      start: open + 1,
      end: open + 1,
      words: line === undefined ? ` units ${words}  ` : `${line}units ${words}`,
    });
  } else {
    const [from, last] = [first.parts[0]?.$cstNode, first.parts.at(-1)?.$cstNode];
    if (from === undefined || last === undefined) return undefined;
    edits.push({ start: from.offset, end: last.end, words });
  }
  const face = own.statements.find((each) => wordOf(each) === 'face');
  const gap = piece.evaluation.design.face?.fit.gap;
  const isPinned = face !== undefined && gap?.reason.kind === 'assumed';
  if (isPinned) edits.push(withPhrase(face, `gap ${exactSource(gap.length, to)}`));
  const title = to === 'mm' ? 'Write the piece in millimetres' : 'Write the piece in inches';
  const habit = leavesToHabit(piece.evaluation, isPinned ? gap : undefined);
  return {
    title: habit ? `${title}; what it leaves unsaid takes ${to === 'mm' ? 'metric' : 'inch'} habits` : title,
    kind: 'refactor.rewrite',
    edits,
  };
}

/** Whether a part of the piece has a size, other than zero, that is said nowhere; `pinned` will be said. */
function leavesToHabit({ parts }: Evaluation, pinned: Figure | undefined): boolean {
  const seen = new Set<Figure>(pinned === undefined ? [] : [pinned]);
  const waiting = parts.flatMap(({ box, thickness }) =>
    [box.x, box.y, box.z].flatMap(({ start, end }) => [start, end, thickness]),
  );
  for (let figure = waiting.pop(); figure !== undefined; figure = waiting.pop()) {
    if (seen.has(figure)) continue;
    seen.add(figure);
    if (figure.reason.kind === 'assumed' && !figure.length.isZero()) return true;
    if (figure.reason.kind === 'derived') waiting.push(...figure.reason.operands.map((operand) => operand.figure));
  }
  return false;
}

/** Undefined where what is written cannot be told apart. */
function inStatement(statement: Statement, from: LengthUnit, to: LengthUnit): WordsChange[] | undefined {
  const { spec } = specOf(statement);
  if (spec.word === 'units') return [];
  // A named number is a length to one reader and a count to another.
  if (spec.declares === 'value') return undefined;
  const { phrases, unread } = readParts(statement, spec);
  if (unread.length > 0) return undefined;
  const edits: WordsChange[] = [];
  for (const { phrase, slots } of phrases) {
    const kinds = phrase.items.flatMap((item) => (item.kind === 'slot' ? [item.slot] : []));
    for (const [at, slot] of slots.entries()) {
      if (kinds[at] !== 'length' || !isExpression(slot)) continue;
      const changes = converted(slot, from, to);
      if (changes === undefined) return undefined;
      edits.push(...changes);
    }
  }
  return edits;
}

/** Every number that is a length in a sum; undefined when one may be a length or a factor. */
function converted(expression: Expression, from: LengthUnit, to: LengthUnit): WordsChange[] | undefined {
  switch (expression.$type) {
    case 'Quantity':
      return inQuantity(expression, from, to);
    case 'Reference':
      return [];
    case 'Negative':
      return converted(expression.operand, from, to);
    case 'Parenthesis':
      return converted(expression.inner, from, to);
    default: {
      const { left, right, operator } = expression;
      if (operator === '+' || operator === '-') return both(converted(left, from, to), converted(right, from, to));
      // Of a product of bare numbers either is the factor; a length in it is the length.
      const [leftIs, rightIs] = [saysUnit(left), saysUnit(right)];
      if (hasName(left) || hasName(right) || rightIs === undefined || leftIs === undefined) return undefined;
      if (operator === '/') return rightIs ? undefined : converted(left, from, to);
      if (leftIs && rightIs) return undefined;
      return rightIs ? converted(right, from, to) : converted(left, from, to);
    }
  }
}

function both(one: WordsChange[] | undefined, two: WordsChange[] | undefined): WordsChange[] | undefined {
  return one === undefined || two === undefined ? undefined : [...one, ...two];
}

function quantitiesIn(expression: Expression): Quantity[] {
  return [expression, ...AstUtils.streamAllContents(expression)].filter(
    (each) => each.$type === 'Quantity',
  ) as Quantity[];
}

/** Whether a number in it has a mark of its own; undefined where one cannot be read. */
function saysUnit(expression: Expression): boolean | undefined {
  const read = quantitiesIn(expression).map(({ figure }) => parseTradeLength(figure));
  return read.some((each) => each === undefined) ? undefined : read.some((each) => each?.unit !== undefined);
}

function hasName(expression: Expression): boolean {
  return [expression, ...AstUtils.streamAllContents(expression)].some(isReference);
}

function inQuantity(quantity: Quantity, from: LengthUnit, to: LengthUnit): WordsChange[] | undefined {
  const cst = quantity.$cstNode;
  const read = parseTradeLength(quantity.figure);
  if (cst === undefined || read === undefined) return undefined;
  const length = Length.of(read.value, read.unit ?? from);
  const source = exactSource(length, to);
  // Who wrote a bare number reads bare numbers.
  const words = read.unit === undefined ? source.replace(/(?:"|mm)$/, '') : source;
  return [{ start: cst.offset, end: cst.end, words }];
}
