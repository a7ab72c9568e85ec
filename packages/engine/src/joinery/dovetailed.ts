import type { SlidingDovetailJoin } from '../design/join-design.ts';
import { dovetailOf, type Interval, wedgeOf } from '../solids/index.ts';
import { type Axis, axesAcross, type End } from '../solids/solid.ts';
import { dovetailSlope, nothingLeft, usualDadoDepth } from '../tables/joinery-habits.ts';
import type { Feature } from './feature.ts';
import { notch, type OtherCuts } from './housed.ts';
import {
  type AskedBy,
  cutInHeld,
  cutInHolding,
  growthInto,
  type JoineryFacts,
  type JointPlan,
  jointAt,
} from './joint-plan.ts';
import { acrossOf, alongOf, boxAt, centred, inward, type Meeting, shared, sizeOf, wholeOf } from './meeting.ts';

/**
 * A sliding dovetail: an end as wide as the wood is thick at its tip and narrower at its shoulder slides from the front
 * into a way of the same shape, and cannot be pulled out endways. Undefined where so deep a tail would have no wood left at
 * its shoulder.
 */
export function dovetailed(
  meeting: Meeting,
  join: SlidingDovetailJoin,
  others: OtherCuts,
  facts: JoineryFacts,
  by: AskedBy,
): JointPlan | undefined {
  const { held, holding, axis, at } = meeting;
  const depth = join.depth ?? usualDadoDepth(holding.thickness, facts.mark);
  const across = acrossOf(meeting);
  const along = alongOf(meeting);
  const flare = depth.length.dividedBy(dovetailSlope(held.stock?.species ?? held.stock?.name));
  const wide = shared(meeting, across);
  const narrow = centred(wide, sizeOf(wide).minus(flare.times(2)));
  if (!sizeOf(narrow).isPositive() || !flare.isPositive()) return undefined;
  const into = inward(meeting, depth.length);
  const [face, tip] = at.startsWith('+') ? [into.to, into.from] : [into.from, into.to];
  // It slides in from the front, however far behind the front edge the rail ends.
  const line = shared(meeting, along);
  const way: Interval = { from: line.from.min(holding.box[along].start.length), to: line.to };
  const socket = dovetailOf({
    axis: along,
    along: way,
    across,
    middle: narrow.from.plus(narrow.to).dividedBy(2),
    narrow: { at: face, width: sizeOf(narrow) },
    wide: { at: tip, width: sizeOf(wide) },
  });
  return {
    joint: jointAt(meeting, 'sliding-dovetail', by, { kind: 'snug', by: nothingLeft() }),
    growth: [growthInto(meeting, depth, 'depth of the dovetail')],
    cut: (blank): readonly Feature[] => [
      ...notch(meeting, depth, way, others(meeting), blank, by),
      cutInHolding(meeting, { kind: 'socket', solid: socket, width: held.thickness, depth, runs: 'along' }, by),
      ...(
        [
          ['from', { from: wide.from, to: narrow.from }],
          ['to', { from: narrow.to, to: wide.to }],
        ] as const
      ).map(([side, taken], index) => {
        // The cheek is widest at the shoulder and runs out at the tip.
        const shoulder: End = at.startsWith('+') ? 'to' : 'from';
        const ends = { [axis]: shoulder, [across]: side } as Record<Axis, End>;
        const [u, v] = axesAcross(along);
        const cheek = boxAt(meeting, into, taken, wholeOf(blank(held).blank, along));
        return cutInHeld(
          meeting,
          {
            kind: 'tail-cheek',
            solid: wedgeOf(cheek, along, [ends[u], ends[v]]),
            depth,
            nth: index + 1,
            runs: 'along',
          },
          by,
        );
      }),
    ],
  };
}

/** Of the members of a frame that meet one panel, the rail nearest to the front. */
export function isFrontRail({ held, axis }: Meeting, group: readonly Meeting[]): boolean {
  const runs = (one: Meeting): boolean => one.held.frame === undefined || one.held.grain === axis;
  const front = group
    .filter(runs)
    .reduce<Meeting | undefined>(
      (best, one) =>
        best === undefined || one.held.box.z.start.length.compare(best.held.box.z.start.length) < 0 ? one : best,
      undefined,
    );
  return front?.held === held;
}
