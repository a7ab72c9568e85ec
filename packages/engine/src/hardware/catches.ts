import { assumed, derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { CatchDesign } from '../design/hanging-design.ts';
import type { Length, LengthUnit } from '../length/length.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { CATCH_BEHIND_DOOR, PULL_FROM_EDGE } from '../tables/hanging-habits.ts';
import { isMetric, limitIn } from '../tables/trade-limits.ts';
import type { HardwareCase } from './fit-hardware.ts';
import { type HungLeaf, hungLeaves, leafLabel } from './hung-leaves.ts';
import type { FittedHardware, PlacedHardware } from './placed-hardware.ts';
import { woodFacing } from './wood-beside.ts';

/** What holds a door shut, and what it comes to rest on: behind it, near its closing edge, at its upper or lower end. */
export interface CatchPlan {
  readonly leaf: HungLeaf;
  readonly asked: CatchDesign;
  readonly at: 'top' | 'bottom';
  /** From the closing edge to its middle. */
  readonly across: Figure;
  /** From the front of the case or of its frame to the back of the door, where it meets the door. */
  readonly deep: Figure;
  /** What it is fastened to; absent where nothing is there. */
  readonly wood?: UnmarkedPart;
}

/** For every leaf whose closing edge is known. */
export function planCatches(
  leaves: readonly HungLeaf[],
  facePlane: Figure,
  parts: readonly UnmarkedPart[],
  unit: LengthUnit,
): readonly CatchPlan[] {
  return leaves.flatMap((leaf) => {
    const { side } = leaf;
    if (side === undefined) return [];
    const nearest = assumed(
      limitIn(PULL_FROM_EDGE, unit),
      `catches and stops are about ${isMetric(unit) ? '40 mm' : '1-1/2"'} from the closing edge, common practice`,
    );
    const beside = derive('beside the catch at this end', [plus('from the closing edge to the catch', nearest, 2)]);
    const catches = leaf.cell.catches ?? [];
    const deep = derive('to the back of the door', [
      plus('where the back of the door is', leaf.deep.end),
      less('the front of the case', facePlane),
    ]);
    const closing = side === 'left' ? leaf.leaf.x.end.length : leaf.leaf.x.start.length;
    const z = leaf.deep.end.length.plus(limitIn(CATCH_BEHIND_DOOR, unit));
    return catches.flatMap((asked) =>
      asked.at.map((at): CatchPlan => {
        const isBeside =
          asked.kind === 'stop' && catches.some((other) => other.kind === 'catch' && other.at.includes(at));
        const across = isBeside ? beside : nearest;
        const x = side === 'left' ? closing.minus(across.length) : closing.plus(across.length);
        const wood = woodAt(leaf, at, parts, [x, z]);
        return { leaf, asked, at, across, deep, ...(wood === undefined ? {} : { wood }) };
      }),
    );
  });
}

/** What of the case is over or under the opening. */
function woodAt(
  { opening }: HungLeaf,
  at: CatchPlan['at'],
  parts: readonly UnmarkedPart[],
  place: readonly [Length, Length],
): UnmarkedPart | undefined {
  return at === 'top'
    ? woodFacing(parts, '-y', opening.y.end.length, place)
    : woodFacing(parts, '+y', opening.y.start.length, place);
}

export function fitCatches({ design, layout, face: root, parts }: HardwareCase): FittedHardware {
  if (design.face === undefined) return { placed: [], features: [] };
  const plans = planCatches(hungLeaves(design.face, layout, root), layout.facePlane, parts, layout.unit);
  return { placed: plans.map(placed), features: [] };
}

function placed({ leaf, asked, at, across, deep, wood }: CatchPlan): PlacedHardware {
  const what = asked.how === undefined ? asked.kind : `${asked.how} ${asked.kind}`;
  return {
    id: `${leaf.id}/${asked.kind}-${at}`,
    kind: asked.kind,
    label: `${what} at the ${at} of the ${leafLabel(leaf)}`,
    cell: leaf.cell.id,
    on: wood === undefined ? [] : [wood.id],
    set: [
      { words: 'from the closing edge of the door to its middle', figure: across },
      { words: 'from the front of the case to the back of the door', figure: deep },
    ],
    screws: [],
    origin: asked.origin,
  };
}
