import type { FrontCell } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { Evaluation, LaidCell, Rectangle } from '../evaluation.ts';
import { leafLabel } from '../hardware/hung-leaves.ts';
import type { PlacedHardware } from '../hardware/placed-hardware.ts';
import { leafId } from '../layout/leaf-ids.ts';
import type { Rational } from '../length/rational.ts';
import type { Part } from '../parts/part.ts';
import { pieceWeight } from '../stock/buying/piece-weight.ts';
import { spacesOf } from './cells-of-face.ts';

/** What hangs: one part, or a frame with its panels or panes. */
export interface ScheduledLeaf {
  /** Of the part, or of the frame. */
  readonly id: string;
  readonly label: string;
  readonly width: Figure;
  readonly height: Figure;
  readonly thickness: Figure;
  /** In the order of the cut list. */
  readonly parts: readonly [Part, ...Part[]];
}

/** A leaf of a door, or a lid, in the list that doors are made and hung by. */
export interface ScheduledDoor {
  readonly leaf: ScheduledLeaf;
  /** The id of its cell, and its name where it has one. */
  readonly cell: string;
  readonly name?: string;
  /** The edge that it hangs on, as one faces it; absent while nothing says. */
  readonly hangs?: 'left' | 'right' | 'top';
  /** From handbook averages, without its hardware; absent where nobody knows what it is made of. */
  readonly kilograms?: Rational;
  /** The name of its hinges in the shop file, also where they are not placed. */
  readonly hingeEntry?: string;
  /** As placed. */
  readonly hinges: readonly PlacedHardware[];
  readonly pulls: readonly PlacedHardware[];
}

export function doorSchedule({ layout, parts, hardware }: Evaluation): readonly ScheduledDoor[] {
  return spacesOf(layout.face).flatMap((laid) => {
    const { cell } = laid;
    if (cell.kind !== 'front') return [];
    const own = hardware.filter((each) => each.cell === cell.id);
    return laid.leaves.flatMap((place, at): readonly ScheduledDoor[] => {
      const leaf = leafOf(laid, cell, place, at, parts);
      if (leaf === undefined) return [];
      const hangs = edgeOf(laid, leaf.parts[0], at);
      const { kilograms, unweighed } = pieceWeight(leaf.parts);
      const on = (kind: PlacedHardware['kind']) =>
        own.filter((each) => each.kind === kind && leaf.parts.some(({ id }) => each.on.includes(id)));
      return [
        {
          leaf,
          cell: cell.id,
          ...(cell.name === undefined ? {} : { name: cell.name }),
          ...(hangs === undefined ? {} : { hangs }),
          ...(unweighed.length > 0 ? {} : { kilograms }),
          ...(cell.hinges === undefined ? {} : { hingeEntry: cell.hinges.name }),
          hinges: on('hinge'),
          pulls: on('pull'),
        },
      ];
    });
  });
}

function leafOf(
  { leaves }: LaidCell,
  cell: FrontCell,
  place: Rectangle,
  at: number,
  parts: readonly Part[],
): ScheduledLeaf | undefined {
  const id = leafId(cell, leaves.length, at);
  const whole = parts.find((part) => part.id === id && (part.role === 'door' || part.role === 'lid'));
  if (whole !== undefined) {
    const { label, box, thickness } = whole;
    return { id, label, width: box.x.size, height: box.y.size, thickness, parts: [whole] };
  }
  const [first, ...others] = parts.filter(({ frame }) => frame === id);
  if (first === undefined || cell.what !== 'door') return undefined;
  const hand = leaves.length === 1 ? '' : at === 0 ? 'left ' : 'right ';
  const label = leafLabel({ cell, hand });
  const stile = [first, ...others].find(({ role }) => role === 'stile') ?? first;
  const { x, y } = place;
  return { id, label, width: x.size, height: y.size, thickness: stile.thickness, parts: [first, ...others] };
}

/** A lid hangs from its upper edge, the leaves of a pair from their outer edges, a single door where the maker says. */
function edgeOf({ cell, leaves }: LaidCell, { role }: Part, at: number): ScheduledDoor['hangs'] {
  if (cell.kind !== 'front') return undefined;
  if (role === 'lid') return 'top';
  if (leaves.length === 2) return at === 0 ? 'left' : 'right';
  return cell.hingeSide;
}
