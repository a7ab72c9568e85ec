import { drawerBottomTooLow, drawerBottomTooThick, type Finding } from '@fettle/findings';
import { derive, rootOrigin } from '../../design/derive.ts';
import { groupAlike } from '../../grouping.ts';
import { bottomThickness, bottomUp, grooveUp } from '../../parts/drawer-box.ts';
import { laidDrawers } from '../../parts/laid-drawers.ts';
import { THINNEST_WALL } from '../../tables/joinery-limits.ts';
import { BOX_BOTTOM_UP, usual } from '../../tables/trade-habits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { givenAt, sizeMend } from '../written-sizes.ts';
import type { TradeCase } from './case-facts.ts';

/** Whether the bottom of each drawer, in its groove, lies within the height of the box. */
export function drawerBottomFindings({ face, layout }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  const low = laidDrawers(face.design, layout, face.root).flatMap((one) => {
    const height = one.box.y.size;
    const thickness = bottomThickness(one.drawer, layout.unit).length;
    const needed = derive('', bottomUp(one.drawer, layout.unit)).length;
    const up = needed.minus(thickness);
    // Nothing left for the box at all is another matter and is said elsewhere.
    if (!height.length.isPositive() || height.length.compare(needed) >= 0) return [];
    const origin = rootOrigin(one.drawer.boxHeight ?? height) ?? one.cell.origin;
    return [{ ...one, height: height.length, up, thickness, needed, origin, heightAt: givenAt(one.drawer.boxHeight) }];
  });
  return groupAlike(low, ({ origin, height, needed }) => [origin, height.exactInches, needed.exactInches]).map(
    ([{ cell, words, height, up, thickness, needed, origin, heightAt }]) => {
      const who = cell.name === undefined ? { words } : { name: cell.name, words };
      return drawerBottomTooThick.at(
        origin,
        { ...who, height, up, thickness, needed, difference: needed.minus(height) },
        {
          related: [{ role: 'drawer', values: who, origin: cell.origin }],
          mends:
            heightAt === undefined
              ? []
              : [
                  {
                    how: 'higher',
                    values: { size: needed },
                    changes: [{ kind: 'set-length', at: heightAt, to: needed }],
                  },
                ],
        },
      );
    },
  );
}

/** Whether the groove for each bottom leaves wood under it. One finding for each statement. */
export function lowBottomFindings({ face, layout }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  const limit = limitIn(THINNEST_WALL, layout.unit);
  const low = laidDrawers(face.design, layout, face.root).flatMap((one) => {
    const up = grooveUp(one.drawer, layout.unit);
    const isGrooved = one.drawer.bottomHeld !== 'applied';
    // What is written as less than nothing is told of its words.
    return isGrooved && !up.length.isNegative() && up.length.compare(limit) < 0 ? [{ ...one, up }] : [];
  });
  return groupAlike(low, ({ up, drawer }) => rootOrigin(up) ?? drawer.origin).map(
    ([{ cell, words, drawer, up, box }]) => {
      const who = cell.name === undefined ? { words } : { name: cell.name, words };
      const size = usual(BOX_BOTTOM_UP, layout.unit).length;
      const fits = size.plus(bottomThickness(drawer, layout.unit).length).compare(box.y.size.length) <= 0;
      return drawerBottomTooLow.at(
        rootOrigin(up) ?? drawer.origin,
        { ...who, left: up.length, limit },
        {
          related: [{ role: 'drawer', values: who, origin: cell.origin }],
          mends: fits ? sizeMend('up', givenAt(up), size) : [],
        },
      );
    },
  );
}
