import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { TradeLimit } from './trade-limits.ts';

/** Limits of how cases are built, each with its source. */

/** Source: Architectural Woodwork Standards, 1st ed., 2009, 10-4.4.25.4: face frames at least 3/4" solid. */
export const THINNEST_FACE_FRAME: TradeLimit = { inches: Length.inches(3, 4), metric: Length.millimetres(19) };

/** Source: the same, 10-4.4.18: strips at least 1/2" by 2-1/2", none where the back is 1/2" or more. */
export const THINNEST_NAILER: TradeLimit = { inches: Length.inches(1, 2), metric: Length.millimetres(12) };
export const NARROWEST_NAILER: TradeLimit = { inches: Length.inches(5, 2), metric: Length.millimetres(63) };
/** Source: the same: one at the top, one at the bottom, and one more above 60" of height. */
export const HEIGHT_FOR_MORE_NAILERS: TradeLimit = { inches: Length.inches(60), metric: Length.millimetres(1524) };

/** From memory, textbooks: a groove in the middle of a frame takes a third of it, and never more than a half. */
export const WIDEST_GROOVE_IN_FRAME = Rational.of(1, 2);
