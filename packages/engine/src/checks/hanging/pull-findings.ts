import {
  type Finding,
  type Mend,
  pullOffFront,
  pullOffStile,
  pullRecessTooDeep,
  pullScrewTooLong,
  pullScrewTooShort,
  smallPullOnLongBlank,
} from '@fettle/findings';
import { type Group, groupAlike } from '../../grouping.ts';
import { type PullPlan, planPulls } from '../../hardware/pull-plans.ts';
import { halfExtents, seatsOf } from '../../hardware/pull-seats.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { exactSource } from '../../length/trade-formats.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { LEAST_BEFORE_CUP, LEAST_THREAD, LEAST_TO_HOLD } from '../../tables/hanging-habits.ts';
import { isMetric, limitIn } from '../../tables/trade-limits.ts';
import { whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt } from '../written-sizes.ts';

/** Pulls whose screws do not suit the front, and pulls that do not lie on it. One finding for all fronts alike. */
export function pullFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const { unit } = one.layout;
  const plans = planPulls(one.face.design, one.layout, one.face.root, one.parts);
  const by = (plan: PullPlan, trouble: object | undefined) => (trouble === undefined ? [] : [{ plan, ...trouble }]);
  const beside = plans.flatMap((plan) => by(plan, offStile(plan, one.parts)) as Beside[]);
  // Where a pull is not on its stile, its screws are not right either.
  const lost = new Set(beside.map(({ plan }) => plan));
  const onFrames = plans.filter((plan) => !lost.has(plan));
  return [
    ...alike(beside.filter(({ plan }) => offFront(plan) === undefined)).map(besideFinding),
    ...alike(onFrames.flatMap((plan) => by(plan, screwTrouble(plan, unit)) as Screwed[])).map((group) =>
      screwFinding(group, onFrames, unit),
    ),
    ...alike(plans.flatMap((plan) => by(plan, offFront(plan)) as Off[])).map(offFinding),
    ...alike(plans.flatMap((plan) => by(plan, recessTrouble(plan, unit)) as Recessed[])).map(recessFinding),
    ...groupAlike(
      plans.filter(({ pulls: { entry } }) => entry.madeOf !== undefined),
      ({ pulls: { entry } }) => [entry.name],
    ).flatMap((group) => blankFinding(group, unit)),
  ];
}

/** Once for each entry, where it is first used. */
function blankFinding(group: Group<PullPlan>, unit: LengthUnit): readonly Finding[] {
  const [{ pulls }] = group;
  const { entry, entryOrigin } = pulls;
  const [size, limit] = [(entry.width ?? entry.height)?.length, limitIn(LEAST_TO_HOLD, unit)];
  if (entry.madeOf === undefined || size === undefined || size.compare(limit) >= 0) return [];
  const count = group.reduce((sum, { middles }) => sum + middles.length, 0);
  return [
    smallPullOnLongBlank.at(
      entryOrigin,
      { pull: entry.name, stock: entry.madeOf, size, limit, count },
      { related: [{ role: 'pull', values: { pull: entry.name }, origin: entry.origin }] },
    ),
  ];
}

type Screwed = {
  readonly plan: PullPlan;
  readonly screw: Length;
  readonly through: Length;
  readonly limit: Length;
  readonly isShort: boolean;
};
type Off = { readonly plan: PullPlan; readonly by: Length; readonly edge: Edge };
type Beside = {
  readonly plan: PullPlan;
  readonly on: 'panel' | 'pane';
  readonly thickness: Length;
  readonly reach: 'whole' | 'part';
};
type Recessed = { readonly plan: PullPlan; readonly depth: Length; readonly left: Length; readonly limit: Length };

/** The same figures in the same statement; the first that is written stands for all. */
function alike<Thing extends { readonly plan: PullPlan }>(things: readonly Thing[]): readonly Group<Thing>[] {
  return groupAlike(things, ({ plan, ...figures }) => [plan.pulls.entryOrigin, figures]);
}

