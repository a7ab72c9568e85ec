import { Length } from '../length/length.ts';
import type { TradeLimit } from './trade-limits.ts';

/** What shelves need of what carries them. Common practice, no source. */

/** Behind a hole for a shelf pin. */
export const BEHIND_PIN_HOLE: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(3) };

/** What of a cleat lies under a shelf that is pushed to the other end. */
export const LEAST_ON_CLEAT: TradeLimit = { inches: Length.inches(3, 8), metric: Length.millimetres(10) };
