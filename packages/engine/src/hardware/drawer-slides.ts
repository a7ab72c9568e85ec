import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { SlideEntry } from '../design/slide-design.ts';
import type { CarcaseLayout, Span } from '../evaluation.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import { withinInterior } from '../layout/spans.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { type LaidDrawer, laidDrawers } from '../parts/laid-drawers.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { THICKEST_PACKER } from '../tables/joinery-limits.ts';
import { SLIDE_HEIGHT, usual } from '../tables/trade-habits.ts';
import { limitIn } from '../tables/trade-limits.ts';
import { backingsOf } from './backing.ts';
import type { HardwareCase } from './fit-hardware.ts';
import { packersBehind } from './packers.ts';
import type { FittedHardware, PlacedHardware, Screw } from './placed-hardware.ts';
import { holesOf, opposite, pilotHole } from './slide-holes.ts';

/**
 * Slides in their places, a left and a right one to each drawer, with the screws of the member that stays on the case,
 * and the packers that bring them out to the opening; or one under the middle of the box.
 */
export function fitSlides({ design, layout, face, parts }: HardwareCase): FittedHardware {
  if (design.face === undefined) return { placed: [], features: [] };
  const farthest = limitIn(THICKEST_PACKER, layout.unit);
  const fitted = laidDrawers(design.face, layout, face).flatMap((one): readonly FittedSlide[] => {
    const slides = one.drawer.slides;
    if (slides === undefined) return [];
    if (slides.mounting === 'centre') return [fastened(centreSlide(one, slides, layout), parts, [], farthest)];
    return sidesOf(one, slides, layout).map((slide) => {
      const packed = packersBehind(slide, one.drawer.packers, parts, farthest);
      const { packing } = packed;
      const hardware = { ...slide.hardware, ...(packing === undefined ? {} : { packing }) };
      return fastened(hardware, parts, packed.parts, farthest);
    });
  });
  return {
    placed: fitted.map(({ hardware }) => hardware),
    features: fitted.flatMap(({ holes }) => holes),
    parts: fitted.flatMap((each) => each.packers),
  };
}

interface FittedSlide {
  readonly hardware: PlacedHardware;
  readonly holes: readonly Feature[];
  readonly packers: readonly UnmarkedPart[];
}

/** On whatever its screws find. */
function fastened(
  hardware: PlacedHardware,
  parts: readonly UnmarkedPart[],
  packers: readonly UnmarkedPart[],
  farthest: Length,
): FittedSlide {
  const backings = backingsOf(hardware.screws, [...parts, ...packers], farthest);
  const on = backings.flatMap((backing) =>
    backing.kind === 'air' ? [] : backing.kind === 'solid' ? backing.parts : [backing.part],
  );
  return {
    hardware: { ...hardware, on: [...new Set(on.map(({ id }) => id))] },
    // What is bored before the slide is screwed on. Where a screw finds no sound wood, the checks say so instead.
    holes: backings.flatMap((backing, at): readonly Feature[] => {
      const screw = hardware.screws[at];
      const part = backing.kind === 'solid' ? backing.parts[0] : undefined;
      return screw === undefined || part === undefined ? [] : [pilotHole(screw, part, hardware.origin)];
    }),
    packers,
  };
}

/** A slide and the room that its member on the case takes. */
export interface SlideInPlace {
  readonly hardware: PlacedHardware;
  readonly side: 'left' | 'right';
  readonly label: string;
  /** The plane that its member on the case lies on. */
  readonly plane: Figure;
  readonly y: Span;
  readonly z: Span;
  readonly cell: string;
}

/** Where the slides of a drawer lie, front to back and up; the same at both sides. */
export interface SlideLines {
  readonly y: Span;
  readonly z: Span;
}

const half = Rational.of(1, 2);

export function slideLines({ drawer, laid, box }: LaidDrawer, slides: SlideEntry, layout: CarcaseLayout): SlideLines {
  const height = slides.height ?? usual(SLIDE_HEIGHT, layout.unit);
  const at = drawer.slidesAt;
  const start = derive('where the slide begins', [
    plus('the back of the front', box.z.start),
    ...(slides.setBack === undefined ? [] : [plus('set back from it', slides.setBack)]),
  ]);
  const opening = withinInterior(laid.opening, layout);
  const datum = { front: (laid.front ?? laid.opening).y.start, opening: opening.y.start, box: box.y.start };
  const foot =
    at === undefined && slides.mounting === 'centre'
      ? derive('on what lies under the opening', [plus('where the opening begins', opening.y.start)])
      : at === undefined
        ? slides.mounting === 'under' && slides.below !== undefined
          ? derive('under the box', [
              plus('the foot of the box', box.y.start),
              less('height of the slide under the box', slides.below),
            ])
          : derive('level with the box', [plus('the foot of the box', box.y.start)])
        : derive('the lower edge of the slide', [
            plus(`lower edge of the ${at.from}`, datum[at.from]),
            plus('above it', at.above),
            ...(at.line === 'lower-edge' ? [] : [less('up to its screw line', height, half)]),
          ]);
  return {
    y: spanOver(foot, height),
    z: spanOver(start, slides.length),
  };
}

function spanOver(start: Figure, size: Figure): Span {
  return { start, size, end: derive('where it ends', [plus('where it starts', start), plus('its size', size)]) };
}

