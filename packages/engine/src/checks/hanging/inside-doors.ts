import {
  type Change,
  drawerWithoutPlay,
  type Finding,
  insideDrawerMeetsDoor,
  insideDrawerMeetsHinge,
  insidePullMeetsDoor,
  type Mend,
  type Origin,
} from '@fettle/findings';
import type { FrontCell, GroupCell } from '../../design/design.ts';
import type { InsideDesign } from '../../design/inside-design.ts';
import type { LaidCell } from '../../evaluation.ts';
import { type HingePlan, planHinges } from '../../hardware/hinge-plans.ts';
import { hungLeaves, leafLabel } from '../../hardware/hung-leaves.ts';
import { openDoor } from '../../hardware/open-door-reach.ts';
import { planPulls } from '../../hardware/pull-plans.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { upToMark } from '../../length/ruler-marks.ts';
import { exactSource } from '../../length/trade-formats.ts';
import { type LaidDrawer, laidDrawers } from '../../parts/laid-drawers.ts';
import { RUNNING_CLEARANCE, usual } from '../../tables/trade-habits.ts';
import { limitIn, USUAL_MARK } from '../../tables/trade-limits.ts';
import { cellsIn, whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt } from '../written-sizes.ts';
import { assumedReach } from './assumed-reach.ts';

/** Whether drawers behind a door come out past it and its hinges, and whether it closes over their pulls. */
export function insideDoorFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const { design, root } = one.face;
  const { unit } = one.layout;
  const behind = cellsIn(root).flatMap(({ laid, group }) => behindDoor(laid, group));
  if (behind.length === 0) return [];
  const plans = hungLeaves(design, one.layout, root).flatMap((leaf) => planHinges(leaf, one.parts, unit) ?? []);
  const drawers = laidDrawers(design, one.layout, root);
  return behind.flatMap((door): readonly Finding[] => {
    const own = plans.filter(({ leaf }) => leaf.laid === door.laid);
    const inside = drawers.filter(({ cell }) => door.fronts.some(({ laid }) => laid.cell === cell));
    const struck = meetingDoor(door, own, inside, unit);
    const atHinges = meetingHinge(door, own, inside, unit);
    return [
      ...struck,
      ...atHinges,
      ...(struck.length + atHinges.length > 0 ? [] : barelyPast(door, own, inside, unit)),
      ...(inside.length === 0 ? [] : assumedReach(own, struck.length > 0)),
      ...pulls(door, one),
    ];
  });
}

interface Behind {
  readonly cell: FrontCell;
  readonly group: GroupCell | undefined;
  readonly laid: LaidCell;
  readonly inside: InsideDesign;
  readonly fronts: readonly FrontInside[];
}

interface FrontInside {
  readonly laid: LaidCell;
  readonly group?: GroupCell;
}

function behindDoor(laid: LaidCell, group: GroupCell | undefined): readonly Behind[] {
  const { cell, cells } = laid;
  if (cell.kind !== 'front' || cell.inside === undefined) return [];
  const fronts = cells.flatMap(cellsIn).filter(({ laid: inner }) => inner.front !== undefined);
  return [{ cell, group, laid, inside: cell.inside, fronts }];
}

interface InTheWay {
  readonly drawer: FrontInside;
  readonly plan: HingePlan;
  /** How far the door or its hinge stands in from the wood, and how far the drawer is from that. */
  readonly stands: Length;
  readonly clear: Length;
}

function meetingDoor(
  door: Behind,
  plans: readonly HingePlan[],
  drawers: readonly LaidDrawer[],
  unit: LengthUnit,
): readonly Finding[] {
  const struck = plans.flatMap((plan) => {
    const { leaf, gap, hinge } = plan;
    const open = openDoor(hinge, { width: leaf.leaf.x.size.length, thickness: leaf.deep.size.length, gap }, unit);
    return inTheWay(door, plan, open.stands).map((each) => ({ ...each, open }));
  });
  const worst = worstOf(struck);
  if (worst === undefined) return [];
  const { plan, drawer, stands, clear } = worst;
  return [
    insideDrawerMeetsDoor.at(
      placeOf(door, plan.side),
      {
        ...whoIs(drawer.laid.cell, drawer.group),
        door: leafLabel(plan.leaf),
        angle: worst.open.angle.toString(),
        isAssumed: worst.open.isAssumed,
        stands,
        clear,
        difference: stands.minus(clear),
      },
      {
        related: relatedOf(struck, plan),
        mends: clearMends(door, struck, drawers, unit, usual(RUNNING_CLEARANCE, unit).length),
      },
    ),
  ];
}

