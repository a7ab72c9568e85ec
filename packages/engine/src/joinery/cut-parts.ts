import { groupedBy } from '../grouping.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import type { Feature } from './feature.ts';

/** The same parts with more cut into them. A feature of a part that is not there is left out. */
export function withFeatures(parts: readonly UnmarkedPart[], features: readonly Feature[]): readonly UnmarkedPart[] {
  if (features.length === 0) return parts;
  const byPart = groupedBy(features, ({ part }) => part);
  return parts.map((part) => {
    const cut = byPart.get(part.id);
    return cut === undefined ? part : { ...part, features: [...part.features, ...cut] };
  });
}
