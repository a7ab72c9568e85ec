import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { RunnersDesign } from '../design/slide-design.ts';
import type { CarcaseLayout, Span } from '../evaluation.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import { spanFrom, spanUpTo, withinInterior } from '../layout/spans.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { type LaidDrawer, laidDrawers } from '../parts/laid-drawers.ts';
import { slab, type UnmarkedPart } from '../parts/slab.ts';
import { boxOf } from '../solids/index.ts';
import { FASTENERS_FIRST } from '../tables/joinery-habits.ts';
import { RUNNER_PLAY, usual } from '../tables/trade-habits.ts';
import { centreRunner } from './centre-runner.ts';
import type { HardwareCase } from './fit-hardware.ts';
import type { FittedHardware, PlacedHardware, Screw } from './placed-hardware.ts';

/**
 * Wooden runners on the sides of the case, and the grooves in the sides of the box that ride on them. The grooves are as
 * deep as the runners are thick, so that what is free beside the box stays free, and open at the back; where they end
 * behind the front of the box they stop the drawer. Or one under the middle: see `centreRunner`.
 */
export function fitRunners({ design, layout, face, parts }: HardwareCase): FittedHardware {
  if (design.face === undefined) return { placed: [], features: [] };
  const fitted = laidDrawers(design.face, layout, face).flatMap((one) => {
    const { runners, slides } = one.drawer;
    if (runners === undefined || slides !== undefined) return [];
    return runners.isCentre ? [centreRunner(one, runners, layout, parts)] : bothSides(one, runners, layout, parts);
  });
  return {
    placed: fitted.map(({ hardware }) => hardware),
    features: fitted.flatMap(({ features }) => features),
    parts: fitted.map(({ runner }) => runner),
  };
}

export interface RunnerInPlace {
  readonly hardware: PlacedHardware;
  readonly runner: UnmarkedPart;
  readonly features: readonly Feature[];
}

const half = Rational.of(1, 2);

function bothSides(
  one: LaidDrawer,
  runners: RunnersDesign,
  layout: CarcaseLayout,
  parts: readonly UnmarkedPart[],
): readonly RunnerInPlace[] {
  const { cell, laid, box, sides, words } = one;
  const opening = withinInterior(laid.opening, layout);
  const of = cell.name === undefined ? words : `"${cell.name}"`;
  const y = spanFrom(footOf(one, runners, opening.y), runners.height);
  const z = spanFrom(
    derive('behind the front of the box', [
      plus('the back of the front', box.z.start),
      plus('thickness of the front of the box', sides),
    ]),
    derive('length of the runner', [
      plus('depth of the box', box.z.size),
      less('thickness of the front of the box', sides),
    ]),
  );
  const set = [
    {
      words: 'lower edge above the bottom of the case',
      figure: derive('above the bottom', [
        plus('lower edge of the runner', y.start),
        less('upper face of the bottom', layout.interior.y.start),
      ]),
    },
    {
      words: 'front end behind the front of the case',
      figure: derive('behind the front of the case', [
        plus('where the runner begins', z.start),
        less('the front of the case', layout.body.z.start),
      ]),
    },
  ];
  return (['left', 'right'] as const).map((side) => {
    const isLeft = side === 'left';
    const x = isLeft ? spanFrom(opening.x.start, runners.thickness) : spanUpTo(opening.x.end, runners.thickness);
    const id = `${cell.id}/runner-${side}`;
    const label = `${side} runner of ${of}`;
    const runner = slab({
      id,
      label,
      role: 'runner',
      stock: runners.stock,
      x,
      y,
      z,
      thin: 'x',
      grain: 'z',
      origin: runners.origin,
      cell: cell.id,
    });
    const holder = parts.find((part) => part.id === `${cell.id}/box-${side}`);
    return {
      runner,
      features: holder === undefined ? [] : [grooveIn(holder, isLeft ? '-x' : '+x', runners, y, z, layout)],
      hardware: {
        id: `${id}/set`,
        kind: 'runner',
        label,
        cell: cell.id,
        on: [id],
        set,
        screws: screwsThrough(
          id,
          runners,
          { plane: isLeft ? x.start : x.end, towards: isLeft ? '-x' : '+x', y, z },
          layout,
        ),
        origin: runners.origin,
      },
    };
  });
}

/** In the middle of the height of the box where nothing is said. */
function footOf({ laid, box }: LaidDrawer, { at, height }: RunnersDesign, opening: Span): Figure {
  if (at === undefined) {
    return derive('in the middle of the box', [
      plus('the foot of the box', box.y.start),
      plus('height of the box', box.y.size, half),
      less('height of the runner', height, half),
    ]);
  }
  const datum = { front: (laid.front ?? laid.opening).y.start, opening: opening.start, box: box.y.start };
  return derive('the lower edge of the runner', [
    plus(`lower edge of the ${at.from}`, datum[at.from]),
    plus('above it', at.above),
  ]);
}

export function grooveForRunner(side: string): string {
  return `${side}/groove for runner`;
}

function grooveIn(
  holder: UnmarkedPart,
  entry: '-x' | '+x',
  runners: RunnersDesign,
  y: Span,
  z: Span,
  layout: CarcaseLayout,
): Feature {
  const play = usual(RUNNER_PLAY, layout.unit);
  const { start, end } = holder.blank.x;
  const depth = runners.thickness.length;
  const into =
    entry === '-x'
      ? { from: start.length, to: start.length.plus(depth) }
      : { from: end.length.minus(depth), to: end.length };
  const beside = play.length.dividedBy(2);
  return {
    id: grooveForRunner(holder.id),
    kind: 'groove',
    part: holder.id,
    solid: boxOf(
      into,
      { from: y.start.length.minus(beside), to: y.end.length.plus(beside) },
      { from: z.start.length, to: holder.blank.z.end.length },
    ),
    entry,
    runs: 'z',
    measures: {
      width: derive('height of the runner and its play', [
        plus('height of the runner', runners.height),
        plus('play', play),
      ]),
      depth: runners.thickness,
    },
    stage: 'on the loose part',
    origin: runners.origin,
  };
}

export interface StripPlace {
  readonly plane: Figure;
  readonly towards: FaceOfPart;
  readonly y: Span;
  readonly z: Span;
}

/** One near each end and one in the middle, through a strip into what stands beside it. */
export function screwsThrough(
  id: string,
  { screws, thickness }: Pick<RunnersDesign, 'screws' | 'thickness'>,
  place: StripPlace,
  layout: CarcaseLayout,
): readonly Screw[] {
  if (screws === undefined) return [];
  const reach = screws.length.length.minus(thickness.length);
  const first = usual(FASTENERS_FIRST, layout.unit).length;
  const { start, end, size } = place.z;
  if (!reach.isPositive() || size.length.compare(first.times(2)) <= 0) return [];
  const up = place.y.start.length.plus(place.y.size.length.dividedBy(2));
  const along: readonly (readonly [string, Length])[] = [
    ['front screw', start.length.plus(first)],
    ['middle screw', start.length.plus(size.length.dividedBy(2))],
    ['rear screw', end.length.minus(first)],
  ];
  return along.map(([words, at], index) => ({
    id: `${id}/screw-${index + 1}`,
    words,
    at: { x: place.plane.length, y: up, z: at },
    towards: place.towards,
    diameter: screws.pilot.length,
    length: reach,
    bought: {
      entry: screws.name,
      length: screws.length.length,
      ...(screws.price === undefined ? {} : { price: screws.price }),
    },
  }));
}
