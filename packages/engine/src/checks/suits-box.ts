import type { DrawerDesign } from '../design/design.ts';
import type { SlideEntry } from '../design/slide-design.ts';
import { Length } from '../length/length.ts';
import type { LaidDrawer } from '../parts/laid-drawers.ts';
import { LONGEST_SLIDE_SCREW } from '../tables/joinery-limits.ts';

/** What slides ask of a box and of the room it stands in; mends offer only those that suit. */

/** Of the same kind as those there are, for sides as thick as these, and with room to lift the box onto them. */
export function suitsBox(slides: SlideEntry, { drawer, box, sides }: LaidDrawer): boolean {
  const free = Length.sum([drawer.clearAbove.length, box.heightThere.length]).minus(box.y.size.length);
  return (
    (drawer.slides === undefined || drawer.slides.mounting === slides.mounting) &&
    (slides.thickestSides === undefined || sides.length.compare(slides.thickestSides.length) <= 0) &&
    (slides.lift === undefined || slides.lift.length.compare(free) <= 0) &&
    !areScrewsLonger(slides, drawer)
  );
}

/** Than those that are there, or where none are told, than what a case of any usual thickness takes. */
function areScrewsLonger({ screws }: SlideEntry, { slides, slideScrews }: DrawerDesign): boolean {
  // What the text says of screws holds for whichever slides it names.
  if (screws === undefined || slideScrews !== undefined) return false;
  return screws.length.length.compare(slides?.screws?.length.length ?? LONGEST_SLIDE_SCREW) > 0;
}

/** Its length, what it is set back from the front, and the free depth it asks for behind it. */
export function depthNeeded(slides: SlideEntry): Length {
  return Length.sum([slides.setBack?.length ?? Length.zero, slides.length.length, slides.extraDepth.length]);
}
