import type { Origin } from '@fettle/findings';
import type { Rational } from '../length/rational.ts';
import type { Figure } from './figure.ts';
import type { Price, ScrewEntry, Stock } from './shop.ts';

/** Slides as their data sheet has them, and where a maker wants them. Limits that are absent are not known. */

export interface SlideEntry {
  readonly name: string;
  readonly origin: Origin;
  /**
   * `side`: between the box and the case. `under`: below the box, screwed to the case beside it. `centre`: one runner
   * below the middle of the box.
   */
  readonly mounting: 'side' | 'under' | 'centre';
  /** Closed length; also the depth of the box it carries. */
  readonly length: Figure;
  /** Space each slide takes beside the box. */
  readonly clearanceEachSide: Figure;
  /** Depth needed behind the inside of the front beyond `length` and `setBack`. */
  readonly extraDepth: Figure;
  /** From the back of the front to the front end of the slide. */
  readonly setBack?: Figure;
  /** Height of the slide itself; the box side must be at least this high. */
  readonly height?: Figure;
  /** Free height it needs under the box, where it lies there. */
  readonly below?: Figure;
  /** How far the box is lifted to be hooked in. */
  readonly lift?: Figure;
  /** The thickest sides that its member under the box takes. */
  readonly thickestSides?: Figure;
  /** The holes of the member on the case, from the front; empty while the entry does not tell. */
  readonly holes?: readonly SlideHole[];
  /** Those of the member on the box. */
  readonly boxHoles?: readonly SlideHole[];
  readonly screws?: SlideScrews;
  /** What its maker rates the pair for. */
  readonly carries?: { readonly load: Rational; readonly unit: 'lb' | 'kg' };
  readonly price?: Price;
}

export interface SlideHole {
  /** From the front end of the slide to the middle of the hole. */
  readonly fromFront: Figure;
  /** From the lower edge of the slide; the middle of its height where it is absent. */
  readonly up?: Figure;
}

/** What the slides are fastened with. */
export interface SlideScrews {
  /** How far they reach into the wood behind the slide. */
  readonly length: Figure;
  readonly diameter: Figure;
  /** Into the side of the box, where those are others. */
  readonly inBox?: Figure;
  /** Of one, where they do not come with the slide. */
  readonly price?: Price;
}

/** The line of a slide that is set, and what it is measured from; the same for every drawer that it is said of. */
export interface SlideDatum {
  readonly line: 'lower-edge' | 'screw-line';
  /** The lower edge of this. */
  readonly from: 'front' | 'opening' | 'box';
  readonly above: Figure;
}

/** Strips of wood on the sides of the case that the box rides on with grooves in its sides, or one under its middle. */
export interface RunnersDesign {
  readonly origin: Origin;
  /** One under the middle of the box, that lies on the wood before and behind it. */
  readonly isCentre: boolean;
  readonly height: Figure;
  /** Across the case; of a centre runner its width. */
  readonly thickness: Figure;
  readonly stock?: Stock;
  /** Of their lower edges; in the middle of the box where it is absent. */
  readonly at?: SlideDatum;
  /** What they are fastened with; absent while nothing is said. */
  readonly screws?: ScrewEntry;
  /** The words that name them. */
  readonly screwsOrigin?: Origin;
}

/** Slides that are weighed against those that are chosen. */
export interface ComparedSlides {
  readonly slides: SlideEntry;
  /** Their name, and the whole statement. */
  readonly origin: Origin;
  readonly statement: Origin;
}

/** Pieces between slides and whatever stands back behind them. */
export interface PackersDesign {
  readonly origin: Origin;
  /** The whole statement. */
  readonly statement: Origin;
  /** That of each gap where it is absent. */
  readonly thickness?: Figure;
  readonly stock?: Stock;
}
