import { type Finding, openDoorsMeet, pullStrikesNeighbour } from '@fettle/findings';
import type { Rectangle } from '../../evaluation.ts';
import { type HingePlan, planHinges } from '../../hardware/hinge-plans.ts';
import { hungLeaves } from '../../hardware/hung-leaves.ts';
import { type PullPlan, planPulls } from '../../hardware/pull-plans.ts';
import { halfExtents } from '../../hardware/pull-seats.ts';
import { Length } from '../../length/length.ts';
import { cellsIn, whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';

/**
 * What strikes when doors stand open. A door on butts or knives turns on the front corner of its hinge edge: open at a
 * right angle its front looks to that side, in the plane of that corner, and its pull stands out from there. Cups move a
 * door aside as they open, by what no entry tells: such doors are left alone.
 */
export function openDoorFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const { design, root } = one.face;
  const plans = hungLeaves(design, one.layout, root)
    .flatMap((leaf) => planHinges(leaf, one.parts, one.layout.unit) ?? [])
    .filter(({ form }) => form !== 'concealed');
  if (plans.length === 0) return [];
  const pulls = planPulls(design, one.layout, root, one.parts);
  const doors = plans.map((plan): Swinging => ({ plan, pulls: pulls.filter(({ fronts }) => isOn(fronts, plan)) }));
  const findings: Finding[] = [];
  for (const door of doors) {
    if (door.plan.side !== 'right') continue;
    for (const other of doors) if (other.plan.side === 'left') findings.push(...meeting(door, other));
  }
  for (const door of doors) findings.push(...drawersBeside(door, one));
  return findings;
}

interface Swinging {
  readonly plan: HingePlan;
  readonly pulls: readonly PullPlan[];
}

function isOn(fronts: PullPlan['fronts'], { leaf }: HingePlan): boolean {
  return fronts.length === 1 && fronts.some(({ id }) => id === leaf.id);
}

/** The corner that a door turns on. */
function pin({ plan: { leaf, side } }: Swinging): Length {
  return (side === 'left' ? leaf.leaf.x.start : leaf.leaf.x.end).length;
}

/** How far pulls stand out from the front of the door. */
function standsOut({ pulls }: Swinging): Length {
  return pulls.reduce((most, { pulls: { entry } }) => most.max(entry.projection?.length ?? Length.zero), Length.zero);
}

/** Two doors back to back, both open at a right angle, with what stands out from each between them. */
function meeting(left: Swinging, right: Swinging): readonly Finding[] {
  const between = pin(right).minus(pin(left));
  if (!between.isPositive() || !overlap(left.plan.leaf.leaf.y, right.plan.leaf.leaf.y)) return [];
  const [one, two] = [standsOut(left), standsOut(right)];
  const together = pullsFaceEachOther(left, right) ? one.plus(two) : one.max(two);
  if (together.compare(between) <= 0) return [];
  const { cell, group } = left.plan.leaf;
  const other = right.plan.leaf;
  return [
    openDoorsMeet.at(
      cell.pulls?.entryOrigin ?? left.pulls[0]?.pulls.entryOrigin ?? cell.origin,
      {
        ...whoIs(cell, group),
        other: whoIs(other.cell, other.group).name ?? whoIs(other.cell, other.group).words,
        otherIsNamed: other.cell.name !== undefined,
        standsOut: together,
        between,
        difference: together.minus(between),
      },
      { related: [{ role: 'other', values: whoIs(other.cell, other.group), origin: other.cell.origin }] },
    ),
  ];
}

/** At one height, and as far from the corner that each door turns on. */
function pullsFaceEachOther(left: Swinging, right: Swinging): boolean {
  return placesOf(left).some((one) =>
    placesOf(right).some(
      (two) =>
        one.out.from.compare(two.out.to) < 0 &&
        two.out.from.compare(one.out.to) < 0 &&
        one.up.from.compare(two.up.to) < 0 &&
        two.up.from.compare(one.up.to) < 0,
    ),
  );
}

interface Stretch {
  readonly from: Length;
  readonly to: Length;
}

function placesOf({ plan, pulls }: Swinging): readonly { readonly out: Stretch; readonly up: Stretch }[] {
  const { leaf, side } = plan;
  return pulls.flatMap((pull) => {
    const { across, up } = halfExtents(pull);
    const [halfAcross, halfUp] = [across?.length ?? Length.zero, up?.length ?? Length.zero];
    return pull.middles.map((middle) => {
      const out = side === 'left' ? middle.across.length : leaf.leaf.x.size.length.minus(middle.across.length);
      const y = leaf.leaf.y.start.length.plus(middle.up.length);
      return {
        out: { from: out.minus(halfAcross), to: out.plus(halfAcross) },
        up: { from: y.minus(halfUp), to: y.plus(halfUp) },
      };
    });
  });
}

/** Drawers beside the corner that a door turns on: its pull stands in their way while it is open at a right angle. */
function drawersBeside(door: Swinging, one: TradeCase): readonly Finding[] {
  const out = standsOut(door);
  if (one.face === undefined || !out.isPositive()) return [];
  const { leaf, side } = door.plan;
  const beside = cellsIn(one.face.root).flatMap(({ laid, group }) => {
    const { cell, front } = laid;
    if (cell.kind !== 'front' || cell.what !== 'drawer' || front === undefined) return [];
    const between = side === 'right' ? front.x.start.length.minus(pin(door)) : pin(door).minus(front.x.end.length);
    const isReached = between.sign() >= 0 && between.compare(out) < 0 && facesPull(door, front);
    return isReached ? [{ cell, group, between }] : [];
  });
  const [first] = beside;
  if (first === undefined) return [];
  return [
    pullStrikesNeighbour.at(
      door.pulls[0]?.pulls.entryOrigin ?? leaf.cell.origin,
      {
        ...whoIs(leaf.cell, leaf.group),
        pull: door.pulls[0]?.pulls.entry.name ?? '',
        standsOut: out,
        between: first.between,
        difference: out.minus(first.between),
        drawers: beside.length,
      },
      {
        related: beside.map(({ cell, group }) => ({ role: 'drawer', values: whoIs(cell, group), origin: cell.origin })),
      },
    ),
  ];
}

function facesPull(door: Swinging, front: Rectangle): boolean {
  return placesOf(door).some(
    ({ up }) => up.from.compare(front.y.end.length) < 0 && front.y.start.length.compare(up.to) < 0,
  );
}

function overlap(one: Rectangle['y'], two: Rectangle['y']): boolean {
  return one.start.length.compare(two.end.length) < 0 && two.start.length.compare(one.end.length) < 0;
}
