import { type Finding, type Mend, slidesOverloaded } from '@fettle/findings';
import type { SlideEntry } from '../../design/slide-design.ts';
import { groupAlike, groupedBy } from '../../grouping.ts';
import { Rational } from '../../length/rational.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { pieceWeight } from '../../stock/buying/piece-weight.ts';
import { inKilograms, inPounds } from '../../stock/weights.ts';
import { depthNeeded, suitsBox } from '../suits-box.ts';

/**
 * Whether what a drawer weighs with all that it holds is within what its slides are rated for. What nobody knows the
 * weight of is not counted, so the sum is the least that it may be.
 */
export function slideLoadFindings(
  drawers: readonly LaidDrawer[],
  parts: readonly UnmarkedPart[],
  offered: readonly SlideEntry[],
): readonly Finding[] {
  const byCell = groupedBy(parts, ({ cell }) => cell);
  const heavy = drawers.flatMap((one) => {
    const rated = one.drawer.slides?.carries;
    if (one.drawer.slides === undefined || rated === undefined) return [];
    const itself = pieceWeight(byCell.get(one.cell.id) ?? []).kilograms;
    const load = itself.plus(heldWeight(one));
    const limit = inKilograms(rated.load, rated.unit);
    return load.compare(limit) <= 0 ? [] : [{ ...one, slides: one.drawer.slides, rated, itself, load, limit }];
  });
  return groupAlike(heavy, ({ drawer, load }) => [drawer.slidesOrigin ?? drawer.origin, load.toString()]).map(
    ([first]) => {
      const { cell, drawer, words, slides, rated, itself, load, limit } = first;
      const who = cell.name === undefined ? { words } : { name: cell.name, words };
      const say = (kilograms: Rational) => inWords(kilograms, rated.unit);
      return slidesOverloaded.at(
        drawer.slidesOrigin ?? drawer.origin,
        {
          ...who,
          slides: slides.name,
          load: say(load),
          rating: say(limit),
          difference: say(load.minus(limit)),
          drawer: say(itself),
        },
        {
          related: [{ role: 'drawer', values: { ...who, drawer: say(itself) }, origin: cell.origin }],
          mends: strongerSlides(first, load, offered),
        },
      );
    },
  );
}

function heldWeight({ cell, drawer }: LaidDrawer): Rational {
  const held = [...(cell.holds ?? []), ...(drawer.compartments?.each ?? []).flatMap(({ holds }) => holds ?? [])];
  return held.reduce((sum, { thing, count }) => {
    if (thing.weighs === undefined) return sum;
    return sum.plus(inKilograms(thing.weighs.amount, thing.weighs.unit).times(count));
  }, Rational.zero);
}

/** To a tenth: the densities that it comes from are no better. */
function inWords(kilograms: Rational, unit: 'lb' | 'kg'): string {
  const amount = (unit === 'kg' ? kilograms : inPounds(kilograms)).toNumber();
  return `${Number(amount.toFixed(1))} ${unit}`;
}

/** Slides for the same box in the same place that are rated for it. */
function strongerSlides(one: LaidDrawer, load: Rational, offered: readonly SlideEntry[]): readonly Mend[] {
  const { drawer, box } = one;
  const { slides, slidesOrigin: at } = drawer;
  if (slides === undefined || at === undefined) return [];
  return offered
    .filter(
      (each) =>
        each.carries !== undefined &&
        inKilograms(each.carries.load, each.carries.unit).compare(load) >= 0 &&
        suitsBox(each, one) &&
        each.length.length.equals(slides.length.length) &&
        each.clearanceEachSide.length.equals(slides.clearanceEachSide.length) &&
        depthNeeded(each).compare(box.depthThere.length) <= 0 &&
        (each.height === undefined || each.height.length.compare(box.y.size.length) <= 0),
    )
    .slice(0, 3)
    .map((each) => ({
      how: 'use-slides',
      values: { slides: each.name },
      changes: [{ kind: 'set-name', at, name: each.name } as const],
    }));
}
