import { axisOf, type FaceOfPart, type Feature, isHoleOfHardware } from '../joinery/feature.ts';
import { Length } from '../length/length.ts';
import type { PartRole } from '../parts/part.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { type Axis, axesAcross, boreAlong, type CylinderSolid, meets } from '../solids/index.ts';
import type { Screw } from './placed-hardware.ts';

/**
 * What a screw finds behind the plane that its hardware lies on: the wood along its whole length, and what is wrong
 * with it. Exact. Knows nothing of what the screw holds.
 */
export type Backing =
  /** Wood all around and all along, through one part or through several that lie on each other. */
  | { readonly kind: 'solid'; readonly parts: readonly UnmarkedPart[] }
  /** No wood, or none within `FARTHEST_BACKING`. */
  | { readonly kind: 'air' }
  /** The wood begins so far behind the plane. */
  | { readonly kind: 'behind-gap'; readonly part: UnmarkedPart; readonly gap: Length }
  /** It comes out of the wood by so much; zero where its tip just reaches the far face. */
  | { readonly kind: 'breaks-through'; readonly part: UnmarkedPart; readonly by: Length; readonly wood: Length }
  | { readonly kind: 'meets-joint'; readonly part: UnmarkedPart; readonly feature: Feature }
  /** So much wood is left beside its hole; zero where the hole runs out of the edge. */
  | { readonly kind: 'near-edge'; readonly part: UnmarkedPart; readonly left: Length; readonly limit: Length };

/** What moves in use is wood to fasten to where it lies right behind the screw, but nothing to pack out to. */
export const moving: ReadonlySet<PartRole> = new Set<PartRole>([
  'door',
  'lid',
  'drawer-front',
  'drawer-side',
  'drawer-end',
  'drawer-bottom',
  'drawer-partition',
]);

/**
 * In the order of the screws. `parts` are those of the piece, with everything that is cut into them. `farthest`: wood
 * that begins farther behind a screw than this is none.
 */
export function backingsOf(
  screws: readonly Screw[],
  parts: readonly UnmarkedPart[],
  farthest: Length,
): readonly Backing[] {
  const near = new Map<Axis, NearRows>();
  return screws.map((screw) => {
    const axis = axisOf(screw.towards);
    let rows = near.get(axis);
    if (rows === undefined) {
      const along = screws.filter(({ towards }) => axisOf(towards) === axis);
      rows = new NearRows(axis === 'y' ? 'x' : 'y', partsAcross(along, axis, parts));
      near.set(axis, rows);
    }
    return backingOf(screw, rows.partsAt(screw.at), farthest);
  });
}

/** Screws mostly stand in level rows: what lies at the height of a row is looked for once. */
class NearRows {
  readonly #axis: Axis;
  readonly #parts: readonly UnmarkedPart[];
  readonly #byPlace = new Map<string, readonly UnmarkedPart[]>();

  constructor(axis: Axis, parts: readonly UnmarkedPart[]) {
    this.#axis = axis;
    this.#parts = parts;
  }

  partsAt(point: Screw['at']): readonly UnmarkedPart[] {
    const place = point[this.#axis];
    const key = place.exactInches;
    let found = this.#byPlace.get(key);
    if (found === undefined) {
      found = this.#parts.filter(({ blank }) => {
        const { start, end } = blank[this.#axis];
        return start.length.compare(place) <= 0 && end.length.compare(place) >= 0;
      });
      this.#byPlace.set(key, found);
    }
    return found;
  }
}

/** The hole that a screw needs. */
export function holeOf({ at, towards, diameter, length }: Screw): CylinderSolid {
  const axis = axisOf(towards);
  const [u, v] = axesAcross(axis);
  const tip = isUp(towards) ? at[axis].plus(length) : at[axis].minus(length);
  return boreAlong(axis, { from: at[axis].min(tip), to: at[axis].max(tip) }, [at[u], at[v]], diameter.dividedBy(2));
}

/** What lies within the screws as one sees them along the axis: the only parts that any of them can hit. */
function partsAcross(screws: readonly Screw[], axis: Axis, parts: readonly UnmarkedPart[]): readonly UnmarkedPart[] {
  const hull = axesAcross(axis).map((across) => ({
    across,
    from: screws.map(({ at }) => at[across]).reduce((least, each) => least.min(each)),
    to: screws.map(({ at }) => at[across]).reduce((most, each) => most.max(each)),
  }));
  return parts.filter(({ blank }) =>
    hull.every(
      ({ across, from, to }) =>
        blank[across].end.length.compare(from) >= 0 && blank[across].start.length.compare(to) <= 0,
    ),
  );
}

interface Hit {
  readonly part: UnmarkedPart;
  /** From the plane, positive the way that the screw is driven. */
  readonly from: Length;
  readonly to: Length;
}

function backingOf(screw: Screw, parts: readonly UnmarkedPart[], farthest: Length): Backing {
  const hits = hitsOf(screw, parts);
  const first = hits.find(({ from }) => !from.isPositive());
  if (first === undefined) {
    const [behind] = hits.filter(({ part }) => !moving.has(part.role)).sort((a, b) => a.from.compare(b.from));
    if (behind === undefined || behind.from.compare(farthest) > 0) return { kind: 'air' };
    return { kind: 'behind-gap', part: behind.part, gap: behind.from };
  }
  const chain = [first];
  let end = first.to;
  while (end.compare(screw.length) <= 0) {
    const reached = end;
    const next = hits.find(({ from, to }) => from.compare(reached) <= 0 && to.compare(reached) > 0);
    if (next === undefined) {
      return { kind: 'breaks-through', part: first.part, by: screw.length.minus(reached), wood: reached };
    }
    chain.push(next);
    end = next.to;
  }
  const hole = holeOf(screw);
  for (const { part } of chain) {
    const feature = part.features.find((each) => !isHoleOfHardware(each) && meets(hole, each.solid));
    if (feature !== undefined) return { kind: 'meets-joint', part, feature };
  }
  for (const { part } of chain) {
    const left = woodBeside(screw, part);
    if (left.compare(screw.diameter) >= 0) continue;
    return { kind: 'near-edge', part, left: left.max(Length.zero), limit: screw.diameter };
  }
  return { kind: 'solid', parts: chain.map(({ part }) => part) };
}

/** What the middle of the screw would run through, if it were long enough. */
function hitsOf({ at, towards }: Screw, parts: readonly UnmarkedPart[]): readonly Hit[] {
  const axis = axisOf(towards);
  const across = axesAcross(axis);
  const plane = at[axis];
  return parts.flatMap((part): readonly Hit[] => {
    const { blank } = part;
    const isAcross = across.every(
      (each) => blank[each].start.length.compare(at[each]) <= 0 && blank[each].end.length.compare(at[each]) >= 0,
    );
    if (!isAcross) return [];
    const { start, end } = blank[axis];
    const hit = isUp(towards)
      ? { part, from: start.length.minus(plane), to: end.length.minus(plane) }
      : { part, from: plane.minus(end.length), to: plane.minus(start.length) };
    return hit.to.isPositive() ? [hit] : [];
  });
}

/** From the rim of the hole to the nearest edge of the part. */
function woodBeside({ at, towards, diameter }: Screw, { blank }: UnmarkedPart): Length {
  const walls = axesAcross(axisOf(towards)).flatMap((axis) => [
    at[axis].minus(blank[axis].start.length),
    blank[axis].end.length.minus(at[axis]),
  ]);
  return walls.reduce((least, each) => least.min(each)).minus(diameter.dividedBy(2));
}

function isUp(face: FaceOfPart): boolean {
  return face.startsWith('+');
}
