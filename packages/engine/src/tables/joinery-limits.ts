import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { TradeLimit } from './trade-limits.ts';

/** Limits of joints. From memory, as textbooks have them, unless something else is said. Knows nothing of designs. */

/** Behind a blind mortise 1/8" to 1/4" of wood is asked for; the lesser of them. */
export const THINNEST_WALL: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(3) };

/** A tenon is about a third of its stock; what is beyond these is told. The bounds are common practice, no source. */
export const THINNEST_TENON = Rational.of(1, 4);
export const THICKEST_TENON = Rational.of(1, 2);

/** A dowel is a third to half as thick as the stock. */
export const THINNEST_DOWEL = Rational.of(1, 3);
export const THICKEST_DOWEL = Rational.of(1, 2);

/** Of its own thickness, so deep a dowel goes at least into a face, and into an end. Common practice, no source. */
export const LEAST_DOWEL_IN_FACE = Rational.one;
export const LEAST_DOWEL_IN_END = Rational.of(3, 2);

/** A packer fills up to so much between hardware and wood; wood farther off is none. Common practice, no source. */
export const THICKEST_PACKER: TradeLimit = { inches: Length.inches(3), metric: Length.millimetres(75) };

/** What a screw that is to end within a packer leaves of it. Common practice, no source. */
export const PACKER_LEFT: TradeLimit = { inches: Length.inches(1, 16), metric: Length.millimetres(3, 2) };

/** The shortest screw that is trusted with a slide. Common practice, no source. */
export const SHORTEST_SLIDE_SCREW: TradeLimit = { inches: Length.inches(1, 4), metric: Length.millimetres(6) };

/** A screw of a slide that comes through no case of 3/4" or 18 mm stock. Common practice, no source. */
export const LONGEST_SLIDE_SCREW = Length.inches(5, 8);
