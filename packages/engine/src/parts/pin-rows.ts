import { derive, less, plus } from '../design/derive.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { PinRowsDesign } from '../design/shelf-design.ts';
import type { Span } from '../evaluation.ts';
import { turned } from '../layout/front-edges.ts';
import type { Length, LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { PINS_FROM_END, SYSTEM_FROM_FRONT } from '../tables/shelf-habits.ts';
import { usual } from '../tables/trade-habits.ts';

/** Where the holes for shelf pins are: how high in their rows, and where the rows stand from front to back. */

/** More than this in one row is a slip of the pen. */
const MOST_HOLES = 200;
const half = Rational.of(1, 2);
const quarter = Rational.of(1, 4);

export interface HolesUp {
  /** From the lower edge of the opening to the middle of the lowest. */
  readonly lowest: Figure;
  /** How many there are, one pitch apart. */
  readonly count: number;
}

/** A row that would end below its beginning has no holes. */
export function holesUp(pins: PinRowsDesign, height: Figure, unit: LengthUnit): HolesUp {
  const lowest = pins.lowest ?? fromEnd(height, unit);
  const highest =
    pins.highest?.length ?? height.length.minus((pins.lowest === undefined ? lowest : fromEnd(height, unit)).length);
  const room = highest.minus(lowest.length);
  const count =
    room.isNegative() || !pins.apart.length.isPositive()
      ? 0
      : Math.min(room.ratioTo(pins.apart.length).floor().toNumber() + 1, MOST_HOLES);
  return { lowest, count };
}

/** In a low opening a quarter of its height, so that a row is left. */
function fromEnd(height: Figure, unit: LengthUnit): Figure {
  const usually = usual(PINS_FROM_END, unit);
  const most = derive('a quarter of a low opening, common practice', [plus('height of the opening', height, quarter)]);
  return usually.length.compare(most.length) <= 0 ? usually : most;
}

/** The middle of hole number `index`, the lowest being 0, from the lower edge of the opening. */
export function holeUp(pins: PinRowsDesign, { lowest }: HolesUp, index: number): Figure {
  return derive('middle of the hole', [
    plus('middle of the lowest hole', lowest),
    ...(index === 0 ? [] : [plus('from hole to hole', pins.apart, index)]),
  ]);
}

/** The hole whose pin a shelf lies on that has its underside this high; not a whole number where there is none. */
export function holeUnder(pins: PinRowsDesign, { lowest }: HolesUp, underside: Length): Rational {
  const middle = underside.minus(pins.diameter.length.times(half));
  return middle.minus(lowest.length).ratioTo(pins.apart.length);
}

/** Where a shelf lies on the pin in this hole, from the lower edge of the opening: pins are as thick as their holes. */
export function undersideOn(pins: PinRowsDesign, holes: HolesUp, index: number): Figure {
  return derive('underside of the shelf', [
    plus('middle of the lowest hole', holes.lowest),
    ...(index === 0 ? [] : [plus('from hole to hole', pins.apart, index)]),
    plus('half of the pin', pins.diameter, half),
  ]);
}

/** What is written of where rows are; none of it may be less than nothing. */
export function rowDistances({ fromFront, fromBack, lowest, highest }: PinRowsDesign): readonly Figure[] {
  return [fromFront, fromBack, lowest, highest].flatMap((figure) => figure ?? []);
}

export interface RowPlace {
  readonly at: 'front' | 'back';
  /** From the datum that the maker measures from. */
  readonly set: { readonly words: string; readonly figure: Figure };
  /** In the coordinates of the piece. */
  readonly middle: Figure;
}

/**
 * The front row and the row behind it. `into`: how far an inset front reaches behind the front of the body. By the
 * system the back row stands as many whole pitches behind the front row as leave its own distance to the back.
 */
export function rowPlaces(pins: PinRowsDesign, into: readonly Operand[], inside: Span): readonly [RowPlace, RowPlace] {
  const datum = into.length === 0 ? 'from the front edge' : 'from the back of the front';
  const front: RowPlace = {
    at: 'front',
    set: { words: datum, figure: pins.fromFront },
    middle: derive('middle of the front row', [
      plus('the front of the body', inside.start),
      ...into,
      plus(datum, pins.fromFront),
    ]),
  };
  if (pins.fromBack !== undefined) {
    return [
      front,
      {
        at: 'back',
        set: { words: 'from the back', figure: pins.fromBack },
        middle: derive('middle of the back row', [
          plus('the front of the back', inside.end),
          less('from the back', pins.fromBack),
        ]),
      },
    ];
  }
  const free = derive('from the front row to the back', [
    plus('depth inside', inside.size),
    ...turned(into),
    less(datum, pins.fromFront),
  ]);
  const pitches = wholePitches(pins, free.length.minus(SYSTEM_FROM_FRONT));
  return [
    front,
    {
      at: 'back',
      set: { words: datum, figure: gridPlace(pins, pitches) },
      middle: derive('middle of the back row', [
        plus('middle of the front row', front.middle),
        plus('whole pitches behind it', pins.apart, pitches),
      ]),
    },
  ];
}

/** One at least: a back row in the front row would be none. */
function wholePitches({ apart }: PinRowsDesign, room: Length): number {
  return apart.length.isPositive() ? Math.max(room.ratioTo(apart.length).floor().toNumber(), 1) : 1;
}

/** A place of the system, so many pitches behind the front row, from the front edge. */
export function gridPlace(pins: PinRowsDesign, pitches: number): Figure {
  return derive('a place of the system', [
    plus('front row', pins.fromFront),
    ...(pitches === 0 ? [] : [plus('pitch', pins.apart, pitches)]),
  ]);
}

/** How many pitches the back row stands behind the front row; undefined without a pitch. */
export function pitchesBetween(
  { apart }: PinRowsDesign,
  [front, back]: readonly [RowPlace, RowPlace],
): Rational | undefined {
  return apart.length.isPositive() ? back.middle.length.minus(front.middle.length).ratioTo(apart.length) : undefined;
}