function meetingHinge(
  door: Behind,
  plans: readonly HingePlan[],
  drawers: readonly LaidDrawer[],
  unit: LengthUnit,
): readonly Finding[] {
  const struck = plans.flatMap((plan) => {
    const stands = plan.hinge.standsIn?.length;
    return stands === undefined ? [] : inTheWay(door, plan, stands).filter((each) => isAtHinge(each));
  });
  const worst = worstOf(struck);
  if (worst === undefined) return [];
  const { plan, drawer, stands, clear } = worst;
  return [
    insideDrawerMeetsHinge.at(
      placeOf(door, plan.side),
      {
        ...whoIs(drawer.laid.cell, drawer.group),
        hinge: plan.hinge.name,
        stands,
        clear,
        difference: stands.minus(clear),
      },
      {
        related: relatedOf(struck, plan),
        mends: clearMends(door, struck, drawers, unit, usual(RUNNING_CLEARANCE, unit).length),
      },
    ),
  ];
}

/** Fronts that just come out past what stands there: what touches does not run. */
function barelyPast(
  door: Behind,
  plans: readonly HingePlan[],
  drawers: readonly LaidDrawer[],
  unit: LengthUnit,
): readonly Finding[] {
  const limit = usual(RUNNING_CLEARANCE, unit).length;
  const tight = plans.flatMap((plan) => {
    const { standsIn, openDoorIn } = plan.hinge;
    const past = (stands: Length) => inTheWay(door, plan, stands.max(Length.zero).plus(limit));
    // How far a door stands in is known from its data sheet alone; what is worked out is never too little.
    return [
      ...(openDoorIn === undefined ? [] : past(openDoorIn.length)),
      ...(standsIn === undefined ? [] : past(standsIn.length).filter(isAtHinge)),
    ];
  });
  const worst = worstOf(tight);
  if (worst === undefined) return [];
  const { plan, drawer, stands, clear } = worst;
  return [
    drawerWithoutPlay.at(
      placeOf(door, plan.side),
      {
        ...whoIs(drawer.laid.cell, drawer.group),
        where: 'door',
        left: clear.minus(stands.minus(limit)),
        limit,
      },
      { related: relatedOf(tight, plan), mends: clearMends(door, tight, drawers, unit, Length.zero) },
    ),
  ];
}

/** Fronts that are nearer to the wood that the door hangs on than what stands there. */
function inTheWay({ laid, fronts }: Behind, plan: HingePlan, stands: Length): readonly InTheWay[] {
  return fronts.flatMap((drawer): readonly InTheWay[] => {
    const { cell, front } = drawer.laid;
    if (cell.kind !== 'front' || cell.what !== 'drawer' || front === undefined) return [];
    const clear =
      plan.side === 'left'
        ? front.x.start.length.minus(laid.opening.x.start.length)
        : laid.opening.x.end.length.minus(front.x.end.length);
    return clear.compare(stands) < 0 ? [{ drawer, plan, stands, clear }] : [];
  });
}

/** A hinge is taken to be as high as its cup is wide, or as it is long. */
function isAtHinge({ drawer, plan }: InTheWay): boolean {
  const front = drawer.laid.front;
  const high = (plan.hinge.cup?.diameter ?? plan.hinge.length)?.length ?? Length.zero;
  const from = plan.leaf.leaf.y.start.length;
  return (
    front !== undefined &&
    plan.middles.some((middle) => {
      const at = from.plus(middle.length);
      return (
        at.plus(high.dividedBy(2)).compare(front.y.start.length) > 0 &&
        at.minus(high.dividedBy(2)).compare(front.y.end.length) < 0
      );
    })
  );
}

function worstOf<One extends InTheWay>(struck: readonly One[]): One | undefined {
  return [...struck].sort((a, b) => b.stands.minus(b.clear).compare(a.stands.minus(a.clear)))[0];
}

/** Where it is said how far drawers keep clear of that end, else the word that says they are there. */
function placeOf({ inside }: Behind, side: 'left' | 'right'): Origin {
  return givenAt(inside.clear[side]) ?? inside.wordOrigin;
}

function relatedOf(struck: readonly InTheWay[], { hinge }: HingePlan) {
  const seen = new Set<string>();
  const drawers = struck.flatMap(({ drawer: { laid, group } }) => {
    if (seen.has(laid.cell.id)) return [];
    seen.add(laid.cell.id);
    return [{ role: 'drawer', values: whoIs(laid.cell, group), origin: laid.cell.origin }];
  });
  return [{ role: 'hinge', values: { hinge: hinge.name }, origin: hinge.origin }, ...drawers];
}

