import { assumed, derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { LidSupport, SupportHole } from '../design/lid-design.ts';
import type { CarcaseLayout } from '../evaluation.ts';
import type { Feature } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { type Axis, axesAcross, type Point3 } from '../solids/index.ts';
import { HINGE_SCREW, STAY_FROM_SIDE, SUPPORT_FROM_SIDE } from '../tables/hanging-habits.ts';
import { isMetric, limitIn } from '../tables/trade-limits.ts';
import type { FittedHardware, PlacedHardware, Screw } from './placed-hardware.ts';
import { pilotHole } from './slide-holes.ts';

/**
 * What holds a lid up: one end under the lid, the other on the back or on a side of the case. Where its screws go is
 * known from the holes of its data sheet alone; without them it is listed, and has no place.
 */

interface Chest {
  readonly layout: CarcaseLayout;
  readonly parts: readonly UnmarkedPart[];
  /** The line on which the lid turns. */
  readonly turns: Figure;
}

/** A support takes a handful, a lid a few of them; more is a slip of the pen. */
const MOST_SUPPORTS = 10;
const MOST_HOLES = 20;

export function fitSupports(support: LidSupport, lid: UnmarkedPart, chest: Chest): FittedHardware {
  const count = Math.min(support.count, MOST_SUPPORTS);
  const fitted = Array.from({ length: count }, (_, at) => fitSupport(support, at, count, lid, chest));
  return {
    placed: fitted.map(({ placed }) => placed),
    features: fitted.flatMap(({ features }) => features),
  };
}

/** What its words leave open of where it goes. */
export function untoldOfPlace({ holes, screws, count }: LidSupport): readonly ('lid' | 'case' | 'screws' | 'sides')[] {
  const onSides = holes.some((hole) => whereOf(hole) === 'side');
  return [
    ...(holes.some((hole) => whereOf(hole) === 'lid') ? [] : (['lid'] as const)),
    ...(holes.some((hole) => whereOf(hole) !== 'lid' && whereOf(hole) !== undefined) ? [] : (['case'] as const)),
    ...(screws === undefined ? (['screws'] as const) : []),
    ...(onSides && count > 2 ? (['sides'] as const) : []),
  ];
}

function whereOf({ forward, down }: SupportHole): 'lid' | 'side' | 'back' | undefined {
  if (forward !== undefined) return down === undefined ? 'lid' : 'side';
  return down === undefined ? undefined : 'back';
}

function fitSupport(
  support: LidSupport,
  at: number,
  count: number,
  lid: UnmarkedPart,
  chest: Chest,
): { readonly placed: PlacedHardware; readonly features: readonly Feature[] } {
  const { origin, price } = support;
  const id = `case/lid/support-${at + 1}`;
  const label = `${whichOf(at, count)} of the lid`;
  const bare = { id, kind: 'lid-support' as const, label, ...(price === undefined ? {} : { price }), origin };
  if (untoldOfPlace(support).length > 0)
    return { placed: { ...bare, on: [lid.id], set: [], screws: [] }, features: [] };
  const from = fromSide(support, chest);
  const x = middleOf(at, count, from, chest);
  const screws = screwsOf(support, id, x.place, at === 0 ? '-x' : '+x', lid, chest);
  const held = screws.flatMap((screw) => {
    const part = woodOf(screw, lid, chest);
    return part === undefined ? [] : [{ screw, part }];
  });
  return {
    placed: {
      ...bare,
      on: [...new Set([lid.id, ...held.map(({ part }) => part.id)])],
      set: [{ words: x.words, figure: x.figure }, ...support.holes.slice(0, MOST_HOLES).flatMap(setOf)],
      screws,
    },
    features: held.map(({ screw, part }) => pilotHole(screw, part, origin, 'the screw of the support')),
  };
}

function whichOf(at: number, count: number): string {
  if (count === 1) return 'support';
  if (at === 0) return 'left support';
  return at === count - 1 ? 'right support' : `support ${at + 1} from the left`;
}

function fromSide({ fromSides, holes }: LidSupport, { layout }: Chest): Figure {
  if (fromSides !== undefined) return fromSides;
  const { unit } = layout;
  return holes.some((hole) => whereOf(hole) === 'side')
    ? assumed(
        limitIn(STAY_FROM_SIDE, unit),
        `what is screwed to a side is screwed to the lid ${isMetric(unit) ? '12 mm' : '1/2"'} beside it, common practice`,
      )
    : assumed(
        limitIn(SUPPORT_FROM_SIDE, unit),
        `supports on the back are ${isMetric(unit) ? '150 mm' : '6"'} from the sides, common practice`,
      );
}

/** The outermost beside the sides, others evenly between. */
function middleOf(
  at: number,
  count: number,
  from: Figure,
  { layout }: Chest,
): { readonly words: string; readonly figure: Figure; readonly place: Length } {
  const { start, end, size } = layout.interior.x;
  const middle = 'to the middle of the support';
  if (at > 0 && at === count - 1)
    return {
      words: `from the inner face of the right side ${middle}`,
      figure: from,
      place: end.length.minus(from.length),
    };
  const share = count === 1 ? Rational.zero : Rational.of(at, count - 1);
  const figure =
    at === 0
      ? from
      : derive('evenly between the outermost', [
          plus('from the side to the first', from),
          plus('width inside', size, share),
          less('from the sides to the outermost', from, share.times(2)),
        ]);
  return {
    words: `from the inner face of the left side ${middle}`,
    figure,
    place: start.length.plus(figure.length),
  };
}

function setOf(hole: SupportHole): PlacedHardware['set'] {
  const where = whereOf(hole);
  const { forward, down } = hole;
  const from = 'from the line on which the lid turns';
  const words = where === 'lid' ? `hole in the lid, ${from}` : `hole in the ${where}, ${from} forward`;
  return [
    ...(forward === undefined ? [] : [{ words, figure: forward }]),
    ...(down === undefined ? [] : [{ words: `hole in the ${where}, below the underside of the lid`, figure: down }]),
  ];
}

function screwsOf(
  { holes, screws }: LidSupport,
  id: string,
  x: Length,
  side: '-x' | '+x',
  lid: UnmarkedPart,
  { layout, turns }: Chest,
): readonly Screw[] {
  if (screws === undefined) return [];
  const under = lid.box.y.start.length;
  const { interior, inside } = layout;
  return holes.slice(0, MOST_HOLES).flatMap((hole, nth): readonly Screw[] => {
    const where = whereOf(hole);
    if (where === undefined) return [];
    const z = hole.forward === undefined ? inside.z.end.length : turns.length.minus(hole.forward.length);
    const y = hole.down === undefined ? under : under.minus(hole.down.length);
    const inner = (side === '-x' ? interior.x.start : interior.x.end).length;
    return [
      {
        id: `${id} screw ${nth + 1}`,
        words: `screw in the ${where}`,
        at: { x: where === 'side' ? inner : x, y, z },
        towards: ({ lid: '+y', side, back: '+z' } as const)[where],
        diameter: screws.diameter?.length ?? limitIn(HINGE_SCREW, layout.unit),
        length: screws.length.length,
      },
    ];
  });
}

/** What it is driven into, where that begins at the plane that the support lies on. */
function woodOf({ at, towards }: Screw, lid: UnmarkedPart, { parts }: Chest): UnmarkedPart | undefined {
  if (towards === '+y') return lid;
  const axis = towards.slice(1) as Axis;
  return parts.find(
    ({ box }) =>
      (towards.startsWith('+') ? box[axis].start : box[axis].end).length.equals(at[axis]) &&
      axesAcross(axis).every((across) => isWithin(box, at, across)),
  );
}

function isWithin(box: UnmarkedPart['box'], at: Point3, axis: Axis): boolean {
  return box[axis].start.length.compare(at[axis]) <= 0 && box[axis].end.length.compare(at[axis]) >= 0;
}
