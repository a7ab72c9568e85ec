import { type RoomForCup, roomForCup } from '../../hardware/cups-in-stiles.ts';
import { type HingePlan, roomMissing } from '../../hardware/hinge-plans.ts';
import { type PlaceWithoutWood, placesWithoutWood } from '../../hardware/wood-for-hinges.ts';
import type { FaceOfPart } from '../../joinery/feature.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { LEAST_BACKSET, LEAST_BEFORE_CUP, LEAST_BEYOND_EDGING } from '../../tables/hanging-habits.ts';
import { limitIn } from '../../tables/trade-limits.ts';

/** Why hinges will not do on a door. Exact; nothing here is said in words. */
export type HingeTrouble =
  | { readonly kind: 'no-wood'; readonly place: PlaceWithoutWood }
  /** They need so much of its height. */
  | { readonly kind: 'no-room'; readonly needs: Length; readonly height: Length }
  | { readonly kind: 'cup-too-deep'; readonly depth: Length; readonly left: Length; readonly limit: Length }
  | { readonly kind: 'cup-distance'; readonly distance: Length; readonly limit: Length; readonly isTooNear: boolean }
  | ({ readonly kind: 'cup-beyond-stile' } & RoomForCup)
  /** `left` behind the leaf; negative where it comes out. */
  | { readonly kind: 'leaf-too-wide'; readonly leaf: Length; readonly left: Length; readonly limit: Length }
  | { readonly kind: 'thinner-than-gap'; readonly closed: Length; readonly gap: Length }
  /** Deeper by itself than both gains together may be. */
  | { readonly kind: 'case-gain-too-deep'; readonly depth: Length; readonly limit: Length }
  | { readonly kind: 'screws-in-edging'; readonly screw: Length; readonly edging: Length; readonly limit: Length };

/** The gravest of what is wrong with these hinges on this door; undefined where nothing is. */
export function hingeTrouble(
  plan: HingePlan,
  parts: readonly UnmarkedPart[],
  facePlane: Length,
  unit: LengthUnit,
): HingeTrouble | undefined {
  const missing = roomMissing(plan);
  if (missing !== undefined) return { kind: 'no-room', ...missing };
  const [place] = placesWithoutWood(plan, parts, facePlane);
  if (place !== undefined) return { kind: 'no-wood', place };
  return (
    (plan.form === 'concealed' ? (cupTrouble(plan, unit) ?? beyondStile(plan, parts)) : leafTrouble(plan, unit)) ??
    screwsInEdging(plan, parts, unit)
  );
}

function cupTrouble({ cup, leaf }: HingePlan, unit: LengthUnit): HingeTrouble | undefined {
  if (cup === undefined) return undefined;
  const { depth, leastDistance, mostDistance } = cup.figures;
  const left = leaf.deep.size.length.minus(depth.length);
  const limit = limitIn(LEAST_BEFORE_CUP, unit);
  if (left.compare(limit) < 0) return { kind: 'cup-too-deep', depth: depth.length, left, limit };
  const distance = cup.distance?.length;
  if (distance === undefined) return undefined;
  if (leastDistance !== undefined && distance.compare(leastDistance.length) < 0) {
    return { kind: 'cup-distance', distance, limit: leastDistance.length, isTooNear: true };
  }
  if (mostDistance !== undefined && distance.compare(mostDistance.length) > 0) {
    return { kind: 'cup-distance', distance, limit: mostDistance.length, isTooNear: false };
  }
  return undefined;
}

function beyondStile(plan: HingePlan, parts: readonly UnmarkedPart[]): HingeTrouble | undefined {
  const cup = roomForCup(plan, parts);
  return cup === undefined || cup.reach.compare(cup.room) < 0 ? undefined : { kind: 'cup-beyond-stile', ...cup };
}

function leafTrouble({ hinge, leaf, gains, form, gap }: HingePlan, unit: LengthUnit): HingeTrouble | undefined {
  const { leafWidth, closed } = hinge;
  if (leafWidth !== undefined) {
    const thickness = leaf.deep.size.length;
    // A knife lies in the middle of the thickness, a butt at the front of it.
    const left = thickness.minus(leafWidth.length).dividedBy(form === 'knife' ? 2 : 1);
    const limit = limitIn(LEAST_BACKSET, unit).dividedBy(form === 'knife' ? 2 : 1);
    if (left.compare(limit) < 0) return { kind: 'leaf-too-wide', leaf: leafWidth.length, left, limit };
  }
  if (closed !== undefined && gains?.together.length.isNegative()) {
    return { kind: 'thinner-than-gap', closed: closed.length, gap: gap.length };
  }
  if (gains?.door.length.isNegative()) {
    return { kind: 'case-gain-too-deep', depth: gains.wood.length, limit: gains.together.length };
  }
  return undefined;
}

/** A strip of solid wood along the edge that a leaf lies in: screws that end in it hold nothing but the strip. */
function screwsInEdging(
  { hinge, leaf, side, form, gains }: HingePlan,
  parts: readonly UnmarkedPart[],
  unit: LengthUnit,
): HingeTrouble | undefined {
  const screw = hinge.screwLength?.length;
  if (screw === undefined || form === 'concealed') return undefined;
  const edges: readonly FaceOfPart[] = form === 'knife' ? ['-y', '+y'] : [side === 'left' ? '-x' : '+x'];
  const door = parts.find(({ id }) => id === leaf.id);
  const strip = door?.edging.find(({ at }) => edges.includes(at));
  // What is wider than the door is thick is a board glued on, and holds like one.
  if (strip === undefined || strip.thickness.length.compare(leaf.deep.size.length) > 0) return undefined;
  const gain = gains?.door.length.max(Length.zero) ?? Length.zero;
  const limit = strip.thickness.length.minus(gain).plus(limitIn(LEAST_BEYOND_EDGING, unit));
  return screw.compare(limit) < 0
    ? { kind: 'screws-in-edging', screw, edging: strip.thickness.length, limit }
    : undefined;
}
