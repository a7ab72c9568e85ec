import { derive, less, plus } from '../design/derive.ts';
import type { FaceDesign, FrontCell, GroupCell } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { CarcaseLayout, LaidCell, LaidDivider, Rectangle, Span } from '../evaluation.ts';
import { turned } from '../layout/front-edges.ts';
import {
  doorFrame,
  frontDeep,
  frontMaterial,
  reachBefore,
  reachBehind,
  reachBehindDoor,
  thickestFront,
} from '../layout/front-thickness.ts';
import { leafId } from '../layout/leaf-ids.ts';
import { spanFrom, toInterior } from '../layout/spans.ts';
import { frontsAtDivider, isBehindFronts, placeOf } from '../layout/touching-fronts.ts';
import { compartmentParts } from './compartments.ts';
import { drawerBoxParts } from './drawer-box.ts';
import { framedPanelParts } from './framed-panel.ts';
import type { FrontsInSequence } from './front-sequences.ts';
import type { PartRole } from './part.ts';
import { shelfParts } from './shelves.ts';
import { slab, type UnmarkedPart } from './slab.ts';
import { standingOn, webFrameParts } from './web-frame.ts';

/**
 * Everything that fills the face: fronts in or on the case or its frame, partitions and dividers, drawer boxes and
 * shelves. From top to bottom and from left to right, as the cells are written.
 */
export function faceParts(
  face: FaceDesign,
  layout: CarcaseLayout,
  root: LaidCell,
  inSequence: FrontsInSequence,
): readonly UnmarkedPart[] {
  const parts: UnmarkedPart[] = [];
  collect(face, layout, root, inSequence, parts);
  return parts;
}

function collect(
  face: FaceDesign,
  layout: CarcaseLayout,
  laid: LaidCell,
  inSequence: FrontsInSequence,
  parts: UnmarkedPart[],
): void {
  const cell = laid.cell;
  switch (cell.kind) {
    case 'row':
    case 'stack':
      for (const divider of laid.dividers) {
        parts.push(...dividerParts(face, layout, divider, cell, neighboursOf(divider, laid, cell)));
      }
      for (const inner of laid.cells) collect(face, layout, inner, inSequence, parts);
      return;
    case 'open':
      if (cell.shelves !== undefined)
        parts.push(...shelfParts(cell, cell.shelves, reachBefore(cell, face, layout), layout, laid.opening));
      return;
    case 'front': {
      parts.push(...frontParts(face, cell, layout, laid.leaves, inSequence));
      const drawer = cell.drawer ?? face.drawers;
      if (cell.what === 'drawer' && drawer !== undefined) {
        const reach = reachBehind(cell, face, layout);
        parts.push(
          ...drawerBoxParts(cell, drawer, reach, layout, laid.opening),
          ...compartmentParts(cell, drawer, reach, layout, laid.opening),
        );
      }
      if (cell.shelves !== undefined) {
        parts.push(...shelfParts(cell, cell.shelves, reachBehind(cell, face, layout), layout, laid.opening));
      }
      for (const inner of laid.cells) collect(face, layout, inner, inSequence, parts);
      return;
    }
    default: {
      const unknown: never = cell;
      void unknown;
    }
  }
}

/** What could be laid out of the two cells beside a divider. */
function neighboursOf(divider: LaidDivider, laid: LaidCell, group: GroupCell): readonly LaidCell[] {
  const at = group.dividers.indexOf(divider.divider);
  const beside = [group.cells[at], group.cells[at + 1]];
  return laid.cells.filter((inner) => beside.includes(inner.cell));
}

function frontParts(
  face: FaceDesign,
  cell: FrontCell,
  layout: CarcaseLayout,
  leaves: readonly Rectangle[],
  inSequence: FrontsInSequence,
): readonly UnmarkedPart[] {
  const { stock, edging } = frontMaterial(cell, face) ?? {};
  const z = frontDeep(cell, face, layout);
  const role: PartRole = cell.what === 'drawer' ? 'drawer-front' : cell.what;
  const framed = doorFrame(cell, face);
  return leaves.flatMap((leaf, at) => {
    const hand = leaves.length === 1 ? '' : at === 0 ? 'left ' : 'right ';
    if (framed !== undefined) {
      return framedPanelParts(
        framed,
        {
          id: leafId(cell, leaves.length, at),
          words: `${hand}door${quoted(cell.name)}`,
          box: { ...leaf, z },
          thin: 'z',
          across: 'x',
          ends: ['left', 'right'],
          stock,
          origin: cell.origin,
          cell: cell.id,
        },
        [],
      );
    }
    const id = leafId(cell, leaves.length, at);
    const followed = inSequence.get(id);
    return slab({
      id,
      label: `${hand}${frontWords(cell.what)}${quoted(cell.name)}`,
      role,
      stock,
      edging,
      x: leaf.x,
      y: leaf.y,
      z,
      thin: 'z',
      // A door hangs with its grain upright, the grain of a drawer front and of a lid runs across (common practice).
      grain: followed?.grain ?? (cell.what === 'door' ? 'y' : 'x'),
      origin: cell.origin,
      cell: cell.id,
      run: followed?.run,
    });
  });
}

