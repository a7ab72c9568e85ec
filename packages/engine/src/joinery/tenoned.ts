import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { TenonJoin } from '../design/join-design.ts';
import type { Length } from '../length/length.ts';
import type { Interval } from '../solids/index.ts';
import { FRAME_GROOVE, TENON_EDGE_SHOULDER, usualMortiseDepth, usualTenonThickness } from '../tables/joinery-habits.ts';
import { TENON_SHORT, usual } from '../tables/trade-habits.ts';
import type { Feature } from './feature.ts';
import { shouldersBeside } from './housed.ts';
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
import { acrossOf, alongOf, boxAt, centred, inward, type Meeting, shared, sizeOf, wholeOf } from './meeting.ts';

/**
 * Tenons: a stub tenon goes into a groove that runs on past it, a tenon into a mortise of its own. Either is a little
 * short of the bottom, so that its shoulders close.
 */
export function tenoned(
  group: readonly [Meeting, ...Meeting[]],
  join: TenonJoin,
  facts: JoineryFacts,
  by: AskedBy,
): readonly JointPlan[] {
  const [first] = group;
  return group.map((meeting): JointPlan => {
    const short = usual(TENON_SHORT, facts.unit);
    const tenon = tenonOf(meeting, join, short, facts);
    return {
      joint: jointAt(meeting, join.kind, by, { kind: 'short', by: short }),
      growth: [growthInto(meeting, tenon.length, 'length of the tenon')],
      cut: (blank) => [
        ...(join.kind === 'stub-tenon'
          ? meeting === first
            ? [groove(meeting, tenon, blank, by)]
            : []
          : [mortise(meeting, tenon, by)]),
        ...shouldersBeside(meeting, tenon.across, tenon.length, blank, by, 'tenon-shoulder'),
        ...edgeShoulders(meeting, tenon, blank, by),
      ],
    };
  });
}

interface Tenon {
  readonly thickness: Figure;
  readonly length: Figure;
  readonly depth: Figure;
  readonly across: Interval;
  readonly along: Interval;
}

function tenonOf(meeting: Meeting, join: TenonJoin, short: Figure, facts: JoineryFacts): Tenon {
  const { held, holding, axis } = meeting;
  const thickness = join.thickness ?? tenonThickness(held.thickness, facts);
  const depth =
    join.length === undefined
      ? join.kind === 'stub-tenon'
        ? usual(FRAME_GROOVE, facts.unit)
        : usualMortiseDepth(holding.box[axis].size)
      : derive('depth of the mortise', [plus('length of the tenon', join.length), plus('the tenon is short', short)]);
  const length =
    join.length ??
    derive('length of the tenon', [
      plus(join.kind === 'stub-tenon' ? 'depth of the groove' : 'depth of the mortise', depth),
      less('the tenon is short', short),
    ]);
  const line = shared(meeting, alongOf(meeting));
  return {
    thickness,
    length,
    depth,
    across: centred(shared(meeting, acrossOf(meeting)), thickness.length),
    along: join.kind === 'stub-tenon' ? line : lessShoulders(line, usual(TENON_EDGE_SHOULDER, facts.unit).length),
  };
}

/** A member too narrow for shoulders at its edges goes without. */
function lessShoulders(line: Interval, shoulder: Length): Interval {
  if (sizeOf(line).compare(shoulder.times(4)) < 0) return line;
  return { from: line.from.plus(shoulder), to: line.to.minus(shoulder) };
}

/** A third of the stock, or the size next to it that the shop has a tool for: from memory, a tenon is cut to its tool. */
function tenonThickness(stock: Figure, facts: JoineryFacts): Figure {
  const third = usualTenonThickness(stock);
  const nearest = facts
    .mortiseSizes()
    .filter((size) => size.times(2).compare(stock.length) < 0)
    .reduce<Length | undefined>(
      (best, size) => (best === undefined || isNearer(size, best, third.length) ? size : best),
      undefined,
    );
  if (nearest === undefined || nearest.equals(third.length)) return third;
  return {
    length: nearest,
    reason: { kind: 'assumed', because: 'the tool of the shop that is nearest to a third of the stock' },
  };
}

function isNearer(one: Length, other: Length, to: Length): boolean {
  return one.minus(to).abs().compare(other.minus(to).abs()) < 0;
}

function mortise(meeting: Meeting, { thickness, depth, across, along }: Tenon, by: AskedBy): Feature {
  const solid = boxAt(meeting, inward(meeting, depth.length), across, along);
  return cutInHolding(meeting, { kind: 'mortise', solid, width: thickness, depth, runs: 'along' }, by);
}

/** From end to end of the member, as a saw or a router table cuts it. */
function groove(meeting: Meeting, { thickness, depth, across }: Tenon, blank: BlankOf, by: AskedBy): Feature {
  const whole = wholeOf(blank(meeting.holding).blank, alongOf(meeting));
  const solid = boxAt(meeting, inward(meeting, depth.length), across, whole);
  return cutInHolding(meeting, { kind: 'groove', solid, width: thickness, depth, runs: 'along' }, by);
}

function edgeShoulders(
  meeting: Meeting,
  { length, across, along }: Tenon,
  blank: BlankOf,
  by: AskedBy,
): readonly Feature[] {
  const whole = wholeOf(blank(meeting.held).blank, alongOf(meeting));
  const into = inward(meeting, length.length);
  return [
    { from: whole.from, to: along.from },
    { from: along.to, to: whole.to },
  ].flatMap((edge, index) =>
    sizeOf(edge).isPositive()
      ? [
          cutInHeld(
            meeting,
            { kind: 'tenon-shoulder', solid: boxAt(meeting, into, across, edge), depth: length, nth: index + 3 },
            by,
          ),
        ]
      : [],
  );
}
