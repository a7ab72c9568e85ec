import { type LengthUnit, parseTradeLength } from '@fettle/engine';
import { type Mend, sizeOfWhat, unitApart } from '@fettle/findings';
import { isExpression, isReference, isWord, type Part, type Quantity, type Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { withUnit } from './notation.ts';
import { readParts } from './phrases.ts';
import { originOf, type ReadContext } from './reader.ts';
import { asked, groupAround, sayAcross } from './sizes-as-said.ts';

/** Words that no phrase takes, and that a maker says all the same: `30 inches wide`, `drawer "linen" 9 high`. */

const unitWords: Readonly<Record<string, LengthUnit>> = {
  inch: 'in',
  inches: 'in',
  in: 'in',
  foot: 'ft',
  feet: 'ft',
  ft: 'ft',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
};
export const directions = new Set(['wide', 'high', 'deep', 'long', 'thick']);

/** Says that a unit in this run is written as a word behind its number; false where there is none. */
export function unitApartIn(context: ReadContext, statement: Statement, run: readonly Part[]): boolean {
  for (const part of run) {
    const unit = isWord(part) ? unitWords[part.word.toLowerCase()] : undefined;
    const at = statement.parts.indexOf(part);
    const [before, after] = [statement.parts[at - 1], statement.parts[at + 1]];
    if (unit === undefined || !isBare(before)) continue;
    // 'in' is a small word of its own, as in 'in groove'.
    if (isWord(part) && part.word.toLowerCase() === 'in' && isWord(after) && !directions.has(after.word)) continue;
    const written = withUnit(before.figure, unit);
    const origin = originOf(context, before, part);
    const words = `${before.figure} ${part.$cstNode?.text ?? ''}`;
    context.findings.push(
      unitApart.at(
        origin,
        { words, written },
        {
          mends: [{ how: 'write', values: { written }, changes: [{ kind: 'set-words', at: origin, words: written }] }],
        },
      ),
    );
    return true;
  }
  return false;
}

function isBare(part: Part | undefined): part is Quantity {
  return part?.$type === 'Quantity' && parseTradeLength(part.figure)?.unit === undefined;
}

/** Says that a size of a space does not tell front from opening; false where the run is no such size. */
export function sizeOfWhatIn(context: ReadContext, statement: Statement, run: readonly Part[]): boolean {
  const group = groupAround(statement);
  const [size, direction] = run;
  if (group === undefined || run.length > 2 || size === undefined || !isExpression(size) || isReference(size)) {
    return false;
  }
  if (direction !== undefined && !isWord(direction)) return false;
  const along = group.kind === 'row' ? 'wide' : 'high';
  const said = direction?.word.toLowerCase() ?? along;
  if (said !== 'wide' && said !== 'high') return false;
  if (said !== along) {
    sayAcross(context, { parts: run }, group);
    return true;
  }
  const { spec } = specOf(statement);
  // Beside a size that is said in full it is only one too many.
  if (readParts(statement, spec).phrases.some((read) => asked(along).includes(read.phrase.pattern))) return false;
  const fronted = !['open', 'row', 'stack'].includes(spec.word);
  const at = originOf(context, size, direction);
  const number = size.$cstNode?.text ?? '';
  const words = `${number} ${said}`;
  const mends = (fronted ? ['front', 'opening'] : ['opening']).map((basis): Mend => {
    const whole = `${basis} ${words}`;
    return { how: 'say', values: { words: whole }, changes: [{ kind: 'set-words', at, words: whole }] };
  });
  context.findings.push(sizeOfWhat.at(at, { words: direction === undefined ? number : words, fronted }, { mends }));
  return true;
}
