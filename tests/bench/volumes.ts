import {
  AXES,
  boreAlong,
  boxOf,
  convexAround,
  type Interval,
  intervalOf,
  Length,
  meets,
  overlapOf,
  pairsThatMeet,
  type Solid,
} from '@fettle/engine';
import { type Quantiles, quantiles, timesOf } from './quantiles.ts';

/** Solids against each other: single pairs of each two kinds, and every pair of features in a whole piece. */
export interface Volumes {
  readonly pairs: readonly { readonly what: string; readonly meets: Quantiles; readonly overlap: Quantiles }[];
  readonly piece: Quantiles;
}

/** Both are told in milliseconds a pair. The solids are the same every time, and are kept as those of a piece are. */
export function measureVolumes(): Volumes {
  const random = new Sequence(7);
  const makers = { box: random.box, bore: random.bore, convex: random.convex };
  const kinds = Object.keys(makers) as (keyof typeof makers)[];
  const pairs = kinds.flatMap((one, index) =>
    kinds.slice(index).map((other) => {
      const all = Array.from({ length: 400 }, () => [makers[one](128), makers[other](128)] as const);
      const meeting = all.filter(([a, b]) => meets(a, b)).slice(0, 40);
      const perPair = (work: () => void, count: number): Quantiles =>
        quantiles(timesOf(work, 2, 10).map((time) => time / count));
      return {
        what: `${one} and ${other}`,
        meets: perPair(() => all.forEach(([a, b]) => void meets(a, b)), all.length),
        overlap: perPair(() => meeting.forEach(([a, b]) => void overlapOf(a, b)), meeting.length),
      };
    }),
  );
  const parts = Array.from({ length: 150 }, () =>
    Array.from({ length: 60 }, (_, feature) => (feature % 2 === 0 ? random.box(1000, 24) : random.bore(1000, 24))),
  );
  return { pairs, piece: quantiles(timesOf(() => parts.forEach((features) => void pairsThatMeet(features)), 2, 10)) };
}

/** Solids that look thrown about and are the same every time; sizes count in 32nds of an inch. */
class Sequence {
  private state: number;

  constructor(seed: number) {
    this.state = seed;
  }

  private next(below: number): number {
    this.state = (this.state * 48_271) % 2_147_483_647;
    return this.state % below;
  }

  private place(within: number): Length {
    return Length.inches(this.next(within), 32);
  }

  private interval(within: number, longest: number): Interval {
    const from = this.place(within);
    return intervalOf(from, from.plus(Length.inches(1 + this.next(longest), 32)));
  }

  readonly box = (within: number, longest = within): Solid =>
    boxOf(this.interval(within, longest), this.interval(within, longest), this.interval(within, longest));

  readonly bore = (within: number, longest = within): Solid =>
    boreAlong(
      AXES[this.next(3)] ?? 'x',
      this.interval(within, longest),
      [this.place(within), this.place(within)],
      Length.inches(1 + this.next(16), 32),
    );

  readonly convex = (within: number): Solid =>
    convexAround(
      Array.from({ length: 8 }, () => ({ x: this.place(within), y: this.place(within), z: this.place(within) })),
    );
}
