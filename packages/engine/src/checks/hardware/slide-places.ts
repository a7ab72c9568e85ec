import {
  drawerCannotBeLiftedIn,
  type Finding,
  type Mend,
  sidesTooThickForSlides,
  slideOutOfPlace,
} from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { SlideEntry } from '../../design/slide-design.ts';
import type { CarcaseLayout } from '../../evaluation.ts';
import { groupAlike } from '../../grouping.ts';
import { slideLines } from '../../hardware/drawer-slides.ts';
import { withinInterior } from '../../layout/spans.ts';
import { Length } from '../../length/length.ts';
import { exactSource } from '../../length/trade-formats.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import { givenAt } from '../written-sizes.ts';

/** Whether slides lie beside their boxes within their openings, and whether boxes can be put onto them. */
export function slidePlaceFindings(drawers: readonly LaidDrawer[], layout: CarcaseLayout): readonly Finding[] {
  const onSlides = drawers.flatMap(onItsSlides);
  return [...outOfPlace(onSlides, layout), ...cannotBeLifted(onSlides, layout), ...tooThick(onSlides)];
}

interface OnSlides extends LaidDrawer {
  readonly slides: SlideEntry;
}

function onItsSlides(one: LaidDrawer): readonly OnSlides[] {
  const { slides } = one.drawer;
  return slides === undefined || !one.box.y.size.length.isPositive() ? [] : [{ ...one, slides }];
}

/** The cells whose slides lie beside nothing. */
export function slidesOutOfPlace(
  drawers: readonly LaidDrawer[],
  layout: CarcaseLayout,
): ReadonlySet<string | undefined> {
  const out = drawers.flatMap(onItsSlides).filter((one) => placeFault(one, layout) !== undefined);
  return new Set(out.map(({ cell }) => cell.id));
}

function outOfPlace(drawers: readonly OnSlides[], layout: CarcaseLayout): readonly Finding[] {
  const out = drawers.flatMap((one) => {
    const found = placeFault(one, layout);
    return found === undefined ? [] : [{ ...one, ...found }];
  });
  return groupAlike(out, ({ drawer, where }) => [drawer.slidesStatement ?? drawer.origin, where]).map((group) => {
    const worst = group.reduce((most, each) => (each.by.compare(most.by) > 0 ? each : most));
    const { drawer, where, by } = worst;
    const at = drawer.slidesAt?.above;
    return slideOutOfPlace.at(
      (at && rootOrigin(at)) ?? drawer.slidesOrigin ?? drawer.origin,
      { ...whoOf(worst), where, difference: by },
      {
        related: [{ role: 'drawer', values: whoOf(worst), origin: worst.cell.origin }],
        mends: setTo(worst, drawers, layout),
      },
    );
  });
}

type Where = 'under-opening' | 'over-opening' | 'under-box' | 'over-box';

function placeFault(
  one: OnSlides,
  layout: CarcaseLayout,
  moved: Length = Length.zero,
): { readonly where: Where; readonly by: Length } | undefined {
  const { y } = slideLines(one, one.slides, layout);
  // A slide that is higher than its box is told of the box.
  if (y.size.length.compare(one.box.y.size.length) > 0) return undefined;
  const opening = withinInterior(one.laid.opening, layout).y;
  const [from, to] = [y.start.length.plus(moved), y.end.length.plus(moved)];
  const middle = from.plus(y.size.length.dividedBy(2));
  const box = one.box.y;
  const faults: readonly (readonly [Where, Length])[] = [
    ['under-opening', opening.start.length.minus(from)],
    ['over-opening', to.minus(opening.end.length)],
    ...(one.slides.mounting === 'side'
      ? ([
          ['under-box', box.start.length.minus(middle)],
          ['over-box', middle.minus(box.end.length)],
        ] as const)
      : []),
  ];
  const fault = faults.find(([, by]) => by.isPositive());
  return fault && { where: fault[0], by: fault[1] };
}

