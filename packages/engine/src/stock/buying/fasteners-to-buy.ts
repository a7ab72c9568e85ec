import type { Price } from '../../design/shop.ts';
import type { Evaluation } from '../../evaluation.ts';
import { groupAlike } from '../../grouping.ts';
import type { PlacedHardware } from '../../hardware/placed-hardware.ts';
import type { Fasteners } from '../../joinery/joint.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import type { Part } from '../../parts/part.ts';
import { LEAST_SCREW_HOLD, limitIn, type TradeLimit } from '../../tables/trade-limits.ts';
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
  /** Of a screw that no text names: what it passes before it holds. */
  readonly through?: Length;
  readonly parts: readonly string[];
}

export function fastenersToBuy(
  evaluation: Pick<Evaluation, 'design' | 'hardware' | 'parts' | 'joints' | 'screws'>,
): readonly HardwareToBuy[] {
  const wanted = [
    ...ofJoints(evaluation),
    ...ofWoodenHardware(evaluation),
    ...ofTop(evaluation),
    ...ofDrawerFronts(evaluation),
    ...ofPackers(evaluation),
  ].map((each) => fromTheShop(each, evaluation));
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
      const through = stretcher.thickness.length;
      return [{ what: 'screw', count: spaces + 1, length, usualFor, through, parts: [stretcher.id, wood.id] }];
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
      const through = end.thickness.length;
      return [{ what: 'screw', count: SCREWS_OF_A_FRONT, length, usualFor, through, parts: [end.id, front.id] }];
    });
}

/** A packer is screwed to what stands back behind it near either end. Common practice, no source. */
const SCREWS_OF_A_PACKER = 2;

function ofPackers({ design, parts }: Pick<Evaluation, 'design' | 'parts'>): readonly Wanted[] {
  return parts
    .filter(({ role }) => role === 'packer')
    .flatMap((packer): readonly Wanted[] => {
      const wood = parts.find((part) => part !== packer && isBeside(packer, part));
      const length = wood === undefined ? undefined : reachInto(wood, packer, design.units.unit);
      // A solid panel floats: what is screwed to it would pin it.
      const isFloating = wood?.role === 'panel' && wood.stock?.form === 'board';
      if (wood === undefined || length === undefined || isFloating) return [];
      const usualFor = 'through the packers into what stands behind them';
      const through = packer.thickness.length;
      return [{ what: 'screw', count: SCREWS_OF_A_PACKER, length, usualFor, through, parts: [packer.id, wood.id] }];
    });
}

/** Whether the middle of the packer lies on a face of it. */
function isBeside({ box, cell }: Part, other: Part): boolean {
  if (other.cell !== undefined && other.cell === cell) return false;
  const meets = other.box.x.end.length.equals(box.x.start.length) || other.box.x.start.length.equals(box.x.end.length);
  return (
    (['y', 'z'] as const).every((axis) => {
      const middle = box[axis].start.length.plus(box[axis].size.length.dividedBy(2));
      const { start, end } = other.box[axis];
      return start.length.compare(middle) <= 0 && end.length.compare(middle) >= 0;
    }) && meets
  );
}

/** The longest that the shop has of those that are not too long, and that hold in what they are to hold. */
function fromTheShop(wanted: Wanted, { design, screws }: Pick<Evaluation, 'design' | 'screws'>): Wanted {
  const { through, length } = wanted;
  if (wanted.entry !== undefined || through === undefined) return wanted;
  const least = through.plus(limitIn(LEAST_SCREW_HOLD, design.units.unit));
  const [own] = (screws ?? [])
    .filter((each) => each.length.length.compare(length) <= 0 && each.length.length.compare(least) >= 0)
    .sort((a, b) => b.length.length.compare(a.length.length));
  if (own === undefined) return wanted;
  return {
    ...wanted,
    entry: own.name,
    length: own.length.length,
    ...(own.price === undefined ? {} : { price: own.price }),
  };
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
