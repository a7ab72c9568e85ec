import { type Finding, featuresMeet, wallTooThin } from '@fettle/findings';
import { groupAlike } from '../../grouping.ts';
import { type Feature, isHoleOfHardware } from '../../joinery/feature.ts';
import type { Length } from '../../length/length.ts';
import { Length as Lengths } from '../../length/length.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { meets, overlapOf, pairsNearer, thinnestGap, wallTo } from '../../solids/index.ts';
import { THINNEST_WALL } from '../../tables/joinery-limits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { isSameOrigin } from '../written-sizes.ts';
import { entryFace, featureWords, isClosed, isHousing, type JoinedCase, woodOf } from './joined-case.ts';

/**
 * Cuts of different joints that meet inside one part, or leave too little between them. Cuts of one joint belong
 * together, and housings cross on purpose: the groove of a back runs across dadoes.
 */
export function meetingFindings(one: JoinedCase): readonly Finding[] {
  const limit = limitIn(THINNEST_WALL, one.unit);
  const found = one.parts.flatMap((part) => pairsIn(part, limit).map((pair) => ({ part, ...pair })));
  const alike = groupAlike(found, ({ a, b, by }) => [a.origin, b.origin, a.kind, b.kind, by !== undefined]);
  return alike.map(([{ part, a, b, by, left }]) => {
    const [what, other] = [featureWords(a, one), featureWords(b, one)];
    const related = isSameOrigin(a.origin, b.origin)
      ? []
      : [{ role: 'other', values: { what: other }, origin: b.origin }];
    return by !== undefined
      ? featuresMeet.at(a.origin, { part: part.label, one: what, other, by }, { related })
      : wallTooThin.at(
          a.origin,
          { part: part.label, what, where: `between it and the ${other}`, left: left ?? limit, limit },
          { related },
        );
  });
}

interface Near {
  /** The closed one, or the later of two alike. */
  readonly a: Feature;
  readonly b: Feature;
  readonly by?: Length;
  readonly left?: Length;
}

function pairsIn(part: UnmarkedPart, limit: Length): readonly Near[] {
  const { features: all, frame } = part;
  // Rows of pin holes have checks of their own, that know how a row may be moved; so have the screws of hardware.
  const features = all.filter((feature) => feature.kind !== 'pin-hole' && !isHoleOfHardware(feature));
  if (features.length < 2 || !features.some((each) => isClosed(each) || isHousing(each))) return [];
  return pairsNearer(
    features.map(({ solid }) => solid),
    limit,
  ).flatMap(([i, j]): readonly Near[] => {
    const [one, other] = [features[i], features[j]];
    if (one === undefined || other === undefined || mayMeet(one, other, frame !== undefined)) return [];
    if (isOverOpenMortise(one, other, part) || isOverOpenMortise(other, one, part)) return [];
    const [a, b] = isClosed(other) ? [other, one] : [one, other];
    if (meets(a.solid, b.solid)) {
      const by = overlapOf(a.solid, b.solid)?.leastParting.by ?? Lengths.zero;
      return [{ a, b, by }];
    }
    // What opens into a housing is told where they meet; a wall is asked for only where glue or thread needs it.
    // The gain of a hinge is shallow and holds by its screws, which are asked after on their own.
    // Housings cut from both faces have the web between them to hold the part together.
    const needsWall = isClosed(a)
      ? a.kind !== 'gain' && b.kind !== 'gain'
      : areOpposed(a, b) && !comesOut(a, part) && !comesOut(b, part);
    if (!needsWall) return [];
    const gap = thinnestGap(a.solid, b.solid)?.wall;
    return gap !== undefined && gap.compare(limit) < 0 ? [{ a, b, left: gap }] : [];
  });
}

function mayMeet(one: Feature, other: Feature, isFramed: boolean): boolean {
  if (one.joint !== undefined && one.joint === other.joint) return true;
  // Hardware is laid out as a whole by its own rules.
  if (one.joint === undefined && other.joint === undefined) return true;
  const [closedOne, closedOther] = [isClosed(one), isClosed(other)];
  if (closedOne && closedOther) return false;
  if (closedOne || closedOther) {
    const housing = closedOne ? other : one;
    // Mortises of a frame lie in its grooves; whatever shoulders and notches take is outside of the part.
    const isOfFrame = housing.kind === 'groove' || (housing.kind === 'rabbet' && housing.joint === undefined);
    return !isHousing(housing) || (isFramed && isOfFrame);
  }
  return !(isHousing(one) && isHousing(other) && areOpposed(one, other));
}

/** A groove for a runner that leaves its side has a finding of its own. */
function comesOut({ kind, joint, runs, solid }: Feature, part: UnmarkedPart): boolean {
  if (kind !== 'groove' || joint !== undefined || runs !== 'z') return false;
  return (['from', 'to'] as const).some((end) => !wallTo({ axis: 'y', end }, solid, woodOf(part)).isPositive());
}

/** A leaf let into the end of a stile lies on the edge of the tenon that is flush with it: that is shaved, and holds. */
function isOverOpenMortise(gain: Feature, mortise: Feature, part: UnmarkedPart): boolean {
  if (gain.kind !== 'gain' || mortise.kind !== 'mortise' || part.frame === undefined) return false;
  return !wallTo(entryFace(gain), mortise.solid, woodOf(part)).isPositive();
}

/** Cut from two faces that look away from each other. */
function areOpposed(one: Feature, other: Feature): boolean {
  const [a, b] = [entryFace(one), entryFace(other)];
  return a.axis === b.axis && a.end !== b.end;
}
