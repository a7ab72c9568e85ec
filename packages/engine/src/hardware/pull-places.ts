import { assumed, derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import { Length, type LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { HAND_HEIGHT, PULL_FROM_EDGE, PULL_FROM_END } from '../tables/hanging-habits.ts';
import { isMetric, limitIn, type TradeLimit } from '../tables/trade-limits.ts';
import type { FrontFacts, FrontWithPull, PullPlan } from './pull-plans.ts';

/** Where on its front a pull sits when the text says so, and where the trade would put it when it does not. */

const half = Rational.of(1, 2);

/** From the closing edge of a door to the middle of its pull. */
export function fromClosing({ pulls, framed, unit }: FrontFacts): Figure {
  if (pulls.fromEdge === undefined && framed !== undefined) {
    return derive('in the middle of the stile', [plus('width of the stile', framed.stiles, half)]);
  }
  return (
    pulls.fromEdge ??
    usual(PULL_FROM_EDGE, unit, '1-1/2"', '40 mm', (size) => `pulls of doors are about ${size} from the closing edge`)
  );
}

/** From the lower edge of the front to the middle of its pulls. */
export function upFrom({ at, closing }: FrontWithPull, facts: FrontFacts, stands: PullPlan['stands']): Figure {
  const { cell, pulls, framed, unit, aboveFloor } = facts;
  const hanging = aboveFloor === undefined ? [] : [less('where the piece hangs above the floor', aboveFloor)];
  const along = stands === 'upright' ? pulls.entry.width : pulls.entry.height;
  const height = at.y.size;
  const said = pulls.height;
  switch (said?.kind) {
    case 'centred':
      return derive('in the middle of the height', [plus('height of the front', height, half)]);
    case 'from-top':
      return derive('below the upper edge', [
        plus('height of the front', height),
        less('below its upper edge', said.figure),
      ]);
    case 'from-bottom':
      return derive('above the lower edge', [plus('above its lower edge', said.figure)]);
    case 'above-floor':
      return derive('on one line, above the floor', [
        plus('above the floor', said.figure),
        less('where the front begins', at.y.start),
        ...hanging,
      ]);
    case undefined:
      break;
    default: {
      const unknown: never = said;
      return unknown;
    }
  }
  if (cell.what === 'door' && closing !== undefined && !pulls.isShared) {
    const begins = at.y.start.length.plus(aboveFloor?.length ?? Length.zero);
    const hand = limitIn(HAND_HEIGHT, unit);
    const isLow = begins.plus(height.length.times(half)).compare(hand) < 0;
    const fromEnd =
      framed !== undefined
        ? derive('its end is level with the edge of the rail: holes in the rail would meet its tenon', [
            plus('width of the rail', isLow ? framed.topRail : framed.bottomRail),
            ...(along === undefined ? [] : [plus('size of the pull', along, half)]),
          ])
        : stands === 'upright' && pulls.entry.width !== undefined
          ? derive('its end is as far from the end of the door as its middle from the closing edge, common practice', [
              plus('from the closing edge to the middle of the pull', fromClosing(facts)),
              plus('length of the pull', pulls.entry.width, half),
            ])
          : usual(PULL_FROM_END, unit, '3"', '80 mm', (size) => `knobs are about ${size} from the end of a door`);
    // A tall door is taken hold of where the hand is, not at either end.
    const atHand = hand.minus(begins);
    if (atHand.compare(fromEnd.length) >= 0 && atHand.compare(height.length.minus(fromEnd.length)) <= 0) {
      return derive('where the hand is, common practice', [
        plus(
          'height of the hand above the floor',
          usual(HAND_HEIGHT, unit, '42"', '1050 mm', (size) => `hands reach for pulls about ${size} above the floor`),
        ),
        less('where the front begins', at.y.start),
        ...hanging,
      ]);
    }
    return isLow
      ? derive('near the upper end: the door is below the hand', [
          plus('height of the door', height),
          less('below its upper end', fromEnd),
        ])
      : derive('near the lower end: the door is above the hand', [plus('above its lower end', fromEnd)]);
  }
  if (cell.what === 'lid') {
    return usual(
      PULL_FROM_EDGE,
      unit,
      '1-1/2"',
      '40 mm',
      (size) => `lids are lifted about ${size} above their lower edge`,
    );
  }
  return derive('in the middle of the height', [plus('height of the front', height, half)]);
}

/** A habit of the trade as an assumed figure. */
export function usual(
  limit: TradeLimit,
  unit: LengthUnit,
  inches: string,
  metric: string,
  because: (size: string) => string,
): Figure {
  return assumed(limitIn(limit, unit), `${because(isMetric(unit) ? metric : inches)}, common practice`);
}
