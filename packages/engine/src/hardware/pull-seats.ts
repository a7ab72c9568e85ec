import { derive, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import type { PullPlan } from './pull-plans.ts';

/** What a pull is screwed to, or lies in: of a framed door whatever of its members and panels is where it sits. */
export interface PullSeat {
  readonly part: UnmarkedPart;
  /** Middles of the holes for its screws in this part; none where it is let in. */
  readonly spots: readonly Spot[];
}

type Spot = readonly [x: Length, y: Length];

export type SeatedPull = Pick<PullPlan, 'fronts' | 'pulls' | 'cell' | 'stands'>;

export interface PullMiddle {
  readonly across: Figure;
  readonly up: Figure;
}

const half = Rational.of(1, 2);

export function seatsOf(pull: SeatedPull, middle: PullMiddle, parts: readonly UnmarkedPart[]): readonly PullSeat[] {
  const { fronts, pulls, cell } = pull;
  const [x, y] = middleOf(pull, middle);
  const isLetIn = pulls.entry.letIn !== undefined;
  const spots = isLetIn ? [] : spotsAround(pull, x, y);
  return parts.flatMap((part): readonly PullSeat[] => {
    if (fronts.some(({ id }) => id === part.id)) return [{ part, spots }];
    const isBox = part.id === `${cell.id}/box-front`;
    const isMember = part.frame !== undefined && fronts.some(({ id }) => id === part.frame);
    if (isMember && isLetIn) return reachesInto(part, pull, x, y) ? [{ part, spots }] : [];
    if (!isMember && (!isBox || isLetIn)) return [];
    const inside = spots.filter((spot) => holds(part, spot));
    return inside.length === 0 ? [] : [{ part, spots: inside }];
  });
}

export function middleOf({ fronts: [first] }: SeatedPull, { across, up }: PullMiddle): Spot {
  return [
    (first?.at.x.start.length ?? Length.zero).plus(across.length),
    (first?.at.y.start.length ?? Length.zero).plus(up.length),
  ];
}

/** One in the middle of a knob, two in line of a pull. */
function spotsAround({ pulls, stands }: SeatedPull, x: Length, y: Length): readonly Spot[] {
  const off = pulls.entry.betweenScrews?.length.times(half);
  if (off === undefined) return [[x, y]];
  return [off.negated(), off].map((by) => (stands === 'level' ? [x.plus(by), y] : [x, y.plus(by)]));
}

function holds({ box }: UnmarkedPart, [x, y]: Spot): boolean {
  const within = ({ start, end }: UnmarkedPart['box']['x'], place: Length) =>
    start.length.compare(place) < 0 && place.compare(end.length) < 0;
  return within(box.x, x) && within(box.y, y);
}

function reachesInto({ box }: UnmarkedPart, pull: SeatedPull, x: Length, y: Length): boolean {
  const { across, up } = halfExtents(pull);
  const over = ({ start, end }: UnmarkedPart['box']['x'], place: Length, by: Figure | undefined) =>
    place.minus(by?.length ?? Length.zero).compare(end.length) < 0 &&
    start.length.compare(place.plus(by?.length ?? Length.zero)) < 0;
  return over(box.x, x, across) && over(box.y, y, up);
}

/** How far it reaches from its middle, to the sides and up and down; undefined while the entry does not say. */
export function halfExtents({ pulls, stands }: Pick<PullPlan, 'pulls' | 'stands'>): {
  readonly across?: Figure;
  readonly up?: Figure;
} {
  const { width, height } = pulls.entry;
  const [across, up] = stands === 'level' ? [width, height] : [height, width];
  const halved = (figure: Figure | undefined) =>
    figure && derive('half of the pull', [plus('size of the pull', figure, half)]);
  const [acrossHalf, upHalf] = [halved(across), halved(up)];
  return {
    ...(acrossHalf === undefined ? {} : { across: acrossHalf }),
    ...(upHalf === undefined ? {} : { up: upHalf }),
  };
}
