import type { NailersDesign } from '../design/construction-design.ts';
import { derive, plus } from '../design/derive.ts';
import type { CarcaseDesign, PieceDesign } from '../design/design.ts';
import type { JoinDesign } from '../design/join-design.ts';
import { groupedBy } from '../grouping.ts';
import { Rational } from '../length/rational.ts';
import type { PartRole } from '../parts/part.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { dovetailed, isFrontRail } from './dovetailed.ts';
import { dowelled, looseTenoned, screwed } from './fastened.ts';
import { housed, type OtherCuts } from './housed.ts';
import { type AskedBy, type JoineryFacts, type JointPlan, jointAt } from './joint-plan.ts';
import { alongOf, areOfOneFrame, type Meeting, meetingsAt, runsAlong, shared } from './meeting.ts';
import { mitred } from './mitred.ts';
import { originKey, type SaidJoins, saidJoins } from './said-joins.ts';
import { tenoned } from './tenoned.ts';
import { touchingParts } from './touching-parts.ts';

/**
 * The joints of the case, its frames and its plinth: wherever the end or edge of one part meets the face or edge of
 * another. What is said for the case holds for its panels; a statement may say otherwise for its own part.
 */

const half = Rational.of(1, 2);
const quarter = Rational.of(1, 4);

/** What stands in its place for good. Fronts and drawers move; shelves on pins do not touch what is beside them. */
const fixed: ReadonlySet<PartRole> = new Set<PartRole>([
  'top',
  'plinth',
  'side',
  'bottom',
  'stretcher',
  'partition',
  'back',
  'frame-stile',
  'frame-rail',
  'divider-rail',
  'divider-panel',
  'shelf',
  'stile',
  'rail',
  'nailer',
  'foot',
  'foot-rail',
]);
/** What the words for the whole case speak of. */
const panels: ReadonlySet<PartRole> = new Set<PartRole>([
  'top',
  'side',
  'bottom',
  'stretcher',
  'partition',
  'divider-rail',
  'divider-panel',
  'shelf',
  'stile',
  'rail',
]);

/** `framed`: frames whose members are joined already. */
export function casePlans(
  design: PieceDesign,
  parts: readonly UnmarkedPart[],
  facts: JoineryFacts,
  framed: ReadonlySet<string>,
): readonly JointPlan[] {
  const said = saidJoins(design);
  const groups = new Map<string, { readonly asked: Asked; readonly meetings: [Meeting, ...Meeting[]] }>();
  for (const meeting of touchingParts(parts.filter(({ role }) => fixed.has(role))).flatMap(meetingsAt)) {
    const { held, holding } = meeting;
    if (held.frame !== undefined && held.frame === holding.frame && framed.has(held.frame)) continue;
    const asked = askedAt(meeting, design.carcase, said);
    const key = `${meeting.holding.id} ${meeting.at} ${groupOf(meeting)} ${asked.join?.kind ?? ''}`;
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { asked, meetings: [meeting] });
    else known.meetings.push(meeting);
  }
  const all = [...groups.values()];
  const others = otherCuts(all.flatMap(({ asked, meetings }) => (isCutIn(asked.join) ? meetings : [])));
  return all.flatMap(({ asked, meetings }) => plansFor(asked, meetings, others, facts));
}

function isCutIn(join: JoinDesign | undefined): boolean {
  return join?.kind === 'dado' || join?.kind === 'sliding-dovetail';
}

function otherCuts(meetings: readonly Meeting[]): OtherCuts {
  const byEnd = groupedBy(meetings, ({ held, at }) => `${held.id} ${at}`);
  return (meeting) =>
    (byEnd.get(`${meeting.held.id} ${meeting.at}`) ?? [])
      .filter((other) => other !== meeting)
      .map((other) => shared(other, alongOf(meeting)));
}

/** The members of a frame share one dado in a panel, and one groove in a rail. */
function groupOf({ held, holding }: Meeting): string {
  return areOfOneFrame(held, holding) && held.frame === undefined ? held.id : (held.frame ?? held.id);
}

interface Asked {
  /** Absent where the two merely meet and nothing is known. */
  readonly join?: JoinDesign;
  readonly by: AskedBy;
}

