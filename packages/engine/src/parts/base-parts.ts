import type { FeetDesign, NailersDesign, ToeSpaceDesign } from '../design/construction-design.ts';
import { derive, less, plus } from '../design/derive.ts';
import type { BackDesign, CarcaseDesign, PlinthDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { CarcaseLayout, Span } from '../evaluation.ts';
import { nailersDeep, plinthDeep, toeBoardDeep } from '../layout/carcase.ts';
import { spanFrom, spanUpTo, zeroAt } from '../layout/spans.ts';
import { Rational } from '../length/rational.ts';
import { made } from './made-of.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/** What a case stands on or hangs by: plinth, toe board, feet and the rails between them, strips for the wall. */
export function baseParts(carcase: CarcaseDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const { plinth, toeSpace, feet } = carcase;
  if (plinth !== undefined) return plinthParts(plinth, layout);
  if (toeSpace !== undefined) return [toeBoard(toeSpace, layout)];
  return feet === undefined ? [] : feetParts(feet, layout);
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

function toeBoard(toeSpace: ToeSpaceDesign, layout: CarcaseLayout): UnmarkedPart {
  return slab({
    ...made(toeSpace),
    id: 'case/toe-board',
    label: 'toe board',
    role: 'plinth',
    thin: 'z',
    grain: 'x',
    x: layout.interior.x,
    y: spanFrom(zeroAt('the floor'), toeSpace.height),
    z: toeBoardDeep(toeSpace, layout),
  });
}

/** A foot under each corner of the body; rails stand between them, under the body. */
function feetParts(feet: FeetDesign, layout: CarcaseLayout): readonly UnmarkedPart[] {
  const { x, z } = layout.body;
  const thick = feet.thickness;
  const ends = {
    left: spanFrom(x.start, thick),
    right: spanUpTo(x.end, thick),
    front: spanFrom(z.start, thick),
    rear: spanUpTo(z.end, thick),
  };
  const y = spanFrom(zeroAt('the floor'), feet.height);
  const corners = (['front', 'rear'] as const).flatMap((deep) =>
    (['left', 'right'] as const).map((end) =>
      slab({
        ...made(feet),
        id: `case/foot-${deep}-${end}`,
        label: `${deep} ${end} foot`,
        role: 'foot',
        thin: 'x',
        grain: 'y',
        x: ends[end],
        y,
        z: ends[deep],
      }),
    ),
  );
  const { rails } = feet;
  if (rails === undefined) return corners;
  const common = { ...made(rails), role: 'foot-rail', y: spanUpTo(y.end, rails.width) } as const;
  const across = betweenFeet('length of the rail between the feet', ends.left, ends.right, x.size, thick);
  const deep = betweenFeet('length of the rail between the feet', ends.front, ends.rear, z.size, thick);
  return [
    ...corners,
    ...(['front', 'rear'] as const).map((place) =>
      slab({
        ...common,
        id: `case/foot-rail-${place}`,
        label: `${place} rail between the feet`,
        thin: 'z',
        grain: 'x',
        x: across,
        z: setIn(ends[place], place === 'front', rails.setIn, rails.thickness),
      }),
    ),
    ...(['left', 'right'] as const).map((place) =>
      slab({
        ...common,
        id: `case/foot-rail-${place}`,
        label: `${place} rail between the feet`,
        thin: 'x',
        grain: 'z',
        x: setIn(ends[place], place === 'left', rails.setIn, rails.thickness),
        z: deep,
      }),
    ),
  ];
}

function betweenFeet(rule: string, first: Span, last: Span, whole: Figure, foot: Figure): Span {
  return {
    start: first.end,
    size: derive(rule, [plus('of the body', whole), less('thickness of the feet', foot, 2)]),
    end: last.start,
  };
}

/** Behind the outer face of the foot. */
function setIn(foot: Span, atStart: boolean, by: Figure, thickness: Figure): Span {
  return atStart
    ? spanFrom(
        derive('the outer face of the rail', [plus('the outer face of the foot', foot.start), plus('set in', by)]),
        thickness,
      )
    : spanUpTo(
        derive('the outer face of the rail', [plus('the outer face of the foot', foot.end), less('set in', by)]),
        thickness,
      );
}

/** The topmost under what closes the case above, the lowest on the bottom, others spread between them. */
export function nailerParts(
  nailers: NailersDesign,
  back: BackDesign | undefined,
  layout: CarcaseLayout,
): readonly UnmarkedPart[] {
  const { x, y } = layout.interior;
  const z = nailersDeep(nailers, back, layout);
  const { count, width } = nailers;
  return Array.from({ length: count }, (_, at) => {
    const share = Rational.of(at, Math.max(count - 1, 1));
    const top = derive('the upper edge of the strip', [
      plus('what closes the case above', y.end),
      less('height inside', y.size, share),
      plus('width of the strips', width, share),
    ]);
    return slab({
      ...made(nailers),
      id: `case/nailer${at === 0 ? '' : `-${at + 1}`}`,
      label: count === 1 ? 'nailer' : at === 0 ? 'upper nailer' : at === count - 1 ? 'lower nailer' : 'middle nailer',
      role: 'nailer',
      thin: 'z',
      grain: 'x',
      x,
      y: spanUpTo(top, width),
      z,
    });
  });
}