/** Other fronts with the same trouble, each cell once. */
function also(group: Group<{ readonly plan: PullPlan }>) {
  const [first, ...others] = group;
  const seen = new Set([first.plan.cell]);
  return others.flatMap(({ plan: { cell, group: around } }) => {
    if (seen.has(cell)) return [];
    seen.add(cell);
    return [{ role: 'also', values: whoIs(cell, around), origin: cell.origin }];
  });
}

function facts({ cell, group, pulls }: PullPlan) {
  return { ...whoIs(cell, group), pull: pulls.entry.name };
}

function screwTrouble({ pulls, through, thread }: PullPlan, unit: LengthUnit): Omit<Screwed, 'plan'> | undefined {
  const screw = (pulls.screwLength ?? pulls.entry.screwLength)?.length;
  if (screw === undefined || through === undefined) return undefined;
  const least = through.length.plus(limitIn(LEAST_THREAD, unit).min(thread.length));
  const most = through.length.plus(thread.length);
  if (screw.compare(least) < 0) return { screw, through: through.length, limit: least, isShort: true };
  return screw.compare(most) > 0 ? { screw, through: through.length, limit: most, isShort: false } : undefined;
}

function screwFinding(group: Group<Screwed>, plans: readonly PullPlan[], unit: LengthUnit): Finding {
  const [{ plan, screw, through, limit, isShort }] = group;
  const kind = isShort ? pullScrewTooShort : pullScrewTooLong;
  const at = plan.pulls.screwLength === undefined ? undefined : givenAt(plan.pulls.screwLength);
  return kind.at(
    at ?? plan.pulls.entryOrigin,
    { ...facts(plan), screw, through, limit, difference: limit.minus(screw).abs() },
    {
      related: [
        { role: 'pull', values: { pull: plan.pulls.entry.name }, origin: plan.pulls.entry.origin },
        ...also(group),
      ],
      mends: screwMends(plan, plans, unit),
    },
  );
}

/** Screws that suit every front of the statement: the longest that are sold in steps of 1/8" or 5 mm, else what just holds. */
function screwMends(plan: PullPlan, plans: readonly PullPlan[], unit: LengthUnit): readonly Mend[] {
  const same = plans.filter(({ pulls }) => pulls === plan.pulls);
  const wanted = same.flatMap(({ through, thread }) =>
    through === undefined
      ? []
      : [
          {
            least: through.length.plus(limitIn(LEAST_THREAD, unit).min(thread.length)),
            most: through.length.plus(thread.length),
          },
        ],
  );
  const most = wanted.reduce<Length | undefined>((less, { most: each }) => less?.min(each) ?? each, undefined);
  const least = wanted.reduce((more, { least: each }) => more.max(each), Length.zero);
  if (most === undefined || least.compare(most) > 0) return [];
  const step = isMetric(unit) ? Length.millimetres(5) : Length.inches(1, 8);
  const sold = step.times(most.ratioTo(step).floor());
  const to = sold.compare(least) < 0 ? least : sold;
  const at = givenAt(plan.pulls.screwLength);
  return [
    {
      how: 'screws',
      values: { size: to },
      changes:
        at === undefined
          ? [
              {
                kind: 'insert-words',
                after: plan.pulls.entryOrigin,
                words: `, screws ${exactSource(to, unit)} long`,
              },
            ]
          : [{ kind: 'set-length', at, to }],
    },
  ];
}

type Edge = 'left' | 'right' | 'upper' | 'lower';

