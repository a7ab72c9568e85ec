import { type LengthUnit, parseTradeLength } from '@fettle/engine';
import { looksLikeDifference, looksLikeMixedNumber, unitsMixedInSum } from '@fettle/findings';
import { type Expression, isExpression, type Quantity, type Statement, type Sum } from '../generated/ast.ts';
import { originOf, type ReadContext } from './reader.ts';

/** Numbers and sums that are read otherwise than they look on paper. */

/** Bare numbers from here on, in inches or feet beside millimetres, are meant in millimetres. */
const hardlyInches = 100;

export const unitNames: Readonly<Record<LengthUnit, string>> = {
  in: 'inches',
  mm: 'millimetres',
  cm: 'centimetres',
  ft: 'feet',
};

const unitMarks: Readonly<Record<LengthUnit, string>> = { in: '"', mm: 'mm', cm: 'cm', ft: "'" };

/** A bare number with a unit of its own, as it is written: `17-1/2"`, `600mm`. */
export function withUnit(bare: string, unit: LengthUnit): string {
  return `${bare}${unitMarks[unit]}`;
}

export function notationFindings(context: ReadContext, statement: Statement): void {
  for (const part of statement.parts) {
    if (isExpression(part)) visit(context, part, 'whole');
  }
}

/** `place`: whether the expression stands alone, inside its own parentheses, or as a term of a longer sum. */
function visit(context: ReadContext, expression: Expression, place: 'whole' | 'parentheses' | 'term'): void {
  switch (expression.$type) {
    case 'Quantity':
    case 'Reference':
      return;
    case 'Negative':
      visit(context, expression.operand, 'term');
      return;
    case 'Parenthesis': {
      const { inner } = expression;
      const mixed = inner.$type === 'Quantity' && /^\d+-\d+\/\d+["″”]?$/.test(inner.figure) ? inner.figure : undefined;
      if (mixed === undefined) {
        visit(context, inner, 'parentheses');
        return;
      }
      const at = originOf(context, expression);
      const difference = `(${mixed.replace('-', ' - ')})`;
      const write = (how: string, words: string) =>
        ({ how, values: { [how]: words }, changes: [{ kind: 'set-words', at, words }] }) as const;
      context.findings.push(
        looksLikeDifference.at(at, { mixed }, { mends: [write('mixed', mixed), write('difference', difference)] }),
      );
      return;
    }
    case 'Sum':
      if (place === 'whole') looksMixed(context, expression);
      if (place !== 'term' && (expression.operator === '+' || expression.operator === '-')) {
        mixesUnits(context, expression);
      }
      visit(context, expression.left, 'term');
      visit(context, expression.right, 'term');
      return;
    default:
      expression satisfies never;
  }
}

/** `17 - 1/2` alone: in a longer sum, or in parentheses, the minus is taken as meant. */
function looksMixed(context: ReadContext, sum: Sum): void {
  const { left, right } = sum;
  if (sum.operator !== '-' || left.$type !== 'Quantity' || right.$type !== 'Quantity') return;
  const fraction = /^(\d{1,4})\/(\d{1,4})(["″”]?)$/.exec(right.figure);
  if (!/^[1-9]\d{0,5}$/.test(left.figure) || fraction === null) return;
  const [whole, over, under] = [Number(left.figure), Number(fraction[1]), Number(fraction[2])];
  if (over === 0 || under <= over) return;
  const at = originOf(context, sum);
  const mark = fraction[3] ?? '';
  const mixed = `${left.figure}-${right.figure}`;
  const words = sum.$cstNode?.text ?? `${left.figure} - ${right.figure}`;
  const rest = `${under - over}/${under}${mark}`;
  const write = (how: string, changed: string) =>
    ({ how, values: { [how]: changed }, changes: [{ kind: 'set-words', at, words: changed }] }) as const;
  context.findings.push(
    looksLikeMixedNumber.at(
      at,
      { words, mixed, result: whole === 1 ? rest : `${whole - 1}-${rest}` },
      { mends: [write('mixed', mixed), write('difference', `(${left.figure} - ${right.figure})`)] },
    ),
  );
}

/** Says each bare number that hardly means the units of its piece beside a number with a unit of the other system. */
function mixesUnits(context: ReadContext, sum: Sum): void {
  const own = context.units.unit;
  const read = termsOf(sum).flatMap((term) => {
    const number = term.$type === 'Quantity' ? parseTradeLength(term.figure) : undefined;
    return number === undefined ? [] : [{ term: term as Quantity, number }];
  });
  const other = read.find(({ number }) => number.unit !== undefined && isMetric(number.unit) !== isMetric(own));
  const unit = other?.number.unit;
  if (other === undefined || unit === undefined) return;
  for (const { term, number } of read) {
    const slip = isMetric(own) ? /[/½¼¾⅓⅔⅛⅜⅝⅞]/.test(term.figure) : number.value.toNumber() >= hardlyInches;
    if (number.unit !== undefined || !slip) continue;
    const at = originOf(context, term);
    // Hundreds of inches are not offered: whoever means them says so.
    const mends = (isMetric(own) ? [unit, own] : [unit]).map((each) => {
      const words = withUnit(term.figure, each);
      return { how: 'say', values: { words }, changes: [{ kind: 'set-words', at, words }] } as const;
    });
    context.findings.push(
      unitsMixedInSum.at(
        at,
        { bare: term.figure, unit: unitNames[own], other: unitNames[unit], beside: other.term.figure },
        { mends },
      ),
    );
  }
}

function termsOf(expression: Expression): Expression[] {
  if (expression.$type === 'Parenthesis') return termsOf(expression.inner);
  if (expression.$type === 'Negative') return termsOf(expression.operand);
  if (expression.$type !== 'Sum' || expression.operator === '*' || expression.operator === '/') return [expression];
  return [...termsOf(expression.left), ...termsOf(expression.right)];
}

export function isMetric(unit: LengthUnit): boolean {
  return unit === 'mm' || unit === 'cm';
}
