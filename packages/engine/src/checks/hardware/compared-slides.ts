import { type Finding, slidesCompared } from '@fettle/findings';
import type { SlideEntry } from '../../design/slide-design.ts';
import type { CarcaseLayout } from '../../evaluation.ts';
import { groupAlike } from '../../grouping.ts';
import { compareSlides } from '../../hardware/compare-slides.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import { depthNeeded } from '../suits-box.ts';

/** What the slides that a maker wants compared would make of the first drawer that they are said of. */
export function comparedSlides(drawers: readonly LaidDrawer[], layout: CarcaseLayout): readonly Finding[] {
  const asked = drawers.flatMap((one) => {
    const { compared } = one.drawer;
    const comparison = compared && compareSlides(one, compared.slides, layout);
    if (compared === undefined || comparison === undefined) return [];
    // Drawers that are on the others already have nothing to compare.
    return comparison.chosen.slides.name === comparison.other.slides.name ? [] : [{ one, compared, ...comparison }];
  });
  return groupAlike(asked, ({ compared }) => compared.origin).map(([{ one, compared, chosen, other }]) => {
    const { cell, drawer, words, box } = one;
    const who = cell.name === undefined ? { words } : { name: cell.name, words };
    const at = drawer.slidesOrigin;
    const fits = depthNeeded(other.slides).compare(box.depthThere.length) <= 0;
    return slidesCompared.at(
      compared.origin,
      {
        ...who,
        chosen: chosen.slides.name,
        other: other.slides.name,
        width: chosen.width.length,
        otherWidth: other.width.length,
        height: chosen.height.length,
        otherHeight: other.height.length,
        depth: chosen.depth.length,
        otherDepth: other.depth.length,
        cost: costOf(chosen.slides),
        otherCost: costOf(other.slides),
        rating: ratingOf(chosen.slides),
        otherRating: ratingOf(other.slides),
      },
      {
        related: at === undefined ? [] : [{ role: 'chosen', values: { slides: chosen.slides.name }, origin: at }],
        mends:
          at === undefined || !fits
            ? []
            : [
                {
                  how: 'use-slides',
                  values: { slides: other.slides.name },
                  changes: [
                    { kind: 'set-name', at, name: other.slides.name },
                    { kind: 'remove', at: compared.statement },
                  ],
                },
              ],
      },
    );
  });
}

function costOf({ price }: SlideEntry): string {
  return price === undefined ? 'not told' : String(price.amount.toNumber());
}

function ratingOf({ carries }: SlideEntry): string {
  return carries === undefined ? 'not told' : `${carries.load.toNumber()} ${carries.unit}`;
}
