import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { RunnersDesign } from '../design/slide-design.ts';
import type { CarcaseLayout, Span } from '../evaluation.ts';
import type { Feature } from '../joinery/feature.ts';
import { spanFrom, withinInterior } from '../layout/spans.ts';
import { Rational } from '../length/rational.ts';
import type { LaidDrawer } from '../parts/laid-drawers.ts';
import { slab, type UnmarkedPart } from '../parts/slab.ts';
import { boxOf } from '../solids/index.ts';
import { FASTENERS_FIRST } from '../tables/joinery-habits.ts';
import { RUNNER_PLAY, usual } from '../tables/trade-habits.ts';
import type { Screw } from './placed-hardware.ts';
import type { RunnerInPlace } from './wooden-runners.ts';

const half = Rational.of(1, 2);

/**
 * One wooden runner under the middle of a box, from the back of its front to the back of the case. It lies on whatever is
 * under the opening: the rails of a frame, which it is screwed to in front and behind, or a panel. The front and the back
 * of the box are notched over it, so that it leads the drawer; its bottom is set up clear of it.
 */
export function centreRunner(
  { cell, box, laid, words }: LaidDrawer,
  runners: RunnersDesign,
  layout: CarcaseLayout,
  parts: readonly UnmarkedPart[],
): RunnerInPlace {
  const opening = withinInterior(laid.opening, layout);
  const of = cell.name === undefined ? words : `"${cell.name}"`;
  const id = `${cell.id}/runner-centre`;
  const label = `runner under the middle of ${of}`;
  const x = spanFrom(
    derive('in the middle of the opening', [
      plus('where the opening begins', opening.x.start),
      plus('width of the opening', opening.x.size, half),
      less('width of the runner', runners.thickness, half),
    ]),
    runners.thickness,
  );
  const y = spanFrom(
    runners.at === undefined
      ? derive('on what lies under the opening', [plus('where the opening begins', opening.y.start)])
      : derive('the lower edge of the runner', [
          plus(
            `lower edge of the ${runners.at.from}`,
            { front: (laid.front ?? laid.opening).y.start, opening: opening.y.start, box: box.y.start }[
              runners.at.from
            ],
          ),
          plus('above it', runners.at.above),
        ]),
    runners.height,
  );
  const z = spanFrom(
    box.z.start,
    derive('from the back of the front to the back of the case', [plus('depth behind the front', box.depthThere)]),
  );
  const ends = parts.filter((part) => part.role === 'drawer-end' && part.cell === cell.id);
  return {
    runner: slab({
      id,
      label,
      role: 'runner',
      stock: runners.stock,
      x,
      y,
      z,
      thin: runners.height.length.compare(runners.thickness.length) <= 0 ? 'y' : 'x',
      grain: 'z',
      origin: runners.origin,
      cell: cell.id,
    }),
    features: ends.flatMap((end) => notchIn(end, runners, { x, y }, layout)),
    hardware: {
      id: `${id}/set`,
      kind: 'runner',
      label,
      cell: cell.id,
      on: [id],
      set: [
        {
          words: 'its left edge from the left end of the opening',
          figure: derive('beside the runner', [
            plus('width of the opening', opening.x.size, half),
            less('width of the runner', runners.thickness, half),
          ]),
        },
        {
          words: 'front end behind the front of the case',
          figure: derive('behind the front of the case', [
            plus('where the runner begins', z.start),
            less('the front of the case', layout.body.z.start),
          ]),
        },
      ],
      screws: screwsDown(id, runners, { x, y, z }, layout),
      origin: runners.origin,
    },
  };
}

/** None where the runner lies wholly below it, or a bottom that is slid in leaves it room. */
function notchIn(
  end: UnmarkedPart,
  runners: RunnersDesign,
  { x, y }: { readonly x: Span; readonly y: Span },
  layout: CarcaseLayout,
): readonly Feature[] {
  const play = usual(RUNNER_PLAY, layout.unit);
  const foot = end.blank.y.start;
  const height = derive('over the runner', [
    plus('upper edge of the runner', y.end),
    plus('play', play),
    less('lower edge of the box', foot),
  ]);
  if (!height.length.isPositive()) return [];
  const beside = play.length.dividedBy(2);
  const width: Figure = derive('width of the runner and its play', [
    plus('width of the runner', runners.thickness),
    plus('play', play),
  ]);
  return [
    {
      id: `${end.id}/notch for runner`,
      kind: 'notch',
      part: end.id,
      solid: boxOf(
        { from: x.start.length.minus(beside), to: x.end.length.plus(beside) },
        { from: foot.length, to: foot.length.plus(height.length) },
        { from: end.blank.z.start.length, to: end.blank.z.end.length },
      ),
      entry: '-y',
      measures: { width, depth: height },
      stage: 'on the loose part',
      origin: runners.origin,
    },
  ];
}

/** One into what lies under its front end and one into what lies under its back end: between them may be air. */
function screwsDown(
  id: string,
  { screws, height }: RunnersDesign,
  { x, y, z }: { readonly x: Span; readonly y: Span; readonly z: Span },
  layout: CarcaseLayout,
): readonly Screw[] {
  if (screws === undefined) return [];
  const reach = screws.length.length.minus(height.length);
  const first = usual(FASTENERS_FIRST, layout.unit).length;
  if (!reach.isPositive() || z.size.length.compare(first.times(2)) <= 0) return [];
  const middle = x.start.length.plus(x.size.length.dividedBy(2));
  return [z.start.length.plus(first), z.end.length.minus(first)].map((at, index) => ({
    id: `${id}/screw-${index + 1}`,
    words: index === 0 ? 'front screw' : 'rear screw',
    at: { x: middle, y: y.start.length, z: at },
    towards: '-y',
    diameter: screws.pilot.length,
    length: reach,
    bought: {
      entry: screws.name,
      length: screws.length.length,
      ...(screws.price === undefined ? {} : { price: screws.price }),
    },
  }));
}
