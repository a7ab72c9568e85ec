import type { Feature, Length, Part } from '@fettle/engine';

/**
 * Room that two parts would both fill: where their blanks overlap and nothing is cut from either. The overlap is parted
 * along every plane at which a cut begins or ends; between those planes a box is all cut or not at all. Mitres and
 * dovetails slope, so of them the middle of each such cell is asked.
 */
export function sharedWood(parts: readonly Part[]): readonly string[] {
  return parts.flatMap((a, at) =>
    parts.slice(at + 1).flatMap((b) => {
      const shared = axes.map((axis): readonly [Length, Length] => [
        a.blank[axis].start.length.max(b.blank[axis].start.length),
        a.blank[axis].end.length.min(b.blank[axis].end.length),
      ]);
      if (shared.some(([from, to]) => from.compare(to) >= 0)) return [];
      const cuts = [...a.features, ...b.features];
      const planes = axes.map((axis, index) => placesOf(cuts, axis, shared[index] as readonly [Length, Length]));
      return middles(planes).some((point) => !cuts.some((cut) => holds(cut, point))) ? [`${a.id} and ${b.id}`] : [];
    }),
  );
}

const axes = ['x', 'y', 'z'] as const;
type Point = readonly [Length, Length, Length];

function placesOf(
  cuts: readonly Feature[],
  axis: (typeof axes)[number],
  [from, to]: readonly [Length, Length],
): Length[] {
  const places = [from, to];
  for (const { solid } of cuts) {
    const ends =
      solid.kind === 'box'
        ? [solid[axis].from, solid[axis].to]
        : solid.kind === 'convex'
          ? solid.corners.map((corner) => corner[axis])
          : [];
    for (const end of ends) {
      if (end.compare(from) > 0 && end.compare(to) < 0 && !places.some((place) => place.equals(end))) places.push(end);
    }
  }
  return places.sort((one, other) => one.compare(other));
}

function middles(planes: readonly Length[][]): Point[] {
  const [xs = [], ys = [], zs = []] = planes.map((places) =>
    places.slice(1).map((place, at) => place.plus(places[at] as Length).dividedBy(2)),
  );
  return xs.flatMap((x) => ys.flatMap((y) => zs.map((z): Point => [x, y, z])));
}

/** Inside or on its surface. Cylinders never fill an overlap of blanks. */
function holds({ solid }: Feature, point: Point): boolean {
  if (solid.kind === 'cylinder') return false;
  if (solid.kind === 'box') {
    return axes.every((axis, at) => {
      const place = point[at] as Length;
      return solid[axis].from.compare(place) <= 0 && place.compare(solid[axis].to) <= 0;
    });
  }
  const numbers = point.map((place) => place.approximateInches) as unknown as Triple;
  const corners = solid.corners.map(
    ({ x, y, z }): Triple => [x, y, z].map((each) => each.approximateInches) as unknown as Triple,
  );
  return solid.faces.every(([i = 0, j = 0, k = 0]) => {
    const [a, b, c] = [corners[i], corners[j], corners[k]] as [Triple, Triple, Triple];
    return dot(cross(less(b, a), less(c, b)), less(numbers, a)) <= 1e-9;
  });
}

type Triple = readonly [number, number, number];
const less = (a: Triple, b: Triple): Triple => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
