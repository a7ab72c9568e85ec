import type { Part } from '@fettle/engine';
import type { Stretch } from './shapes/seen-edges.ts';
import { FROM_FRONT } from './shapes/view-direction.ts';
import { viewedParts } from './views/viewed-parts.ts';

/** Every scale that is tried asks for the same parts. */
const known = new WeakMap<Part, readonly Stretch[]>();

/**
 * The edges of a foot as one sees them from the front, where it is more than a box: in real millimetres, v upwards. Nothing
 * stands before a foot, so it is seen whole. Undefined for any other part.
 */
export function shapedOutline(part: Part): readonly Stretch[] | undefined {
  if (part.role !== 'foot' || !part.features.some(({ solid }) => solid.kind === 'convex')) return undefined;
  const stretches =
    known.get(part) ??
    viewedParts({ parts: [part], from: FROM_FRONT, showsHidden: () => false }).flatMap(({ seen }) => seen);
  known.set(part, stretches);
  return stretches;
}
