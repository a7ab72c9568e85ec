import { Length } from '../length/length.ts';
import type { TradeLimit } from './trade-limits.ts';

/** What vents leave of what they are cut through. Common practice, no source. */

/** Between an opening and the edge of its part. */
export const LEAST_BESIDE_VENT: TradeLimit = { inches: Length.inches(3, 4), metric: Length.millimetres(20) };

/** Of the thickness of a front, before the ledge for a screen. */
export const LEAST_BEFORE_LEDGE: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(3) };
