import type { Cell, FramedDesign, PieceDesign } from '@fettle/engine';
import { caseWithFace, door, panel, place, rest, stock, written } from '../design-builder.ts';

/** Stiles 2-1/4", stub tenons 3/8" each 1/32" short, a solid panel in grooves 3/8" deep with 1/16" float at each edge. */
export function framed(more: Partial<FramedDesign> = {}): FramedDesign {
  return {
    origin: place(),
    stiles: written('2-1/4'),
    topRail: written('3'),
    bottomRail: written('4'),
    tenons: { origin: place(), length: written('3/8'), short: written('1/32') },
    panel: {
      ...panel('3/8', stock('cherry', 'board')),
      groove: written('3/8'),
      shyEachEdge: written('1/16'),
      isGlued: false,
    },
    ...more,
  };
}

/** A case 20" deep and 41-1/2" high whose sides are frames 3/4" thick; a face of 30" x 40". */
export function caseWithFramedSides(
  more: Partial<FramedDesign> = {},
  root: Cell = door('door', rest),
  carcase: Partial<PieceDesign['carcase']> = {},
): PieceDesign {
  const plain = caseWithFace('30', '40', root);
  return {
    ...plain,
    size: { ...plain.size, depth: written('20') },
    carcase: {
      ...plain.carcase,
      sides: { ...panel('3/4', stock('cherry', 'board')), framed: framed(more) },
      ...carcase,
    },
  };
}
