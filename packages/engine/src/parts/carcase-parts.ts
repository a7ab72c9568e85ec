import { derive, less, plus } from '../design/derive.ts';
import type { BackDesign, CarcaseDesign, PanelDesign, PieceDesign, PlinthDesign } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { CarcaseLayout, Span } from '../evaluation.ts';
import { backDeep, plinthDeep, stretchersDeep } from '../layout/carcase.ts';
import { spanFrom, spanUpTo, zeroAt } from '../layout/spans.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/**
 * Top, plinth, sides, bottom, stretchers and back, as slabs: what joints take from them is not computed here, except
 * that a back reaches into its groove or rabbet.
 */
export function carcaseParts(design: PieceDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const carcase = design.carcase;
  return [
    ...topParts(carcase, layout),
    ...sideParts(carcase, layout),
    ...bottomParts(carcase, layout),
    ...stretcherParts(carcase, layout),
    ...(carcase.plinth === undefined ? [] : plinthParts(carcase.plinth, layout)),
    ...(carcase.back === undefined ? [] : [backPart(carcase, carcase.back, layout)]),
  ];
}

function topParts(carcase: CarcaseDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const top = carcase.top;
  if (top === undefined) return [];
  const common = { id: 'case/top', label: 'top', role: 'top', ...made(top), thin: 'y', grain: 'x' } as const;
  switch (top.placement) {
    case 'over': {
      const { x, y, z } = layout.outside;
      return [slab({ ...common, x, y: spanUpTo(y.end, top.thickness), z })];
    }
    case 'between':
      return [slab({ ...common, x: layout.face.x, y: spanUpTo(layout.body.y.end, top.thickness), z: layout.body.z })];
    default: {
      const unknown: never = top.placement;
      return unknown;
    }
  }
}

/** Sides are as high as the body; a bottom that lies under them takes its thickness. */
function sideParts(carcase: CarcaseDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const sides = carcase.sides;
  if (sides === undefined) return [];
  const { x, y, z } = layout.body;
  const bottom = carcase.bottom?.placement === 'under' ? carcase.bottom : undefined;
  const upright =
    bottom === undefined
      ? y
      : spanFrom(
          layout.face.y.start,
          derive('height of the sides, which stand on the bottom', [
            plus('height of the body', y.size),
            less('thickness of the bottom', bottom.thickness),
          ]),
        );
  const common = { role: 'side', ...made(sides), thin: 'x', grain: 'y', y: upright, z } as const;
  return [
    slab({ ...common, id: 'case/side-left', label: 'left side', x: spanFrom(x.start, sides.thickness) }),
    slab({ ...common, id: 'case/side-right', label: 'right side', x: spanUpTo(x.end, sides.thickness) }),
  ];
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
      x: bottom.placement === 'under' ? layout.body.x : layout.face.x,
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
    x: layout.face.x,
    y: spanFrom(layout.face.y.end, stretchers.thickness),
  } as const;
  return [
    slab({ ...common, id: 'case/stretcher-front', label: 'front stretcher', z: front }),
    slab({ ...common, id: 'case/stretcher-rear', label: 'rear stretcher', z: rear }),
  ];
}

/** Front and back boards run the whole width, the two ends stand between them. */
function plinthParts(plinth: PlinthDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const x = layout.body.x;
  const z = plinthDeep(plinth.setBack, layout);
  const front = spanFrom(z.start, plinth.thickness);
  const rear = spanUpTo(z.end, plinth.thickness);
  const between = {
    start: front.end,
    size: derive('length of the plinth ends', [
      plus('depth of the plinth', z.size),
      less('thickness of the plinth', plinth.thickness, 2),
    ]),
    end: rear.start,
  };
  const common = { role: 'plinth', ...made(plinth), y: spanFrom(zeroAt('the floor'), plinth.height) } as const;
  return [
    slab({ ...common, id: 'case/plinth-front', label: 'plinth front', thin: 'z', grain: 'x', x, z: front }),
    slab({ ...common, id: 'case/plinth-back', label: 'plinth back', thin: 'z', grain: 'x', x, z: rear }),
    slab({
      ...common,
      id: 'case/plinth-end-left',
      label: 'left plinth end',
      thin: 'x',
      grain: 'z',
      x: spanFrom(x.start, plinth.thickness),
      z: between,
    }),
    slab({
      ...common,
      id: 'case/plinth-end-right',
      label: 'right plinth end',
      thin: 'x',
      grain: 'z',
      x: spanUpTo(x.end, plinth.thickness),
      z: between,
    }),
  ];
}

/**
 * An applied back covers the body. One in a groove or rabbet fills the space between sides, bottom and what closes the
 * case above, and reaches into each of them by the groove's depth; where there is no such part it ends with the body.
 */
function backPart(carcase: CarcaseDesign, back: BackDesign, layout: CarcaseLayout): UnmarkedPart {
  const common = { id: 'case/back', label: 'back', role: 'back', ...made(back), thin: 'z', grain: 'y' } as const;
  const z = backDeep(back, layout);
  if (back.fixing === 'applied') return slab({ ...common, x: layout.body.x, y: layout.body.y, z });
  const into = back.depth;
  const hold = back.fixing === 'groove' ? 'groove' : 'rabbet';
  const hasSides = carcase.sides !== undefined;
  const hasRoof = carcase.stretchers !== undefined || carcase.top !== undefined;
  return slab({
    ...common,
    x: reaching(layout.face.x, 'width', hasSides, hasSides, hold, into),
    y: reaching(layout.face.y, 'height', carcase.bottom !== undefined, hasRoof, hold, into),
    z,
  });
}

function reaching(
  face: Span,
  what: 'width' | 'height',
  atStart: boolean,
  atEnd: boolean,
  hold: 'groove' | 'rabbet',
  into: Figure,
): Span {
  const times = (atStart ? 1 : 0) + (atEnd ? 1 : 0);
  const start: Operand[] = [plus('where the face begins', face.start)];
  if (atStart) start.push(less(`depth of the ${hold}`, into));
  return spanFrom(
    derive('where the back begins', start),
    derive(`${what} of the back`, [
      plus(`${what} of the face`, face.size),
      ...(times === 0 ? [] : [plus(`depth of the ${hold}`, into, times)]),
    ]),
  );
}

function made(panel: PanelDesign): Pick<UnmarkedPart, 'origin'> & { readonly stock: PanelDesign['stock'] } {
  return { origin: panel.origin, stock: panel.stock };
}
