import type { Price } from '../../design/shop.ts';
import type { Evaluation } from '../../evaluation.ts';
import { groupAlike } from '../../grouping.ts';
import type { PlacedHardware } from '../../hardware/placed-hardware.ts';
import type { Fasteners } from '../../joinery/joint.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import type { Part } from '../../parts/part.ts';
import { limitIn, type TradeLimit } from '../../tables/trade-limits.ts';
import type { HardwareToBuy } from './hardware-to-buy.ts';

/**
 * What holds the wood together: dowels, loose tenons and screws of the joints, screws of runners and cleats, and those of
 * tops and drawer fronts, of which no place is drawn.
 */

interface Wanted {
  readonly what: Fasteners['what'];
  readonly entry?: string;
  readonly count: number;
  readonly length: Length;
  readonly thickness?: Length;
  readonly price?: Price;
  readonly usualFor?: string;
  readonly parts: readonly string[];
}

export function fastenersToBuy(
  evaluation: Pick<Evaluation, 'design' | 'hardware' | 'parts' | 'joints'>,
): readonly HardwareToBuy[] {
  const wanted = [
    ...ofJoints(evaluation),
    ...ofWoodenHardware(evaluation),
    ...ofTop(evaluation),
    ...ofDrawerFronts(evaluation),
  ];
  const alike = groupAlike(wanted, ({ what, entry, length, thickness, usualFor }) => [
    what,
    entry,
    length.exactInches,
    // What has a name is known by it.
    entry === undefined ? thickness?.exactInches : undefined,
    usualFor,
  ]);
  return alike.map((group): HardwareToBuy => {
    const [{ what, entry, length, thickness, usualFor }] = group;
    const price = group.find((each) => each.price !== undefined)?.price;
    return {
      what,
      ...(entry === undefined ? {} : { entry }),
      quantity: group.reduce((sum, { count }) => sum + count, 0),
      inPairs: false,
      isPlaced: usualFor === undefined,
      ...(price === undefined ? {} : { price }),
      size: { length, ...(thickness === undefined ? {} : { thickness }) },
      ...(usualFor === undefined ? {} : { usualFor }),
      screws: [],
      parts: [...new Set(group.flatMap(({ parts }) => parts))],
    };
  });
}

function ofJoints({ joints }: Pick<Evaluation, 'joints'>): readonly Wanted[] {
  return joints.flatMap(({ fasteners, held, holding }): readonly Wanted[] => {
    if (fasteners === undefined || fasteners.count === 0) return [];
    const { length, thickness, ...known } = fasteners;
    return [{ ...known, length: length.length, thickness: thickness.length, parts: [held, holding] }];
  });
}

/** These are made of wood, and stand among the parts; what fastens them is bought. */
export function isWooden({ kind }: Pick<PlacedHardware, 'kind'>): boolean {
  return kind === 'runner' || kind === 'cleat';
}

/** By the entries of the shop. */
function ofWoodenHardware({ hardware }: Pick<Evaluation, 'hardware'>): readonly Wanted[] {
  return hardware
    .filter(isWooden)
    .flatMap(({ screws, on }) =>
      screws.flatMap(({ bought, diameter }): readonly Wanted[] =>
        bought === undefined ? [] : [{ what: 'screw', ...bought, count: 1, thickness: diameter, parts: on }],
      ),
    );
}

/** From the ends of a stretcher to the first screws, and the most between two. Common practice, no source. */
const FIRST: TradeLimit = { inches: Length.inches(2), metric: Length.millimetres(50) };
const APART: TradeLimit = { inches: Length.inches(8), metric: Length.millimetres(200) };

/** A top that lies on the case is screwed on from below, through the stretchers, unless it is glued. */
function ofTop({ design, parts }: Pick<Evaluation, 'design' | 'parts'>): readonly Wanted[] {
  const { top } = design.carcase;
  const wood = parts.find(({ role }) => role === 'top');
  if (top === undefined || wood === undefined || top.placement !== 'over' || top.fixing?.kind === 'glued') return [];
  const { unit } = design.units;
  return parts
    .filter(({ role }) => role === 'stretcher')
    .flatMap((stretcher): readonly Wanted[] => {
      const length = reachInto(wood, stretcher, unit);
      if (length === undefined) return [];
      const between = stretcher.length.length.minus(limitIn(FIRST, unit).times(2)).max(Length.zero);
      const spaces = between.ratioTo(limitIn(APART, unit)).negated().floor().negated().toNumber();
      const usualFor = 'through the stretchers into the top';
      return [{ what: 'screw', count: spaces + 1, length, usualFor, parts: [stretcher.id, wood.id] }];
    });
}

/** A drawer front is screwed on from inside the box: near each corner one. Common practice, no source. */
const SCREWS_OF_A_FRONT = 4;

function ofDrawerFronts({ design, parts }: Pick<Evaluation, 'design' | 'parts'>): readonly Wanted[] {
  return parts
    .filter(({ role }) => role === 'drawer-front')
    .flatMap((front): readonly Wanted[] => {
      const end = parts.find(({ role, cell }) => role === 'drawer-end' && cell === front.cell);
      const length = end === undefined ? undefined : reachInto(front, end, design.units.unit);
      if (end === undefined || length === undefined) return [];
      const usualFor = 'through the boxes into the drawer fronts';
      return [{ what: 'screw', count: SCREWS_OF_A_FRONT, length, usualFor, parts: [end.id, front.id] }];
    });
}

/** Lengths that screws are sold in. Common practice, no source. */
const SOLD_BY: TradeLimit = { inches: Length.inches(1, 8), metric: Length.millimetres(5) };
/** As much of what a screw holds as it goes into, so that its point stays inside. Common practice, no source. */
const DEEPEST = Rational.of(2, 3);

/** The longest that goes through the one and two thirds into the other; undefined where that is no length at all. */
function reachInto(held: Part, through: Part, unit: LengthUnit): Length | undefined {
  const most = through.thickness.length.plus(held.thickness.length.times(DEEPEST));
  const step = limitIn(SOLD_BY, unit);
  const length = step.times(most.ratioTo(step).floor());
  return length.compare(through.thickness.length) > 0 ? length : undefined;
}
