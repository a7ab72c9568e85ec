import type { DrawerDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { SlideEntry } from '../design/slide-design.ts';
import type { CarcaseLayout } from '../evaluation.ts';
import { boxOnSlides, type LaidDrawer } from '../parts/laid-drawers.ts';
import { BOX_CLEAR_BELOW, usual } from '../tables/trade-habits.ts';

/** What one drawer is with one choice of slides. */
export interface SlideChoice {
  readonly slides: SlideEntry;
  readonly width: Figure;
  readonly height: Figure;
  readonly depth: Figure;
}

export interface SlideComparison {
  readonly chosen: SlideChoice;
  readonly other: SlideChoice;
}

/**
 * The box of a drawer on its own slides and on others: sizes that are written for the one are not kept for the other.
 * Undefined while it has no slides.
 */
export function compareSlides(one: LaidDrawer, other: SlideEntry, layout: CarcaseLayout): SlideComparison | undefined {
  const { drawer } = one;
  if (drawer.slides === undefined) return undefined;
  const choice = (slides: SlideEntry): SlideChoice => {
    const box = boxOnSlides({ ...one, drawer: onSlides(drawer, slides, layout) }, layout);
    return { slides, width: box.widthThere, height: box.heightThere, depth: box.z.size };
  };
  return { chosen: choice(drawer.slides), other: choice(other) };
}

function onSlides(drawer: DrawerDesign, slides: SlideEntry, layout: CarcaseLayout): DrawerDesign {
  const isWritten = drawer.clearBelow.reason.kind === 'given';
  const clearBelow = isWritten ? drawer.clearBelow : (slides.below ?? usual(BOX_CLEAR_BELOW, layout.unit));
  return { ...drawer, slides, clearBelow };
}
