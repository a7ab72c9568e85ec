import { assumed, derive, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import { Length, type LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { isMetric } from './trade-limits.ts';

/**
 * What stands in where the text says nothing, as a maker who works in inches and one who works in millimetres would do
 * it: round figures of either, not one figure converted. All of it is common practice, no source. Knows nothing of
 * designs.
 */

export interface TradeHabit {
  readonly inches: readonly [size: Length, words: string];
  readonly metric: readonly [size: Length, words: string];
  /** A short sentence around the size. */
  readonly because: (size: string) => string;
}

/** The habit in the units of the piece, as an assumed figure. */
export function usual(habit: TradeHabit, unit: LengthUnit): Figure {
  const [size, words] = isMetric(unit) ? habit.metric : habit.inches;
  return assumed(size, habit.because(words));
}

function pair(
  inches: Length,
  inWords: string,
  metric: Length,
  metricWords: string,
  because: TradeHabit['because'],
): TradeHabit {
  return { inches: [inches, inWords], metric: [metric, metricWords], because };
}

const inch = Length.inches;
const mm = Length.millimetres;

export const BOX_CLEAR_BELOW = pair(
  inch(1, 4),
  '1/4"',
  mm(6),
  '6 mm',
  (size) => `drawer boxes have about ${size} free under them`,
);
export const BOX_CLEAR_ABOVE = pair(
  inch(1, 2),
  '1/2"',
  mm(12),
  '12 mm',
  (size) => `drawer boxes have about ${size} free over them`,
);
const BOX_GROOVE = pair(inch(1, 4), '1/4"', mm(6), '6 mm', (size) => `grooves for drawer bottoms are ${size} deep`);
export const BOX_BOTTOM_SHY = pair(
  inch(1, 16),
  '1/16"',
  mm(3, 2),
  '1.5 mm',
  (size) => `drawer bottoms are ${size} short of their grooves`,
);
export const BOX_BOTTOM_UP = pair(
  inch(1, 4),
  '1/4 inch',
  mm(6),
  '6 mm',
  (size) => `the groove for the bottom is ${size} up from the lower edge, common practice`,
);
export const BOX_SIDES = pair(
  inch(1, 2),
  '1/2 inch',
  mm(12),
  '12 mm',
  (size) => `the sides of a box are ${size} thick unless something is said, common practice`,
);
export const BOX_BOTTOM = pair(
  inch(1, 4),
  '1/4 inch',
  mm(6),
  '6 mm',
  (size) => `the bottom of a box is ${size} thick unless something is said, common practice`,
);
export const BESIDE_BOX = pair(
  inch(1, 32),
  '1/32 inch',
  mm(1),
  '1 mm',
  (size) => `a box without slides runs with ${size} at each side, common practice`,
);
/** What binds with less: at both sides of a drawer together, over it, and beside whatever it comes out past. */
export const RUNNING_CLEARANCE = pair(
  inch(1, 32),
  '1/32 inch',
  mm(1),
  '1 mm',
  (size) => `a drawer needs ${size} to run freely, common practice`,
);
export const BEHIND_BOX = pair(
  inch(1, 2),
  '1/2 inch',
  mm(12),
  '12 mm',
  (size) => `a box without slides stays ${size} clear of the back, common practice`,
);

export const RUNNER_PLAY = pair(
  inch(1, 32),
  '1/32 inch',
  mm(1),
  '1 mm',
  (size) => `a groove is ${size} wider than the runner in it is high, common practice`,
);
export const RUNNER_HEIGHT = pair(
  inch(3, 4),
  '3/4 inch',
  mm(20),
  '20 mm',
  (size) => `runners are about ${size} high, common practice`,
);
export const RUNNER_THICKNESS = pair(
  inch(1, 4),
  '1/4 inch',
  mm(6),
  '6 mm',
  (size) => `runners are about ${size} thick, common practice`,
);
export const COMPARTMENT_WALL = pair(
  inch(1, 4),
  '1/4 inch',
  mm(6),
  '6 mm',
  (size) => `partitions in a drawer are about ${size} thick, common practice`,
);
export const COMPARTMENT_DADO = pair(
  inch(1, 8),
  '1/8 inch',
  mm(3),
  '3 mm',
  (size) => `partitions of a drawer lie about ${size} deep in its walls, common practice`,
);
export const CENTRE_RUNNER_WIDE = pair(
  inch(3, 2),
  '1-1/2 inches',
  mm(40),
  '40 mm',
  (size) => `a runner under the middle of a box is about ${size} wide, common practice`,
);
export const SLIDE_HEIGHT = pair(
  inch(7, 4),
  '1-3/4 inches',
  mm(45),
  '45 mm',
  (size) => `a slide is about ${size} high unless its entry says so, common practice`,
);

export const SLIDE_SCREW = pair(
  inch(1, 8),
  '1/8 inch',
  mm(7, 2),
  '3.5 mm',
  (size) => `screws of slides are about ${size} thick unless their entry says so, common practice`,
);

export const SHELF_SHY = pair(
  inch(1, 16),
  '1/16"',
  mm(3, 2),
  '1.5 mm',
  (size) => `adjustable shelves are ${size} shy at each end`,
);
export const INSIDE_BEHIND_DOOR = pair(
  inch(1, 8),
  '1/8 inch',
  mm(3),
  '3 mm',
  (size) => `fronts behind a door stand ${size} behind it, common practice`,
);

export const SHELF_CLEAR = pair(
  inch(1, 8),
  '1/8 inch',
  mm(3),
  '3 mm',
  (size) => `a shelf stays ${size} clear of the back of the front, common practice`,
);

export const FRONT_THICKNESS = pair(
  inch(3, 4),
  '3/4 inch',
  mm(18),
  '18 mm',
  (size) => `fronts are ${size} thick unless something is said, common practice`,
);
export const INSET_GAP = pair(
  inch(3, 32),
  '1/16" to 1/8"',
  mm(2),
  '1.5 to 3 mm',
  (size) => `gaps around inset fronts are about ${size}`,
);
export const LIPPED_GAP = pair(
  inch(1, 16),
  '1/16"',
  mm(3, 2),
  '1.5 mm',
  (size) => `a lipped front clears its opening by about ${size}, common practice`,
);
export const OVERLAY_GAP = pair(
  inch(1, 8),
  '1/8"',
  mm(3),
  '3 mm',
  (size) => `overlay fronts are about ${size} apart, common practice`,
);

export const PLINTH_HEIGHT = pair(inch(3), '3"', mm(80), '80 mm', (size) => `toe spaces are about ${size} high`);
export const STRETCHER_WIDTH = pair(inch(3), '3"', mm(80), '80 mm', (size) => `stretchers are about ${size} wide`);
export const FRAME_MEMBER = pair(
  inch(3, 2),
  '1-1/2"',
  mm(40),
  '40 mm',
  (size) => `members of a face frame are about ${size} wide, common practice`,
);
export const WEB_FRAME_RAIL = pair(
  inch(2),
  '2 inches',
  mm(50),
  '50 mm',
  (size) => `the rails of a web frame are ${size} wide, common practice`,
);

export const FRAMED_STILE = pair(
  inch(9, 4),
  '2-1/4"',
  mm(60),
  '60 mm',
  (size) => `stiles and rails of a side are about ${size} wide, common practice`,
);
export const FRAMED_BOTTOM_RAIL = pair(
  inch(3),
  '3"',
  mm(80),
  '80 mm',
  (size) => `the bottom rail of a side is about ${size} wide, common practice`,
);
export const STUB_TENON = pair(
  inch(3, 8),
  '3/8"',
  mm(10),
  '10 mm',
  (size) => `stub tenons are about ${size} long, common practice`,
);
export const TENON_SHORT = pair(
  inch(1, 32),
  '1/32"',
  mm(1),
  '1 mm',
  (size) => `a tenon is left ${size} short of its mortise, common practice`,
);
export const PANEL_GROOVE = pair(
  inch(3, 8),
  '3/8"',
  mm(10),
  '10 mm',
  (size) => `panels lie in grooves ${size} deep, common practice`,
);
export const FRAMED_PANEL = pair(
  inch(3, 8),
  '3/8"',
  mm(10),
  '10 mm',
  (size) => `a panel is ${size} thick unless something is said, common practice`,
);
export const PANEL_FLOAT = pair(
  inch(1, 16),
  '1/16"',
  mm(3, 2),
  '1.5 mm',
  (size) => `a solid panel has ${size} to move at each edge, common practice`,
);
export const SHEET_CLEARANCE = pair(
  inch(1, 16),
  '1/16"',
  mm(3, 2),
  '1.5 mm',
  (size) => `a sheet is ${size} shorter than from groove to groove, so that it goes in, common practice`,
);
export const GLASS_THICKNESS = pair(
  inch(1, 8),
  '1/8"',
  mm(4),
  '4 mm',
  (size) => `panes of doors are ${size} thick, common practice`,
);
export const GLASS_RABBET = pair(
  inch(3, 8),
  '3/8"',
  mm(10),
  '10 mm',
  (size) => `panes lie in rabbets ${size} wide, common practice`,
);
export const GLASS_CLEARANCE = pair(
  inch(1, 8),
  '1/8"',
  mm(3),
  '3 mm',
  (size) => `a pane is ${size} smaller than from rabbet to rabbet, common practice`,
);
export const TOE_SPACE_DEPTH = pair(
  inch(3),
  '3"',
  mm(75),
  '75 mm',
  (size) => `toe spaces are about ${size} deep, common practice`,
);
export const FOOT_HEIGHT = pair(
  inch(5),
  '5"',
  mm(120),
  '120 mm',
  (size) => `feet are about ${size} high, common practice`,
);
export const FOOT_RAIL = pair(
  inch(5, 2),
  '2-1/2"',
  mm(60),
  '60 mm',
  (size) => `rails between feet are about ${size} wide, common practice`,
);
export const NAILER_WIDTH = pair(
  inch(3),
  '3"',
  mm(75),
  '75 mm',
  (size) => `strips that carry a piece on a wall are about ${size} wide, common practice`,
);

export const ROUGH_LENGTH = pair(
  inch(1),
  '1"',
  mm(25),
  '25 mm',
  (size) => `${size} longer in the rough, common practice`,
);
export const ROUGH_WIDTH = pair(
  inch(1, 4),
  '1/4"',
  mm(6),
  '6 mm',
  (size) => `${size} wider in the rough, common practice`,
);

/**
 * How deep the groove for a drawer bottom is in sides of this thickness: the usual depth, but never over half of the
 * side, for what is left has to hold.
 */
export function usualBottomGroove(sides: Figure | undefined, unit: LengthUnit): Figure {
  const groove = usual(BOX_GROOVE, unit);
  const thickness = sides ?? usual(BOX_SIDES, unit);
  const half = thickness.length.times(Rational.of(1, 2));
  if (groove.length.compare(half) <= 0 || !half.isPositive()) return groove;
  const [, words] = isMetric(unit) ? BOX_GROOVE.metric : BOX_GROOVE.inches;
  return derive(`grooves for drawer bottoms are ${words} deep, but never deeper than half of the side`, [
    plus('thickness of the box sides', thickness, Rational.of(1, 2)),
  ]);
}
