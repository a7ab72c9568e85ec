import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import type { HardwareCase } from './fit-hardware.ts';
import type { HingePlan } from './hinge-plans.ts';
import { leafLabel } from './hung-leaves.ts';
import type { FittedHardware, PlacedHardware } from './placed-hardware.ts';

/** What all kinds of hinges have in common: the part they are on, their names, where they are measured from. */

export const notFitted: FittedHardware = { placed: [], features: [] };

/** The door, or the stile of its frame at the edge that it hangs on. */
export function doorPart({ leaf, side }: HingePlan, { parts }: HardwareCase): UnmarkedPart | undefined {
  const edge = side === 'left' ? leaf.leaf.x.start : leaf.leaf.x.end;
  return parts.find(({ id, frame, role, box }) => {
    if (id === leaf.id) return true;
    if (frame !== leaf.id || role !== 'stile') return false;
    return (side === 'left' ? box.x.start : box.x.end).length.equals(edge.length);
  });
}

/** Measured on the door, and on the case before it hangs there. */
export function alongDoor({ leaf }: HingePlan, middle: Figure): PlacedHardware['set'] {
  return [
    { words: 'from the lower end of the door to the middle of the hinge', figure: middle },
    {
      words: 'from the lower edge of the opening to the middle of the hinge',
      figure: derive('on the case', [
        plus('where the door begins', leaf.leaf.y.start),
        less('where its opening begins', leaf.opening.y.start),
        plus('from the lower end of the door', middle),
      ]),
    },
  ];
}

export function placedHinge(
  plan: HingePlan,
  id: string,
  at: number,
  on: readonly (UnmarkedPart | undefined)[],
  more: Pick<PlacedHardware, 'set' | 'screws'>,
): PlacedHardware {
  const { leaf, hinge, count } = plan;
  return {
    id,
    kind: 'hinge',
    entry: hinge.name,
    label: `${whichOf(at, count)} of the ${leafLabel(leaf)}`,
    cell: leaf.cell.id,
    on: on.flatMap((part) => part?.id ?? []),
    ...more,
    origin: hingesSaid(plan),
  };
}

function whichOf(at: number, count: number): string {
  if (at === 0) return 'lower hinge';
  if (at === count - 1) return 'upper hinge';
  return count === 3 ? 'middle hinge' : `hinge ${at + 1} from below`;
}

export function hingeId({ leaf, side }: HingePlan, at: number): string {
  return `${leaf.id}/hinge-${side}-${at + 1}`;
}

export function hingesSaid({ leaf }: HingePlan) {
  return leaf.hingesOrigin ?? leaf.cell.origin;
}
