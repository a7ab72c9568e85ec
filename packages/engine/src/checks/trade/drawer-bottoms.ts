import { drawerBottomTooThick, type Finding } from '@fettle/findings';
import { derive, rootOrigin } from '../../design/derive.ts';
import { groupAlike } from '../../grouping.ts';
import { bottomThickness, bottomUp } from '../../parts/drawer-box.ts';
import { laidDrawers } from '../../parts/laid-drawers.ts';
import { givenAt } from '../written-sizes.ts';
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
