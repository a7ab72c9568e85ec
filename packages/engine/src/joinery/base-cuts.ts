import { derive, less, plus } from '../design/derive.ts';
import type { PieceDesign } from '../design/design.ts';
import type { Length } from '../length/length.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { boxOf, intervalOf, prismOf } from '../solids/makers.ts';
import type { Feature } from './feature.ts';

/** What a base takes from the parts of a case: the notch of a toe space in the sides, the taper of a foot. */
export function baseCuts({ carcase }: PieceDesign, parts: readonly UnmarkedPart[]): readonly Feature[] {
  const { toeSpace, feet } = carcase;
  return [
    ...(toeSpace === undefined
      ? []
      : parts.filter(isSide).flatMap((part) => notchIn(part, toeSpace, frontOf(parts.filter(isSide))))),
    ...(feet === undefined ? [] : parts.filter(({ role }) => role === 'foot').flatMap((foot) => tapersOf(foot, feet))),
  ];
}

function isSide({ role, thin, frame }: UnmarkedPart): boolean {
  return (
    role === 'side' ||
    ((role === 'stile' || role === 'rail' || role === 'panel') && thin === 'x' && frame !== undefined)
  );
}

function frontOf(sides: readonly UnmarkedPart[]): Length | undefined {
  return sides
    .map(({ box }) => box.z.start.length)
    .reduce<Length | undefined>((a, b) => (a === undefined ? b : a.min(b)), undefined);
}

/** In whatever of a side stands in the recess. */
function notchIn(
  part: UnmarkedPart,
  toeSpace: NonNullable<PieceDesign['carcase']['toeSpace']>,
  front: Length | undefined,
): readonly Feature[] {
  if (front === undefined) return [];
  const [high, deep] = [toeSpace.height.length, front.plus(toeSpace.depth.length)];
  const { x, y, z } = part.blank;
  if (y.start.length.compare(high) >= 0 || z.start.length.compare(deep) >= 0) return [];
  return [
    {
      id: `${part.id}/notch`,
      kind: 'notch',
      part: part.id,
      solid: boxOf(
        intervalOf(x.start.length, x.end.length),
        intervalOf(y.start.length, high.min(y.end.length)),
        intervalOf(z.start.length, deep.min(z.end.length)),
      ),
      entry: '-z',
      runs: 'x',
      measures: { width: toeSpace.height, depth: toeSpace.depth },
      stage: 'on the loose part',
      origin: toeSpace.origin,
    },
  ];
}

/** On the two faces that look inwards, from the lower edge of the rails, or from the top, down to the floor. */
function tapersOf(foot: UnmarkedPart, feet: NonNullable<PieceDesign['carcase']['feet']>): readonly Feature[] {
  const { taperTo, thickness, rails } = feet;
  if (taperTo === undefined || taperTo.length.compare(thickness.length) >= 0) return [];
  const { box } = foot;
  const taken = derive('what the taper takes at the floor', [
    plus('thickness of the foot', thickness),
    less('what it tapers to', taperTo),
  ]);
  const top = rails === undefined ? box.y.end.length : box.y.end.length.minus(rails.width.length);
  const inner = { x: foot.id.endsWith('left') ? '+x' : '-x', z: foot.id.includes('front') ? '+z' : '-z' } as const;
  return (['x', 'z'] as const).map((axis): Feature => {
    const entry = inner[axis];
    const face = entry.startsWith('+') ? box[axis].end.length : box[axis].start.length;
    const atFloor = entry.startsWith('+') ? face.minus(taken.length) : face.plus(taken.length);
    const other = axis === 'x' ? 'z' : 'x';
    const corner = (across: Length, up: Length): readonly [Length, Length] =>
      axis === 'x' ? [across, up] : [up, across];
    return {
      id: `${foot.id}/taper ${entry}`,
      kind: 'taper',
      part: foot.id,
      solid: prismOf(other, intervalOf(box[other].start.length, box[other].end.length), [
        corner(face, top),
        corner(face, box.y.start.length),
        corner(atFloor, box.y.start.length),
      ]),
      entry,
      runs: 'y',
      measures: { depth: taken },
      stage: 'on the loose part',
      origin: feet.origin,
    };
  });
}
