import type { NailersDesign, ToeSpaceDesign } from '../design/construction-design.ts';
import { derive, less, plus } from '../design/derive.ts';
import type { BackDesign, CarcaseDesign, FaceDesign, FrameDesign, PieceDesign, TopDesign } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { CarcaseLayout, FaceEdges, Rectangle, Span } from '../evaluation.ts';
import { frontsStandBefore } from './front-thickness.ts';
import { spanFrom, spanUpTo, zeroAt } from './spans.ts';

/**
 * From the overall size and the carcase to the body, the face and the inside. Of fronts it knows only how far they stand
 * before the case, for the depth of the piece is that of the whole. Knows nothing of parts.
 *
 * A carcase part that is not written takes nothing: without sides the face is as wide as the body. The plinth stands
 * under the body, flush with its ends and its back. An applied back counts as part of the piece's depth: the body ends
 * in front of it. A face frame, fronts that stand before it and an overhang of the top before them all take from the
 * depth of the body.
 */

/** Undefined while width, height or depth of the piece is missing. Sizes may come out negative: the checks say so. */
export function layOutCarcase(design: PieceDesign): CarcaseLayout | undefined {
  const { width, height, depth } = design.size;
  if (width === undefined || height === undefined || depth === undefined) return undefined;
  const carcase = design.carcase;
  const outside = {
    x: spanFrom(zeroAt('the left end of the piece'), width),
    y: spanFrom(zeroAt('the floor'), height),
    z: spanFrom(zeroAt('the foremost point of the piece'), depth),
  };
  const frame = carcase.frame;
  const before = beforeBody(carcase, design.face);
  const body = { x: bodyAcross(carcase, width), y: bodyUpright(carcase, height), z: bodyDeep(carcase, depth, before) };
  const interior = {
    x: interiorAcross(carcase, body.x, frame === undefined ? 'width of the face' : 'width inside the case'),
    y: interiorUpright(carcase, body.y, frame === undefined ? 'height of the face' : 'height inside the case'),
  };
  return {
    unit: design.units.unit,
    ...(design.carcase.hung?.above === undefined ? {} : { aboveFloor: design.carcase.hung.above }),
    outside,
    body,
    interior,
    face: frame === undefined ? interior : insideFrame(frame, body),
    facePlane: facePlaneOf(frame, body.z),
    ...(frame === undefined ? {} : { frame }),
    edges: frame === undefined ? edgesOfCase(carcase) : edgesOfFrame(frame),
    inside: { z: insideDeep(carcase.back, body.z) },
  };
}

function bodyAcross(carcase: CarcaseDesign, width: Figure): Span {
  const overhang = carcase.top?.placement === 'over' ? carcase.top.overhangEnds : undefined;
  const proud = proudOf(carcase.frame);
  const start = derive('where the body begins', [
    ...(overhang === undefined ? [] : [plus('overhang of the top at the left end', overhang)]),
    ...(proud === undefined ? [] : [plus('the frame stands out beyond the left side', proud)]),
  ]);
  return spanFrom(
    start,
    derive('width of the body', [
      plus('width of the piece', width),
      ...(overhang === undefined ? [] : [less('overhang of the top at each end', overhang, 2)]),
      ...(proud === undefined ? [] : [less('the frame stands out at each end', proud, 2)]),
    ]),
  );
}

/** A flush frame is none that stands out by nothing. */
function proudOf(frame: FrameDesign | undefined): Figure | undefined {
  return frame?.proud === undefined || frame.proud.length.isZero() ? undefined : frame.proud;
}

/** What the body stands on. */
function baseOf(carcase: CarcaseDesign): { readonly words: string; readonly height: Figure } | undefined {
  const { plinth, toeSpace, feet } = carcase;
  if (plinth !== undefined) return { words: 'height of the plinth', height: plinth.height };
  if (toeSpace !== undefined) return { words: 'height of the toe space', height: toeSpace.height };
  return feet && { words: 'height of the feet', height: feet.height };
}

