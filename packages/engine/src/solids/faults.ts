import { pointOf } from './points.ts';
import { edgesOf, faceFrom, heightOver } from './polyhedron.ts';
import { AXES, type Axis, type ConvexSolid, type Solid } from './solid.ts';

/** Why something put together as a solid is none. For whoever builds solids; a maker never reads it. */
export type SolidFault =
  | { readonly kind: 'no-extent'; readonly axis: Axis }
  | { readonly kind: 'no-radius' }
  | { readonly kind: 'too-few-corners' }
  | { readonly kind: 'corner-missing'; readonly face: number; readonly corner: number }
  | { readonly kind: 'corner-repeated'; readonly corner: number }
  | { readonly kind: 'corner-unused'; readonly corner: number }
  | { readonly kind: 'face-without-area'; readonly face: number }
  | { readonly kind: 'face-not-flat'; readonly face: number; readonly corner: number }
  /** A corner lies outside of a face's plane: the solid has a hollow, or the face is listed the wrong way round. */
  | { readonly kind: 'not-convex'; readonly face: number; readonly corner: number }
  | { readonly kind: 'faces-in-one-plane'; readonly face: number; readonly other: number }
  /** The edge does not belong to exactly two faces that run along it in opposite directions. */
  | { readonly kind: 'not-closed'; readonly face: number; readonly from: number; readonly to: number };

/**
 * The first thing that is wrong with `solid`; undefined if it is sound. Never throws. Every other function here takes
 * sound solids: the makers make no others.
 */
export function whyNotSolid(solid: Solid): SolidFault | undefined {
  switch (solid.kind) {
    case 'box': {
      const axis = AXES.find((each) => solid[each].from.compare(solid[each].to) >= 0);
      return axis === undefined ? undefined : { kind: 'no-extent', axis };
    }
    case 'cylinder': {
      if (solid.along.from.compare(solid.along.to) >= 0) return { kind: 'no-extent', axis: solid.axis };
      return solid.radius.isPositive() ? undefined : { kind: 'no-radius' };
    }
    case 'convex':
      return whyNotListed(solid) ?? whyNotClosed(solid) ?? whyNotConvex(solid);
    default: {
      const never: never = solid;
      return never;
    }
  }
}

function whyNotListed({ corners, faces }: ConvexSolid): SolidFault | undefined {
  if (corners.length < 4) return { kind: 'too-few-corners' };
  const places = new Set<string>();
  for (const [corner, { x, y, z }] of corners.entries()) {
    const place = `${x} ${y} ${z}`;
    if (places.has(place)) return { kind: 'corner-repeated', corner };
    places.add(place);
  }
  const used = new Set<number>();
  for (const [face, ring] of faces.entries()) {
    for (const [index, corner] of ring.entries()) {
      if (corners[corner] === undefined) return { kind: 'corner-missing', face, corner };
      if (ring.indexOf(corner) !== index) return { kind: 'corner-repeated', corner };
      used.add(corner);
    }
    if (ring.length < 3) return { kind: 'face-without-area', face };
  }
  const unused = corners.findIndex((_, corner) => !used.has(corner));
  return unused < 0 ? undefined : { kind: 'corner-unused', corner: unused };
}

function whyNotClosed({ faces }: ConvexSolid): SolidFault | undefined {
  const times = new Map<string, number>();
  const edges = faces.flatMap((ring, face) => edgesOf(ring).map(([from, to]) => ({ face, from, to })));
  for (const { from, to } of edges) times.set(`${from} ${to}`, (times.get(`${from} ${to}`) ?? 0) + 1);
  const open = edges.find(({ from, to }) => times.get(`${from} ${to}`) !== 1 || times.get(`${to} ${from}`) !== 1);
  return open === undefined ? undefined : { kind: 'not-closed', ...open };
}

/**
 * With every corner behind every face, no two faces in one plane and every edge shared by two faces, each edge is an
 * edge of the convex solid around the corners and each face the whole of one of its faces, so nothing else need be
 * asked.
 */
function whyNotConvex(solid: ConvexSolid): SolidFault | undefined {
  const corners = solid.corners.map(pointOf);
  const planes = new Map<string, number>();
  for (const [face, indices] of solid.faces.entries()) {
    const made = faceFrom(corners, indices);
    if (made === undefined) return { kind: 'face-without-area', face };
    const heights = corners.map((corner) => heightOver(made.plane, corner).sign());
    const bent = indices.find((corner) => heights[corner] !== 0);
    if (bent !== undefined) return { kind: 'face-not-flat', face, corner: bent };
    const corner = heights.findIndex((height) => height > 0);
    if (corner >= 0) return { kind: 'not-convex', face, corner };
    const { x, y, z } = made.plane.normal;
    const name = `${x} ${y} ${z} ${made.plane.offset}`;
    const other = planes.get(name);
    if (other !== undefined) return { kind: 'faces-in-one-plane', face, other };
    planes.set(name, face);
  }
  return undefined;
}
