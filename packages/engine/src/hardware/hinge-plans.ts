import { assumed, derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { HangingDesign } from '../design/hanging-design.ts';
import type { CupFigures, HingeEntry } from '../design/shop.ts';
import { Length, type LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { CUP_FROM_END, HINGES_NEEDED, MOST_HINGES_NEEDED } from '../tables/hanging-habits.ts';
import { isMetric, limitIn } from '../tables/trade-limits.ts';
import { gapAtHinges, type HungLeaf } from './hung-leaves.ts';
import { weightOfParts } from './weight-of-parts.ts';

/**
 * What follows from a hinge's figures for one door: how many, where along its edge, how deep the gains are, where the
 * cup is. Drawn, listed and checked from here alone. Knows nothing of findings.
 */
export interface HingePlan {
  readonly leaf: HungLeaf;
  readonly side: 'left' | 'right';
  readonly hinge: HingeEntry;
  readonly form: NonNullable<HingeEntry['form']>;
  /** How many are meant, and how many the trade would take for this door. */
  readonly count: number;
  readonly needed: number;
  /** Kilograms; absent where nobody knows what the door is made of. */
  readonly weight?: Rational;
  /** Of each hinge from below: up from the lower end of the door. */
  readonly middles: readonly Figure[];
  readonly gap: Figure;
  /** Of hinges with leaves. Depths may come out zero or negative: then there is nothing to cut. */
  readonly gains?: Gains;
  readonly cup?: CupPlace;
}

export interface Gains {
  readonly together: Figure;
  readonly door: Figure;
  readonly wood: Figure;
}

export interface CupPlace {
  readonly figures: CupFigures;
  /** Wood between the edge of the door and the cup; absent where the entry does not say what it leads to. */
  readonly distance?: Figure;
}

const half = Rational.of(1, 2);

/** Undefined where the entry does not say what kind of hinge it is, or where it is not known on which edge the door hangs. */
export function planHinges(leaf: HungLeaf, parts: readonly UnmarkedPart[], unit: LengthUnit): HingePlan | undefined {
  const { hinge, side, cell } = leaf;
  const form = hinge?.form;
  if (hinge === undefined || side === undefined || form === undefined || !canPlace(leaf)) return undefined;
  const height = leaf.leaf.y.size;
  const weight = weightOfParts(parts.filter(({ id, frame }) => id === leaf.id || frame === leaf.id));
  const needed = form === 'knife' ? 2 : hingesNeeded(height.length, weight, unit);
  const count = form === 'knife' ? 2 : (cell.hanging?.count ?? needed);
  const gap = form === 'knife' ? gapAtEnds(leaf) : gapAtHinges(leaf, side);
  return {
    leaf,
    side,
    hinge,
    form,
    count,
    needed,
    ...(weight === undefined ? {} : { weight }),
    middles: form === 'knife' ? [] : middlesOf(hinge, cell.hanging, height, count, unit),
    gap,
    ...gainsOf(hinge, cell.hanging, gap),
    ...(hinge.cup === undefined ? {} : { cup: cupPlace(hinge.cup, gap) }),
  };
}

/** What hinges need of the height of a door that has no room for them; undefined where they find it. */
export function roomMissing({
  middles,
  hinge,
  leaf,
  form,
}: HingePlan): { readonly needs: Length; readonly height: Length } | undefined {
  const [first, second] = middles;
  const long = form === 'concealed' ? hinge.cup?.diameter : hinge.length;
  if (first === undefined || long === undefined) return undefined;
  const height = leaf.leaf.y.size.length;
  const beyond = long.length.times(half).minus(first.length);
  const apart = second === undefined ? undefined : second.length.minus(first.length);
  if (!beyond.isPositive() && (apart === undefined || apart.compare(long.length) >= 0)) return undefined;
  // What one asks for at each end, and the hinges themselves.
  const needs = beyond.negated().max(Length.zero).times(2).plus(long.length.times(middles.length));
  return { needs: needs.max(height), height };
}

/** Leaves on doors that lap their opening lie on the wood in ways that no entry tells, and so do cups of lipped doors. */
export function canPlace({ hinge, fit }: Pick<HungLeaf, 'hinge' | 'fit'>): boolean {
  return hinge?.form === 'concealed' ? fit.kind !== 'lipped' : fit.kind === 'inset';
}

/** How many hinges carry a door of this height and weight, as the trade would have it. */
export function hingesNeeded(height: Length, weight: Rational | undefined, unit: LengthUnit): number {
  const step = HINGES_NEEDED.find(
    ({ highest, heaviest }) =>
      height.compare(limitIn(highest, unit)) <= 0 && (weight === undefined || weight.compare(heaviest) <= 0),
  );
  return step?.count ?? MOST_HINGES_NEEDED;
}

/** Over and under an inset door: knife hinges lie there. */
function gapAtEnds({ fit }: HungLeaf): Figure {
  return fit.gap;
}

function gainsOf(
  { form, closed }: HingeEntry,
  hanging: HangingDesign | undefined,
  gap: Figure,
): { readonly gains?: Gains } {
  if (closed === undefined || form === 'concealed') return {};
  const together = derive('what of the closed hinge the gap does not take', [
    plus('thickness of the hinge, closed', closed),
    less('gap between door and wood', gap),
  ]);
  const inCase = hanging?.caseGain;
  if (inCase === undefined) {
    const each = derive('half of what of the closed hinge the gap does not take', [
      plus('thickness of the hinge, closed', closed, half),
      less('gap between door and wood', gap, half),
    ]);
    return { gains: { together, door: each, wood: each } };
  }
  const door = derive('what the gain in the case leaves for the door', [
    plus('thickness of the hinge, closed', closed),
    less('gap between door and wood', gap),
    less('depth of the gain in the case', inCase),
  ]);
  return { gains: { together, door, wood: inCase } };
}

function cupPlace(figures: CupFigures, gap: Figure): CupPlace {
  const { reach } = figures;
  if (reach === undefined) return { figures };
  switch (reach.kind) {
    case 'overlay':
      return {
        figures,
        distance: derive('the overlay less what of it the hinge makes itself', [
          less('how far the door stands inside its opening', gap),
          less('overlay beyond the cup distance', reach.figure),
        ]),
      };
    case 'gap':
      return {
        figures,
        distance: derive('what the gap leaves of the figure of the hinge', [
          plus('gap and cup distance together', reach.figure),
          less('gap beside the door', gap),
        ]),
      };
    default: {
      const unknown: never = reach.kind;
      return unknown;
    }
  }
}

/** From below. The outermost at the same distance from both ends, the others evenly between them. */
function middlesOf(
  hinge: HingeEntry,
  hanging: HangingDesign | undefined,
  height: Figure,
  count: number,
  unit: LengthUnit,
): readonly Figure[] {
  const first = firstMiddle(hinge, hanging, height, unit);
  if (first === undefined || count < 1) return [];
  if (count === 1) return [derive('in the middle of the door', [plus('height of the door', height, half)])];
  return Array.from({ length: count }, (_, at) => {
    if (at === 0) return first;
    const share = Rational.of(at, count - 1);
    return derive(at === count - 1 ? 'as far from the upper end' : 'evenly between the outermost', [
      plus('height of the door', height, share),
      plus('from an end to the outermost hinge', first, Rational.one.minus(share.times(2))),
    ]);
  });
}

function firstMiddle(
  hinge: HingeEntry,
  hanging: HangingDesign | undefined,
  height: Figure,
  unit: LengthUnit,
): Figure | undefined {
  const said = hanging?.fromEnds;
  if (hinge.form === 'concealed') {
    if (said !== undefined) return said;
    const usual = limitIn(CUP_FROM_END, unit);
    return height.length.compare(usual.times(4)) >= 0
      ? assumed(usual, `cups are ${isMetric(unit) ? '100 mm' : '4"'} from the ends of a door, common practice`)
      : derive('a fifth of the height of a low door, common practice', [
          plus('height of the door', height, Rational.of(1, 5)),
        ]);
  }
  const { length } = hinge;
  if (length === undefined) return undefined;
  if (said !== undefined) {
    return derive('the middle of the hinge', [
      plus('from the end to the hinge', said),
      plus('length of the hinge', length, half),
    ]);
  }
  const isLow = height.length.compare(length.length.times(5)) < 0;
  return isLow
    ? derive('a fifth of the height of a low door, common practice', [
        plus('height of the door', height, Rational.of(1, 5)),
      ])
    : derive('a hinge is its own length away from the end, common practice', [
        plus('length of the hinge', length, Rational.of(3, 2)),
      ]);
}
