import { Rational } from '../length/rational.ts';
import { type Bore, boreOf } from './bore.ts';
import { insideOf } from './inside.ts';
import { meets } from './meets.ts';
import { type Pair, pairsThatMeet } from './near-pairs.ts';
import { sharedPolyhedra } from './overlap.ts';
import { flatDifference, flatDot } from './points.ts';
import { polyhedronOf, polyhedronVolume } from './polyhedron.ts';
import { type Between, exactly, rootBetween } from './roots.ts';
import { AXES, type BoxSolid, type CylinderSolid, type Solid } from './solid.ts';

/** A volume in cubic inches: `flat` plus `timesPi` times pi. `flat` is exact unless a slot at an angle brings a root. */
export interface Volume {
  readonly flat: Between;
  readonly timesPi: Rational;
}

export function volumeOf(solid: Solid): Volume {
  if (solid.kind === 'cylinder') return volumeOfBore(boreOf(solid));
  if (solid.kind === 'convex') return { flat: exactly(polyhedronVolume(polyhedronOf(solid))), timesPi: Rational.zero };
  const [x, y, z] = AXES.map((axis) => solid[axis].to.minus(solid[axis].from).in('in'));
  const volume = [x, y, z].reduce<Rational>((product, side) => product.times(side ?? Rational.zero), Rational.one);
  return { flat: exactly(volume), timesPi: Rational.zero };
}

function volumeOfBore({ from, to, spine, radius }: Bore): Volume {
  const length = to.minus(from);
  const [one, other] = spine;
  const way = one === undefined || other === undefined ? undefined : flatDifference(other, one);
  const swept = way === undefined ? exactly(Rational.zero) : rootBetween(flatDot(way, way));
  const width = radius.times(2).times(length);
  return {
    flat: { least: swept.least.times(width), most: swept.most.times(width) },
    timesPi: radius.times(radius).times(length),
  };
}

/** From the digits of pi: 3.14159265358979323846... */
const PI: Between = {
  least: Rational.of(3_141_592_653_589_793n, 10n ** 15n),
  most: Rational.of(3_141_592_653_589_794n, 10n ** 15n),
};

/** The same volume between two fractions of a cubic inch, equal where neither pi nor a root is in it. */
export function volumeBetween({ flat, timesPi }: Volume): Between {
  const [less, more] = timesPi.sign() < 0 ? [PI.most, PI.least] : [PI.least, PI.most];
  return { least: flat.least.plus(timesPi.times(less)), most: flat.most.plus(timesPi.times(more)) };
}

/** What two solids share: exact unless one of them is round and cut by the other's side or end at a slant. */
export function sharedVolume(a: Solid, b: Solid): Volume {
  if (!meets(a, b)) return NOTHING;
  if (insideOf(a, b)) return volumeOf(a);
  if (insideOf(b, a)) return volumeOf(b);
  const shortened = shortenedBy(a, b) ?? shortenedBy(b, a);
  if (shortened !== undefined) return volumeOf(shortened);
  const { inside, outside } = sharedPolyhedra(a, b);
  return {
    flat: {
      least: inside === undefined ? Rational.zero : polyhedronVolume(inside),
      most: outside === undefined ? Rational.zero : polyhedronVolume(outside),
    },
    timesPi: Rational.zero,
  };
}

const NOTHING: Volume = { flat: exactly(Rational.zero), timesPi: Rational.zero };

/** A bore that leaves a box only through the faces at its ends: what the box keeps of it is a shorter bore. */
function shortenedBy(bore: Solid, box: Solid): CylinderSolid | undefined {
  if (bore.kind !== 'cylinder' || box.kind !== 'box') return undefined;
  const along = { from: bore.along.from.max(box[bore.axis].from), to: bore.along.to.min(box[bore.axis].to) };
  const shortened: CylinderSolid = { ...bore, along };
  return insideOf(shortened, box) ? shortened : undefined;
}

/** What features leave of a blank, or why that is no plain subtraction. */
export type Remaining =
  | { readonly kind: 'volume'; readonly volume: Volume }
  /** Taken away twice where they meet: first settle that. */
  | { readonly kind: 'features-meet'; readonly pairs: readonly Pair[] };

/** The blank less what each feature takes of it; what a feature cuts beside the blank does not count. */
export function remainingVolume(blank: BoxSolid, features: readonly Solid[]): Remaining {
  const pairs = pairsThatMeet(features);
  if (pairs.length > 0) return { kind: 'features-meet', pairs };
  const left = features.reduce<Volume>(
    (volume, feature) => less(volume, sharedVolume(feature, blank)),
    volumeOf(blank),
  );
  return { kind: 'volume', volume: left };
}

function less(a: Volume, b: Volume): Volume {
  return {
    flat: { least: a.flat.least.minus(b.flat.most), most: a.flat.most.minus(b.flat.least) },
    timesPi: a.timesPi.minus(b.timesPi),
  };
}