function bodyUpright(carcase: CarcaseDesign, height: Figure): Span {
  const base = baseOf(carcase);
  const start = derive('the foot of the body', base === undefined ? [] : [plus(base.words, base.height)]);
  const operands: Operand[] = [plus('height of the piece', height)];
  if (carcase.top?.placement === 'over') operands.push(less('thickness of the top', carcase.top.thickness));
  if (base !== undefined) operands.push(less(base.words, base.height));
  return spanFrom(start, derive('height of the body', operands));
}

/**
 * What lies before the body: the frame and the fronts on it, and before them the overhang of the top, which is what one
 * sees of it: it counts from the foremost of case, frame and fronts.
 */
function beforeBody(carcase: CarcaseDesign, face: FaceDesign | undefined): readonly Operand[] {
  const top = topOver(carcase);
  const fronts = face === undefined ? undefined : frontsStandBefore(face);
  return [
    // Less than nothing stands nowhere before the fronts; that it cannot be is said elsewhere.
    ...(top === undefined || top.overhangFront.length.isNegative()
      ? []
      : [plus('overhang of the top in front', top.overhangFront)]),
    ...(carcase.frame === undefined ? [] : [plus('thickness of the frame', carcase.frame.thickness)]),
    ...(fronts === undefined ? [] : [plus('the fronts stand before it', fronts)]),
  ];
}

/** The top, where it lies over the sides. */
export function topOver(carcase: CarcaseDesign): TopDesign | undefined {
  return carcase.top?.placement === 'over' ? carcase.top : undefined;
}

function bodyDeep(carcase: CarcaseDesign, depth: Figure, before: readonly Operand[]): Span {
  const top = topOver(carcase);
  const operands: Operand[] = [plus('depth of the piece', depth), ...before.map(takenAway)];
  if (top !== undefined) operands.push(less('overhang of the top behind', top.overhangBack));
  if (carcase.back?.fixing === 'applied') operands.push(less('thickness of the back', carcase.back.thickness));
  return spanFrom(derive('the front of the body', before), derive('depth of the body', operands));
}

function takenAway(operand: Operand): Operand {
  return operand.sign === '+' ? { ...operand, sign: '-' } : operand;
}

function facePlaneOf(frame: FrameDesign | undefined, body: Span): Figure {
  if (frame === undefined) return body.start;
  return derive('the front of the frame', [
    plus('the front of the body', body.start),
    less('thickness of the frame', frame.thickness),
  ]);
}

function insideFrame(frame: FrameDesign, body: Rectangle): Rectangle {
  const proud = proudOf(frame);
  return {
    x: spanFrom(
      derive('the inner edge of the left stile', [
        plus('where the body begins', body.x.start),
        ...(proud === undefined ? [] : [less('the frame stands out beyond the left side', proud)]),
        plus('width of the left stile', frame.stiles),
      ]),
      derive('width of the face', [
        plus('width of the body', body.x.size),
        ...(proud === undefined ? [] : [plus('the frame stands out at each end', proud, 2)]),
        less('width of the stiles', frame.stiles, 2),
      ]),
    ),
    y: spanFrom(
      derive('the upper edge of the bottom rail', [
        plus('the foot of the body', body.y.start),
        plus('width of the bottom rail', frame.bottomRail),
      ]),
      derive('height of the face', [
        plus('height of the body', body.y.size),
        less('width of the top rail', frame.topRail),
        less('width of the bottom rail', frame.bottomRail),
      ]),
    ),
  };
}

function edgesOfFrame(frame: FrameDesign): FaceEdges {
  return { left: frame.stiles, right: frame.stiles, top: frame.topRail, bottom: frame.bottomRail };
}

/** A top that lies over the sides is no edge to lap: it stands out before the fronts, or is flush with them. */
function edgesOfCase(carcase: CarcaseDesign): FaceEdges {
  const { sides, bottom, stretchers, top } = carcase;
  const roof = [
    ...(stretchers === undefined ? [] : [plus('thickness of the stretchers', stretchers.thickness)]),
    ...(top?.placement === 'between' ? [plus('thickness of the top', top.thickness)] : []),
  ];
  const [onlyRoof] = roof;
  return {
    ...(sides === undefined ? {} : { left: sides.thickness, right: sides.thickness }),
    ...(bottom === undefined ? {} : { bottom: bottom.thickness }),
    ...(onlyRoof === undefined ? {} : { top: roof.length === 1 ? onlyRoof.figure : derive('edge above', roof) }),
  };
}

