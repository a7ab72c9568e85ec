import type { FaceOfPart } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import type { PartRole } from '../parts/part.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { type Axis, axesAcross } from '../solids/solid.ts';

/** What of the case lies behind a plane, for hardware that is let into it or screwed to it. */

const standing: ReadonlySet<PartRole> = new Set<PartRole>([
  'top',
  'side',
  'bottom',
  'stretcher',
  'partition',
  'stile',
  'rail',
  'frame-stile',
  'frame-rail',
  'divider-rail',
  'divider-panel',
]);

/**
 * The part whose face looks this way and lies at `at`, with wood at the place given on the other two axes in
 * alphabetical order; undefined where there is none.
 */
export function woodFacing(
  parts: readonly UnmarkedPart[],
  face: FaceOfPart,
  at: Length,
  [u, v]: readonly [Length, Length],
): UnmarkedPart | undefined {
  const axis = face.slice(1) as Axis;
  const [axisU, axisV] = axesAcross(axis);
  return parts.find(({ role, cell, box }) => {
    if (!standing.has(role) || (cell !== undefined && (role === 'stile' || role === 'rail'))) return false;
    const edge = face.startsWith('+') ? box[axis].end : box[axis].start;
    return edge.length.equals(at) && holds(box[axisU], u) && holds(box[axisV], v);
  });
}

function holds(
  { start, end }: { readonly start: { readonly length: Length }; readonly end: { readonly length: Length } },
  place: Length,
): boolean {
  return start.length.compare(place) <= 0 && place.compare(end.length) <= 0;
}
