import type { PieceDesign } from '../design/design.ts';
import type { CarcaseLayout, LaidCell } from '../evaluation.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { fitCatches } from './catches.ts';
import { fitCleats } from './cleats.ts';
import { fitBevels } from './closing-bevels.ts';
import { fitSlides } from './drawer-slides.ts';
import { fitHinges } from './hinges.ts';
import { fitLid } from './lid-hinges.ts';
import { fitPanes } from './panes.ts';
import type { FittedHardware } from './placed-hardware.ts';
import { fitPulls } from './pulls.ts';
import { fitShelfPins } from './shelf-pins.ts';
import { fitVents } from './vents.ts';
import { fitWallScrews, type HungCase } from './wall-screws.ts';
import { fitRunners } from './wooden-runners.ts';

/** What every fitter of hardware is given: the design, where things lie, and the parts as they are joined. */
export interface HardwareCase {
  readonly design: PieceDesign;
  readonly layout: CarcaseLayout;
  readonly face: LaidCell;
  readonly parts: readonly UnmarkedPart[];
}

type Fitter = (one: HardwareCase) => FittedHardware;

/** One for each kind of hardware. */
const fitters: readonly Fitter[] = [
  fitHinges,
  fitBevels,
  fitPulls,
  fitPanes,
  fitCatches,
  fitSlides,
  fitRunners,
  fitCleats,
  fitShelfPins,
  fitVents,
];

/**
 * Puts all hardware of a piece in its place. What an entry does not tell is not placed: it is absent, never guessed. A
 * case without a face has only what it hangs by.
 */
export function fitHardware({ face, ...one }: HungCase & Partial<Pick<HardwareCase, 'face'>>): FittedHardware {
  const fitted = [
    ...(face === undefined ? [] : fitters.map((fitter) => fitter({ ...one, face }))),
    fitLid(one),
    fitWallScrews(one),
  ];
  return {
    placed: fitted.flatMap(({ placed }) => placed),
    features: fitted.flatMap(({ features }) => features),
    parts: fitted.flatMap(({ parts = [] }) => parts),
  };
}