function interiorAcross(carcase: CarcaseDesign, body: Span, rule: string): Span {
  const sides = carcase.sides;
  const start = derive('the inner face of the left side', [
    plus('where the body begins', body.start),
    ...(sides === undefined ? [] : [plus('thickness of the left side', sides.thickness)]),
  ]);
  return spanFrom(
    start,
    derive(rule, [
      plus('width of the body', body.size),
      ...(sides === undefined ? [] : [less('thickness of the sides', sides.thickness, 2)]),
    ]),
  );
}

function interiorUpright(carcase: CarcaseDesign, body: Span, rule: string): Span {
  const start: Operand[] = [plus('the foot of the body', body.start)];
  const operands: Operand[] = [plus('height of the body', body.size)];
  if (carcase.bottom !== undefined) {
    start.push(plus('thickness of the bottom', carcase.bottom.thickness));
    operands.push(less('thickness of the bottom', carcase.bottom.thickness));
  }
  if (carcase.stretchers !== undefined) {
    operands.push(less('thickness of the stretchers', carcase.stretchers.thickness));
  }
  if (carcase.top?.placement === 'between') operands.push(less('thickness of the top', carcase.top.thickness));
  return spanFrom(derive('the upper face of the bottom', start), derive(rule, operands));
}

function insideDeep(back: BackDesign | undefined, body: Span): Span {
  if (back === undefined || back.fixing === 'applied') {
    return spanFrom(body.start, derive('depth inside', [plus('depth of the body', body.size)]));
  }
  return spanFrom(
    body.start,
    derive('depth inside', [
      plus('depth of the body', body.size),
      less('the back stands in from the back edge', back.inset),
      less('thickness of the back', back.thickness),
    ]),
  );
}

/** Where the panel that closes the back lies, front to back. */
export function backDeep(back: BackDesign, layout: CarcaseLayout): Span {
  return spanFrom(layout.inside.z.end, back.thickness);
}

/** What lies under the body: from its front, set back, to its back. */
export function plinthDeep(setBack: Figure, layout: CarcaseLayout): Span {
  const start = derive('the front of the plinth', [
    plus('the front of the body', layout.body.z.start),
    plus('the plinth is set back', setBack),
  ]);
  return spanFrom(
    start,
    derive('depth of the plinth', [
      plus('depth of the body', layout.body.z.size),
      less('the plinth is set back', setBack),
    ]),
  );
}

/** The board that closes a toe space, behind it. */
export function toeBoardDeep(toeSpace: ToeSpaceDesign, layout: CarcaseLayout): Span {
  return spanFrom(
    derive('the front of the toe board', [
      plus('the front of the body', layout.body.z.start),
      plus('depth of the toe space', toeSpace.depth),
    ]),
    toeSpace.thickness,
  );
}

/** The strips that carry a hung piece lie behind its back. */
export function nailersDeep(nailers: NailersDesign, back: BackDesign | undefined, layout: CarcaseLayout): Span {
  if (back === undefined || back.fixing === 'applied') return spanUpTo(layout.body.z.end, nailers.thickness);
  return spanFrom(backDeep(back, layout).end, nailers.thickness);
}

/** A stile as far as the frame reaches: beyond the case where the frame stands out. */
export function frameAcross(frame: FrameDesign, layout: Pick<CarcaseLayout, 'body'>): Span {
  const { x } = layout.body;
  const proud = proudOf(frame);
  if (proud === undefined) return x;
  return spanFrom(
    derive('where the frame begins', [
      plus('where the body begins', x.start),
      less('the frame stands out beyond it', proud),
    ]),
    derive('width of the frame', [plus('width of the body', x.size), plus('it stands out at each end', proud, 2)]),
  );
}

/** The two stretchers lie under the top: one along the front of the body, one along its back. */
export function stretchersDeep(width: Figure, layout: CarcaseLayout): { readonly front: Span; readonly rear: Span } {
  return { front: spanFrom(layout.body.z.start, width), rear: spanUpTo(layout.body.z.end, width) };
}
