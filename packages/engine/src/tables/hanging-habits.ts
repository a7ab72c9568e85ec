import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { TradeHabit } from './trade-habits.ts';
import type { TradeLimit } from './trade-limits.ts';

/** How doors are hung and what opens them. Where nothing else is said it is common practice, no source. */

interface HingeStep {
  readonly highest: TradeLimit;
  /** Kilograms. */
  readonly heaviest: Rational;
  readonly count: number;
}

/** Common practice, no source: how many hinges carry a door of this height and weight; beyond the last there are five. */
export const HINGES_NEEDED: readonly HingeStep[] = [
  { highest: { inches: Length.inches(40), metric: Length.millimetres(1000) }, heaviest: Rational.of(9), count: 2 },
  { highest: { inches: Length.inches(60), metric: Length.millimetres(1500) }, heaviest: Rational.of(15), count: 3 },
  { highest: { inches: Length.inches(80), metric: Length.millimetres(2000) }, heaviest: Rational.of(22), count: 4 },
];
export const MOST_HINGES_NEEDED = 5;

/** Common practice, no source: less wood than this between a gain and the back of the door splits out. */
export const LEAST_BACKSET: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(3) };

/** Common practice, no source: less wood than this in front of a cup shows through or breaks. */
export const LEAST_BEFORE_CUP: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(3) };

/** Common practice, no source: from the end of a door to the middle of a cup. */
export const CUP_FROM_END: TradeLimit = { inches: Length.inches(4), metric: Length.millimetres(100) };

/**
 * Trade convention, from memory: the middle of a plate stands 37 mm behind the front of the case, its two screws 32 mm
 * apart.
 */
export const PLATE_FROM_FRONT = Length.millimetres(37);
export const PLATE_SCREWS_APART = Length.millimetres(32);

/** Common practice, no source: what hinge screws and plates take where the shop file does not say how thick they are. */
export const HINGE_SCREW: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(7, 2) };

/** Common practice, no source: a screw that holds in solid edging alone pulls it off; so much of it is in what lies behind. */
export const LEAST_BEYOND_EDGING: TradeLimit = { inches: Length.inches(1, 4), metric: Length.millimetres(6) };

/** Common practice, no source: from a side to the screws in the lid of what is screwed to that side, and of what is not. */
export const STAY_FROM_SIDE: TradeLimit = { inches: Length.inches(1, 2), metric: Length.millimetres(12) };
export const SUPPORT_FROM_SIDE: TradeLimit = { inches: Length.inches(6), metric: Length.millimetres(150) };

/** Common practice, no source: supports that hold a lid by force lift it by themselves where they are so much too strong. */
export const MOST_OF_THE_LID = Rational.of(2);

/** Common practice, no source: from the closing edge of a door to the middle of its pull, and from the nearer end. */
export const PULL_FROM_EDGE: TradeLimit = { inches: Length.inches(3, 2), metric: Length.millimetres(40) };
export const PULL_FROM_END: TradeLimit = { inches: Length.inches(3), metric: Length.millimetres(80) };

/** Common practice, no source: the pulls of doors below this height are near the upper ends, of others near the lower. */
export const HAND_HEIGHT: TradeLimit = { inches: Length.inches(42), metric: Length.millimetres(1050) };

/** Common practice, no source: the least of a pull's screw that has to be in its thread, and the thread it has. */
export const LEAST_THREAD: TradeLimit = { inches: Length.inches(1, 4), metric: Length.millimetres(6) };
export const USUAL_THREAD: TradeLimit = { inches: Length.inches(3, 8), metric: Length.millimetres(10) };

/** Common practice, no source: the hole that the screw of a pull passes through. */
export const PULL_SCREW_HOLE: TradeLimit = { inches: Length.inches(3, 16), metric: Length.millimetres(5) };

/** Common practice, no source: what one works on a machine stays this long, so that there is enough to hold. */
export const LEAST_TO_HOLD: TradeLimit = { inches: Length.inches(12), metric: Length.millimetres(300) };

/** Common practice, no source: what a pane has to lie on wherever it is pushed to. */
export const LEAST_LAP_OF_GLASS: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(3) };

/** Common practice, no source: what a catch or a stop needs of wood behind the back of a door. */
export const CATCH_BEHIND_DOOR: TradeLimit = { inches: Length.inches(1, 2), metric: Length.millimetres(12) };

/** Common practice, no source: what a hung piece is screwed to, what hides it, and how far a screw goes into it. */
export const WALL_STUDS: TradeHabit = {
  inches: [Length.inches(16), '16"'],
  metric: [Length.millimetres(400), '400 mm'],
  because: (size) => `studs are ${size} apart, common practice`,
};
export const WALL_HIDDEN: TradeHabit = {
  inches: [Length.inches(1, 2), '1/2"'],
  metric: [Length.millimetres(25, 2), '12.5 mm'],
  because: (size) => `the lining of a wall is ${size} thick, common practice`,
};
export const WALL_HOLD: TradeHabit = {
  inches: [Length.inches(3, 2), '1-1/2"'],
  metric: [Length.millimetres(38), '38 mm'],
  because: (size) => `${size} of a screw hold in a stud, common practice`,
};
