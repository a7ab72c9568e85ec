import { derive, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { Feature } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { boreAlong, boxOf, intervalOf } from '../solids/index.ts';
import { PULL_SCREW_HOLE } from '../tables/hanging-habits.ts';
import { limitIn } from '../tables/trade-limits.ts';
import type { HardwareCase } from './fit-hardware.ts';
import type { FittedHardware, PlacedHardware } from './placed-hardware.ts';
import { type PullPlan, planPulls } from './pull-plans.ts';
import { halfExtents, middleOf, type PullMiddle, type PullSeat, seatsOf } from './pull-seats.ts';

/** Puts pulls on fronts: holes for their screws, or the recesses that they lie in. */
export function fitPulls(one: HardwareCase): FittedHardware {
  const { design, layout, face: root, parts } = one;
  if (design.face === undefined) return { placed: [], features: [] };
  const fitted = planPulls(design.face, layout, root, parts).flatMap((plan) =>
    plan.middles.map((middle, at) => fitPull(plan, one, middle, at)),
  );
  return { placed: fitted.map(({ placed }) => placed), features: fitted.flatMap(({ features }) => features) };
}

const half = Rational.of(1, 2);

function fitPull(
  plan: PullPlan,
  { parts, layout }: HardwareCase,
  middle: PullMiddle,
  at: number,
): { readonly placed: PlacedHardware; readonly features: readonly Feature[] } {
  const { fronts, pulls, cell, middles } = plan;
  const { entry } = pulls;
  const [x, y] = middleOf(plan, middle);
  const id = `${fronts[0]?.id ?? cell.id}/pull-${at + 1}`;
  const seats = seatsOf(plan, middle, parts);
  const diameter = limitIn(PULL_SCREW_HOLE, layout.unit);
  const holes = seats.flatMap(({ part, spots }) =>
    spots.map(
      ([holeX, holeY], hole): Feature => ({
        id: `${id} hole ${hole + 1} in ${part.id}`,
        kind: 'screw-hole',
        part: part.id,
        solid: boreAlong(
          'z',
          intervalOf(part.box.z.start.length, part.box.z.end.length),
          [holeX, holeY],
          diameter.times(half),
        ),
        entry: '-z',
        measures: {},
        stage: 'after glue-up',
        through: true,
        origin: pulls.entryOrigin,
      }),
    ),
  );
  return {
    placed: {
      id,
      kind: 'pull',
      entry: entry.name,
      label: `${middles.length === 1 ? 'pull' : `pull ${at + 1} from the left`} of the ${plan.label}`,
      cell: cell.id,
      on: seats.map(({ part }) => part.id),
      set: [
        {
          words: `from the left edge of the ${fronts.length > 1 ? 'left door' : 'front'} to the middle of the pull`,
          figure: middle.across,
        },
        { words: 'from the lower edge of the front to the middle of the pull', figure: middle.up },
        ...betweenScrews(entry.betweenScrews),
        ...(entry.letIn === undefined ? [] : [{ words: 'depth of its recess', figure: entry.letIn }]),
        ...(plan.wantedScrew === undefined ? [] : [{ words: 'length of the machine screw', figure: plan.wantedScrew }]),
      ],
      ...outlineOf(plan, x, y),
      ...(entry.projection === undefined || entry.letIn !== undefined ? {} : { standsOut: entry.projection.length }),
      screws: [],
      origin: pulls.entryOrigin,
    },
    features: [...holes, ...recesses(plan, seats, id, x, y)],
  };
}

function outlineOf(plan: PullPlan, x: Length, y: Length): Pick<PlacedHardware, 'outline'> {
  const { across, up } = halfExtents(plan);
  if (across === undefined || up === undefined) return {};
  const around = (middle: Length, half: Figure) => intervalOf(middle.minus(half.length), middle.plus(half.length));
  return { outline: { x: around(x, across), y: around(y, up), isRound: plan.pulls.entry.isRound } };
}

function betweenScrews(between: Figure | undefined): PlacedHardware['set'] {
  return between === undefined
    ? []
    : [
        {
          words: 'from the middle of the pull to each screw',
          figure: derive('half of what is between the screws', [plus('between screws', between, half)]),
        },
      ];
}

/** In each front that it lies in; where two meet, each has half of it. */
function recesses(plan: PullPlan, seats: readonly PullSeat[], id: string, x: Length, y: Length): readonly Feature[] {
  const { pulls, deep } = plan;
  const { letIn, isRound, width } = pulls.entry;
  const { across, up } = halfExtents(plan);
  if (letIn === undefined || across === undefined || up === undefined || width === undefined) return [];
  const z = intervalOf(deep.start.length, deep.start.length.plus(letIn.length));
  return seats.map(({ part }) => ({
    id: `${id} recess in ${part.id}`,
    kind: 'recess',
    part: part.id,
    solid: isRound
      ? boreAlong('z', z, [x, y], across.length)
      : boxOf(
          intervalOf(x.minus(across.length), x.plus(across.length)),
          intervalOf(y.minus(up.length), y.plus(up.length)),
          z,
        ),
    entry: '-z',
    measures: { width, depth: letIn },
    stage: 'on the loose part',
    origin: pulls.entryOrigin,
  }));
}
