import { type Finding, type Mend, runnerGrooveTooDeep, runnerOutOfPlace } from '@fettle/findings';
import { derive, rootOrigin } from '../../design/derive.ts';
import { groupAlike } from '../../grouping.ts';
import { grooveForRunner } from '../../hardware/wooden-runners.ts';
import type { Length, LengthUnit } from '../../length/length.ts';
import { downToMark, upToMark } from '../../length/ruler-marks.ts';
import { bottomUp } from '../../parts/drawer-box.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { wallTo } from '../../solids/index.ts';
import { THINNEST_WALL } from '../../tables/joinery-limits.ts';
import { RUNNER_HEIGHT, usual } from '../../tables/trade-habits.ts';
import { DEEPEST_GROOVE, limitIn } from '../../tables/trade-limits.ts';
import { woodOf } from '../joinery/joined-case.ts';
import { givenAt, sizeMend } from '../written-sizes.ts';

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

/** The cells whose runners leave the sides of their boxes: what else is wrong with them follows from that. */
export function runnersOutOfPlace(
  drawers: readonly LaidDrawer[],
  parts: readonly UnmarkedPart[],
  unit: LengthUnit,
): ReadonlySet<string | undefined> {
  return new Set(leavingTheirSides(drawers, parts, unit).map(({ one: { cell } }) => cell.id));
}

/** Whether there is wood over and under the grooves for wooden runners. One finding for each statement. */
export function runnerPlaceFindings(
  drawers: readonly LaidDrawer[],
  parts: readonly UnmarkedPart[],
  unit: LengthUnit,
  mark: Length,
): readonly Finding[] {
  return groupAlike(leavingTheirSides(drawers, parts, unit), ({ runners }) => runners.origin).map((group) => {
    const worst = group.reduce((most, each) => (each.left.compare(most.left) < 0 ? each : most));
    const { one, runners, edge, left, limit } = worst;
    const who = one.cell.name === undefined ? { words: one.words } : { name: one.cell.name, words: one.words };
    return runnerOutOfPlace.at(
      rootOrigin(runners.at?.above ?? runners.height) ?? runners.origin,
      { ...who, edge, left: left.abs(), limit, beyond: left.isPositive() ? 'no' : 'yes' },
      {
        severity: left.isPositive() ? 'warning' : 'error',
        related: [{ role: 'drawer', values: who, origin: one.cell.origin }],
        mends: group.length > 1 ? [] : withinItsSide(worst, unit, mark),
      },
    );
  });
}

interface Leaving {
  readonly one: LaidDrawer;
  readonly runners: NonNullable<LaidDrawer['drawer']['runners']>;
  readonly edge: 'upper' | 'lower';
  /** Wood at that edge; negative by how far the groove comes out. */
  readonly left: Length;
  readonly other: Length;
  readonly limit: Length;
}

function leavingTheirSides(
  drawers: readonly LaidDrawer[],
  parts: readonly UnmarkedPart[],
  unit: LengthUnit,
): readonly Leaving[] {
  const limit = limitIn(THINNEST_WALL, unit);
  return drawers.flatMap((one): readonly Leaving[] => {
    const { runners, slides } = one.drawer;
    if (runners === undefined || runners.isCentre || slides !== undefined) return [];
    const side = parts.find(({ id }) => id === `${one.cell.id}/box-left`);
    const groove = side?.features.find(({ id }) => id === grooveForRunner(side.id));
    if (side === undefined || groove === undefined || !one.box.y.size.length.isPositive()) return [];
    const under = wallTo({ axis: 'y', end: 'from' }, groove.solid, woodOf(side));
    const over = wallTo({ axis: 'y', end: 'to' }, groove.solid, woodOf(side));
    const [edge, left, other] =
      under.compare(over) <= 0 ? (['lower', under, over] as const) : (['upper', over, under] as const);
    return left.compare(limit) >= 0 ? [] : [{ one, runners, edge, left, other, limit }];
  });
}

/** Up or down by what is missing, where there is as much at the other edge; else as high as runners are. */
function withinItsSide(
  { one: { drawer }, runners, edge, left, other, limit }: Leaving,
  unit: LengthUnit,
  mark: Length,
): readonly Mend[] {
  // At the lower edge it goes over the groove for the bottom, which comes in from the other face.
  const isOverBottom = edge === 'lower' && drawer.bottomHeld !== 'applied';
  const clear = isOverBottom ? derive('', bottomUp(drawer, unit)).length.plus(limit) : limit;
  const missing = clear.minus(left);
  const at = givenAt(runners.at?.above);
  if (runners.at !== undefined && other.minus(missing).compare(limit) >= 0) {
    const { length } = runners.at.above;
    const size = edge === 'lower' ? upToMark(length.plus(missing), mark) : downToMark(length.minus(missing), mark);
    return at === undefined || size.isNegative()
      ? []
      : [{ how: 'set', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  }
  const size = usual(RUNNER_HEIGHT, unit).length;
  const fits = runners.height.length.minus(size).dividedBy(2).plus(left.min(other)).compare(clear) >= 0;
  return runners.at === undefined && fits ? sizeMend('lower', givenAt(runners.height), size) : [];
}
