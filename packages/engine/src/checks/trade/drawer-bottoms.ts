import { drawerBottomTooThick, type Finding } from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import { groupAlike } from '../../grouping.ts';
import { laidDrawers } from '../../parts/laid-drawers.ts';
import { BOX_BOTTOM, BOX_BOTTOM_UP, usual } from '../../tables/trade-habits.ts';
import type { TradeCase } from './case-facts.ts';

/** Whether the bottom of each drawer, in its groove, lies within the height of the box. */
export function drawerBottomFindings({ face, layout }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  const up = usual(BOX_BOTTOM_UP, layout.unit).length;
  const low = laidDrawers(face.design, layout, face.root).flatMap((one) => {
    const height = one.box.y.size;
    const thickness = (one.drawer.bottom?.thickness ?? usual(BOX_BOTTOM, layout.unit)).length;
    const needed = up.plus(thickness);
    // Nothing left for the box at all is another matter and is said elsewhere.
    if (!height.length.isPositive() || height.length.compare(needed) >= 0) return [];
    const origin = rootOrigin(one.drawer.boxHeight ?? height) ?? one.cell.origin;
    return [{ ...one, height: height.length, thickness, needed, origin }];
  });
  return groupAlike(low, ({ origin, height, needed }) => [origin, height.exactInches, needed.exactInches]).map(
    ([{ cell, words, height, thickness, needed, origin }]) => {
      const who = cell.name === undefined ? { words } : { name: cell.name, words };
      return drawerBottomTooThick.at(
        origin,
        { ...who, height, up, thickness, needed, difference: needed.minus(height) },
        { related: [{ role: 'drawer', values: who, origin: cell.origin }] },
      );
    },
  );
}
