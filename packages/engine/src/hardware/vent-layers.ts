import { derive, less, plus } from '../design/derive.ts';
import type { FrontCell, OpenCell } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { VentDesign, VentLayer } from '../design/vent-design.ts';
import type { LaidCell, Rectangle, Span } from '../evaluation.ts';
import { leafId } from '../layout/leaf-ids.ts';
import { spanFrom } from '../layout/spans.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import type { HardwareCase } from './fit-hardware.ts';

/** The openings of one vent, from the front to the back: which part each goes through, and where it lies. */
export interface VentInPlace {
  readonly id: string;
  readonly cell: FrontCell | OpenCell;
  readonly vent: VentDesign;
  readonly layers: readonly VentLayerInPlace[];
}

export interface VentLayerInPlace {
  readonly what: 'front' | 'front of the box' | 'back of the box' | 'back';
  readonly part: UnmarkedPart;
  /** Clear, inside the lining. */
  readonly clear: Rectangle;
  /** What is cut. */
  readonly hole: Rectangle;
  readonly corners?: Figure;
}

const half = Rational.of(1, 2);

export function ventsInPlace({ face, parts }: Pick<HardwareCase, 'face' | 'parts'>): readonly VentInPlace[] {
  const found: VentInPlace[] = [];
  const waiting: LaidCell[] = [face];
  for (let laid = waiting.pop(); laid !== undefined; laid = waiting.pop()) {
    waiting.push(...laid.cells.toReversed());
    const { cell } = laid;
    if ((cell.kind !== 'open' && cell.kind !== 'front') || cell.vent === undefined) continue;
    const { vent } = cell;
    const own = parts.filter((part) => part.cell === cell.id);
    const fronts = own.filter(({ role }) => isFront(role));
    const bases: readonly (readonly [Rectangle, UnmarkedPart | undefined])[] =
      cell.kind !== 'front'
        ? [[laid.opening, undefined]]
        : fronts.length > 0
          ? fronts.map((front) => [front.box, front] as const)
          : laid.leaves.flatMap((leaf, at) => {
              const panel = panelFor(vent, leaf, leafId(cell, laid.leaves.length, at), own);
              return panel === undefined ? [] : [[leaf, panel] as const];
            });
    bases.forEach(([base, front], at) => {
      const id = `${cell.id}/vent${bases.length === 1 ? '' : at === 0 ? '-left' : '-right'}`;
      const layers = layersOf(vent, base, front, own, parts);
      if (layers.length > 0) found.push({ id, cell, vent, layers });
    });
  }
  return found;
}

/** Of a door of frame and panel: the lowest that reaches over its middle, else the topmost. */
function panelFor(
  { up, height }: VentDesign,
  leaf: Rectangle,
  frame: string,
  own: readonly UnmarkedPart[],
): UnmarkedPart | undefined {
  const middle = leaf.y.start.length.plus(up.length).plus(height.length.times(half));
  const panels = own
    .filter((part) => part.role === 'panel' && part.frame === frame)
    .sort((a, b) => a.box.y.start.length.compare(b.box.y.start.length));
  return panels.find(({ box }) => middle.compare(box.y.end.length) <= 0) ?? panels.at(-1);
}

function isFront(role: UnmarkedPart['role']): boolean {
  return role === 'drawer-front' || role === 'door' || role === 'lid' || role === 'false-front';
}

function layersOf(
  vent: VentDesign,
  base: Rectangle,
  front: UnmarkedPart | undefined,
  own: readonly UnmarkedPart[],
  parts: readonly UnmarkedPart[],
): readonly VentLayerInPlace[] {
  const clear = openingIn(base, vent);
  const ends = own
    .filter(({ role }) => role === 'drawer-end')
    .sort((a, b) => a.box.z.start.length.compare(b.box.z.start.length));
  const back = parts.find(({ role }) => role === 'back');
  const behind = (what: VentLayerInPlace['what'], part: UnmarkedPart | undefined, said: VentLayer | undefined) => {
    if (part === undefined || said === undefined) return [];
    const place = grown(clear, said);
    return [{ what, part, clear: place, hole: place, ...corners(vent) }];
  };
  return [
    ...(front === undefined
      ? []
      : [{ what: 'front' as const, part: front, clear, hole: linedHole(clear, vent), ...corners(vent) }]),
    ...behind('front of the box', ends[0], vent.box),
    ...behind('back of the box', ends[1], vent.box),
    ...behind('back', back, vent.back),
  ];
}

function corners({ corners: radius }: VentDesign): { readonly corners?: Figure } {
  return radius === undefined || radius.length.isZero() ? {} : { corners: radius };
}

/** In the middle of its front from left to right. */
function openingIn(base: Rectangle, { width, height, up }: VentDesign): Rectangle {
  return {
    x: spanFrom(
      derive('where the opening begins', [
        plus('where the front begins', base.x.start),
        plus('width of the front', base.x.size, half),
        less('width of the opening', width, half),
      ]),
      width,
    ),
    y: spanFrom(
      derive('where the opening begins', [plus('lower edge of the front', base.y.start), plus('up from there', up)]),
      height,
    ),
  };
}

function linedHole(clear: Rectangle, { lining }: VentDesign): Rectangle {
  return lining === undefined ? clear : around(clear, 'thickness of the lining', lining.thickness);
}

export function around({ x, y }: Rectangle, label: string, by: Figure): Rectangle {
  const more = (span: Span): Span =>
    spanFrom(
      derive('where it begins', [plus('where the opening begins', span.start), less(label, by)]),
      derive('its size', [plus('size of the opening', span.size), plus(label, by, 2)]),
    );
  return { x: more(x), y: more(y) };
}

/** Larger all round, or of its own size around the same middle. */
function grown(clear: Rectangle, { larger, width, height }: VentLayer): Rectangle {
  const base = larger === undefined ? clear : around(clear, 'larger all round', larger);
  return { x: resized(base.x, width), y: resized(base.y, height) };
}

function resized(span: Span, size: Figure | undefined): Span {
  if (size === undefined) return span;
  const middle: readonly Operand[] = [
    plus('where the opening in front begins', span.start),
    plus('its size', span.size, half),
  ];
  return spanFrom(derive('where it begins', [...middle, less('its own size', size, half)]), size);
}
