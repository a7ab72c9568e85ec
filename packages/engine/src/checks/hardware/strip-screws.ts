import { type Finding, stripScrewTooShort } from '@fettle/findings';
import type { Figure } from '../../design/figure.ts';
import type { RunnersDesign } from '../../design/slide-design.ts';
import { groupAlike } from '../../grouping.ts';
import type { LengthUnit } from '../../length/length.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import { LEAST_SCREW_HOLD, limitIn } from '../../tables/trade-limits.ts';
import { givenAt } from '../written-sizes.ts';

/** Whether the screws of strips of wood reach through them into what they are to hold to. */

/** Of wooden runners: one finding for each statement. */
export function runnerScrewFindings(drawers: readonly LaidDrawer[], unit: LengthUnit): readonly Finding[] {
  const all = drawers.flatMap(({ drawer: { runners, slides } }) =>
    runners === undefined || slides !== undefined ? [] : [runners],
  );
  return groupAlike(all, ({ origin }) => origin).flatMap(([runners]) =>
    shortStripScrews('runner', runners, runners.isCentre ? runners.height : runners.thickness, unit),
  );
}

/** `through` is what the screws pass of the strip. */
export function shortStripScrews(
  strip: 'runner' | 'cleat',
  { screws, screwsOrigin, origin }: Pick<RunnersDesign, 'screws' | 'screwsOrigin' | 'origin'>,
  through: Figure,
  unit: LengthUnit,
): readonly Finding[] {
  if (screws === undefined || !through.length.isPositive()) return [];
  const hold = limitIn(LEAST_SCREW_HOLD, unit);
  const length = screws.length.length;
  const needed = through.length.plus(hold);
  if (length.compare(needed) >= 0) return [];
  const at = givenAt(through);
  const size = length.minus(hold);
  // What is left of a strip that is made thinner has to be a strip still.
  const isStrip = size.times(2).compare(through.length) >= 0;
  return [
    stripScrewTooShort.at(
      screwsOrigin ?? origin,
      { strip, screw: screws.name, length, through: through.length, needed, by: needed.minus(length) },
      {
        related: [{ role: 'screw', values: { screw: screws.name }, origin: screws.origin }],
        mends:
          at === undefined || !isStrip || !size.isPositive()
            ? []
            : [{ how: 'thinner', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    ),
  ];
}
