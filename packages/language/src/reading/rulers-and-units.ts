import { type Length, Length as Lengths, type LengthUnit, parseTradeLength, Rational } from '@fettle/engine';
import { type Mend, offTheRuler, rulerOdd, sizeLooksLikeOtherUnit } from '@fettle/findings';
import { AstUtils } from 'langium';
import { type Expression, isQuantity, isReference, type Quantity, type Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { isMetric, unitNames, withUnit } from './notation.ts';
import { expressionIn, type ReadPhrase, readParts } from './phrases.ts';
import { whereSaid, wordsOf } from './phrases-together.ts';
import { originOf, type ReadContext, readLength, rulerOf } from './reader.ts';
import { asked } from './sizes-as-said.ts';

/** Whether units and rulers fit the sizes that are written: rulers that nobody has, sizes in another unit or off the marks. */

/** Marks that rulers have, as parts of one unit. */
const divisions: Readonly<Record<LengthUnit, readonly number[]>> = {
  in: [1, 2, 4, 8, 16, 32, 64, 128, 10, 20, 50, 100, 1000],
  ft: [1, 12, 24, 48, 96, 192, 384, 768, 10, 100, 1000],
  mm: [1, 2, 4, 5, 10, 20, 50, 100],
  cm: [1, 2, 5, 10, 20, 100],
};
const usualRulers: Readonly<Record<LengthUnit, string>> = { in: '1/32', ft: '1/384', mm: '1/2', cm: '1/20' };

export function rulerFindings(context: ReadContext, statement: Statement): void {
  const { word, declares } = specOf(statement).spec;
  if (word === 'units') oddRuler(context, statement);
  if (word === 'size') otherUnit(context, statement);
  if (word === 'size' || declares === 'cell') offRuler(context, statement);
}

function oddRuler(context: ReadContext, statement: Statement): void {
  const expression = expressionIn(
    readParts(statement, specOf(statement).spec).phrases.find((read) => read.phrase.pattern === 'to <number>'),
  );
  if (expression === undefined) return;
  const { unit, ruler } = rulerOf(statement);
  if (ruler !== undefined && isRuler(unit, ruler)) return;
  const at = originOf(context, expression);
  // `to 32` is meant for 1/32.
  const inverse = ruler !== undefined && ruler.sign() > 0 ? ruler.inverse() : undefined;
  const words = inverse !== undefined && isRuler(unit, inverse) ? inverse.toString() : usualRulers[unit];
  context.findings.push(
    rulerOdd.at(
      at,
      { words: expression.$cstNode?.text ?? '', unit: unitNames[unit], usual: words },
      { mends: [{ how: 'write', values: { ruler: words }, changes: [{ kind: 'set-words', at, words }] }] },
    ),
  );
}

/** Whether rulers in this unit have marks so far apart. */
function isRuler(unit: LengthUnit, mark: Rational): boolean {
  if (unit === 'mm' && mark.isWhole()) return mark.sign() > 0 && mark.toNumber() <= 10;
  return divisions[unit].some((each) => mark.times(Rational.of(each)).equals(Rational.one));
}

/** Bare numbers of a piece's size that no piece of furniture has in its own unit: 600" wide, 24 mm wide. */
const hardlyMeant: Readonly<
  Record<
    LengthUnit,
    { readonly other: LengthUnit; readonly one: (n: number) => boolean; readonly all: (n: number) => boolean }
  >
> = {
  in: { other: 'mm', one: (n) => n >= 400, all: (n) => n >= 150 },
  ft: { other: 'in', one: (n) => n >= 40, all: (n) => n >= 12 },
  cm: { other: 'mm', one: (n) => n >= 1000, all: (n) => n >= 400 },
  mm: { other: 'in', one: () => false, all: (n) => n < 100 },
};

/** What a piece is seldom smaller or larger than. Common practice, no source. */
const usualSizes: Readonly<Record<LengthUnit, readonly [least: number, most: number]>> = {
  in: [2, 240],
  ft: [0.15, 20],
  mm: [50, 6000],
  cm: [5, 600],
};

function isUsualSize(size: number, unit: LengthUnit): boolean {
  const [least, most] = usualSizes[unit];
  return least <= size && size <= most;
}

function otherUnit(context: ReadContext, statement: Statement): void {
  const { unit } = context.units;
  const bare = readParts(statement, specOf(statement).spec).phrases.flatMap((read) => {
    const expression = expressionIn(read);
    const number = expression?.$type === 'Quantity' ? parseTradeLength(expression.figure) : undefined;
    return number === undefined || number.unit !== undefined || number.value.sign() <= 0
      ? []
      : [{ read, expression: expression as Quantity, value: number.value }];
  });
  const { other, one, all } = hardlyMeant[unit];
  const slip =
    bare.find(({ value }) => one(value.toNumber())) ??
    (bare.every(({ value }) => all(value.toNumber())) ? bare[0] : undefined);
  // Where one of them would be odd in the other unit as well, only the number that stands out is to blame.
  if (slip === undefined || !bare.every(({ value }) => isUsualSize(value.toNumber(), other))) return;
  const written = bare.map(({ expression }) => withUnit(expression.figure, other));
  const last = written.at(-1) ?? '';
  const words = written.length === 1 ? last : `${written.slice(0, -1).join(', ')} and ${last}`;
  context.findings.push(
    sizeLooksLikeOtherUnit.at(
      whereSaid(context, slip.read),
      {
        words: wordsOf(slip.read),
        size: Lengths.of(slip.value, unit),
        unit: unitNames[unit],
        other: unitNames[other],
      },
      {
        mends: [
          {
            how: 'say',
            values: { words },
            changes: bare.map(({ expression }, i) => ({
              kind: 'set-words',
              at: originOf(context, expression),
              words: written[i] ?? '',
            })),
          },
        ],
      },
    ),
  );
}

/** Sizes that are set out with a ruler: of the piece, of fronts and of openings. */
function offRuler(context: ReadContext, statement: Statement): void {
  // A ruler that nobody has puts every size off its marks.
  if (!isRuler(context.units.unit, context.units.ruler)) return;
  for (const read of readParts(statement, specOf(statement).spec).phrases) {
    const expression = expressionIn(read);
    if (expression === undefined || !isSetOut(statement, read) || isOfAnotherRuler(expression, context)) continue;
    const length = readLength({ ...context, findings: [] }, expression)?.length;
    const marks = length && marksAround(length, context);
    if (length === undefined || marks === undefined) continue;
    const at = originOf(context, expression);
    const mends = toMarks(length, marks).map(
      ({ to, change, direction }): Mend => ({
        how: 'to-mark',
        values: { size: to, change, direction },
        changes: [{ kind: 'set-length', at, to }],
      }),
    );
    context.findings.push(offTheRuler.at(at, { size: length, ...marks }, { mends }));
  }
}

function isSetOut(statement: Statement, { phrase }: ReadPhrase): boolean {
  if (specOf(statement).spec.word === 'size') return true;
  return [...asked('wide'), ...asked('high')].includes(phrase.pattern) && phrase.pattern.includes('<length>');
}

/** A named value has its own place and is not written here; millimetres are not set out with an inch ruler. */
function isOfAnotherRuler(expression: Expression, { units }: ReadContext): boolean {
  return [expression, ...AstUtils.streamAllContents(expression)].some((node) => {
    if (isReference(node)) return true;
    const unit = isQuantity(node) ? parseTradeLength(node.figure)?.unit : undefined;
    return unit !== undefined && isMetric(unit) !== isMetric(units.unit);
  });
}

/** The nearer mark first; nothing is made as small as nothing. */
function toMarks(length: Length, { below, above }: { readonly below: Length; readonly above: Length }) {
  return [
    { to: below, change: length.minus(below), direction: 'less' },
    { to: above, change: above.minus(length), direction: 'more' },
  ]
    .filter(({ to }) => to.isPositive())
    .sort((a, b) => a.change.compare(b.change));
}

/** Undefined on a mark, and for what is no size at all. */
function marksAround(length: Length, { units }: ReadContext): { below: Length; above: Length } | undefined {
  if (!length.isPositive()) return undefined;
  const marks = length.in(units.unit).dividedBy(units.ruler);
  if (marks.isWhole()) return undefined;
  const below = marks.floor();
  return {
    below: Lengths.of(below.times(units.ruler), units.unit),
    above: Lengths.of(below.plus(Rational.one).times(units.ruler), units.unit),
  };
}
