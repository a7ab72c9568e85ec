import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { boxOf, intervalOf, type Point3 } from '../solids/index.ts';
import { HINGE_SCREW } from '../tables/hanging-habits.ts';
import { limitIn } from '../tables/trade-limits.ts';
import type { HardwareCase } from './fit-hardware.ts';
import { alongDoor, doorPart, hingeId, hingesSaid, notFitted, placedHinge } from './hinge-listing.ts';
import type { HingePlan } from './hinge-plans.ts';
import type { FittedHardware, Screw } from './placed-hardware.ts';
import { woodFacing } from './wood-beside.ts';

/** Hinges of two leaves, each in a gain: butts in the edges of door and case, knives in the ends. */

const half = Rational.of(1, 2);

/** A leaf lies in the edge of the door and the other in the wood beside it, both from the front of the door. */
export function fitButt(plan: HingePlan, one: HardwareCase, middle: Figure, at: number): FittedHardware {
  const { leaf, side, hinge, gains } = plan;
  const { length, leafWidth } = hinge;
  if (length === undefined || leafWidth === undefined || gains === undefined) return notFitted;
  const isLeft = side === 'left';
  const outwards: FaceOfPart = isLeft ? '-x' : '+x';
  const inwards: FaceOfPart = isLeft ? '+x' : '-x';
  const doorEdge = (isLeft ? leaf.leaf.x.start : leaf.leaf.x.end).length;
  const woodEdge = (isLeft ? leaf.opening.x.start : leaf.opening.x.end).length;
  const y = leaf.leaf.y.start.length.plus(middle.length);
  const z = leaf.deep.start.length;
  const into = (edge: Length, depth: Length, way: FaceOfPart) =>
    intervalOf(edge, way === '+x' ? edge.plus(depth) : edge.minus(depth));
  const tall = intervalOf(y.minus(length.length.times(half)), y.plus(length.length.times(half)));
  const deep = intervalOf(z, z.plus(leafWidth.length));
  const door = doorPart(plan, one);
  const wood = woodFacing(one.parts, inwards, woodEdge, [y, z.plus(leafWidth.length.times(half))]);
  const id = hingeId(plan, at);
  const gain = (part: UnmarkedPart, entry: FaceOfPart, edge: Length, depth: Figure): Feature[] =>
    depth.length.isPositive()
      ? [
          {
            id: `${id} gain in ${part.id}`,
            kind: 'gain',
            part: part.id,
            solid: boxOf(into(edge, depth.length, entry === '-x' ? '+x' : '-x'), tall, deep),
            entry,
            runs: 'y',
            measures: { width: leafWidth, depth },
            stage: 'on the loose part',
            origin: hingesSaid(plan),
          },
        ]
      : [];
  const screwsFrom = (part: 'door' | 'wood', edge: Length, depth: Figure, towards: FaceOfPart): readonly Screw[] => {
    const x = towards === '+x' ? edge.plus(depth.length) : edge.minus(depth.length);
    return leafScrews(plan, one, `${id} ${part}`, towards, (share) => ({
      x,
      y: tall.from.plus(length.length.times(share)),
      z: z.plus(leafWidth.length.times(half)),
    }));
  };
  return {
    placed: [
      placedHinge(plan, id, at, [door, wood], {
        set: [
          ...alongDoor(plan, middle),
          { words: 'depth of the gain in the door', figure: gains.door },
          { words: 'depth of the gain in the case', figure: gains.wood },
          { words: 'width of both gains, from the front', figure: leafWidth },
        ],
        screws: [
          ...(door === undefined ? [] : screwsFrom('door', doorEdge, gains.door, inwards)),
          ...(wood === undefined ? [] : screwsFrom('wood', woodEdge, gains.wood, outwards)),
        ],
      }),
    ],
    features: [
      ...(door === undefined ? [] : gain(door, outwards, doorEdge, gains.door)),
      ...(wood === undefined ? [] : gain(wood, inwards, woodEdge, gains.wood)),
    ],
  };
}

