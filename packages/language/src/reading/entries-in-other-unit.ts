import { Length, type LengthUnit, parseTradeLength } from '@fettle/engine';
import { sizeLooksLikeOtherUnit } from '@fettle/findings';
import { isQuantity, type Quantity, type Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { unitNames, withUnit } from './notation.ts';
import { type ReadPhrase, readParts } from './phrases.ts';
import { whereSaid, wordsOf } from './phrases-together.ts';
import { originOf, type ReadContext } from './reader.ts';

/**
 * Hardware and stock in bare numbers that nobody makes in inches: a leaf 15" wide. Such an entry mostly stands in a file
 * that forgot to say `units mm`, above a piece that says it.
 */

/** In inches; what is as large as this is hardly meant. Common practice, no source. */
const hardlyMeant: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  hinge: {
    'leaf <length> wide': 6,
    '<length> closed': 1,
    'cup <length> wide': 6,
    'cup <length> deep': 3,
    'plate <length> from front': 12,
  },
  pull: { 'stands out <length>': 10, '<length> between screws': 48, 'thread <length> deep': 4 },
  screw: { '<length> long': 16, 'pilot <length>': 1, 'clearance <length>': 1 },
  dowel: { '<length> thick': 4, '<length> long': 16 },
  board: { '<length> wide': 80, '<length> long': 500 },
  sheet: { 'actual <length>': 8, '<length> wide': 300, '<length> long': 500 },
};

const METRIC: LengthUnit = 'mm';

export function entryInOtherUnit(context: ReadContext, statement: Statement): void {
  const { spec } = specOf(statement);
  const limits = hardlyMeant[spec.word];
  const { unit } = context.units;
  if (limits === undefined || unit !== 'in') return;
  const { phrases } = readParts(statement, spec);
  const slip = phrases.find((read) => {
    const limit = limits[read.phrase.pattern];
    return limit !== undefined && bareLengths(read).some(({ value }) => value >= limit);
  });
  const [first] = slip === undefined ? [] : bareLengths(slip);
  if (slip === undefined || first === undefined) return;
  const all = phrases.flatMap(bareLengths);
  const written = all.map(({ quantity }) => withUnit(quantity.figure, METRIC));
  context.findings.push(
    sizeLooksLikeOtherUnit.at(
      whereSaid(context, slip),
      { words: wordsOf(slip), size: first.length, unit: unitNames[unit], other: unitNames[METRIC] },
      {
        mends: [
          {
            how: 'say',
            values: { words: written.join(', ') },
            changes: all.map(({ quantity }, at) => ({
              kind: 'set-words',
              at: originOf(context, quantity),
              words: written[at] ?? '',
            })),
          },
        ],
      },
    ),
  );
}

interface BareLength {
  readonly quantity: Quantity;
  readonly value: number;
  readonly length: Length;
}

/** Numbers without a unit that stand for lengths; counts, prices and angles do not. */
function bareLengths({ phrase, slots }: ReadPhrase): readonly BareLength[] {
  const kinds = phrase.items.flatMap((item) => (item.kind === 'slot' ? [item.slot] : []));
  return slots.flatMap((part, at): readonly BareLength[] => {
    if (kinds[at] !== 'length' || !isQuantity(part)) return [];
    const number = parseTradeLength(part.figure);
    if (number === undefined || number.unit !== undefined) return [];
    return [{ quantity: part, value: number.value.toNumber(), length: Length.of(number.value, 'in') }];
  });
}
