import { type Finding, runnerGrooveTooDeep } from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import { groupAlike } from '../../grouping.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import { DEEPEST_GROOVE } from '../../tables/trade-limits.ts';
import { givenAt } from '../written-sizes.ts';

/** What the grooves for wooden runners leave of the sides of the box. One finding for each statement. */
export function runnerGrooveFindings(drawers: readonly LaidDrawer[]): readonly Finding[] {
  const deep = drawers.flatMap(({ drawer, sides }) => {
    const limit = sides.length.times(DEEPEST_GROOVE);
    const { runners, slides } = drawer;
    if (runners === undefined || runners.isCentre || slides !== undefined) return [];
    return runners.thickness.length.compare(limit) <= 0 ? [] : [{ runners, sides, limit }];
  });
  return groupAlike(deep, ({ runners }) => runners.origin).map(([{ runners, sides, limit }]) => {
    const depth = runners.thickness.length;
    const at = givenAt(runners.thickness);
    const sidesAt = rootOrigin(sides);
    return runnerGrooveTooDeep.at(
      rootOrigin(runners.thickness) ?? runners.origin,
      { depth, thickness: sides.length, limit, difference: depth.minus(limit) },
      {
        related: sidesAt === undefined ? [] : [{ role: 'sides', values: { thickness: sides.length }, origin: sidesAt }],
        mends:
          at === undefined || !limit.isPositive()
            ? []
            : [{ how: 'thinner', values: { size: limit }, changes: [{ kind: 'set-length', at, to: limit }] }],
      },
    );
  });
}