function sidesOf(one: LaidDrawer, slides: SlideEntry, layout: CarcaseLayout): readonly SlideInPlace[] {
  const { cell, drawer, laid, words, box } = one;
  const { y, z } = slideLines(one, slides, layout);
  const opening = withinInterior(laid.opening, layout);
  const of = cell.name === undefined ? words : `"${cell.name}"`;
  const holes = holesOf(slides.holes, y, z);
  // Under a box there is no side to screw a member to.
  const boxHoles = slides.mounting === 'side' ? holesOf(slides.boxHoles, y, z) : [];
  const set = [
    ...(drawer.slidesAt === undefined
      ? []
      : [
          {
            words: `${lineWords[drawer.slidesAt.line]} above the lower edge of the ${drawer.slidesAt.from}`,
            figure: drawer.slidesAt.above,
          },
        ]),
    {
      words: ABOVE_BOTTOM,
      figure: derive('above the bottom', [
        plus('lower edge of the slide', y.start),
        less('upper face of the bottom', layout.interior.y.start),
      ]),
    },
    {
      words: 'front end behind the front of the case',
      figure: derive('behind the front of the case', [
        plus('where the slide begins', z.start),
        less('the front of the case', layout.body.z.start),
      ]),
    },
    ...holes.map(({ nth, z: along }) => ({
      words: `${nth} behind the front of the case`,
      figure: derive('behind the front of the case', [
        plus('the screw', along),
        less('the front of the case', layout.body.z.start),
      ]),
    })),
  ];
  return (['left', 'right'] as const).map((side) => {
    const plane = side === 'left' ? opening.x.start : opening.x.end;
    const towards: FaceOfPart = side === 'left' ? '-x' : '+x';
    const id = `${cell.id}/slide-${side}`;
    const label = `${side} slide of ${of}`;
    const { screws } = slides;
    return {
      side,
      label,
      plane,
      y,
      z,
      cell: cell.id,
      hardware: {
        id,
        kind: 'slide',
        entry: slides.name,
        label,
        cell: cell.id,
        on: [],
        set,
        screws:
          screws === undefined
            ? []
            : [
                ...holes.map(
                  ({ nth, y: up, z: along }, index): Screw => ({
                    id: `${id}/screw-${index + 1}`,
                    words: nth,
                    at: { x: plane.length, y: up.length, z: along.length },
                    towards,
                    diameter: screws.diameter.length,
                    length: screws.length.length,
                  }),
                ),
                ...boxHoles.map(
                  ({ nth, y: up, z: along }, index): Screw => ({
                    id: `${id}/box-screw-${index + 1}`,
                    words: `${nth} in the box`,
                    at: { x: (side === 'left' ? box.x.start : box.x.end).length, y: up.length, z: along.length },
                    towards: opposite[towards],
                    diameter: screws.diameter.length,
                    length: (screws.inBox ?? screws.length).length,
                  }),
                ),
              ],
        origin: drawer.slidesOrigin ?? drawer.origin,
        ...(drawer.slidesStatement === undefined ? {} : { packersAfter: drawer.slidesStatement }),
      },
    };
  });
}

/** Under the middle of the box, screwed down onto the rails or the panel that it crosses. */
function centreSlide(one: LaidDrawer, slides: SlideEntry, layout: CarcaseLayout): PlacedHardware {
  const { cell, drawer, laid, words } = one;
  const { y, z } = slideLines(one, slides, layout);
  const { x } = withinInterior(laid.opening, layout);
  const id = `${cell.id}/slide-centre`;
  const middle = derive('the middle of the opening', [
    plus('where the opening begins', x.start),
    plus('width of the opening', x.size, half),
  ]);
  const fromFront = (what: string, at: Figure) =>
    derive('behind the front of the case', [plus(what, at), less('the front of the case', layout.body.z.start)]);
  const holes = holesOf(slides.holes, y, z);
  const { screws } = slides;
  return {
    id,
    kind: 'slide',
    entry: slides.name,
    label: `slide under ${cell.name === undefined ? words : `"${cell.name}"`}`,
    cell: cell.id,
    on: [],
    set: [
      {
        words: 'its middle from the left end of the opening',
        figure: derive('half of the opening', [plus('width of the opening', x.size, half)]),
      },
      { words: 'front end behind the front of the case', figure: fromFront('where the slide begins', z.start) },
      ...holes.map(({ nth, z: along }) => ({
        words: `${nth} behind the front of the case`,
        figure: fromFront('the screw', along),
      })),
    ],
    screws:
      screws === undefined
        ? []
        : holes.map(
            ({ nth, z: along }, index): Screw => ({
              id: `${id}/screw-${index + 1}`,
              words: nth,
              at: { x: middle.length, y: y.start.length, z: along.length },
              towards: '-y',
              diameter: screws.diameter.length,
              length: screws.length.length,
            }),
          ),
    origin: drawer.slidesOrigin ?? drawer.origin,
  };
}

/** The setting of every slide that all are measured by, whatever each is set from. */
export const ABOVE_BOTTOM = 'lower edge above the bottom of the case';

const lineWords = { 'lower-edge': 'lower edge', 'screw-line': 'screw line' } as const;
