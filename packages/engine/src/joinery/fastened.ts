import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { ButtJoin, DowelJoin, LooseTenonJoin } from '../design/join-design.ts';
import type { Price } from '../design/shop.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { slotAlong } from '../solids/index.ts';
import {
  DOWEL_DIAMETER,
  DOWEL_LENGTH,
  DOWEL_SHORT,
  FASTENERS_APART,
  FASTENERS_FIRST,
  LOOSE_TENON_LENGTH,
  LOOSE_TENON_THICKNESS,
  LOOSE_TENON_WIDTH,
  SCREW_CLEARANCE,
  SCREW_LENGTH,
  SCREW_PILOT,
  usualDowelInFace,
} from '../tables/joinery-habits.ts';
import { TENON_SHORT, usual } from '../tables/trade-habits.ts';
import type { Feature } from './feature.ts';
import type { Fasteners } from './joint.ts';
import { type AskedBy, cutInHeld, cutInHolding, type JoineryFacts, type JointPlan, jointAt } from './joint-plan.ts';
import { acrossOf, alongOf, holeAt, inward, type Meeting, middleOf, outward, placeAt, shared } from './meeting.ts';

/**
 * What joins two parts without either growing: dowels, loose tenons, screws. They lie in a row along the middle of the
 * thickness of what meets the face.
 */

const half = Rational.of(1, 2);
/** No board takes more, and a slip of the unit must not fill the memory. */
const MOST_IN_A_ROW = 100;

/**
 * Where the middles of a row lie along the line of the meeting: the first so far from the edge, the others apart, none
 * nearer to the far end than the first to the near one. Where not even two go in, one lies in the middle.
 */
function middlesOf(meeting: Meeting, join: { readonly first?: Figure; readonly apart?: Figure }, facts: JoineryFacts) {
  const along = alongOf(meeting);
  const line = shared(meeting, along);
  const end = along === 'z' && facts.backFrom !== undefined ? line.to.min(facts.backFrom) : line.to;
  const first = (join.first ?? usual(FASTENERS_FIRST, facts.unit)).length;
  const apart = (join.apart ?? usual(FASTENERS_APART, facts.unit)).length;
  const last = end.minus(first);
  const start = line.from.plus(first);
  if (join.first === undefined && start.compare(last) >= 0) return [middleOf({ from: line.from, to: end })];
  const middles = [start];
  while (apart.isPositive() && middles.length < MOST_IN_A_ROW) {
    const next = (middles.at(-1) as Length).plus(apart);
    if (next.compare(last) > 0) break;
    middles.push(next);
  }
  return middles;
}

/** What is not named has no entry. */
function bought(
  entry: { readonly name: string; readonly price?: Price } | undefined,
): Pick<Fasteners, 'entry' | 'price'> {
  return {
    ...(entry === undefined || entry.name === '' ? {} : { entry: entry.name }),
    ...(entry?.price === undefined ? {} : { price: entry.price }),
  };
}

export function dowelled(meeting: Meeting, join: DowelJoin, facts: JoineryFacts, by: AskedBy): JointPlan {
  const diameter = join.dowel?.diameter ?? usual(DOWEL_DIAMETER, facts.unit);
  const length = join.dowel?.length ?? usual(DOWEL_LENGTH, facts.unit);
  const short = usual(DOWEL_SHORT, facts.unit);
  const face = meeting.holding.box[meeting.axis].size;
  // In the edge of a member there is wood enough for half of it.
  const inFace =
    meeting.holding.thin === meeting.axis
      ? usualDowelInFace(face, facts.mark)
      : derive('half of the dowel', [plus('length of the dowel', length, half), plus('room for glue', short, half)]);
  const inEnd = derive('what is left of the dowel', [
    plus('length of the dowel', length),
    plus('the holes are deeper', short),
    less('depth in the face', inFace),
  ]);
  const across = middleOf(shared(meeting, acrossOf(meeting)));
  const middles = middlesOf(meeting, join, facts);
  return {
    joint: {
      ...jointAt(meeting, 'dowel', by, { kind: 'short', by: short }),
      fasteners: { what: 'dowel', ...bought(join.dowel), count: middles.length, length, thickness: diameter },
    },
    growth: [],
    cut: () =>
      middles.flatMap((along, index) => {
        const hole = { kind: 'dowel-hole', width: diameter, nth: index + 1 } as const;
        const bore = (into: ReturnType<typeof inward>) => holeAt(meeting, into, across, along, diameter.length);
        return [
          ...deep(inFace, (depth) =>
            cutInHolding(meeting, { ...hole, solid: bore(inward(meeting, depth)), depth: inFace }, by),
          ),
          ...deep(inEnd, (depth) =>
            cutInHeld(meeting, { ...hole, solid: bore(outward(meeting, depth)), depth: inEnd }, by),
          ),
        ];
      }),
  };
}