function askedAt(meeting: Meeting, carcase: CarcaseDesign, said: SaidJoins): Asked {
  const { held, holding, axis } = meeting;
  const nothing: Asked = { by: { origin: held.origin, isAssumed: true } };
  const from = (join: JoinDesign | undefined): Asked =>
    join === undefined ? nothing : { join, by: { origin: join.origin, isAssumed: false } };
  if (held.frame !== undefined && areOfOneFrame(held, holding)) {
    return { join: { kind: 'stub-tenon', origin: held.origin }, by: { origin: held.origin, isAssumed: true } };
  }
  if (areOfOneFrame(held, holding)) return from(carcase.frame?.join);
  if (holding.role === 'foot') return from(carcase.feet?.join);
  // Its edges merely lie against what is over and under it.
  if (held.role === 'nailer') return axis === 'x' ? from(carcase.nailers && nailerJoin(carcase.nailers)) : nothing;
  // The edges of the case meet the face of a back that lies on them.
  if (holding.role === 'back') return from(carcase.back?.join);
  if (held.role === 'plinth' && holding.role === 'plinth') return from(carcase.plinth?.join);
  if (!panels.has(held.role) || !panels.has(holding.role)) return nothing;
  const own = said.get(originKey(held.origin));
  if (own !== undefined) return from(own);
  // A side that ends at the top or stands on the bottom is joined as they say: they name the joint of both their ends.
  const others = held.role === 'side' ? said.get(originKey(holding.origin)) : undefined;
  if (others !== undefined) return from(others);
  return takesCaseJoint(meeting, carcase) ? from(carcase.join) : nothing;
}

/** Two fasteners keep a strip from turning: where nothing is said they stand a quarter of its width from its edges. */
function nailerJoin({ join, width }: NailersDesign): JoinDesign | undefined {
  if (join?.kind !== 'dowel' && join?.kind !== 'butt' && join?.kind !== 'loose-tenon') return join;
  return {
    first: derive('a quarter of the strip, so that two hold it', [plus('width of the strip', width, quarter)]),
    apart: derive('half of the strip', [plus('width of the strip', width, half)]),
    ...join,
  };
}

/** A top that lies over the sides is screwed from below: it takes nothing in. */
function takesCaseJoint({ holding }: Meeting, carcase: CarcaseDesign): boolean {
  return holding.role !== 'top' || carcase.top?.placement === 'between';
}

function plansFor(
  { join, by }: Asked,
  meetings: [Meeting, ...Meeting[]],
  others: OtherCuts,
  facts: JoineryFacts,
): readonly JointPlan[] {
  const butt = (meeting: Meeting): JointPlan => ({ joint: jointAt(meeting, 'butt', by), growth: [], cut: () => [] });
  if (join === undefined) return meetings.map(butt);
  switch (join.kind) {
    case 'dado':
      return housed(meetings, join, others, facts, by);
    case 'sliding-dovetail':
      return meetings.map(
        (meeting) =>
          (isFrontRail(meeting, meetings) ? dovetailed(meeting, join, others, facts, by) : undefined) ?? butt(meeting),
      );
    case 'mortise-and-tenon':
    case 'stub-tenon':
      return tenoned(meetings, join, facts, by);
    case 'mitre':
      return meetings.map((meeting) => mitred(meeting, by) ?? butt(meeting));
    case 'dowel':
      return meetings.map((meeting) => (isEnd(meeting) ? dowelled(meeting, join, facts, by) : butt(meeting)));
    case 'loose-tenon':
      return meetings.map((meeting) => (isEnd(meeting) ? looseTenoned(meeting, join, facts, by) : butt(meeting)));
    case 'butt':
      return meetings.map((meeting) =>
        join.screw !== undefined && isEnd(meeting) ? screwed(meeting, join, facts, by) : butt(meeting),
      );
    default: {
      const unknown: never = join;
      return unknown;
    }
  }
}

/** The rails of a frame are fastened at their ends; its runners are held by the rails. */
function isEnd({ held, axis }: Meeting): boolean {
  return held.frame === undefined || runsAlong(held, axis);
}
