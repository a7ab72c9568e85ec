import { type BoxClash, drawerBoxDoesNotFit, type Finding, type Mend, type Origin } from '@fettle/findings';
import { rootOrigin } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { SlideEntry } from '../design/slide-design.ts';
import { Length } from '../length/length.ts';
import type { LaidDrawer } from '../parts/laid-drawers.ts';
import { suitsBox } from './suits-box.ts';
import { givenAt, sizeMend } from './written-sizes.ts';

/**
 * Whether a box goes into its opening and onto its slides: width against the slides (or the opening), height against
 * the opening and against the slides themselves.
 */

/**
 * How much narrower than the slides leave a box may be: the slides reach that far, or are packed out without being
 * noticed. From memory: many makers' sheets allow + 1/32" − 0 for the opening of a side-mount slide. One maker's sheet
 * asks for the slide's thickness and 0.2 to 0.5 mm at each side, up to 1 mm in all, which is more.
 */
const SLIDES_REACH = Length.inches(1, 32);

interface Clash {
  readonly clash: BoxClash;
  readonly box: Figure;
  readonly limit: Length;
  readonly opening: Figure;
  readonly mends: readonly Mend[];
}

/** One finding where one written size is wrong for several drawers in the same way. */
export function boxFindings(drawers: readonly LaidDrawer[], offered: readonly SlideEntry[]): readonly Finding[] {
  const seen = new Set<string>();
  return drawers.flatMap((one) =>
    [widthClash(one), heightClash(one), slideHeightClash(one, offered)].flatMap((clash) => {
      if (clash === undefined) return [];
      const origin = rootOrigin(clash.box) ?? one.cell.origin;
      const key = JSON.stringify([origin, clash.clash, clash.box.length.exactInches, clash.limit.exactInches]);
      if (seen.has(key)) return [];
      seen.add(key);
      return [finding(one, clash, origin)];
    }),
  );
}

function finding(one: LaidDrawer, clash: Clash, origin: Origin): Finding {
  const { drawer, cell, words } = one;
  const slides = drawer.slides;
  const isAtSides = clash.clash === 'wider-than-slides-leave' || clash.clash === 'narrower-than-slides-reach';
  const named = cell.name === undefined ? {} : { name: cell.name };
  return drawerBoxDoesNotFit.at(
    origin,
    {
      clash: clash.clash,
      ...named,
      words,
      box: clash.box.length,
      limit: clash.limit,
      difference: clash.box.length.minus(clash.limit).abs(),
      opening: clash.opening.length,
      ...(slides === undefined ? {} : { slides: slides.name }),
      ...(slides === undefined || !isAtSides ? {} : { slideTakes: slides.clearanceEachSide.length }),
    },
    {
      related: [
        { role: 'opening', values: { ...named, words, opening: clash.opening.length }, origin: cell.origin },
        ...(slides === undefined || drawer.slidesOrigin === undefined
          ? []
          : [{ role: 'slides', values: { slides: slides.name }, origin: drawer.slidesOrigin }]),
      ],
      mends: clash.mends,
    },
  );
}

/** Only a width that is written can clash; one that is computed fits. */
function widthClash({ drawer, laid, box }: LaidDrawer): Clash | undefined {
  const written = drawer.boxWidth;
  if (written === undefined) return undefined;
  const opening = laid.opening.x.size;
  const there = box.widthThere.length;
  const at = givenAt(written);
  const mends = sizeMend('box-width', at, there);
  if (drawer.slides === undefined) {
    // Without slides the play at the sides is a habit, not a limit; the opening is.
    if (written.length.compare(opening.length) <= 0) return undefined;
    return { clash: 'wider-than-opening', box: written, limit: opening.length, opening, mends };
  }
  if (written.length.compare(there) > 0) {
    return { clash: 'wider-than-slides-leave', box: written, limit: there, opening, mends };
  }
  if (drawer.slides.mounting === 'centre') return undefined;
  const least = there.minus(SLIDES_REACH);
  if (written.length.compare(least) >= 0) return undefined;
  return { clash: 'narrower-than-slides-reach', box: written, limit: least, opening, mends };
}

function heightClash({ drawer, laid, box }: LaidDrawer): Clash | undefined {
  const written = drawer.boxHeight;
  const there = box.heightThere.length;
  if (written === undefined || written.length.compare(there) <= 0) return undefined;
  return {
    clash: 'higher-than-opening',
    box: written,
    limit: there,
    opening: laid.opening.y.size,
    mends: there.isPositive() ? sizeMend('box-height', givenAt(written), there) : [],
  };
}

/** Screwed to its side, a slide has to find enough side. */
function slideHeightClash(one: LaidDrawer, offered: readonly SlideEntry[]): Clash | undefined {
  const { drawer, laid, box } = one;
  const chosen = drawer.slides;
  const least = chosen?.height?.length;
  const height = box.y.size;
  if (chosen === undefined || least === undefined || chosen.mounting === 'centre') return undefined;
  if (height.length.compare(least) >= 0) return undefined;
  // Nothing left for the box at all is another matter and is said elsewhere.
  if (!height.length.isPositive()) return undefined;
  const at = drawer.slidesOrigin;
  const lower = offered.filter(
    (slides) =>
      slides.height !== undefined && slides.height.length.compare(height.length) <= 0 && suitsBox(slides, one),
  );
  const sameLength = lower.filter((slides) => slides.length.length.compare(chosen.length.length) <= 0);
  return {
    clash: 'lower-than-slides',
    box: height,
    limit: least,
    opening: laid.opening.y.size,
    mends: [
      ...(least.compare(box.heightThere.length) <= 0 ? sizeMend('box-height', givenAt(drawer.boxHeight), least) : []),
      ...(at === undefined
        ? []
        : [...sameLength]
            .sort((a, b) => b.length.length.compare(a.length.length))
            .slice(0, 3)
            .map((slides) => ({
              how: 'use-slides',
              values: { slides: slides.name },
              changes: [{ kind: 'set-name', at, name: slides.name } as const],
            }))),
    ],
  };
}
