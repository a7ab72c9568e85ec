import type { FaceOfPart } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { PLATE_FROM_FRONT } from '../tables/hanging-habits.ts';
import type { HingePlan } from './hinge-plans.ts';
import { woodFacing } from './wood-beside.ts';

/** Where a hinge would have to hold in the case and nothing stands. */
export type PlaceWithoutWood = 'beside its left edge' | 'beside its right edge' | 'over it' | 'under it';

export function placesWithoutWood(
  { form, leaf, side, hinge, middles }: HingePlan,
  parts: readonly UnmarkedPart[],
  facePlane: Length,
): readonly PlaceWithoutWood[] {
  const isLeft = side === 'left';
  const front = leaf.deep.start.length;
  if (form === 'knife') {
    const edge = (isLeft ? leaf.leaf.x.start : leaf.leaf.x.end).length;
    const middle = hinge.length?.length.dividedBy(2);
    if (middle === undefined) return [];
    const x = isLeft ? edge.plus(middle) : edge.minus(middle);
    const z = front.plus(leaf.deep.size.length.dividedBy(2));
    const is = (face: FaceOfPart, at: Length) => woodFacing(parts, face, at, [x, z]) !== undefined;
    return [
      ...(is('+y', leaf.opening.y.start.length) ? [] : (['under it'] as const)),
      ...(is('-y', leaf.opening.y.end.length) ? [] : (['over it'] as const)),
    ];
  }
  const edge = (isLeft ? leaf.opening.x.start : leaf.opening.x.end).length;
  const z = form === 'butt' ? front.plus((hinge.leafWidth?.length ?? leaf.deep.size.length).dividedBy(2)) : plateAt();
  const hasWood = middles.every(
    (middle) =>
      woodFacing(parts, isLeft ? '+x' : '-x', edge, [leaf.leaf.y.start.length.plus(middle.length), z]) !== undefined,
  );
  return hasWood ? [] : [isLeft ? 'beside its left edge' : 'beside its right edge'];

  function plateAt(): Length {
    const from = facePlane.plus(hinge.cup?.plateFrom?.length ?? PLATE_FROM_FRONT);
    return leaf.fit.kind === 'inset' ? from.plus(leaf.deep.size.length) : from;
  }
}
