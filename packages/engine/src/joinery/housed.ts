import type { Figure } from '../design/figure.ts';
import type { DadoJoin } from '../design/join-design.ts';
import type { Length } from '../length/length.ts';
import type { Interval } from '../solids/index.ts';
import { nothingLeft, usualDadoDepth } from '../tables/joinery-habits.ts';
import type { Feature } from './feature.ts';
import {
  type AskedBy,
  type BlankOf,
  cutInHeld,
  cutInHolding,
  growthInto,
  type JoineryFacts,
  type JointPlan,
  jointAt,
} from './joint-plan.ts';
import {
  acrossOf,
  alongOf,
  boxAt,
  centred,
  inward,
  type Meeting,
  runsAlong,
  shared,
  sizeOf,
  wholeOf,
} from './meeting.ts';

/**
 * Dadoes: an end goes into a cut across a face with its whole thickness or with a tongue; stopped, its front corner is
 * notched and closes the cut. The members of one frame lie in one cut, which is made for the first of them.
 */
export function housed(
  group: readonly [Meeting, ...Meeting[]],
  join: DadoJoin,
  others: OtherCuts,
  facts: JoineryFacts,
  by: AskedBy,
): readonly JointPlan[] {
  const [first] = group;
  const depth = join.depth ?? usualDadoDepth(first.holding.thickness, facts.mark);
  const line = group.map((meeting) => shared(meeting, alongOf(meeting))).reduce(around);
  const along = join.stopped === undefined ? line : stoppedAt(first, line, join.stopped.length);
  return group.map((meeting): JointPlan => {
    const fit = { kind: 'snug', by: nothingLeft() } as const;
    return {
      joint: jointAt(meeting, join.tongue === undefined ? 'dado' : 'tongue', by, fit),
      growth: [{ ...growthInto(meeting, depth, 'depth of the dado'), shifts: isRunner(meeting) }],
      cut: (blank) => [
        ...(meeting === first ? [dado(meeting, join, depth, along, by)] : []),
        ...shoulders(meeting, join, depth, blank, by),
        ...notch(meeting, depth, along, others(meeting), blank, by),
      ],
    };
  });
}

/** Where the same end of a part goes into others, along the line that it meets them in. */
export type OtherCuts = (meeting: Meeting) => readonly Interval[];

/** A runner keeps its width and moves along: the rails are what the frame is wide by. */
function isRunner({ held, axis }: Meeting): boolean {
  return held.role === 'divider-rail' && held.grain !== 'none' && !runsAlong(held, axis);
}

function around(one: Interval, other: Interval): Interval {
  return { from: one.from.min(other.from), to: one.to.max(other.to) };
}

/** Never beyond its other end: a cut of no length has its own finding. */
function stoppedAt({ holding, ...meeting }: Meeting, line: Interval, stop: Length): Interval {
  const from = holding.box[alongOf({ holding, ...meeting })].start.length.plus(stop);
  return { from: line.from.max(from).min(line.to), to: line.to };
}

function dado(meeting: Meeting, join: DadoJoin, depth: Figure, along: Interval, by: AskedBy): Feature {
  const across = acrossOf(meeting);
  const taken = shared(meeting, across);
  const width = join.tongue ?? meeting.held.thickness;
  const place = join.tongue === undefined ? taken : centred(taken, join.tongue.length);
  const wood = wholeOf(meeting.holding.blank, across);
  // Open at an edge it is a rabbet, whatever one calls the joint.
  const isOpen = place.from.compare(wood.from) <= 0 || place.to.compare(wood.to) >= 0;
  const solid = boxAt(meeting, inward(meeting, depth.length), place, along);
  return cutInHolding(meeting, { kind: isOpen ? 'rabbet' : 'dado', solid, width, depth, runs: 'along' }, by);
}

function shoulders(
  meeting: Meeting,
  { tongue }: DadoJoin,
  depth: Figure,
  blank: BlankOf,
  by: AskedBy,
): readonly Feature[] {
  if (tongue === undefined) return [];
  const whole = wholeOf(meeting.held.box, acrossOf(meeting));
  return shouldersBeside(meeting, centred(whole, tongue.length), depth, blank, by, 'tongue-shoulder');
}

/** What is cut from both faces of an end so that the stretch `kept` across it stays. */
export function shouldersBeside(
  meeting: Meeting,
  kept: Interval,
  depth: Figure,
  blank: BlankOf,
  by: AskedBy,
  kind: 'tongue-shoulder' | 'tenon-shoulder',
): readonly Feature[] {
  const held = blank(meeting.held);
  const whole = wholeOf(held.blank, acrossOf(meeting));
  const along = wholeOf(held.blank, alongOf(meeting));
  const into = inward(meeting, depth.length);
  return [
    { from: whole.from, to: kept.from },
    { from: kept.to, to: whole.to },
  ].flatMap((across, index) =>
    sizeOf(across).isPositive()
      ? [
          cutInHeld(
            meeting,
            { kind, solid: boxAt(meeting, into, across, along), depth, nth: index + 1, runs: 'along' },
            by,
          ),
        ]
      : [],
  );
}

/**
 * What goes in has no wood where no cut takes it: before its cut, where that begins farther back, and behind it. `others`:
 * where the same end goes into other parts, such as a partition into two stretchers.
 */
export function notch(
  meeting: Meeting,
  depth: Figure,
  along: Interval,
  others: readonly Interval[],
  blank: BlankOf,
  by: AskedBy,
): readonly Feature[] {
  const held = blank(meeting.held);
  const own = wholeOf(held.blank, alongOf(meeting));
  if (!sizeOf(along).isPositive()) return [];
  const from = others.reduce(
    (most, other) => (other.to.compare(along.from) <= 0 ? most.max(other.to) : most),
    own.from,
  );
  const isLast = !others.some((other) => other.from.compare(along.to) >= 0);
  const gaps = [
    { from, to: along.from.min(own.to) },
    ...(isLast ? [{ from: along.to.max(own.from), to: own.to }] : []),
  ].filter((gap) => sizeOf(gap).isPositive());
  const across = wholeOf(held.blank, acrossOf(meeting));
  const into = inward(meeting, depth.length);
  return gaps.map((gap, index) =>
    cutInHeld(
      meeting,
      { kind: 'notch', solid: boxAt(meeting, into, across, gap), depth, nth: index + 1, through: true, runs: 'across' },
      by,
    ),
  );
}
