import { Length, type LengthUnit, parseTradeLength, type Rational } from '@fettle/engine';
import type { Expression, Reference } from '../generated/ast.ts';

/** Arithmetic as a maker writes it, worked out exactly. A bare number is a count or a length in the piece's units. */
export type Value =
  /** `unit` is set where the number comes from a text of other units: a length there is a length here. */
  | { readonly kind: 'number'; readonly number: Rational; readonly unit?: LengthUnit }
  | { readonly kind: 'length'; readonly length: Length }
  | { readonly kind: 'problem'; readonly problem: ValueProblem; readonly at: Expression };

export type ValueProblem =
  | 'length-for-number'
  | 'not-whole'
  | 'division-by-zero'
  | 'area'
  | 'unknown-name'
  | 'unreadable'
  | 'too-large'
  | 'circle';

/** Digits in a value beyond which it is no length of furniture and would only make sums slow. */
const mostDigits = 60;

/** `unit` is what a bare number means once it meets a length in a sum. Never throws. */
export function evaluateExpression(
  expression: Expression,
  named: (reference: Reference) => Value,
  unit: LengthUnit,
): Value {
  switch (expression.$type) {
    case 'Quantity': {
      const read = parseTradeLength(expression.figure);
      if (read === undefined) {
        const problem = /\/0+(?!\d)/.test(expression.figure) ? 'division-by-zero' : 'unreadable';
        return { kind: 'problem', problem, at: expression };
      }
      return read.unit === undefined ? { kind: 'number', number: read.value } : { kind: 'length', length: read.length };
    }
    case 'Reference':
      return named(expression);
    case 'Parenthesis':
      return evaluateExpression(expression.inner, named, unit);
    case 'Negative': {
      const value = evaluateExpression(expression.operand, named, unit);
      if (value.kind === 'number') return { ...value, number: value.number.negated() };
      return value.kind === 'length' ? { kind: 'length', length: value.length.negated() } : value;
    }
    case 'Sum': {
      const left = evaluateExpression(expression.left, named, unit);
      if (left.kind === 'problem') return left;
      const right = evaluateExpression(expression.right, named, unit);
      if (right.kind === 'problem') return right;
      return keepWithin(combine(expression.operator, left, right, expression, unit), expression);
    }
    default: {
      const unknown: never = expression;
      return unknown;
    }
  }
}

type Known = Exclude<Value, { kind: 'problem' }>;

function combine(operator: '*' | '+' | '-' | '/', left: Known, right: Known, at: Expression, unit: LengthUnit): Value {
  const from = left.kind === 'number' && right.kind === 'number' ? (left.unit ?? right.unit) : undefined;
  const number = (result: Rational): Value => ({
    kind: 'number',
    number: result,
    ...(from === undefined ? {} : { unit: from }),
  });
  switch (operator) {
    case '+':
    case '-': {
      if (left.kind === 'number' && right.kind === 'number' && sameUnit(left, right)) {
        return number(operator === '+' ? left.number.plus(right.number) : left.number.minus(right.number));
      }
      const [a, b] = [asLength(left, unit), asLength(right, unit)];
      return { kind: 'length', length: operator === '+' ? a.plus(b) : a.minus(b) };
    }
    case '*':
      if (left.kind === 'number' && right.kind === 'number') return number(left.number.times(right.number));
      if (left.kind === 'length' && right.kind === 'number')
        return { kind: 'length', length: left.length.times(right.number) };
      if (left.kind === 'number' && right.kind === 'length')
        return { kind: 'length', length: right.length.times(left.number) };
      return { kind: 'problem', problem: 'area', at };
    case '/':
      if (right.kind === 'number') {
        if (right.number.isZero()) return { kind: 'problem', problem: 'division-by-zero', at };
        return left.kind === 'number'
          ? number(left.number.dividedBy(right.number))
          : { kind: 'length', length: left.length.dividedBy(right.number) };
      }
      if (right.length.isZero()) return { kind: 'problem', problem: 'division-by-zero', at };
      return { kind: 'number', number: asLength(left, unit).ratioTo(right.length) };
    default: {
      const unknown: never = operator;
      return unknown;
    }
  }
}

/** A value as a length; a bare number counts the units of the text it was written in. */
export function asLength(value: Exclude<Value, { kind: 'problem' }>, unit: LengthUnit): Length {
  return value.kind === 'length' ? value.length : Length.of(value.number, value.unit ?? unit);
}

function sameUnit(left: { readonly unit?: LengthUnit }, right: { readonly unit?: LengthUnit }): boolean {
  return left.unit === right.unit || left.unit === undefined || right.unit === undefined;
}

function keepWithin(value: Value, at: Expression): Value {
  const text =
    value.kind === 'number' ? value.number.toString() : value.kind === 'length' ? value.length.exactInches : '';
  return text.length > mostDigits ? { kind: 'problem', problem: 'too-large', at } : value;
}
