import { Length } from '../length/length.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { boundsOf } from '../solids/index.ts';
import type { HingePlan } from './hinge-plans.ts';

/** How far the cups of a framed door may reach from its edge, and what ends there. */
export interface RoomForCup {
  /** From the edge of the door to the far side of the cup. */
  readonly reach: Length;
  readonly room: Length;
  /** The groove or rabbet of the panel, where the cup is deep enough to open into it; else the edge of the stile. */
  readonly isAtGroove: boolean;
  /** Width of the stile. */
  readonly stile: Length;
}

/** Undefined for doors without a stile at that edge, and where it is not known where the cup is. */
export function roomForCup({ leaf, side, cup }: HingePlan, parts: readonly UnmarkedPart[]): RoomForCup | undefined {
  if (cup?.distance === undefined) return undefined;
  const isLeft = side === 'left';
  const edge = isLeft ? leaf.leaf.x.start : leaf.leaf.x.end;
  const stile = parts.find(
    ({ frame, role, box }) =>
      frame === leaf.id && role === 'stile' && (isLeft ? box.x.start : box.x.end).length.equals(edge.length),
  );
  if (stile === undefined) return undefined;
  const bottomOfCup = leaf.deep.end.length.minus(cup.figures.depth.length);
  const grooves = stile.features
    .filter(({ kind }) => kind === 'groove' || kind === 'rabbet')
    .map(({ solid }) => boundsOf(solid))
    .filter(({ z }) => z.to.compare(bottomOfCup) > 0)
    .map(({ x }) => (isLeft ? x.from.minus(edge.length) : edge.length.minus(x.to)));
  const width = stile.box.x.size.length;
  const room = grooves.reduce((least, each) => least.min(each), width);
  return {
    reach: cup.distance.length.plus(cup.figures.diameter.length),
    room: room.max(Length.zero),
    isAtGroove: room.compare(width) < 0,
    stile: width,
  };
}
