import { derive, less, plus } from '../design/derive.ts';
import type { BackDesign, CarcaseDesign, FrameDesign, PieceDesign, TopDesign } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { Stock } from '../design/shop.ts';
import type { CarcaseLayout, LaidCell, Rectangle, Span } from '../evaluation.ts';
import { backDeep, frameAcross, stretchersDeep } from '../layout/carcase.ts';
import { spanFrom, spanUpTo, zeroAt } from '../layout/spans.ts';
import { Rational } from '../length/rational.ts';
import { baseParts, nailerParts } from './base-parts.ts';
import { dividersAt, framedPanelParts } from './framed-panel.ts';
import { made } from './made-of.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/**
 * Top, plinth, sides, bottom, stretchers, back and face frame, as slabs: what joints take from them is not computed here, except
 * that a back reaches into its groove or rabbet.
 */
export function carcaseParts(design: PieceDesign, layout: CarcaseLayout, face?: LaidCell): readonly UnmarkedPart[] {
  const carcase = design.carcase;
  return [
    ...topParts(carcase, layout),
    ...sideParts(carcase, layout, face),
    ...bottomParts(carcase, layout),
    ...stretcherParts(carcase, layout),
    ...baseParts(carcase, layout),
    ...(carcase.back === undefined ? [] : backParts(carcase, carcase.back, layout)),
    ...(carcase.nailers === undefined ? [] : nailerParts(carcase.nailers, carcase.back, layout)),
    ...(carcase.frame === undefined ? [] : frameParts(carcase.frame, layout)),
  ];
}

function topParts(carcase: CarcaseDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const top = carcase.top;
  if (top === undefined) return [];
  const common = {
    id: 'case/top',
    label: top.lid === undefined ? 'top' : 'lid',
    role: 'top',
    ...made(top),
    thin: 'y',
    grain: 'x',
  } as const;
  switch (top.placement) {
    case 'over': {
      const { x, y } = layout.outside;
      return [slab({ ...common, x, y: spanUpTo(y.end, top.thickness), z: topDeep(top, layout) })];
    }
    case 'between':
      return [
        slab({ ...common, x: layout.interior.x, y: spanUpTo(layout.body.y.end, top.thickness), z: layout.body.z }),
      ];
    default: {
      const unknown: never = top.placement;
      return unknown;
    }
  }
}

/** From the front of the piece to its back: what stands before the body stands under the top. */
function topDeep(top: TopDesign, layout: CarcaseLayout): Span {
  const { z } = layout.outside;
  if (!top.overhangFront.length.isNegative()) return z;
  const operand = less('overhang of the top in front', top.overhangFront);
  return spanFrom(
    derive('the front of the top', [operand]),
    derive('depth of the top', [
      plus('depth of the piece', z.size),
      plus('overhang of the top in front', top.overhangFront),
    ]),
  );
}

/** Stiles run the whole height of the body, rails stand between them; their joints are not computed. */
function frameParts(frame: FrameDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const { body, face } = layout;
  const across = frameAcross(frame, layout);
  const common = { ...made(frame), thin: 'z', z: spanFrom(layout.facePlane, frame.thickness) } as const;
  const stile = { ...common, role: 'frame-stile', grain: 'y', y: body.y } as const;
  const rail = { ...common, role: 'frame-rail', grain: 'x', x: face.x } as const;
  return [
    slab({ ...stile, id: 'case/frame-stile-left', label: 'left stile', x: spanFrom(across.start, frame.stiles) }),
    slab({ ...stile, id: 'case/frame-stile-right', label: 'right stile', x: spanUpTo(across.end, frame.stiles) }),
    slab({ ...rail, id: 'case/frame-top-rail', label: 'top rail', y: spanUpTo(body.y.end, frame.topRail) }),
    slab({ ...rail, id: 'case/frame-bottom-rail', label: 'bottom rail', y: spanFrom(body.y.start, frame.bottomRail) }),
  ];
}

/** Sides are as high as the body; a bottom that lies under them takes its thickness, a toe space lets them down. */
function sidesUpright(carcase: CarcaseDesign, body: Span, layout: CarcaseLayout): Span {
  const bottom = carcase.bottom?.placement === 'under' ? carcase.bottom : undefined;
  if (bottom !== undefined) {
    return spanFrom(
      layout.interior.y.start,
      derive('height of the sides, which stand on the bottom', [
        plus('height of the body', body.size),
        less('thickness of the bottom', bottom.thickness),
      ]),
    );
  }
  const { toeSpace } = carcase;
  if (toeSpace === undefined) return body;
  return spanFrom(
    zeroAt('the floor'),
    derive('height of the sides, which stand on the floor', [
      plus('height of the body', body.size),
      plus('height of the toe space', toeSpace.height),
    ]),
  );
}