/** The edge of its front that a pull reaches farthest beyond, and by how much; a shared one lies over the gap. */
function offFront(plan: PullPlan): Omit<Off, 'plan'> | undefined {
  const { fronts, middles } = plan;
  const [front, second] = fronts;
  if (front === undefined) return undefined;
  const { across, up } = halfExtents(plan);
  const [halfAcross, halfUp] = [across?.length ?? Length.zero, up?.length ?? Length.zero];
  const height = front.at.y.size.length;
  const width = front.at.x.size.length;
  const beyond = middles.flatMap((middle): Omit<Off, 'plan'>[] => [
    ...(second !== undefined
      ? []
      : ([
          { edge: 'left', by: halfAcross.minus(middle.across.length) },
          { edge: 'right', by: middle.across.length.plus(halfAcross).minus(width) },
        ] as const)),
    { edge: 'upper', by: middle.up.length.plus(halfUp).minus(height) },
    { edge: 'lower', by: halfUp.minus(middle.up.length) },
  ]);
  const [worst] = beyond.filter(({ by }) => by.isPositive()).sort((a, b) => b.by.compare(a.by));
  return worst;
}

function offFinding(group: Group<Off>): Finding {
  const [{ plan, by, edge }] = group;
  const { pulls, fronts } = plan;
  const [front] = fronts;
  const { across, up } = halfExtents(plan);
  const isSideways = edge === 'left' || edge === 'right';
  const size = (isSideways ? front?.at.x.size : front?.at.y.size)?.length ?? Length.zero;
  const reach = (isSideways ? across : up)?.length ?? Length.zero;
  const written = givenAt(
    isSideways ? pulls.fromEdge : pulls.height?.kind === 'centred' ? undefined : pulls.height?.figure,
  );
  const isFromFloor = !isSideways && pulls.height?.kind === 'above-floor';
  const mends: readonly Mend[] =
    written === undefined || isFromFloor || reach.times(2).compare(size) > 0
      ? []
      : [{ how: 'move', values: { size: reach }, changes: [{ kind: 'set-length', at: written, to: reach }] }];
  return pullOffFront.at(written ?? pulls.entryOrigin, { ...facts(plan), edge, by }, { related: also(group), mends });
}

/** What fills the frame of its door, where a pull sits on that. */
function offStile(plan: PullPlan, parts: readonly UnmarkedPart[]): Omit<Beside, 'plan'> | undefined {
  const seats = plan.middles.flatMap((middle) => seatsOf(plan, middle, parts));
  const fill = seats.find(({ part: { role } }) => role === 'panel' || role === 'pane')?.part;
  if (fill === undefined) return undefined;
  const isOnFrame = seats.some(({ part: { role } }) => role === 'stile' || role === 'rail');
  return {
    on: fill.role === 'pane' ? 'pane' : 'panel',
    thickness: fill.thickness.length,
    reach: isOnFrame ? 'part' : 'whole',
  };
}

function besideFinding(group: Group<Beside>): Finding {
  const [{ plan, on, thickness, reach }] = group;
  const at = givenAt(plan.pulls.fromEdge);
  const { across } = halfExtents(plan);
  const size = plan.stile?.length.dividedBy(2);
  const fits = size !== undefined && (across === undefined || across.length.compare(size) <= 0);
  return pullOffStile.at(
    at ?? plan.pulls.entryOrigin,
    { ...facts(plan), on, thickness, reach },
    {
      severity: on === 'pane' ? 'error' : 'warning',
      related: also(group),
      mends:
        at === undefined || !fits
          ? []
          : [{ how: 'stile', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
    },
  );
}

function recessTrouble({ pulls, deep }: PullPlan, unit: LengthUnit): Omit<Recessed, 'plan'> | undefined {
  const depth = pulls.entry.letIn?.length;
  if (depth === undefined) return undefined;
  const limit = limitIn(LEAST_BEFORE_CUP, unit);
  const left = deep.size.length.minus(depth);
  return left.compare(limit) < 0 ? { depth, left, limit } : undefined;
}

function recessFinding(group: Group<Recessed>): Finding {
  const [{ plan, depth, left, limit }] = group;
  return pullRecessTooDeep.at(
    plan.pulls.entryOrigin,
    { ...facts(plan), depth, thickness: plan.deep.size.length, left: left.max(Length.zero), limit },
    {
      related: [
        { role: 'pull', values: { pull: plan.pulls.entry.name }, origin: plan.pulls.entry.origin },
        ...also(group),
      ],
    },
  );
}
