import { Length, type LengthUnit } from '../../length/length.ts';
import { isMetric, type TradeLimit } from '../../tables/trade-limits.ts';

/**
 * How much larger blanks are cut from rough boards than they are in the end. Common practice, no source, all of it; a shop
 * has its own figures. Thickness is no allowance: the rough size is chosen from the tables.
 */
export interface BoardAllowances {
  /** On the length of a blank: both ends are cut square later. */
  readonly onLength: Length;
  /** On the width of a blank: both edges are jointed and ripped straight again after it has moved. */
  readonly onWidth: Length;
  /** On the width of a stave, for each of its two edges that are jointed before they are glued. */
  readonly jointing: Length;
  /** Off each end of a board: checks, paint, grit. */
  readonly boardEnd: Length;
  /** Off each edge of a board: one straight edge to rip from, wane. */
  readonly boardEdge: Length;
}

/** Common practice, no source. */
const ON_LENGTH: TradeLimit = { inches: Length.inches(1), metric: Length.millimetres(25) };
/** Common practice, no source. */
const ON_WIDTH: TradeLimit = { inches: Length.inches(1, 4), metric: Length.millimetres(6) };
/** Common practice, no source. */
const JOINTING: TradeLimit = { inches: Length.inches(1, 16), metric: Length.millimetres(3, 2) };
/** Common practice, no source. */
const BOARD_END: TradeLimit = { inches: Length.inches(1), metric: Length.millimetres(25) };
/** Common practice, no source. */
const BOARD_EDGE: TradeLimit = { inches: Length.inches(1, 4), metric: Length.millimetres(6) };

/** What stands in where the shop says nothing, in round figures of either system. */
export function usualAllowances(unit: LengthUnit): BoardAllowances {
  const say = ({ inches, metric }: TradeLimit) => (isMetric(unit) ? metric : inches);
  return {
    onLength: say(ON_LENGTH),
    onWidth: say(ON_WIDTH),
    jointing: say(JOINTING),
    boardEnd: say(BOARD_END),
    boardEdge: say(BOARD_EDGE),
  };
}