function sideParts(carcase: CarcaseDesign, layout: CarcaseLayout, face: LaidCell | undefined): readonly UnmarkedPart[] {
  const sides = carcase.sides;
  if (sides === undefined) return [];
  const { x, y, z } = layout.body;
  const upright = sidesUpright(carcase, y, layout);
  const common = { role: 'side', ...made(sides), thin: 'x', grain: 'y', y: upright, z } as const;
  return (['left', 'right'] as const).flatMap((end) => {
    const across = end === 'left' ? spanFrom(x.start, sides.thickness) : spanUpTo(x.end, sides.thickness);
    const named = { id: `case/side-${end}`, words: `${end} side` };
    if (sides.framed === undefined) return [slab({ ...common, id: named.id, label: named.words, x: across })];
    return framedPanelParts(
      sides.framed,
      {
        ...named,
        ...made(sides),
        box: { x: across, y: upright, z },
        thin: 'x',
        across: 'z',
        ends: ['front', 'rear'],
      },
      dividersAt(end, face),
    );
  });
}

function bottomParts(carcase: CarcaseDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const bottom = carcase.bottom;
  if (bottom === undefined) return [];
  return [
    slab({
      id: 'case/bottom',
      label: 'bottom',
      role: 'bottom',
      ...made(bottom),
      thin: 'y',
      grain: 'x',
      x: bottom.placement === 'under' ? layout.body.x : layout.interior.x,
      y: spanFrom(layout.body.y.start, bottom.thickness),
      z: layout.body.z,
    }),
  ];
}

function stretcherParts(carcase: CarcaseDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const stretchers = carcase.stretchers;
  if (stretchers === undefined) return [];
  const { front, rear } = stretchersDeep(stretchers.width, layout);
  const common = {
    role: 'stretcher',
    ...made(stretchers),
    thin: 'y',
    grain: 'x',
    x: layout.interior.x,
    y: spanFrom(layout.interior.y.end, stretchers.thickness),
  } as const;
  return [
    slab({ ...common, id: 'case/stretcher-front', label: 'front stretcher', z: front }),
    slab({ ...common, id: 'case/stretcher-rear', label: 'rear stretcher', z: rear }),
  ];
}

/**
 * An applied back covers the body. One in a groove or rabbet fills the space between sides, bottom and what closes the
 * case above, and reaches into each of them by the groove's depth; where there is no such part it ends with the body.
 * Its grain stands upright (common practice) unless only a back with its grain across comes out of the sheet.
 */
function backParts(carcase: CarcaseDesign, back: BackDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const common = { id: 'case/back', label: 'back', role: 'back', ...made(back), thin: 'z' } as const;
  const z = backDeep(back, layout);
  const { x, y } = back.fixing === 'applied' ? layout.body : reachingBack(carcase, back, layout);
  if (back.framed !== undefined) {
    return framedPanelParts(
      back.framed,
      {
        id: 'case/back',
        words: 'back',
        ...made(back),
        box: { x, y, z },
        thin: 'z',
        across: 'x',
        ends: ['left', 'right'],
      },
      [],
    );
  }
  const isTurned = !comesOutOf(back.stock, y.size, x.size) && comesOutOf(back.stock, x.size, y.size);
  return [slab({ ...common, grain: isTurned ? 'x' : 'y', x, y, z })];
}

/** A stock that does not say how large it is is large enough; boards are glued up to any width. */
function comesOutOf(stock: Stock | undefined, along: Figure, across: Figure): boolean {
  const isLong = stock?.length !== undefined && along.length.compare(stock.length.length) > 0;
  const isWide = stock?.form === 'sheet' && stock.width !== undefined && across.length.compare(stock.width.length) > 0;
  return !isLong && !isWide;
}

function reachingBack(carcase: CarcaseDesign, back: BackDesign, layout: CarcaseLayout): Rectangle {
  const into = back.depth;
  const hold = back.fixing === 'groove' ? 'groove' : 'rabbet';
  const hasSides = carcase.sides !== undefined;
  const hasRoof = carcase.stretchers !== undefined || carcase.top !== undefined;
  return {
    x: reaching(layout.interior.x, 'width', hasSides, hasSides, hold, into, back.shy),
    y: reaching(layout.interior.y, 'height', carcase.bottom !== undefined, hasRoof, hold, into, back.shy),
  };
}

function reaching(
  inside: Span,
  what: 'width' | 'height',
  atStart: boolean,
  atEnd: boolean,
  hold: 'groove' | 'rabbet',
  into: Figure,
  shy: Figure | undefined,
): Span {
  const times = (atStart ? 1 : 0) + (atEnd ? 1 : 0);
  const start: Operand[] = [plus('where the inside begins', inside.start)];
  if (atStart) start.push(less(`depth of the ${hold}`, into));
  const isShy = shy !== undefined && !shy.length.isZero() && times > 0;
  // What it is short of is left half at each end that lies in wood.
  if (isShy && atStart) start.push(plus('free at its edge', shy, Rational.of(1, times)));
  return spanFrom(
    derive('where the back begins', start),
    derive(`${what} of the back`, [
      plus(`${what} inside the case`, inside.size),
      ...(times === 0 ? [] : [plus(`depth of the ${hold}`, into, times)]),
      ...(isShy ? [less('short of what holds it, in all', shy)] : []),
    ]),
  );
}