/** Farther from each end where something stands in the way, with packers that bring their slides out by as much. `play`: beyond what is in the way. */
function clearMends(
  { inside }: Behind,
  struck: readonly InTheWay[],
  drawers: readonly LaidDrawer[],
  unit: LengthUnit,
  play: Length,
): readonly Mend[] {
  const sides = [...new Set(struck.map(({ plan }) => plan.side))];
  const missing = struck.reduce((most, { stands, clear }) => most.max(stands.minus(clear)), Length.zero).plus(play);
  const said = sides.flatMap((side) => inside.clear[side]?.length ?? Length.zero);
  const size = upToMark(
    said.reduce((most, each) => most.max(each), Length.zero).plus(missing),
    limitIn(USUAL_MARK, unit),
  );
  const places = new Map<string, Change>();
  const fresh: ('left' | 'right')[] = [];
  for (const side of sides) {
    const at = givenAt(inside.clear[side]);
    if (at === undefined) fresh.push(side);
    else places.set(`${at.unit} ${at.start}`, { kind: 'set-length', at, to: size });
  }
  if (fresh.length > 0) {
    const where = fresh.length === 2 ? 'each side' : `at ${fresh.join('')}`;
    places.set('fresh', {
      kind: 'insert-words',
      after: inside.wordOrigin,
      words: `, ${exactSource(size, unit)} clear ${where}`,
    });
  }
  const packers = packed(drawers, size);
  return packers === undefined ? [] : [{ how: 'clear', values: { size }, changes: [...places.values(), ...packers] }];
}

/** Packers where slides have none yet; undefined where some of a written thickness would not suit any more. */
function packed(drawers: readonly LaidDrawer[], size: Length): readonly Change[] | undefined {
  const changes = new Map<string, Change>();
  for (const { drawer } of drawers) {
    if (drawer.slides === undefined || drawer.slides.mounting === 'centre') continue;
    const { packers, slidesStatement } = drawer;
    if (packers === undefined) {
      if (slidesStatement === undefined) return undefined;
      const key = `${slidesStatement.unit} ${slidesStatement.start}`;
      changes.set(key, { kind: 'insert-words', after: slidesStatement, words: '   packers' });
    } else if (packers.thickness !== undefined) {
      const at = givenAt(packers.thickness);
      if (at === undefined) return undefined;
      changes.set(`${at.unit} ${at.start}`, { kind: 'set-length', at, to: size });
    }
  }
  return [...changes.values()];
}

/** Pulls that stand out farther than the closed door is away. */
function pulls({ cell, group, inside, fronts }: Behind, one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const { design, root } = one.face;
  const room = inside.behindDoor.length;
  const proud = planPulls(design, one.layout, root, one.parts).flatMap((plan) => {
    const standsOut = plan.pulls.entry.projection?.length;
    const isInside = fronts.some(({ laid }) => laid.cell === plan.cell);
    return isInside && standsOut !== undefined && standsOut.compare(room) > 0 ? [{ plan, standsOut }] : [];
  });
  const [worst] = [...proud].sort((a, b) => b.standsOut.compare(a.standsOut));
  if (worst === undefined) return [];
  const { plan, standsOut } = worst;
  const difference = standsOut.minus(room);
  const at = givenAt(inside.behindDoor);
  const { unit } = one.layout;
  const boxes = laidDrawers(design, one.layout, root).filter(({ cell: drawer }) =>
    fronts.some(({ laid }) => laid.cell === drawer),
  );
  const isDeepEnough = boxes.every(
    ({ box, drawer }) =>
      drawer.slides === undefined ||
      box.depthThere.length.minus(difference).compare(box.z.size.length.plus(drawer.slides.extraDepth.length)) >= 0,
  );
  const mend: Mend = {
    how: 'behind',
    values: { size: standsOut },
    changes: [
      at === undefined
        ? {
            kind: 'insert-words',
            after: inside.wordOrigin,
            words: `, ${exactSource(standsOut, unit)} behind door`,
          }
        : { kind: 'set-length', at, to: standsOut },
    ],
  };
  return [
    insidePullMeetsDoor.at(
      at ?? inside.wordOrigin,
      {
        ...whoIs(plan.cell, plan.group),
        door: whoIs(cell, group).name ?? whoIs(cell, group).words,
        doorIsNamed: cell.name !== undefined,
        pull: plan.pulls.entry.name,
        standsOut,
        room,
        difference,
      },
      {
        related: [
          { role: 'pull', values: { pull: plan.pulls.entry.name }, origin: plan.pulls.entry.origin },
          ...proud.map(({ plan: { cell: drawer, group: around } }) => ({
            role: 'drawer',
            values: whoIs(drawer, around),
            origin: drawer.origin,
          })),
        ],
        mends: isDeepEnough ? [mend] : [],
      },
    ),
  ];
}
