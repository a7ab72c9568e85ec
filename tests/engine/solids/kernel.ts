import createKernel, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import type { Length } from '../../../packages/engine/src/length/length.ts';
import { axesAcross, type CylinderSolid, type Point3, type Solid } from '../../../packages/engine/src/solids/index.ts';

/**
 * The same solids in a general geometry kernel that knows nothing of ours: it calculates in doubles and makes round
 * things of facets. So each cylinder is made twice, with its facets inside and outside of the true one, and what the
 * kernel says of the two brackets the truth.
 *
 * Nothing of a solid but its sizes is handed over: flat solids are rebuilt by the kernel as the hull of their corners.
 */

/**
 * The kernel's tolerance. Less volume than this, in cubic inches, may be rounding, and a corner that is in by a
 * thousandth of an inch has no more; a smaller gap than this, in inches, may be rounding, too. Between the two the
 * kernel has no verdict.
 */
export const LEAST_VOLUME = 1e-9;
export const LEAST_GAP = 1e-6;

/** The kernel looks no further, in inches. */
export const LARGEST_GAP = 1;

const FACETS = 96;

/** Whether the facets of round things lie inside or outside of the true wall. */
export type Facets = 'inside' | 'outside';

type Triple = [number, number, number];

export interface Common {
  /** Cubic inches. */
  readonly volume: number;
  /** Inches; of nothing, infinite the wrong way round. */
  readonly low: Triple;
  readonly high: Triple;
}

export interface Kernel {
  /** What the two share. */
  common(a: Solid, facetsOfA: Facets, b: Solid, facetsOfB: Facets): Common;
  /** Between the two, in inches; zero where they meet, never more than the largest. */
  gap(a: Solid, b: Solid, facets: Facets): number;
  volume(solid: Solid, facets: Facets): number;
}

export async function openKernel(): Promise<Kernel> {
  const kernel = await createKernel();
  kernel.setup();
  return {
    common: (a, facetsOfA, b, facetsOfB) =>
      withAll([build(kernel, a, facetsOfA), build(kernel, b, facetsOfB)], (both) =>
        withAll([kernel.Manifold.intersection(both)], ([shared]) => {
          if (shared === undefined) throw new Error('the kernel gave nothing');
          const { min, max } = shared.boundingBox();
          return { volume: shared.volume(), low: [...min], high: [...max] };
        }),
      ),
    gap: (a, b, facets) =>
      withAll([build(kernel, a, facets), build(kernel, b, facets)], ([one, other]) => {
        if (one === undefined || other === undefined) throw new Error('the kernel gave nothing');
        return one.minGap(other, LARGEST_GAP);
      }),
    volume: (solid, facets) =>
      withAll([build(kernel, solid, facets)], ([made]) => {
        if (made === undefined) throw new Error('the kernel gave nothing');
        return made.volume();
      }),
  };
}

/** What the kernel makes lives outside of the collected heap and must be given back. */
function withAll<T>(made: readonly Manifold[], use: (made: readonly Manifold[]) => T): T {
  try {
    return use(made);
  } finally {
    for (const each of made) each.delete();
  }
}

const inches = (length: Length): number => length.approximateInches;

function build(kernel: ManifoldToplevel, solid: Solid, facets: Facets): Manifold {
  return kernel.Manifold.hull(solid.kind === 'cylinder' ? pointsOfCylinder(solid, facets) : pointsOfFlat(solid));
}

function pointsOfFlat(solid: Exclude<Solid, CylinderSolid>): Triple[] {
  const triple = ({ x, y, z }: Point3): Triple => [inches(x), inches(y), inches(z)];
  if (solid.kind === 'convex') return solid.corners.map(triple);
  const ends = [solid.x, solid.y, solid.z].map(({ from, to }) => [inches(from), inches(to)]);
  const [xs = [], ys = [], zs = []] = ends;
  return xs.flatMap((x) => ys.flatMap((y) => zs.map((z): Triple => [x, y, z])));
}

function pointsOfCylinder(solid: CylinderSolid, facets: Facets): Triple[] {
  const [u, v] = axesAcross(solid.axis);
  const radius = inches(solid.radius) / (facets === 'inside' ? 1 : Math.cos(Math.PI / FACETS));
  const centres = solid.sweptTo === undefined ? [solid.centre] : [solid.centre, solid.sweptTo];
  return centres.flatMap(([atU, atV]) =>
    Array.from({ length: FACETS }, (_, facet) => (2 * Math.PI * facet) / FACETS).flatMap((angle) =>
      [solid.along.from, solid.along.to].map((at): Triple => {
        const place = { x: 0, y: 0, z: 0 };
        place[solid.axis] = inches(at);
        place[u] = inches(atU) + radius * Math.cos(angle);
        place[v] = inches(atV) + radius * Math.sin(angle);
        return [place.x, place.y, place.z];
      }),
    ),
  );
}
