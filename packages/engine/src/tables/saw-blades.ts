import { Length, type LengthUnit } from '../length/length.ts';
import { limitIn, type TradeLimit } from './trade-limits.ts';

/** What blades that part wood take away. Common practice, no source. */

const WIDEST_KERF: TradeLimit = { inches: Length.inches(3, 8), metric: Length.millimetres(10) };
const THINNEST_KERF: TradeLimit = { inches: Length.inches(1, 64), metric: Length.millimetres(1, 2) };

export function widestKerf(unit: LengthUnit): Length {
  return limitIn(WIDEST_KERF, unit);
}

/** Whether some saw blade may have it. */
export function isKerfOfABlade(kerf: Length, unit: LengthUnit): boolean {
  return kerf.compare(limitIn(THINNEST_KERF, unit)) >= 0 && kerf.compare(widestKerf(unit)) <= 0;
}