/** To where none of the drawers that it is said of is wrong. */
function setTo(worst: OnSlides, drawers: readonly OnSlides[], layout: CarcaseLayout): readonly Mend[] {
  const above = worst.drawer.slidesAt?.above;
  const at = givenAt(above);
  if (above === undefined || at === undefined) return [];
  const alike = drawers.filter(({ drawer }) => drawer.slidesAt?.above === above);
  let moved = Length.zero;
  // Each fault that is mended may show another one; two that want opposite ways have no common place.
  for (let turn = 0; turn < alike.length + 2; turn++) {
    const fault = alike.flatMap((one) => placeFault(one, layout, moved) ?? [])[0];
    if (fault === undefined) break;
    moved = fault.where.startsWith('under') ? moved.plus(fault.by) : moved.minus(fault.by);
  }
  const size = above.length.plus(moved);
  if (moved.isZero() || size.isNegative() || alike.some((one) => placeFault(one, layout, moved) !== undefined))
    return [];
  return [{ how: 'set', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
}

function cannotBeLifted(drawers: readonly OnSlides[], layout: CarcaseLayout): readonly Finding[] {
  const stuck = drawers.flatMap((one) => {
    const { lift } = one.slides;
    const free = withinInterior(one.laid.opening, layout).y.end.length.minus(one.box.y.end.length);
    if (lift === undefined || free.compare(lift.length) >= 0) return [];
    return [{ ...one, lift: lift.length, free }];
  });
  return groupAlike(stuck, ({ drawer, free }) => [drawer.slidesOrigin ?? drawer.origin, free.exactInches]).map(
    ([first]) => {
      const { drawer, slides, lift, free } = first;
      const difference = lift.minus(free);
      return drawerCannotBeLiftedIn.at(
        drawer.slidesOrigin ?? drawer.origin,
        { ...whoOf(first), slides: slides.name, lift, free, difference },
        {
          related: [{ role: 'drawer', values: whoOf(first), origin: first.cell.origin }],
          mends: freedAbove(first, difference, layout),
        },
      );
    },
  );
}

function freedAbove({ drawer, box }: OnSlides, difference: Length, layout: CarcaseLayout): readonly Mend[] {
  const { boxHeight, clearAbove, lastStatement } = drawer;
  if (boxHeight !== undefined) {
    const at = givenAt(boxHeight);
    const size = box.y.size.length.minus(difference);
    if (at === undefined || !size.isPositive()) return [];
    return [{ how: 'box-height', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  }
  const size = clearAbove.length.plus(difference);
  const at = givenAt(clearAbove);
  if (at !== undefined) return [{ how: 'clear', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  if (lastStatement === undefined) return [];
  const words = `   clear ${exactSource(size, layout.unit)} above`;
  return [{ how: 'clear', values: { size }, changes: [{ kind: 'insert-words', after: lastStatement, words }] }];
}

function tooThick(drawers: readonly OnSlides[]): readonly Finding[] {
  const thick = drawers.flatMap((one) => {
    const limit = one.slides.thickestSides?.length;
    return limit === undefined || one.sides.length.compare(limit) <= 0 ? [] : [{ ...one, limit, thickness: one.sides }];
  });
  return groupAlike(thick, ({ drawer, slides }) => [drawer.sides?.origin ?? drawer.origin, slides.name]).map(
    ([{ drawer, slides, limit, thickness }]) => {
      const at = givenAt(thickness);
      return sidesTooThickForSlides.at(
        rootOrigin(thickness) ?? drawer.sides?.origin ?? drawer.origin,
        {
          slides: slides.name,
          thickness: thickness.length,
          limit,
          difference: thickness.length.minus(limit),
        },
        {
          related:
            drawer.slidesOrigin === undefined
              ? []
              : [{ role: 'slides', values: { slides: slides.name }, origin: drawer.slidesOrigin }],
          mends:
            at === undefined
              ? []
              : [{ how: 'thinner', values: { size: limit }, changes: [{ kind: 'set-length', at, to: limit }] }],
        },
      );
    },
  );
}

function whoOf({ cell, words }: LaidDrawer): { readonly name?: string; readonly words: string } {
  return cell.name === undefined ? { words } : { name: cell.name, words };
}
