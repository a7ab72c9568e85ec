import type { HeldDesign } from '../design/contents-design.ts';
import { derive, less, plus } from '../design/derive.ts';
import type { FrontCell } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { Evaluation, Span } from '../evaluation.ts';
import type { HardwareKind, PlacedHardware } from '../hardware/placed-hardware.ts';
import type { Part } from '../parts/part.ts';
import { spacesOf } from './cells-of-face.ts';

/** A drawer in the list that drawers are made and hung by. */
export interface ScheduledDrawer {
  /** The id of its cell. */
  readonly cell: string;
  /** In the maker's words, where it has a name. */
  readonly name?: string;
  /** Its front and what its box is made of, the front first. */
  readonly parts: readonly Part[];
  readonly opening: { readonly width: Figure; readonly height: Figure };
  readonly front?: Part;
  /** From the outside of one side to the outside of the other. */
  readonly box?: { readonly width: Figure; readonly height: Figure; readonly depth: Figure };
  /** Or its wooden runners: as placed, left first; empty where it runs on a frame, or where its entry does not tell. */
  readonly slides: readonly PlacedHardware[];
  /** What it must hold. */
  readonly holds: readonly { readonly count: number; readonly thing: string }[];
}

const carrying: ReadonlySet<HardwareKind> = new Set<HardwareKind>(['slide', 'runner']);

export function drawerSchedule({ layout, parts, hardware }: Evaluation): readonly ScheduledDrawer[] {
  return spacesOf(layout.face).flatMap((laid): readonly ScheduledDrawer[] => {
    const { cell, opening } = laid;
    if (cell.kind !== 'front' || cell.what !== 'drawer') return [];
    const own = parts.filter((part) => part.cell === cell.id);
    const front = own.find(({ role }) => role === 'drawer-front');
    const box = boxOf(own);
    return [
      {
        cell: cell.id,
        ...(cell.name === undefined ? {} : { name: cell.name }),
        parts: front === undefined ? own : [front, ...own.filter((part) => part !== front)],
        opening: { width: opening.x.size, height: opening.y.size },
        ...(front === undefined ? {} : { front }),
        ...(box === undefined ? {} : { box }),
        slides: hardware.filter((each) => carrying.has(each.kind) && each.cell === cell.id),
        holds: [...(cell.holds ?? []), ...heldInCompartments(cell)].map(({ count, thing }) => ({
          count,
          thing: thing.name,
        })),
      },
    ];
  });
}

function heldInCompartments({ drawer }: FrontCell): readonly HeldDesign[] {
  return (drawer?.compartments?.each ?? []).flatMap(({ holds }) => holds ?? []);
}

function boxOf(parts: readonly Part[]): ScheduledDrawer['box'] | undefined {
  const [left, right] = parts
    .filter(({ role }) => role === 'drawer-side')
    .sort((a, b) => a.box.x.start.length.compare(b.box.x.start.length));
  if (left === undefined || right === undefined) return undefined;
  return { width: fromTo(left.box.x, right.box.x), height: left.box.y.size, depth: left.box.z.size };
}

function fromTo(one: Span, other: Span): Figure {
  return derive('width of the box', [
    plus('where its right side ends', other.end),
    less('where its left side begins', one.start),
  ]);
}
