import { type Finding, type Origin, slideTooLong } from '@fettle/findings';
import { rootOrigin } from '../design/derive.ts';
import type { DrawerDesign, FaceDesign, PieceDesign } from '../design/design.ts';
import type { SlideEntry } from '../design/slide-design.ts';
import type { CarcaseLayout, LaidCell } from '../evaluation.ts';
import { type LaidDrawer, laidDrawers } from '../parts/laid-drawers.ts';
import { boxFindings } from './drawer-boxes.ts';
import { playFindings } from './running-clearances.ts';
import { depthNeeded, suitsBox } from './suits-box.ts';
import { givenAt } from './written-sizes.ts';

/** Whether each drawer's box and slides fit the opening and the depth they stand in. */

/** `slides`: what the shop has besides those chosen; mends pick from it. Openings without size are left to others. */
export function drawerFindings(
  design: PieceDesign,
  face: FaceDesign,
  layout: CarcaseLayout,
  root: LaidCell,
  slides: readonly SlideEntry[],
): readonly Finding[] {
  const drawers = laidDrawers(face, layout, root);
  return [...slideFindings(design, drawers, slides), ...boxFindings(drawers, slides), ...playFindings(drawers, layout)];
}

/** Whether the slides of this drawer need more depth than there is behind its front. */
export function runsOnTooLong({ drawer: { slides }, box }: LaidDrawer): boolean {
  return slides !== undefined && depthNeeded(slides).compare(box.depthThere.length) > 0;
}

/** One finding for all drawers that run on the same choice of slides and have the same depth to run in. */
function slideFindings(
  design: PieceDesign,
  drawers: readonly LaidDrawer[],
  offered: readonly SlideEntry[],
): readonly Finding[] {
  const alike = new Map<string, { readonly chosen: SlideEntry; readonly drawers: LaidDrawer[] }>();
  for (const one of drawers) {
    const slides = one.drawer.slides;
    if (slides === undefined || !runsOnTooLong(one)) continue;
    const at = choiceOrigin(one.drawer);
    const key = JSON.stringify([at.unit, at.start, slides.name, one.box.depthThere.length.exactInches]);
    const group = alike.get(key);
    if (group === undefined) alike.set(key, { chosen: slides, drawers: [one] });
    else group.drawers.push(one);
  }
  return [...alike.values()].flatMap(({ chosen, drawers: group }) => {
    const first = group[0];
    return first === undefined ? [] : [slideFinding(design, chosen, first, group, offered)];
  });
}

function slideFinding(
  design: PieceDesign,
  chosen: SlideEntry,
  first: LaidDrawer,
  group: readonly LaidDrawer[],
  offered: readonly SlideEntry[],
): Finding {
  const needed = depthNeeded(chosen);
  const available = first.box.depthThere.length;
  const difference = needed.minus(available);
  const nameAt = first.drawer.slidesOrigin;
  const depth = design.size.depth;
  const depthAt = givenAt(depth);
  const depthOrigin = depth === undefined ? undefined : rootOrigin(depth);
  const shorter = offered
    .filter((slides) => depthNeeded(slides).compare(available) <= 0 && group.every((one) => suitsBox(slides, one)))
    .sort((a, b) => b.length.length.compare(a.length.length));
  const deeper = depth?.length.plus(difference);
  return slideTooLong.at(
    choiceOrigin(first.drawer),
    { slides: chosen.name, length: chosen.length.length, needed, available, difference },
    {
      related: [
        ...(depthOrigin === undefined ? [] : [{ role: 'depth', values: { available }, origin: depthOrigin }]),
        ...group.map((one) => ({
          role: 'drawer',
          values: one.cell.name === undefined ? { words: one.words } : { name: one.cell.name, words: one.words },
          origin: one.cell.origin,
        })),
      ],
      mends: [
        ...(nameAt === undefined
          ? []
          : shorter.slice(0, 3).map((slides) => ({
              how: 'use-slides',
              values: { slides: slides.name, needed: depthNeeded(slides) },
              changes: [{ kind: 'set-name', at: nameAt, name: slides.name } as const],
            }))),
        ...(depthAt === undefined || deeper === undefined
          ? []
          : [
              {
                how: 'deepen',
                values: { size: deeper },
                changes: [{ kind: 'set-length', at: depthAt, to: deeper } as const],
              },
            ]),
      ],
    },
  );
}

function choiceOrigin(drawer: DrawerDesign): Origin {
  return drawer.slidesOrigin ?? drawer.origin;
}
