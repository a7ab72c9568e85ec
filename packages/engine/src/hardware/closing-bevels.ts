import type { Figure } from '../design/figure.ts';
import type { Feature } from '../joinery/feature.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { intervalOf, wedgeOf } from '../solids/index.ts';
import type { HardwareCase } from './fit-hardware.ts';
import { type HungLeaf, hungLeaves } from './hung-leaves.ts';
import type { FittedHardware } from './placed-hardware.ts';

/**
 * The bevel of a closing edge: nothing is taken off at the front of the door, all of it at the back, over the whole
 * height. It is planed when the door hangs, to the gap that is really there.
 */
export function fitBevels({ design, layout, face, parts }: HardwareCase): FittedHardware {
  if (design.face === undefined) return { placed: [], features: [] };
  const features = hungLeaves(design.face, layout, face).flatMap((leaf): readonly Feature[] => {
    const bevel = leaf.cell.hanging?.bevel;
    const closing = closingPart(leaf, parts);
    return bevel === undefined || closing === undefined ? [] : bevelOf(leaf, bevel, closing);
  });
  return { placed: [], features };
}

function bevelOf({ side, deep, cell }: HungLeaf, bevel: Figure, part: UnmarkedPart): readonly Feature[] {
  const { x, y } = part.blank;
  const isBeyond = bevel.length.compare(x.size.length) >= 0;
  if (!bevel.length.isPositive() || isBeyond || !deep.size.length.isPositive()) return [];
  const isAtRight = side === 'left';
  const edge = isAtRight ? x.end.length : x.start.length;
  const inner = isAtRight ? edge.minus(bevel.length) : edge.plus(bevel.length);
  const box = {
    kind: 'box',
    x: intervalOf(edge, inner),
    y: intervalOf(y.start.length, y.end.length),
    z: intervalOf(deep.start.length, deep.end.length),
  } as const;
  return [
    {
      id: `${part.id}/bevel of the closing edge`,
      kind: 'bevel',
      part: part.id,
      solid: wedgeOf(box, 'y', [isAtRight ? 'to' : 'from', 'to']),
      entry: isAtRight ? '+x' : '-x',
      runs: 'y',
      measures: { width: deep.size, depth: bevel },
      stage: 'when hanging',
      through: true,
      origin: cell.hanging?.origin ?? cell.origin,
    },
  ];
}

/** The door itself, or the stile of its frame that is away from its hinges. */
function closingPart({ id, side, leaf }: HungLeaf, parts: readonly UnmarkedPart[]): UnmarkedPart | undefined {
  if (side === undefined) return undefined;
  const slab = parts.find((part) => part.id === id);
  if (slab !== undefined) return slab;
  const edge = side === 'left' ? leaf.x.end : leaf.x.start;
  return parts.find(
    ({ frame, role, box }) =>
      frame === id && role === 'stile' && (side === 'left' ? box.x.end : box.x.start).length.equals(edge.length),
  );
}
