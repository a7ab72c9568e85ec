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

/** Below this volume, in cubic inches, the kernel's answer is taken for rounding: its own tolerance is about 1e-11. */
export const LEAST_VOLUME = 1e-9;

const FACETS = 96;

export interface Kernel {
  /** The volume the two share, in cubic inches: not more than the least, not less than the most. */
  sharedVolume(a: Solid, b: Solid): { readonly least: number; readonly most: number };
  volume(solid: Solid): { readonly least: number; readonly most: number };
}

export async function openKernel(): Promise<Kernel> {
  const kernel = await createKernel();
  kernel.setup();
  return {
    sharedVolume(a, b) {
      const shared = (facets: Facets): number =>
        withAll([build(kernel, a, facets), build(kernel, b, facets)], ([one, other]) =>
          one === undefined || other === undefined
            ? 0
            : withAll([one.intersect(other)], ([both]) => both?.volume() ?? 0),
        );
      return { least: shared('inside'), most: shared('outside') };
    },
    volume(solid) {
      const volume = (facets: Facets): number =>
        withAll([build(kernel, solid, facets)], ([made]) => made?.volume() ?? 0);
      return { least: volume('inside'), most: volume('outside') };
    },
  };
}

type Facets = 'inside' | 'outside';

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

type Triple = [number, number, number];

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