/** A leaf lies in the end of the door, the other in what is over or under it, both in the middle of the thickness. */
export function fitKnife(plan: HingePlan, one: HardwareCase, end: 'lower' | 'upper'): FittedHardware {
  const { leaf, side, hinge, gains } = plan;
  const { length, leafWidth } = hinge;
  if (length === undefined || leafWidth === undefined || gains === undefined) return notFitted;
  const isUpper = end === 'upper';
  const outwards: FaceOfPart = isUpper ? '+y' : '-y';
  const inwards: FaceOfPart = isUpper ? '-y' : '+y';
  const doorEnd = (isUpper ? leaf.leaf.y.end : leaf.leaf.y.start).length;
  const woodEdge = (isUpper ? leaf.opening.y.end : leaf.opening.y.start).length;
  const edge = (side === 'left' ? leaf.leaf.x.start : leaf.leaf.x.end).length;
  const across = intervalOf(edge, side === 'left' ? edge.plus(length.length) : edge.minus(length.length));
  const fromFront = derive('the leaf lies in the middle of the thickness', [
    plus('thickness of the door', leaf.deep.size, half),
    less('width of the leaf', leafWidth, half),
  ]);
  const z = leaf.deep.start.length.plus(fromFront.length);
  const deep = intervalOf(z, z.plus(leafWidth.length));
  const door = doorPart(plan, one);
  const middleX = across.from.plus(length.length.times(half));
  const wood = woodFacing(one.parts, inwards, woodEdge, [middleX, z.plus(leafWidth.length.times(half))]);
  const id = hingeId(plan, isUpper ? 1 : 0);
  const gain = (part: UnmarkedPart, entry: FaceOfPart, at: Length, depth: Figure): Feature[] =>
    depth.length.isPositive()
      ? [
          {
            id: `${id} gain in ${part.id}`,
            kind: 'gain',
            part: part.id,
            solid: boxOf(across, intervalOf(at, entry === '+y' ? at.minus(depth.length) : at.plus(depth.length)), deep),
            entry,
            runs: 'x',
            measures: { width: leafWidth, depth },
            stage: 'on the loose part',
            origin: hingesSaid(plan),
          },
        ]
      : [];
  const screwsFrom = (part: 'door' | 'wood', at: Length, depth: Figure, towards: FaceOfPart): readonly Screw[] =>
    leafScrews(plan, one, `${id} ${part}`, towards, (share) => ({
      x: across.from.plus(length.length.times(share)),
      y: towards === '+y' ? at.plus(depth.length) : at.minus(depth.length),
      z: z.plus(leafWidth.length.times(half)),
    }));
  return {
    placed: [
      placedHinge(plan, id, isUpper ? 1 : 0, [door, wood], {
        set: [
          { words: 'from the front of the door to the leaf', figure: fromFront },
          { words: 'length of both gains, from the edge that the door hangs on', figure: length },
          { words: `depth of the gain in the ${end} end of the door`, figure: gains.door },
          { words: `depth of the gain ${isUpper ? 'over' : 'under'} the door`, figure: gains.wood },
        ],
        screws: [
          ...(door === undefined ? [] : screwsFrom('door', doorEnd, gains.door, inwards)),
          ...(wood === undefined ? [] : screwsFrom('wood', woodEdge, gains.wood, outwards)),
        ],
      }),
    ],
    features: [
      ...(door === undefined ? [] : gain(door, outwards, doorEnd, gains.door)),
      ...(wood === undefined ? [] : gain(wood, inwards, woodEdge, gains.wood)),
    ],
  };
}

/** Evenly along a leaf: the share of its length at which each is. */
function leafScrews(
  { hinge, gains }: HingePlan,
  { layout }: HardwareCase,
  id: string,
  towards: FaceOfPart,
  place: (share: Rational) => Point3,
): readonly Screw[] {
  const { screwLength, screwsEachLeaf = 0 } = hinge;
  // Without a gain a leaf lies on packing that nobody has described.
  const isLetIn = gains !== undefined && !gains.door.length.isNegative() && !gains.wood.length.isNegative();
  if (screwLength === undefined || !isLetIn) return [];
  return Array.from({ length: Math.min(screwsEachLeaf, 20) }, (_, at) => ({
    id: `${id} screw ${at + 1}`,
    at: place(Rational.of(2 * at + 1, 2 * screwsEachLeaf)),
    towards,
    diameter: limitIn(HINGE_SCREW, layout.unit),
    length: screwLength.length,
  }));
}