/** Nothing is cut where the sizes leave nothing to cut. */
function deep(depth: Figure, cut: (depth: Length) => Feature): readonly Feature[] {
  return depth.length.isPositive() ? [cut(depth.length)] : [];
}

/** A slot with round ends in either part, half of the tenon in each. */
export function looseTenoned(meeting: Meeting, join: LooseTenonJoin, facts: JoineryFacts, by: AskedBy): JointPlan {
  const thickness = join.tenon?.thickness ?? usual(LOOSE_TENON_THICKNESS, facts.unit);
  const width = join.tenon?.width ?? usual(LOOSE_TENON_WIDTH, facts.unit);
  const length = join.tenon?.length ?? usual(LOOSE_TENON_LENGTH, facts.unit);
  const short = usual(TENON_SHORT, facts.unit);
  const face = meeting.holding.box[meeting.axis].size;
  const inFace =
    meeting.holding.thin === meeting.axis
      ? usualDowelInFace(face, facts.mark)
      : derive('half of the tenon', [plus('length of the tenon', length, half), plus('the tenon is short', short)]);
  const inEnd = derive('what is left of the tenon', [
    plus('length of the tenon', length),
    plus('the tenon is short at each end', short, 2),
    less('depth in the face', inFace),
  ]);
  const across = middleOf(shared(meeting, acrossOf(meeting)));
  const middles = middlesOf(meeting, join, facts);
  const radius = thickness.length.dividedBy(2);
  const reach = width.length.minus(thickness.length).dividedBy(2);
  return {
    joint: {
      ...jointAt(meeting, 'loose-tenon', by, { kind: 'short', by: short }),
      fasteners: { what: 'loose-tenon', ...bought(join.tenon), count: middles.length, length, thickness },
    },
    growth: [],
    cut: () =>
      middles.flatMap((along, index) => {
        const hole = { kind: 'mortise', width: thickness, nth: index + 1, runs: 'along' } as const;
        const slot = (into: ReturnType<typeof inward>) =>
          slotAlong(
            meeting.axis,
            into,
            placeAt(meeting, across, along.minus(reach)),
            placeAt(meeting, across, along.plus(reach)),
            radius,
          );
        return [
          ...deep(inFace, (depth) =>
            cutInHolding(meeting, { ...hole, solid: slot(inward(meeting, depth)), depth: inFace }, by),
          ),
          ...deep(inEnd, (depth) =>
            cutInHeld(meeting, { ...hole, solid: slot(outward(meeting, depth)), depth: inEnd }, by),
          ),
        ];
      }),
  };
}

/** Through the face into the end: a clearance hole through the one, a pilot hole as deep as the thread bites in the other. */
export function screwed(meeting: Meeting, join: ButtJoin, facts: JoineryFacts, by: AskedBy): JointPlan {
  const length = join.screw?.length ?? usual(SCREW_LENGTH, facts.unit);
  const clearance = join.screw?.clearance ?? usual(SCREW_CLEARANCE, facts.unit);
  const pilot = join.screw?.pilot ?? usual(SCREW_PILOT, facts.unit);
  const face = meeting.holding.box[meeting.axis].size;
  const bite = derive('what bites in the end', [
    plus('length of the screw', length),
    less('thickness of what it goes through', face),
  ]);
  const across = middleOf(shared(meeting, acrossOf(meeting)));
  const middles = middlesOf(meeting, join, facts);
  return {
    joint: {
      ...jointAt(meeting, 'butt', by),
      fasteners: { what: 'screw', ...bought(join.screw), count: middles.length, length, thickness: clearance },
    },
    growth: [],
    cut: () =>
      middles.flatMap((along, index) => {
        const nth = index + 1;
        const through = holeAt(meeting, inward(meeting, face.length), across, along, clearance.length);
        return [
          cutInHolding(
            meeting,
            { kind: 'screw-hole', solid: through, width: clearance, depth: face, nth, through: true },
            by,
          ),
          ...deep(bite, (depth) =>
            cutInHeld(
              meeting,
              {
                kind: 'screw-hole',
                solid: holeAt(meeting, outward(meeting, depth), across, along, pilot.length),
                width: pilot,
                depth: bite,
                nth,
              },
              by,
            ),
          ),
        ];
      }),
  };
}
