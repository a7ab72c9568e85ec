import { type Finding, shelfOverloaded } from '@fettle/findings';
import { fillSpaces } from '../../contents/fill-spaces.ts';
import { roomInside } from '../../contents/room-inside.ts';
import type { ThingDesign } from '../../design/contents-design.ts';
import { Rational } from '../../length/rational.ts';
import { inPounds } from '../../stock/weights.ts';
import { isMetric, SHELF_LOAD_PSF } from '../../tables/trade-limits.ts';
import { cellsIn, whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';

/**
 * What stands on a shelf, against the load that shelves are screened for. Things of which no weight is said are not
 * counted, so the sum is the least that it may be.
 */
export function shelfLoadFindings(one: TradeCase): readonly Finding[] {
  const { face, layout, parts } = one;
  if (face === undefined) return [];
  return cellsIn(face.root).flatMap(({ laid, group }) => {
    const { cell } = laid;
    if ((cell.kind !== 'open' && cell.kind !== 'front') || cell.shelves === undefined) return [];
    const held = (cell.holds ?? []).filter(({ thing }) => thing.weighs !== undefined);
    const shelf = parts.find(({ id }) => id === `${cell.id}/shelf-1`);
    const [first] = held;
    if (first === undefined || shelf === undefined) return [];
    const room = roomInside({ ...laid, cell }, face.design, layout);
    const [width, depth] = [room.width.length, room.depth.length];
    const filled = fillSpaces(
      cell.holds ?? [],
      room.heights.map(({ length: height }) => ({ width, depth, height })),
    );
    // The first space stands on the bottom of the opening.
    const loads = room.heights
      .slice(1)
      .map((_, at) =>
        filled.reduce(
          (sum, { held: { thing }, bySpace }) => sum.plus(poundsOf(thing).times(bySpace[at + 1] ?? 0)),
          Rational.zero,
        ),
      );
    const load = loads.reduce((most, each) => most.max(each), Rational.zero);
    const feet = shelf.box.x.size.length.in('ft').times(shelf.box.z.size.length.in('ft'));
    if (feet.sign() <= 0) return [];
    const spread = load.dividedBy(feet);
    const limit = Rational.of(SHELF_LOAD_PSF);
    if (spread.compare(limit) <= 0) return [];
    const say = spoken(isMetric(layout.unit));
    return [
      shelfOverloaded.at(
        first.origin,
        {
          ...whoIs(cell, group),
          load: say.load(load),
          spread: say.spread(spread),
          limit: say.spread(limit),
          difference: say.spread(spread.minus(limit)),
        },
        { related: [{ role: 'opening', values: whoIs(cell, group), origin: cell.shelves.origin }] },
      ),
    ];
  });
}

function poundsOf({ weighs }: ThingDesign): Rational {
  if (weighs === undefined) return Rational.zero;
  return weighs.unit === 'lb' ? weighs.amount : inPounds(weighs.amount);
}

/** The pound is 0.45359237 kg, the foot 0.3048 m, exactly. */
const KILOGRAMS = Rational.of(45_359_237, 100_000_000);
const SQUARE_METRES = Rational.of(3048, 10_000).power(2);

function spoken(isInMetres: boolean) {
  const rounded = (amount: Rational) => `${Number(amount.toNumber().toFixed(1))}`;
  return isInMetres
    ? {
        load: (pounds: Rational) => `${rounded(pounds.times(KILOGRAMS))} kg`,
        spread: (psf: Rational) => `${rounded(psf.times(KILOGRAMS).dividedBy(SQUARE_METRES))} kg a square metre`,
      }
    : {
        load: (pounds: Rational) => `${rounded(pounds)} lb`,
        spread: (psf: Rational) => `${rounded(psf)} lb a square foot`,
      };
}
