import { derive, less, plus } from '../design/derive.ts';
import type { BackDesign, CarcaseDesign, PieceDesign } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { CarcaseLayout, Span } from '../evaluation.ts';
import { spanFrom, spanUpTo, zeroAt } from './spans.ts';

/**
 * From the overall size and the carcase to the body, the face and the inside. Knows nothing of fronts or of parts.
 *
 * A carcase part that is not written takes nothing: without sides the face is as wide as the body. The plinth stands
 * under the body, flush with its ends and its back. An applied back counts as part of the piece's depth: the body ends
 * in front of it.
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
  const body = { x: bodyAcross(carcase, width), y: bodyUpright(carcase, height), z: bodyDeep(carcase, depth) };
  return {
    outside,
    body,
    face: { x: faceAcross(carcase, body.x), y: faceUpright(carcase, body.y) },
    inside: { z: insideDeep(carcase.back, body.z) },
  };
}

function bodyAcross(carcase: CarcaseDesign, width: Figure): Span {
  const overhang = carcase.top?.placement === 'over' ? carcase.top.overhangEnds : undefined;
  const start = derive(
    'where the body begins',
    overhang === undefined ? [] : [plus('overhang of the top at the left end', overhang)],
  );
  return spanFrom(
    start,
    derive('width of the body', [
      plus('width of the piece', width),
      ...(overhang === undefined ? [] : [less('overhang of the top at each end', overhang, 2)]),
    ]),
  );
}

function bodyUpright(carcase: CarcaseDesign, height: Figure): Span {
  const plinth = carcase.plinth?.height;
  const start = derive('the foot of the body', plinth === undefined ? [] : [plus('height of the plinth', plinth)]);
  const operands: Operand[] = [plus('height of the piece', height)];
  if (carcase.top?.placement === 'over') operands.push(less('thickness of the top', carcase.top.thickness));
  if (plinth !== undefined) operands.push(less('height of the plinth', plinth));
  return spanFrom(start, derive('height of the body', operands));
}

function bodyDeep(carcase: CarcaseDesign, depth: Figure): Span {
  const top = carcase.top?.placement === 'over' ? carcase.top : undefined;
  const operands: Operand[] = [plus('depth of the piece', depth)];
  if (top !== undefined) {
    operands.push(less('overhang of the top in front', top.overhangFront));
    operands.push(less('overhang of the top behind', top.overhangBack));
  }
  if (carcase.back?.fixing === 'applied') operands.push(less('thickness of the back', carcase.back.thickness));
  const start = derive(
    'the front of the body',
    top === undefined ? [] : [plus('overhang of the top in front', top.overhangFront)],
  );
  return spanFrom(start, derive('depth of the body', operands));
}

function faceAcross(carcase: CarcaseDesign, body: Span): Span {
  const sides = carcase.sides;
  const start = derive('the inner face of the left side', [
    plus('where the body begins', body.start),
    ...(sides === undefined ? [] : [plus('thickness of the left side', sides.thickness)]),
  ]);
  return spanFrom(
    start,
    derive('width of the face', [
      plus('width of the body', body.size),
      ...(sides === undefined ? [] : [less('thickness of the sides', sides.thickness, 2)]),
    ]),
  );
}

function faceUpright(carcase: CarcaseDesign, body: Span): Span {
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
  return spanFrom(derive('the upper face of the bottom', start), derive('height of the face', operands));
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

/** The two stretchers lie under the top: one along the front of the body, one along its back. */
export function stretchersDeep(width: Figure, layout: CarcaseLayout): { readonly front: Span; readonly rear: Span } {
  return { front: spanFrom(layout.body.z.start, width), rear: spanUpTo(layout.body.z.end, width) };
}
