import { compartmentsDoNotFit, type Finding, partitionTooHigh } from '@fettle/findings';
import { derive, rootOrigin } from '../../design/derive.ts';
import { groupAlike } from '../../grouping.ts';
import { insideOf, leftOfCompartments } from '../../parts/compartments.ts';
import { bottomUp } from '../../parts/drawer-box.ts';
import { laidDrawers } from '../../parts/laid-drawers.ts';
import { givenAt, sizeMend } from '../written-sizes.ts';
import type { TradeCase } from './case-facts.ts';

/** Whether the compartments of a drawer and the partitions between them come out. One finding for each statement. */
export function compartmentFindings({ face, layout }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  const wrong = laidDrawers(face.design, layout, face.root).flatMap((one) => {
    const { compartments } = one.drawer;
    if (compartments === undefined || !one.box.x.size.length.isPositive()) return [];
    const left = leftOfCompartments(compartments, one.box, one.sides);
    const sharing = compartments.each.some(({ size }) => size === undefined);
    // What nobody asks for by a number is a share, and has to be something.
    const fits = sharing ? left.isPositive() : left.isZero();
    return fits ? [] : [{ ...one, compartments, left, sharing }];
  });
  return groupAlike(wrong, ({ compartments, left }) => [compartments.origin, left.exactInches]).map(([first]) => {
    const { cell, words, compartments, box, sides, left, sharing } = first;
    const { each, way } = compartments;
    const who = cell.name === undefined ? { words } : { name: cell.name, words };
    const inside = insideOf(box, sides, way).length;
    const last = each.at(-1)?.size;
    const at = sharing ? undefined : givenAt(last);
    const size = last?.length.plus(left);
    return compartmentsDoNotFit.at(
      (last && rootOrigin(last)) ?? compartments.origin,
      {
        ...who,
        count: each.length,
        sum: inside.minus(left),
        inside,
        difference: left.abs(),
        how: left.isPositive() ? 'left-over' : 'too-much',
        way,
      },
      {
        related: [{ role: 'drawer', values: who, origin: cell.origin }],
        mends:
          at === undefined || size?.isPositive() !== true
            ? []
            : [{ how: 'last', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    );
  });
}

/** Whether the partitions end level with the box or below its edge. One finding for each statement. */
export function partitionFindings({ face, layout }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  const high = laidDrawers(face.design, layout, face.root).flatMap((one) => {
    const { compartments } = one.drawer;
    const room = one.box.y.size.length.minus(derive('', bottomUp(one.drawer, layout.unit)).length);
    if (compartments?.height === undefined || !room.isPositive()) return [];
    return compartments.height.length.compare(room) <= 0
      ? []
      : [{ ...one, compartments, height: compartments.height, room }];
  });
  return groupAlike(high, ({ compartments }) => compartments.origin).map((group) => {
    const lowest = group.reduce((least, each) => (each.room.compare(least.room) < 0 ? each : least));
    const { cell, words, compartments, height, room } = lowest;
    const who = cell.name === undefined ? { words } : { name: cell.name, words };
    return partitionTooHigh.at(
      rootOrigin(height) ?? compartments.origin,
      { ...who, height: height.length, room, difference: height.length.minus(room) },
      {
        related: [{ role: 'drawer', values: who, origin: cell.origin }],
        mends: sizeMend('height', givenAt(height), room),
      },
    );
  });
}
