import { type Axis, axesAcross, type End, type Interval, wedgeOf } from '../solids/index.ts';
import type { Feature } from './feature.ts';
import { type AskedBy, cutInHeld, cutInHolding, growthInto, type JointPlan, jointAt } from './joint-plan.ts';
import { acrossOf, alongOf, areOfOneFrame, boxAt, inward, type Meeting, shared, wholeOf } from './meeting.ts';

/**
 * Mitres: both parts run to the outer corner, and each loses the half of it that the other keeps. Undefined where the
 * two do not meet at a corner.
 */
export function mitred(meeting: Meeting, by: AskedBy): JointPlan | undefined {
  const { held, holding, axis, at } = meeting;
  // In a frame the mitre shows on its face; elsewhere it shows at the edge, and what turns the corner is the thickness.
  const line: Axis = areOfOneFrame(held, holding) ? acrossOf(meeting) : alongOf(meeting);
  const turning: Axis = line === acrossOf(meeting) ? alongOf(meeting) : acrossOf(meeting);
  const outer = outerEnd(wholeOf(held.box, turning), wholeOf(holding.box, turning));
  if (outer === undefined) return undefined;
  const thickness = holding.box[axis].size;
  const corner = boxAt(
    meeting,
    inward(meeting, thickness.length),
    shared(meeting, acrossOf(meeting)),
    shared(meeting, alongOf(meeting)),
  );
  const inner: End = at.startsWith('+') ? 'to' : 'from';
  const wedge = (intoHolding: End, turned: End) => {
    const ends = { [axis]: intoHolding, [turning]: turned } as Record<Axis, End>;
    const [u, v] = axesAcross(line);
    return wedgeOf(corner, line, [ends[u], ends[v]]);
  };
  const cut = { kind: 'mitre', depth: thickness, through: true, runs: 'along' } as const;
  return {
    joint: jointAt(meeting, 'mitre', by),
    growth: [growthInto(meeting, thickness, 'to the outer corner of the mitre')],
    cut: (): readonly Feature[] => [
      cutInHolding(meeting, { ...cut, solid: wedge(inner, outer) }, by),
      cutInHeld(meeting, { ...cut, solid: wedge(otherEnd(inner), otherEnd(outer)) }, by),
    ],
  };
}

/** The end at which both stop. */
function outerEnd(held: Interval, holding: Interval): End | undefined {
  if (held.from.equals(holding.from)) return 'from';
  return held.to.equals(holding.to) ? 'to' : undefined;
}

function otherEnd(end: End): End {
  return end === 'from' ? 'to' : 'from';
}
