import { outlineBeside, reachBeside } from './beside-bore.ts';
import { type Bore, boreOf } from './bore.ts';
import { boundsMeet, boundsOf } from './bounds.ts';
import { isNearer } from './flat.ts';
import { cross, eitherWay, inWholeNumbers, isNowhere, type Point } from './points.ts';
import { directionsOf, type Polyhedron, polyhedronOf, rangeAlong } from './polyhedron.ts';
import { compareRoots } from './roots.ts';
import { areRoughlyApart, extentOf, roughCross, roughly } from './rough.ts';
import type { BoxSolid, ConvexSolid, Solid } from './solid.ts';

/**
 * Whether two solids share any volume. Exact, whatever the two are and however they lie: what only touches, in a
 * face, an edge or a corner, does not meet. A solid that `whyNotSolid` faults gets some answer, never a throw.
 */
export function meets(a: Solid, b: Solid): boolean {
  if (!boundsMeet(boundsOf(a), boundsOf(b))) return false;
  if (a.kind === 'box' && b.kind === 'box') return true;
  if (a.kind === 'cylinder') {
    if (b.kind !== 'cylinder') return boreMeetsPolyhedron(boreOf(a), b);
    return a.axis === b.axis ? parallelBoresMeet(boreOf(a), boreOf(b)) : crossingBoresMeet(boreOf(a), boreOf(b));
  }
  if (b.kind === 'cylinder') return boreMeetsPolyhedron(boreOf(b), a);
  return polyhedraMeet(polyhedronOf(a), polyhedronOf(b));
}

/** Two convex polyhedra are apart only if a plane along one's face, or along an edge of each, parts them. */
function polyhedraMeet(a: Polyhedron, b: Polyhedron): boolean {
  const ofA = directionsOf(a);
  const ofB = directionsOf(b);
  for (const normal of [...ofA.normals, ...ofB.normals]) {
    const rough = roughly(normal);
    if (areRoughlyApart(a, b, rough, extentOf(rough)) ?? areApartAlong(a, b, normal)) return false;
  }
  for (const edgeOfA of ofA.edges) {
    const roughA = roughly(edgeOfA);
    for (const edgeOfB of ofB.edges) {
      const roughB = roughly(edgeOfB);
      const apart = areRoughlyApart(a, b, roughCross(roughA, roughB), extentOf(roughA) * extentOf(roughB));
      if (apart ?? areApartAlong(a, b, cross(edgeOfA, edgeOfB))) return false;
    }
  }
  return true;
}

function areApartAlong(a: Polyhedron, b: Polyhedron, direction: Point): boolean {
  // Edges that run the same way have no direction across both.
  if (isNowhere(direction)) return false;
  const [leastA, mostA] = rangeAlong(a, direction);
  const [leastB, mostB] = rangeAlong(b, direction);
  return mostA.compare(leastB) <= 0 || mostB.compare(leastA) <= 0;
}

/** Every direction that a plane between the two need ever stand across; may repeat itself. */
export function* partingDirections(a: Polyhedron, b: Polyhedron): Iterable<Point> {
  const ofA = directionsOf(a);
  const ofB = directionsOf(b);
  yield* ofA.normals;
  yield* ofB.normals;
  for (const edgeOfA of ofA.edges) {
    for (const edgeOfB of ofB.edges) {
      const across = cross(edgeOfA, edgeOfB);
      if (!isNowhere(across)) yield eitherWay(inWholeNumbers(across));
    }
  }
}

function boreMeetsPolyhedron(bore: Bore, solid: BoxSolid | ConvexSolid): boolean {
  const outline = outlineBeside(bore, solid);
  return outline !== undefined && isNearer(outline, bore.spine, bore.radius);
}

function parallelBoresMeet(a: Bore, b: Bore): boolean {
  // Their bounds meet, so they share a stretch of the axis.
  return isNearer(a.spine, b.spine, a.radius.plus(b.radius));
}

/**
 * On each plane across the third axis both are rectangles or nothing: a's own stretch by what a reaches there, and
 * the other way round. So they meet if both are within the other's stretch on one and the same plane.
 */
function crossingBoresMeet(a: Bore, b: Bore): boolean {
  const ofA = reachBeside(a, b);
  const ofB = reachBeside(b, a);
  if (ofA === undefined || ofB === undefined) return false;
  return compareRoots(ofA[0], ofB[1]) < 0 && compareRoots(ofB[0], ofA[1]) < 0;
}
