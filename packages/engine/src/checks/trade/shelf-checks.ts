import { type Finding, type Mend, shelfTooLong, shelvesFillOpening } from '@fettle/findings';
import type { FrontCell, OpenCell, ShelfDesign } from '../../design/design.ts';
import { type Group, groupAlike } from '../../grouping.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { clearHeights, shelfCount } from '../../parts/shelf-places.ts';
import {
  isMetric,
  LEAST_BETWEEN_SHELVES,
  limitIn,
  longestShelfIn,
  SHELF_LOAD_PSF,
  type ShelfMaterial,
} from '../../tables/trade-limits.ts';
import { givenAt } from '../written-sizes.ts';
import { alsoRelated, cellsIn, type NamedCell, whoIs } from './alike.ts';
import type { TradeCase } from './case-facts.ts';

/** Shelves: whether anything goes between them, and a screening of their length. No strength is computed. */

interface Shelved extends NamedCell {
  readonly cell: OpenCell | FrontCell;
  readonly shelves: ShelfDesign;
  readonly count: number;
  /** From one end of a shelf to the other. */
  readonly length: Length;
  /** The least of the free heights. */
  readonly clear: Length;
}

export function shelfFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const shelved = cellsIn(one.face.root).flatMap((named) => shelvedCell(named, one.layout.unit));
  const least = limitIn(LEAST_BETWEEN_SHELVES, one.design.units.unit);
  return [...filled(shelved, least), ...tooLong(one, shelved)];
}

function shelvedCell(named: NamedCell, unit: LengthUnit): readonly Shelved[] {
  const { cell, opening } = named.laid;
  if ((cell.kind !== 'open' && cell.kind !== 'front') || cell.shelves === undefined) return [];
  const { shelves } = cell;
  const count = shelfCount(shelves);
  const length = opening.x.size.length.minus(shelves.shyEachEnd.length.times(2));
  if (count === 0 || !length.isPositive() || !opening.y.size.length.isPositive()) return [];
  const clear = clearHeights(shelves, opening, unit).reduce(
    (least, { length: height }) => least.min(height),
    opening.y.size.length,
  );
  return [{ ...named, cell, shelves, count, length, clear }];
}

function filled(shelved: readonly Shelved[], least: Length): readonly Finding[] {
  return (
    shelved
      .filter(({ clear, shelves }) => isFilled(clear, least) && shelves.material.thickness.length.isPositive())
      // Heights that are written so that shelves meet are told one by one.
      .filter(({ clear, shelves }) => shelves.heights === undefined || clear.isPositive())
      .map(({ laid, group, cell, shelves, count, clear }) => {
        const opening = laid.opening.y.size.length;
        const who = whoIs(cell, group);
        const fits = clear.isPositive();
        return shelvesFillOpening.at(
          shelves.countOrigin ?? shelves.origin,
          {
            ...who,
            count,
            thickness: shelves.material.thickness.length,
            opening,
            clear,
            fits,
            limit: least,
          },
          {
            severity: fits ? 'warning' : 'error',
            related: [{ role: 'opening', values: { ...who, opening }, origin: cell.origin }],
            mends: fewerShelves(shelves, count, opening, least),
          },
        );
      })
  );
}

function isFilled(clear: Length, least: Length): boolean {
  return clear.compare(least) < 0;
}

/** As many as leave enough between them; none where not even one does. */
function fewerShelves(shelves: ShelfDesign, count: number, opening: Length, least: Length): readonly Mend[] {
  const at = shelves.countOrigin;
  if (at === undefined || shelves.heights !== undefined) return [];
  const thickness = shelves.material.thickness.length;
  for (let fewer = count - 1; fewer > 0; fewer--) {
    const clear = opening.minus(thickness.times(fewer)).dividedBy(fewer + 1);
    if (isFilled(clear, least)) continue;
    return [
      { how: 'fewer', values: { count: fewer, clear }, changes: [{ kind: 'set-words', at, words: String(fewer) }] },
    ];
  }
  return [];
}

/** Boards, and what names no stock, are taken for hardwood: of the three it is the stiffest, so the screen is mild. */
function screenedAs({ material: { stock } }: ShelfDesign): ShelfMaterial {
  if (stock?.form !== 'sheet') return 'solid wood';
  return stock.grain === 'none' ? 'MDF' : 'plywood';
}

function tooLong(one: TradeCase, shelved: readonly Shelved[]): readonly Finding[] {
  const long = shelved.flatMap((each) => {
    const thickness = each.shelves.material.thickness.length;
    const material = screenedAs(each.shelves);
    const limit = longestShelfIn(material, thickness, one.design.units.unit);
    if (!thickness.isPositive() || each.length.compare(limit) <= 0) return [];
    return [{ ...each, thickness, material, limit }];
  });
  return groupAlike(long, ({ length, thickness, material }) => [
    length.exactInches,
    thickness.exactInches,
    material,
  ]).map((same) => {
    const [{ cell, group, shelves, length, thickness, material, limit }, ...others] = same;
    return shelfTooLong.at(
      shelves.origin,
      {
        ...whoIs(cell, group),
        length,
        thickness,
        material,
        loadPsf: SHELF_LOAD_PSF,
        metric: isMetric(one.design.units.unit),
        limit,
        difference: length.minus(limit),
      },
      { related: alsoRelated(others), mends: thickerShelves(one, same) },
    );
  });
}

/** Only where the thickness is one's own to choose; a sheet is as thick as it is. */
function thickerShelves({ design }: TradeCase, same: Group<Shelved>): readonly Mend[] {
  const [first] = same;
  const { material } = first.shelves;
  const at = givenAt(material.asked);
  const { stock } = material;
  if (same.length > 1 || at === undefined || stock?.form === 'sheet') return [];
  const most = (stock?.actual ?? stock?.nominal)?.length.minus(material.thickness.length);
  const { unit } = design.units;
  const least = limitIn(LEAST_BETWEEN_SHELVES, unit);
  const step = isMetric(unit) ? Length.millimetres(1) : Length.inches(1, 8);
  const screened = screenedAs(first.shelves);
  // At most 2": a thicker shelf is another construction.
  for (let size = step; size.compare(Length.inches(2)) <= 0; size = size.plus(step)) {
    if (longestShelfIn(screened, size, unit).compare(first.length) < 0) continue;
    const clear = first.laid.opening.y.size.length.minus(size.times(first.count)).dividedBy(first.count + 1);
    const isThere = most === undefined || size.minus(material.thickness.length).compare(most) <= 0;
    if (!isThere || isFilled(clear, least)) return [];
    return [{ how: 'thicken', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  }
  return [];
}
