import { derive, less, plus } from '../design/derive.ts';
import type { DrawerDesign, FrontCell } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { CarcaseLayout, Rectangle, Span } from '../evaluation.ts';
import { turned } from '../layout/front-edges.ts';
import { spanFrom, spanUpTo, withinInterior } from '../layout/spans.ts';
import type { LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import {
  BEHIND_BOX,
  BESIDE_BOX,
  BOX_BOTTOM,
  BOX_BOTTOM_UP,
  BOX_SIDES,
  RUNNER_PLAY,
  usual,
} from '../tables/trade-habits.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/**
 * The box of a drawer: how large it is in its opening, and what it is made of.
 *
 * Corners: with dovetails and box joints the sides run the full depth and front and back the full width, and the joint
 * takes what overlaps. With rabbets the sides run the full depth and front and back reach into a rabbet half as deep as
 * the sides are thick (common practice). Butted, front and back stand between the sides. The bottom lies in a groove in
 * all four, or in three and under the back, or on the lower edges of all of them.
 */

export interface DrawerBox {
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
  /** What the opening leaves for the box, whatever the maker wrote. */
  readonly widthThere: Figure;
  readonly heightThere: Figure;
  /** From the back of the front to the front of the case's back. */
  readonly depthThere: Figure;
}

const half = Rational.of(1, 2);

/**
 * On side-mount slides the box is as wide as the opening less a slide at each side and as deep as the slide is long.
 * `front`: its opening as it is seen from the front, of which the case may leave less. `reach`: how far the back of its front lies behind the front of the body. Sizes may come out zero or negative, or larger than there is room: the checks say so.
 */
export function drawerBox(
  drawer: DrawerDesign,
  reach: readonly Operand[],
  layout: CarcaseLayout,
  front: Rectangle,
): DrawerBox {
  const opening = withinInterior(front, layout);
  const slides = drawer.slides;
  const widthThere = derive('width of the box', [
    plus('width of the opening', opening.x.size),
    slides === undefined
      ? less('free at each side', usual(BESIDE_BOX, layout.unit), 2)
      : less('taken by the slide at each side', slides.clearanceEachSide, 2),
  ]);
  const heightThere = derive('height of the box', [
    plus('height of the opening', opening.y.size),
    less('free under the box', drawer.clearBelow),
    less('free over the box', drawer.clearAbove),
  ]);
  const depthThere = derive('depth behind the front', [plus('depth inside', layout.inside.z.size), ...turned(reach)]);
  const width = drawer.boxWidth ?? widthThere;
  const depth =
    slides === undefined
      ? derive('depth of the box', [
          plus('depth behind the front', depthThere),
          less('free behind the box', usual(BEHIND_BOX, layout.unit)),
        ])
      : derive('as deep as the slide is long', [plus('length of the slide', slides.length)]);
  const left = derive('the box stands in the middle of its opening', [
    plus('where the opening begins', opening.x.start),
    plus('width of the opening', opening.x.size, half),
    less('width of the box', width, half),
  ]);
  const foot = derive('the foot of the box', [
    plus('where the opening begins', opening.y.start),
    plus('free under the box', drawer.clearBelow),
  ]);
  const behindFront = derive('the back of the front', [plus('the front of the body', layout.body.z.start), ...reach]);
  return {
    x: spanFrom(left, width),
    y: spanFrom(foot, drawer.boxHeight ?? heightThere),
    z: spanFrom(behindFront, depth),
    widthThere,
    heightThere,
    depthThere,
  };
}

export function drawerBoxParts(
  cell: FrontCell,
  drawer: DrawerDesign,
  reach: readonly Operand[],
  layout: CarcaseLayout,
  opening: Rectangle,
): readonly UnmarkedPart[] {
  const box = drawerBox(drawer, reach, layout, opening);
  const thick = drawer.sides?.thickness ?? usual(BOX_SIDES, layout.unit);
  const origin = drawer.sides?.origin ?? drawer.origin;
  const of = cell.name === undefined ? '' : ` of "${cell.name}"`;
  const side = {
    role: 'drawer-side',
    stock: drawer.sides?.stock,
    thin: 'x',
    grain: 'z',
    origin,
    cell: cell.id,
    y: wallsUpright(drawer, box, layout.unit),
    z: box.z,
  } as const;
  const end = { role: 'drawer-end', stock: drawer.sides?.stock, thin: 'z', grain: 'x', origin, cell: cell.id } as const;
  const endAcross = boxEndAcross(drawer, box.x, thick);
  return [
    slab({ ...side, id: `${cell.id}/box-left`, label: `left box side${of}`, x: spanFrom(box.x.start, thick) }),
    slab({ ...side, id: `${cell.id}/box-right`, label: `right box side${of}`, x: spanUpTo(box.x.end, thick) }),
    slab({
      ...end,
      id: `${cell.id}/box-front`,
      label: `box front${of}`,
      x: endAcross,
      y: side.y,
      z: spanFrom(box.z.start, thick),
    }),
    slab({
      ...end,
      id: `${cell.id}/box-back`,
      label: `box back${of}`,
      x: endAcross,
      y: drawer.bottomHeld === 'slid-in' ? aboveBottom(drawer, box, layout.unit) : side.y,
      z: spanUpTo(box.z.end, thick),
    }),
    boxBottom(cell, drawer, layout.unit, box, thick, of),
  ];
}

/** What is under the sides takes from their height. */
function wallsUpright(drawer: DrawerDesign, box: DrawerBox, unit: LengthUnit): Span {
  if (drawer.bottomHeld !== 'applied') return box.y;
  const thickness = bottomThickness(drawer, unit);
  return spanFrom(
    derive('on the bottom', [plus('the foot of the box', box.y.start), plus('thickness of the bottom', thickness)]),
    derive('height over the bottom', [
      plus('height of the box', box.y.size),
      less('thickness of the bottom', thickness),
    ]),
  );
}

/** A back that a bottom is slid in under stands on it. */
function aboveBottom(drawer: DrawerDesign, box: DrawerBox, unit: LengthUnit): Span {
  const up = grooveUp(drawer, unit);
  const thickness = bottomThickness(drawer, unit);
  return spanFrom(
    derive('the upper face of the bottom', [
      plus('the foot of the box', box.y.start),
      plus('up from the lower edge', up),
      plus('thickness of the bottom', thickness),
    ]),
    derive('height of the back, over the bottom', [
      plus('height of the box', box.y.size),
      less('up from the lower edge', up),
      less('thickness of the bottom', thickness),
    ]),
  );
}

export function bottomThickness({ bottom }: DrawerDesign, unit: LengthUnit): Figure {
  return bottom?.thickness ?? usual(BOX_BOTTOM, unit);
}

/** From the foot of the box to the upper face of its bottom. */
export function bottomUp(drawer: DrawerDesign, unit: LengthUnit): readonly Operand[] {
  const thickness = plus('thickness of the bottom', bottomThickness(drawer, unit));
  return drawer.bottomHeld === 'applied'
    ? [thickness]
    : [plus('the bottom lies up from the lower edge', grooveUp(drawer, unit)), thickness];
}

/**
 * From the lower edge of the box to the groove for its bottom: as usual, or over what runs under its middle and finds no
 * room under the box.
 */
export function grooveUp(drawer: DrawerDesign, unit: LengthUnit): Figure {
  if (drawer.bottomUp !== undefined) return drawer.bottomUp;
  const least = usual(BOX_BOTTOM_UP, unit);
  const under = underMiddle(drawer);
  if (under === undefined) return least;
  const over = derive('over what the box runs on', [
    plus('its height', under),
    plus('play over it', usual(RUNNER_PLAY, unit)),
    less('free under the box', drawer.clearBelow),
  ]);
  return over.length.compare(least.length) > 0 ? over : least;
}

/** Height of what runs under the middle of the box; undefined where nothing does, or its entry does not tell. */
export function underMiddle({ slides, runners }: DrawerDesign): Figure | undefined {
  if (slides !== undefined) return slides.mounting === 'centre' ? (slides.below ?? slides.height) : undefined;
  return runners?.isCentre === true ? runners.height : undefined;
}

function boxEndAcross(drawer: DrawerDesign, box: Span, thick: Figure): Span {
  switch (drawer.corners) {
    case 'dovetail':
    case 'box-joint':
      return box;
    case 'rabbet':
    case 'lock-rabbet':
      return {
        start: derive('the rabbet in the left side', [
          plus('where the box begins', box.start),
          plus('thickness of the side', thick, half),
        ]),
        size: derive('into half of the thickness of the sides', [
          plus('width of the box', box.size),
          less('thickness of the sides', thick),
        ]),
        end: derive('the rabbet in the right side', [
          plus('where the box ends', box.end),
          less('thickness of the side', thick, half),
        ]),
      };
    case 'butt':
      return {
        start: derive('between the sides', [
          plus('where the box begins', box.start),
          plus('thickness of the side', thick),
        ]),
        size: derive('between the sides', [
          plus('width of the box', box.size),
          less('thickness of the sides', thick, 2),
        ]),
        end: derive('between the sides', [plus('where the box ends', box.end), less('thickness of the side', thick)]),
      };
    default: {
      const unknown: never = drawer.corners;
      return unknown;
    }
  }
}

function boxBottom(
  cell: FrontCell,
  drawer: DrawerDesign,
  unit: LengthUnit,
  box: DrawerBox,
  thick: Figure,
  of: string,
): UnmarkedPart {
  const { bottom } = drawer;
  const common = {
    id: `${cell.id}/box-bottom`,
    label: `box bottom${of}`,
    role: 'drawer-bottom',
    stock: bottom?.stock,
    thin: 'y',
    // A bottom that is slid in from behind has its grain across, so that it moves towards the back.
    grain: 'x',
    origin: bottom?.origin ?? drawer.origin,
    cell: cell.id,
  } as const;
  const thickness = bottomThickness(drawer, unit);
  const held = drawer.bottomHeld ?? 'grooves';
  if (held === 'applied') return slab({ ...common, x: box.x, y: spanFrom(box.y.start, thickness), z: box.z });
  const inGrooves = (span: Span, what: 'width' | 'depth'): Span =>
    spanFrom(
      derive('in the groove', [
        plus('where the box begins', span.start),
        plus('thickness of the side', thick),
        less('depth of the groove', drawer.bottomGroove),
        plus('left short of both grooves', drawer.bottomShy, half),
      ]),
      held === 'slid-in' && what === 'depth'
        ? derive('depth of the box bottom, under the back', [
            plus('depth of the box', span.size),
            less('thickness of the front', thick),
            plus('depth of the groove', drawer.bottomGroove),
            less('left short of the groove', drawer.bottomShy, half),
          ])
        : derive(`${what} of the box bottom`, [
            plus(`${what} of the box`, span.size),
            less('thickness of the sides', thick, 2),
            plus('depth of the groove', drawer.bottomGroove, 2),
            less('left short of both grooves', drawer.bottomShy),
          ]),
    );
  const foot = derive('the groove for the bottom', [
    plus('the foot of the box', box.y.start),
    plus('up from the lower edge', grooveUp(drawer, unit)),
  ]);
  return slab({
    ...common,
    x: inGrooves(box.x, 'width'),
    y: spanFrom(foot, thickness),
    z: inGrooves(box.z, 'depth'),
  });
}
