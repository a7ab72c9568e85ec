import type { Evaluation, LaidCell } from '../evaluation.ts';
import type { PlacedHardware } from '../hardware/placed-hardware.ts';
import type { Rational } from '../length/rational.ts';
import type { Part } from '../parts/part.ts';
import { pieceWeight } from '../stock/buying/piece-weight.ts';
import { spacesOf } from './cells-of-face.ts';

/** A leaf of a door, or a lid, in the list that doors are made and hung by. */
export interface ScheduledDoor {
  readonly leaf: Part;
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
    const leaves = parts.filter((part) => part.cell === cell.id && (part.role === 'door' || part.role === 'lid'));
    const own = hardware.filter((each) => each.cell === cell.id);
    return leaves.map((leaf, at): ScheduledDoor => {
      const hangs = edgeOf(laid, leaf, at);
      const { kilograms, unweighed } = pieceWeight([leaf]);
      const on = (kind: PlacedHardware['kind']) =>
        own.filter((each) => each.kind === kind && each.on.includes(leaf.id));
      return {
        leaf,
        cell: cell.id,
        ...(cell.name === undefined ? {} : { name: cell.name }),
        ...(hangs === undefined ? {} : { hangs }),
        ...(unweighed.length > 0 ? {} : { kilograms }),
        ...(cell.hinges === undefined ? {} : { hingeEntry: cell.hinges.name }),
        hinges: on('hinge'),
        pulls: on('pull'),
      };
    });
  });
}

/** A lid hangs from its upper edge, the leaves of a pair from their outer edges, a single door where the maker says. */
function edgeOf({ cell, leaves }: LaidCell, { role }: Part, at: number): ScheduledDoor['hangs'] {
  if (cell.kind !== 'front') return undefined;
  if (role === 'lid') return 'top';
  if (leaves.length === 2) return at === 0 ? 'left' : 'right';
  return cell.hingeSide;
}