/** 'drawer front' */
export function frontWords(what: FrontCell['what']): string {
  switch (what) {
    case 'door':
      return 'door';
    case 'drawer':
      return 'drawer front';
    case 'lid':
      return 'lid';
    case 'false-front':
      return 'false front';
    default: {
      const unknown: never = what;
      return unknown;
    }
  }
}

/**
 * A divider comes forward to the front of the body; one that inset fronts cover stops behind them. In a face frame it
 * has a member of the frame before it, and reaches behind the frame from side to side of the case.
 */
function dividerParts(
  face: FaceDesign,
  layout: CarcaseLayout,
  laid: LaidDivider,
  group: GroupCell,
  neighbours: readonly LaidCell[],
): readonly UnmarkedPart[] {
  const { divider, at } = laid;
  const covering = coveringFronts(group, placeOf(divider, group), face);
  const front = thickestFront(covering, face);
  const z = dividerDeep(group, front, face, layout);
  const thin = group.kind === 'row' ? 'x' : 'y';
  const run = group.kind === 'row' ? 'y' : 'x';
  const whole = { ...at, [run]: toInterior(at[run], run, layout) };
  const panel = (role: PartRole, label: string) =>
    slab({
      id: divider.id,
      label,
      role,
      stock: divider.material.stock,
      edging: divider.edging,
      ...whole,
      z,
      thin,
      grain: run,
      origin: divider.origin,
    });
  const between = neighbourWords(neighbours);
  const { frame } = layout;
  const member =
    frame === undefined || covering.length > 0 || group.behind !== undefined
      ? []
      : [
          slab({
            id: `${divider.id}/frame`,
            label: `${run === 'y' ? 'middle stile' : 'middle rail'}${between}`,
            role: run === 'y' ? 'frame-stile' : 'frame-rail',
            stock: frame.stock,
            ...at,
            z: spanFrom(layout.facePlane, frame.thickness),
            thin: 'z',
            grain: run,
            origin: divider.origin,
          }),
        ];
  switch (divider.form) {
    case 'none':
      return [];
    case 'partition':
      return [panel('partition', `partition${between}`), ...member];
    case 'panel':
      return [panel('divider-panel', `divider${between}`), ...member];
    case 'web-frame':
      return [
        ...webFrameParts(
          divider,
          whole,
          z,
          thin,
          run,
          between,
          layout.unit,
          standingOn(neighbours, group, placeOf(divider, group)),
        ),
        ...member,
      ];
    default: {
      const unknown: never = divider.form;
      return unknown;
    }
  }
}

/** The inset fronts that a divider stops behind. */
function coveringFronts(group: GroupCell, at: number, face: FaceDesign): readonly FrontCell[] {
  if (!isBehindFronts(group, at, face)) return [];
  const { before, after } = frontsAtDivider(group, at);
  return [...before, ...after];
}

/** Behind a door: from its back, or from the back of the fronts behind it. */
function dividerDeep(group: GroupCell, front: Figure | undefined, face: FaceDesign, layout: CarcaseLayout): Span {
  const inside = layout.inside.z;
  if (group.behind === undefined) return front === undefined ? inside : behindFronts(front, layout);
  const reach = [
    ...reachBehindDoor(group.behind, face, layout),
    ...(front === undefined ? [] : [plus('thickness of the fronts', front)]),
  ];
  if (!derive('', reach).length.isPositive()) return inside;
  return spanFrom(
    derive('behind the door', [plus('the front of the body', inside.start), ...reach]),
    derive('from the door to the back', [plus('depth inside', inside.size), ...turned(reach)]),
  );
}

/** From the back of the fronts, or from the front of the body where a frame is thicker than they are, to the back. */
function behindFronts(front: Figure, layout: CarcaseLayout): Span {
  const inside = layout.inside.z;
  const reach: Operand[] = [plus('thickness of the fronts', front)];
  if (layout.frame !== undefined) reach.push(less('thickness of the frame', layout.frame.thickness));
  if (!derive('', reach).length.isPositive()) return inside;
  return spanFrom(
    derive('behind the fronts', [plus('the front of the body', inside.start), ...reach]),
    derive('from the fronts to the back', [plus('depth inside', inside.size), ...turned(reach)]),
  );
}

function neighbourWords(neighbours: readonly LaidCell[]): string {
  const names = neighbours.map((laid) => laid.cell.name).filter((name) => name !== undefined);
  const [first, second] = names;
  if (first === undefined) return '';
  return second === undefined ? ` beside "${first}"` : ` between "${first}" and "${second}"`;
}

function quoted(name: string | undefined): string {
  return name === undefined ? '' : ` "${name}"`;
}
