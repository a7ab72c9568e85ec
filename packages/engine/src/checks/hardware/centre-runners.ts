import { type Finding, type Mend, noRoomForCentreRunner } from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { CarcaseLayout } from '../../evaluation.ts';
import { groupAlike } from '../../grouping.ts';
import { Length } from '../../length/length.ts';
import { exactSource } from '../../length/trade-formats.ts';
import { grooveUp, underMiddle } from '../../parts/drawer-box.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import { givenAt } from '../written-sizes.ts';

/** Whether what runs under the middle of a box has room under its bottom. */
export function centreRunnerFindings(drawers: readonly LaidDrawer[], layout: CarcaseLayout): readonly Finding[] {
  const tight = drawers.flatMap((one) => {
    const { drawer } = one;
    const height = underMiddle(drawer)?.length;
    // A line that is written tells of its own place.
    if (height === undefined || drawer.slidesAt !== undefined || drawer.runners?.at !== undefined) return [];
    const under = drawer.bottomHeld === 'applied' ? Length.zero : grooveUp(drawer, layout.unit).length;
    const room = drawer.clearBelow.length.plus(under);
    return height.compare(room) <= 0 ? [] : [{ one, height, room, under }];
  });
  return groupAlike(tight, ({ one, room }) => [asked(one), room.exactInches]).map(([{ one, height, room, under }]) => {
    const { cell, drawer, words } = one;
    const bottomAt = drawer.bottomUp && rootOrigin(drawer.bottomUp);
    return noRoomForCentreRunner.at(
      asked(one),
      {
        ...(cell.name === undefined ? { words } : { name: cell.name, words }),
        runner: drawer.slides === undefined ? 'centre runner' : `slide "${drawer.slides.name}"`,
        height,
        room,
        difference: height.minus(room),
      },
      {
        related: bottomAt === undefined ? [] : [{ role: 'bottom', values: {}, origin: bottomAt }],
        mends: [
          ...bottomHigher(one, height.minus(drawer.clearBelow.length)),
          ...clearer(one, height.minus(under), layout),
        ],
      },
    );
  });
}

function asked({ drawer }: LaidDrawer) {
  return (drawer.slides === undefined ? drawer.runners?.origin : drawer.slidesOrigin) ?? drawer.origin;
}

function bottomHigher({ drawer }: LaidDrawer, size: Length): readonly Mend[] {
  const at = drawer.bottomHeld === 'applied' ? undefined : givenAt(drawer.bottomUp);
  return at === undefined ? [] : [{ how: 'up', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
}

function clearer({ drawer, box }: LaidDrawer, size: Length, layout: CarcaseLayout): readonly Mend[] {
  // What is freed under the box is taken from its height, and there has to be some.
  const lost = size.minus(drawer.clearBelow.length);
  if (drawer.boxHeight !== undefined || box.y.size.length.compare(lost) <= 0) return [];
  const at = givenAt(drawer.clearBelow);
  if (at !== undefined) return [{ how: 'clear', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  if (drawer.lastStatement === undefined) return [];
  const words = `   clear ${exactSource(size, layout.unit)} below`;
  return [{ how: 'clear', values: { size }, changes: [{ kind: 'insert-words', after: drawer.lastStatement, words }] }];
}
