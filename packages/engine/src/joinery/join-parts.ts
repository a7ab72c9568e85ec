import type { PieceDesign } from '../design/design.ts';
import type { ShopOffer } from '../design/shop.ts';
import { groupedBy } from '../grouping.ts';
import { Length, type LengthUnit } from '../length/length.ts';
import { type UnmarkedPart, withBlank } from '../parts/slab.ts';
import { AXES, type Solid, whyNotSolid } from '../solids/index.ts';
import { backGrooves } from './back-grooves.ts';
import { baseCuts } from './base-cuts.ts';
import { blankOf, type Growth } from './blanks.ts';
import { casePlans } from './case-joints.ts';
import { withFeatures } from './cut-parts.ts';
import { drawerPlans } from './drawer-joints.ts';
import { axisOf, type Feature } from './feature.ts';
import { joinFrames } from './frame-joints.ts';
import type { Joint } from './joint.ts';
import type { JoineryFacts, JointPlan } from './joint-plan.ts';

/**
 * Joins the parts of a piece: says how each holds to its neighbours, lengthens what goes into a joint and cuts what
 * takes it. Parts come in as one sees them, from shoulder to shoulder, and go out as they are cut.
 */
export interface JoinedParts {
  readonly parts: readonly UnmarkedPart[];
  readonly joints: readonly Joint[];
}

/** What one kind of joinery asks for; several are put together by `joinParts`. */
export interface Joinery {
  readonly joints: readonly Joint[];
  /** By the id of the part. */
  readonly growth: readonly Growth[];
  readonly features: readonly Feature[];
}

export function joinParts(design: PieceDesign, parts: readonly UnmarkedPart[], shop: ShopOffer): JoinedParts {
  const facts = factsOf(design, parts, shop);
  const frames = joinFrames(design, parts);
  const asked = [...casePlans(design, parts, facts, frames.frames), ...drawerPlans(design.face, parts, facts)];
  const grownAsAsked = grownBy(parts, frames.growth, asked);
  const plans = stillTouching(asked, grownAsAsked);
  const grown = plans.length === asked.length ? grownAsAsked : grownBy(parts, frames.growth, plans);
  const byId = new Map(grown.map((part) => [part.id, part]));
  const back = backGrooves(design.carcase, grown);
  const cuts = plans.flatMap((plan) => plan.cut((part) => byId.get(part.id) ?? part));
  return {
    parts: withFeatures(grown, [
      ...cuts.filter(({ solid }) => isSolid(solid)),
      ...back.features,
      ...frames.cut(grown),
      ...baseCuts(design, grown),
    ]),
    joints: [...plans.map(({ joint }) => joint), ...back.joints, ...frames.joints],
  };
}

function grownBy(
  parts: readonly UnmarkedPart[],
  frames: readonly Growth[],
  plans: readonly JointPlan[],
): readonly UnmarkedPart[] {
  return grow(parts, [...frames, ...plans.flatMap(({ growth }) => growth)]);
}

/** A runner moves into its own joint, and may move out of reach of what just touched it. */
function stillTouching(plans: readonly JointPlan[], grown: readonly UnmarkedPart[]): readonly JointPlan[] {
  const byId = new Map(grown.map((part) => [part.id, part]));
  return plans.filter(({ joint }) => {
    const [held, holding] = [byId.get(joint.held)?.blank, byId.get(joint.holding)?.blank];
    if (held === undefined || holding === undefined) return true;
    return AXES.every((axis) => {
      const room = held[axis].end.length
        .min(holding[axis].end.length)
        .minus(held[axis].start.length.max(holding[axis].start.length));
      return axis === axisOf(joint.at) ? !room.isNegative() : room.isPositive();
    });
  });
}

/** Sizes that leave nothing to cut have their own finding. Boxes and bores are judged here; others are made sound. */
function isSolid(solid: Solid): boolean {
  return solid.kind === 'convex' || whyNotSolid(solid) === undefined;
}

function factsOf(design: PieceDesign, parts: readonly UnmarkedPart[], shop: ShopOffer): JoineryFacts {
  const { back } = design.carcase;
  const panel = back === undefined || back.fixing === 'applied' ? undefined : parts.find(({ role }) => role === 'back');
  const unit: LengthUnit = design.units.unit;
  return {
    unit,
    mark: Length.of(design.units.ruler, unit),
    ...(panel === undefined ? {} : { backFrom: panel.box.z.start.length }),
    mortiseSizes: () =>
      (shop.cutters ?? []).filter(({ form }) => form === 'chisel').map(({ narrowest }) => narrowest.length),
  };
}

function grow(parts: readonly UnmarkedPart[], growth: readonly Growth[]): readonly UnmarkedPart[] {
  const byPart = groupedBy(growth, ({ part }) => part);
  if (byPart.size === 0) return parts;
  return parts.map((part) => {
    const own = byPart.get(part.id);
    return own === undefined ? part : withBlank(part, blankOf(part.box, own));
  });
}
