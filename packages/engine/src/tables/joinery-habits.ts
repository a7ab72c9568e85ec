import { assumed, derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { downToMark } from '../length/ruler-marks.ts';
import type { TradeHabit } from './trade-habits.ts';

/**
 * How joints are made where the text says nothing. Thirds and halves and the slopes of dovetails are from memory, as
 * textbooks have them; sizes and fits are common practice, no source. Knows nothing of designs.
 */

const inch = Length.inches;
const mm = Length.millimetres;

function habit(inches: TradeHabit['inches'], metric: TradeHabit['metric'], because: TradeHabit['because']): TradeHabit {
  return { inches, metric, because };
}

export const FRAME_GROOVE = habit(
  [inch(3, 8), '3/8"'],
  [mm(10), '10 mm'],
  (size) => `grooves of frames are ${size} deep, common practice`,
);
export const TENON_EDGE_SHOULDER = habit(
  [inch(1, 4), '1/4"'],
  [mm(6), '6 mm'],
  (size) => `tenons have a shoulder of ${size} at each edge, common practice`,
);

export const DOWEL_DIAMETER = habit(
  [inch(3, 8), '3/8"'],
  [mm(8), '8 mm'],
  (size) => `dowels are ${size} thick, common practice`,
);
export const DOWEL_LENGTH = habit(
  [inch(3, 2), '1-1/2"'],
  [mm(35), '35 mm'],
  (size) => `dowels are ${size} long, common practice`,
);
/** The holes of a dowel are deeper than the dowel is long by this much in all, for glue. */
export const DOWEL_SHORT = habit(
  [inch(1, 16), '1/16"'],
  [mm(2), '2 mm'],
  (size) => `the two holes of a dowel are ${size} deeper than it is long, common practice`,
);
/** From memory: frameless cases are drilled at multiples of 32 mm, the first row 37 mm from the front edge. */
export const FASTENERS_FIRST = habit(
  [inch(3, 2), '1-1/2"'],
  [mm(37), '37 mm'],
  (size) => `the first is ${size} from the edge, common practice`,
);
export const FASTENERS_APART = habit(
  [inch(4), '4"'],
  [mm(96), '96 mm'],
  (size) => `they are ${size} apart, common practice`,
);

export const SCREW_LENGTH = habit(
  [inch(2), '2"'],
  [mm(50), '50 mm'],
  (size) => `screws are ${size} long, common practice`,
);
export const SCREW_PILOT = habit([inch(1, 8), '1/8"'], [mm(3), '3 mm'], (size) => `pilot holes are ${size}`);
export const SCREW_CLEARANCE = habit([inch(3, 16), '3/16"'], [mm(5), '5 mm'], (size) => `clearance holes are ${size}`);

export const LOOSE_TENON_THICKNESS = habit(
  [inch(1, 4), '1/4"'],
  [mm(6), '6 mm'],
  (size) => `loose tenons are ${size} thick, common practice`,
);
export const LOOSE_TENON_WIDTH = habit(
  [inch(3, 4), '3/4"'],
  [mm(20), '20 mm'],
  (size) => `loose tenons are ${size} wide, common practice`,
);
export const LOOSE_TENON_LENGTH = habit(
  [inch(3, 2), '1-1/2"'],
  [mm(40), '40 mm'],
  (size) => `loose tenons are ${size} long, common practice`,
);

export const PIN_WIDTH = habit(
  [inch(1, 4), '1/4"'],
  [mm(6), '6 mm'],
  (size) => `pins are ${size} wide where they are narrow, common practice`,
);
export const TAIL_PITCH = habit(
  [inch(3, 2), '1-1/2"'],
  [mm(40), '40 mm'],
  (size) => `from one pin to the next there are about ${size}, common practice`,
);

const third = Rational.of(1, 3);
const half = Rational.of(1, 2);

/** From memory: a dado is a third as deep as the wood is thick. Down to a mark of the ruler: one sets a depth by it. */
export function usualDadoDepth(thickness: Figure, mark: Length): Figure {
  const because = 'dadoes are a third as deep as the wood is thick, from memory';
  return shareDownToMark(because, thickness, third, mark);
}

/** From memory: a tenon is a third as thick as its stock. */
export function usualTenonThickness(thickness: Figure): Figure {
  return derive('tenons are a third as thick as their stock, from memory', [plus('thickness', thickness, third)]);
}

/** Common practice: a mortise goes halfway into the member it is cut in. */
export function usualMortiseDepth(width: Figure): Figure {
  return derive('mortises go halfway into the member, common practice', [plus('width of the member', width, half)]);
}

/**
 * Common practice: a dowel goes two thirds into a face, and the rest of it into the end that meets the face. Down to a mark
 * of the ruler: one sets a depth by it.
 */
export function usualDowelInFace(thickness: Figure, mark: Length): Figure {
  return shareDownToMark('dowels go two thirds into the face, common practice', thickness, Rational.of(2, 3), mark);
}

/** A share that is smaller than one mark stays what it is: of nothing there is no hole. */
function shareDownToMark(because: string, whole: Figure, share: Rational, mark: Length): Figure {
  const exact = whole.length.times(share);
  const over = exact.minus(downToMark(exact, mark));
  const term = plus('thickness', whole, share);
  if (over.isZero()) return derive(because, [term]);
  return derive(because, [term, less('down to a mark of the ruler', assumed(over, 'what lies beyond the mark'))]);
}

/** How many times as long as it is wide a dovetail's slope is. From memory: 1:8 in hardwood, 1:6 in softwood. */
export const HARDWOOD_SLOPE = 8;
export const SOFTWOOD_SLOPE = 6;
const softwoods = /\b(?:pine|fir|spruce|cedar|redwood|larch|hemlock|cypress|deal|softwood)\b/i;

export function dovetailSlope(wood: string | undefined): number {
  return wood !== undefined && softwoods.test(wood) ? SOFTWOOD_SLOPE : HARDWOOD_SLOPE;
}

export function nothingLeft(): Figure {
  return assumed(Length.zero, 'made to the actual thickness');
}
