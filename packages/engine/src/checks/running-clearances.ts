import { drawerWithoutPlay, type Finding, type Mend, type Origin } from '@fettle/findings';
import type { CarcaseLayout } from '../evaluation.ts';
import { withinInterior } from '../layout/spans.ts';
import type { Length, LengthUnit } from '../length/length.ts';
import type { LaidDrawer } from '../parts/laid-drawers.ts';
import { BESIDE_BOX, RUNNING_CLEARANCE, usual } from '../tables/trade-habits.ts';
import { givenAt, sizeMend } from './written-sizes.ts';

/** Boxes that go into their openings on paper and bind in wood: what just touches does not run. */
export function playFindings(drawers: readonly LaidDrawer[], layout: CarcaseLayout): readonly Finding[] {
  const seen = new Set<string>();
  return drawers.flatMap((one) =>
    [atSides(one, layout), above(one, layout), below(one, layout)].flatMap((tight): readonly Finding[] => {
      if (tight === undefined) return [];
      const { cell, words } = one;
      const at = tight.at ?? cell.origin;
      const key = `${tight.where} ${at.unit} ${at.start}`;
      if (seen.has(key)) return [];
      seen.add(key);
      const who = cell.name === undefined ? { words } : { name: cell.name, words };
      const { where, left, limit, mends } = tight;
      return [drawerWithoutPlay.at(at, { ...who, where, left, limit }, { mends })];
    }),
  );
}

interface Tight {
  readonly where: 'sides' | 'above' | 'below';
  readonly left: Length;
  readonly limit: Length;
  readonly at: Origin | undefined;
  readonly mends: readonly Mend[];
}

/** Negative ones do not go in at all, and enough is enough: neither is told here. */
function isTight(left: Length, unit: LengthUnit): boolean {
  return !left.isNegative() && left.compare(usual(RUNNING_CLEARANCE, unit).length) < 0;
}

/** Slides take what they take; a box without them runs between the sides of its opening. */
function atSides({ drawer, laid, box }: LaidDrawer, { unit }: CarcaseLayout): Tight | undefined {
  if (drawer.slides !== undefined || drawer.boxWidth === undefined) return undefined;
  const opening = laid.opening.x.size.length;
  const left = opening.minus(box.x.size.length);
  if (!isTight(left, unit)) return undefined;
  const at = givenAt(drawer.boxWidth);
  const width = opening.minus(usual(BESIDE_BOX, unit).length.times(2));
  return {
    where: 'sides',
    left,
    limit: usual(RUNNING_CLEARANCE, unit).length,
    at,
    mends: sizeMend('width', at, width),
  };
}

function above(one: LaidDrawer, layout: CarcaseLayout): Tight | undefined {
  const { drawer, laid, box } = one;
  const { unit } = layout;
  if (!box.y.size.length.isPositive()) return undefined;
  const left = withinInterior(laid.opening, layout).y.end.length.minus(box.y.end.length);
  if (!isTight(left, unit)) return undefined;
  const limit = usual(RUNNING_CLEARANCE, unit).length;
  const ofBox = givenAt(drawer.boxHeight);
  const lower = box.y.size.length.minus(limit.minus(left));
  const over = givenAt(drawer.clearAbove);
  return {
    where: 'above',
    left,
    limit,
    at: ofBox ?? over,
    mends: ofBox === undefined ? sizeMend('free', over, limit) : sizeMend('height', ofBox, lower),
  };
}

/** Without slides or runners at its sides a box slides on what is under it. */
function below({ drawer, box }: LaidDrawer, { unit }: CarcaseLayout): Tight | undefined {
  const { slides, runners, clearBelow } = drawer;
  const isHung = slides?.mounting === 'side' || (slides === undefined && runners?.isCentre === false);
  if (!isHung || !isTight(clearBelow.length, unit) || !box.y.size.length.isPositive()) return undefined;
  const limit = usual(RUNNING_CLEARANCE, unit).length;
  const at = givenAt(clearBelow);
  return { where: 'below', left: clearBelow.length, limit, at, mends: sizeMend('free', at, limit) };
}
