import type { Origin } from '@fettle/findings';
import { derive, less, plus } from '../design/derive.ts';
import type { FaceDesign, FrontCell, FrontFit, GroupCell } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { HingeEntry } from '../design/shop.ts';
import type { CarcaseLayout, LaidCell, Rectangle, Span } from '../evaluation.ts';
import { frontDeep } from '../layout/front-thickness.ts';
import { leafId } from '../layout/leaf-ids.ts';
import { fitOf } from '../layout/touching-fronts.ts';
import type { Length } from '../length/length.ts';

/** The doors of a face, leaf by leaf, with the edge that each hangs on. */
export interface HungLeaf {
  readonly cell: FrontCell;
  readonly laid: LaidCell;
  /** Absent for the root of the face. */
  readonly group?: GroupCell;
  readonly fit: FrontFit;
  /** The id of the part, or of the frame that it is glued up from. */
  readonly id: string;
  /** 'left ' of a pair, else empty. */
  readonly hand: '' | 'left ' | 'right ';
  readonly leaf: Rectangle;
  readonly deep: Span;
  readonly opening: Rectangle;
  /** The edge it hangs on, as one faces it; absent while it is not said. */
  readonly side?: 'left' | 'right';
  readonly hinge?: HingeEntry;
  /** The words that name its hinges. */
  readonly hingesOrigin?: Origin;
}

/** From left to right and from top to bottom, as they are written. Lids are not among them: they hang on another edge. */
export function hungLeaves(face: FaceDesign, layout: CarcaseLayout, root: LaidCell): readonly HungLeaf[] {
  const found: HungLeaf[] = [];
  const visit = (laid: LaidCell, group: GroupCell | undefined): void => {
    const { cell } = laid;
    if (cell.kind === 'row' || cell.kind === 'stack') {
      for (const inner of laid.cells) visit(inner, cell);
      return;
    }
    for (const inner of laid.cells) visit(inner, undefined);
    if (cell.kind !== 'front' || cell.what !== 'door') return;
    const deep = frontDeep(cell, face, layout);
    laid.leaves.forEach((leaf, at) => {
      if (!leaf.x.size.length.isPositive() || !leaf.y.size.length.isPositive()) return;
      const isPair = laid.leaves.length > 1;
      const side = isPair ? (at === 0 ? 'left' : 'right') : cell.hingeSide;
      found.push({
        cell,
        laid,
        ...(group === undefined ? {} : { group }),
        fit: fitOf(cell, face),
        id: leafId(cell, laid.leaves.length, at),
        hand: isPair ? (at === 0 ? 'left ' : 'right ') : '',
        leaf,
        deep,
        opening: laid.opening,
        ...(side === undefined ? {} : { side }),
        ...hingesAt(cell, side),
      });
    });
  };
  visit(root, undefined);
  return found;
}

function hingesAt(cell: FrontCell, side: HungLeaf['side']): Pick<HungLeaf, 'hinge' | 'hingesOrigin'> {
  const own = side === 'left' ? cell.hanging?.atLeft : side === 'right' ? cell.hanging?.atRight : undefined;
  if (own !== undefined) return { hinge: own.entry, hingesOrigin: own.origin };
  return {
    ...(cell.hinges === undefined ? {} : { hinge: cell.hinges }),
    ...(cell.hingesOrigin === undefined ? {} : { hingesOrigin: cell.hingesOrigin }),
  };
}

/** 'left door of "cups"' */
export function leafLabel({ cell, hand }: Pick<HungLeaf, 'cell' | 'hand'>): string {
  return `${hand}door${cell.name === undefined ? '' : ` "${cell.name}"`}`;
}

/** Between the edge that a leaf hangs on and the wood beside its opening; negative where it laps that. */
export function gapAtHinges(one: HungLeaf, side: 'left' | 'right'): Figure {
  const [outer, inner] =
    side === 'left' ? [one.leaf.x.start, one.opening.x.start] : [one.opening.x.end, one.leaf.x.end];
  return sameAsGap(
    one.fit,
    derive('between the edge of the door and the wood that it hangs on', [
      plus(side === 'left' ? 'where the door begins' : 'where its opening ends', outer),
      less(side === 'left' ? 'where its opening begins' : 'where the door ends', inner),
    ]),
  );
}

/** The gap that the text says, where it is this one: then it is clear what to change. */
function sameAsGap(fit: FrontFit, gap: Figure): Figure {
  return fit.gap.length.equals(gap.length) ? fit.gap : gap;
}

/** Between the closing edge of a leaf and what stands beside it: another leaf, or the wood of the opening. */
export function gapAtClosing(one: HungLeaf, side: 'left' | 'right'): Length {
  const { laid, leaf, opening, fit } = one;
  const [left, right] = laid.leaves;
  if (left !== undefined && right !== undefined) return right.x.start.length.minus(left.x.end.length);
  const free =
    side === 'left' ? opening.x.end.length.minus(leaf.x.end.length) : leaf.x.start.length.minus(opening.x.start.length);
  // Over a covered divider it reaches to the next front, a gap away.
  return free.isPositive() ? free : fit.gap.length;
}
