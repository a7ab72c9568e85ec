import { derive, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { boreAlong, intervalOf, type Point3 } from '../solids/index.ts';
import { HINGE_SCREW, PLATE_FROM_FRONT, PLATE_SCREWS_APART } from '../tables/hanging-habits.ts';
import { limitIn } from '../tables/trade-limits.ts';
import { holeOf } from './backing.ts';
import { type RoomForCup, roomForCup } from './cups-in-stiles.ts';
import type { HardwareCase } from './fit-hardware.ts';
import { alongDoor, doorPart, hingeId, hingesSaid, notFitted, placedHinge } from './hinge-listing.ts';
import type { HingePlan } from './hinge-plans.ts';
import type { FittedHardware, Screw } from './placed-hardware.ts';
import { woodFacing } from './wood-beside.ts';

const half = Rational.of(1, 2);

/** A cup in the back of the door and a plate on the wood beside it. */
export function fitCup(plan: HingePlan, one: HardwareCase, middle: Figure, at: number): FittedHardware {
  const { leaf, side, hinge, cup } = plan;
  if (cup?.distance === undefined) return notFitted;
  const { figures, distance } = cup;
  const isLeft = side === 'left';
  const into = (by: Length) => {
    const edge = (isLeft ? leaf.leaf.x.start : leaf.leaf.x.end).length;
    return isLeft ? edge.plus(by) : edge.minus(by);
  };
  const y = leaf.leaf.y.start.length.plus(middle.length);
  const back = leaf.deep.end.length;
  const toMiddle = derive('from the edge of the door to the middle of the cup', [
    plus('cup distance', distance),
    plus('width of the cup', figures.diameter, half),
  ]);
  const door = doorPart(plan, one);
  const plate = figures.plateFrom ?? {
    length: PLATE_FROM_FRONT,
    reason: { kind: 'assumed', because: 'plates are 37 mm behind the front, trade convention, from memory' },
  };
  // The plate of an inset door stands as far behind its back as that of an overlay door behind the front of the case.
  const fromFront = derive('from the front of the case to the middle of the plate', [
    plus('from the front to the plate', plate),
    ...(leaf.fit.kind === 'inset' ? [plus('thickness of the inset door', leaf.deep.size)] : []),
  ]);
  const plateZ = one.layout.facePlane.length.plus(fromFront.length);
  const woodEdge = (isLeft ? leaf.opening.x.start : leaf.opening.x.end).length;
  const inwards: FaceOfPart = isLeft ? '+x' : '-x';
  const wood = woodFacing(one.parts, inwards, woodEdge, [y, plateZ]);
  const id = hingeId(plan, at);
  const diameter = limitIn(HINGE_SCREW, one.layout.unit);
  const length = hinge.screwLength?.length;
  const { holesApart, holesBehind } = figures;
  const beside = (words: string, place: Point3, towards: FaceOfPart): Screw[] =>
    length === undefined ? [] : [{ id: `${id} ${words}`, at: place, towards, diameter, length }];
  const cupScrews =
    door === undefined ||
    holesApart === undefined ||
    holesBehind === undefined ||
    !isWithin(roomForCup(plan, one.parts))
      ? []
      : [holesApart.length.times(half).negated(), holesApart.length.times(half)].flatMap((off, hole) =>
          beside(
            `cup screw ${hole + 1}`,
            { x: into(toMiddle.length.plus(holesBehind.length)), y: y.plus(off), z: back },
            '-z',
          ),
        );
  const plateScrews =
    wood === undefined
      ? []
      : [PLATE_SCREWS_APART.times(half).negated(), PLATE_SCREWS_APART.times(half)].flatMap((off, hole) =>
          beside(`plate screw ${hole + 1}`, { x: woodEdge, y: y.plus(off), z: plateZ }, isLeft ? '-x' : '+x'),
        );
  const bored = [...holesFor(plan, cupScrews, door, '+z'), ...holesFor(plan, plateScrews, wood, inwards)];
  return {
    placed: [
      placedHinge(plan, id, at, [door, wood], {
        set: [
          ...alongDoor(plan, middle),
          { words: 'from the edge of the door to the cup', figure: distance },
          { words: 'from the edge of the door to the middle of the cup', figure: toMiddle },
          { words: 'depth of the cup', figure: figures.depth },
          { words: 'from the front of the case to the middle of the plate', figure: fromFront },
        ],
        screws: [...cupScrews, ...plateScrews],
      }),
    ],
    features:
      door === undefined
        ? bored
        : [
            {
              id: `${id} cup in ${door.id}`,
              kind: 'cup-hole',
              part: door.id,
              solid: boreAlong(
                'z',
                intervalOf(back.minus(figures.depth.length), back),
                [into(toMiddle.length), y],
                figures.diameter.length.times(half),
              ),
              entry: '+z',
              measures: { width: figures.diameter, depth: figures.depth },
              stage: 'on the loose part',
              origin: hingesSaid(plan),
            },
            ...bored,
          ],
  };
}

/** The screws of a cup that has no place are not asked after: where they come to be is not known. */
function isWithin(cup: RoomForCup | undefined): boolean {
  return cup === undefined || cup.reach.compare(cup.room) < 0;
}

/** What is bored for the screws before the hinge is put on. */
function holesFor(
  plan: HingePlan,
  screws: readonly Screw[],
  part: UnmarkedPart | undefined,
  entry: FaceOfPart,
): readonly Feature[] {
  const said = plan.hinge.screwLength;
  if (part === undefined || said === undefined) return [];
  return screws.map((screw) => ({
    id: `${screw.id} in ${part.id}`,
    kind: 'screw-hole',
    part: part.id,
    solid: holeOf(screw),
    entry,
    measures: {
      width: {
        length: screw.diameter,
        reason: { kind: 'assumed', because: 'holes for hinge screws, common practice' },
      },
      depth: said,
    },
    stage: 'on the loose part',
    origin: hingesSaid(plan),
  }));
}
