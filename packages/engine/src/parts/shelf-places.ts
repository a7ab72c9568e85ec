import { derive, less, plus } from '../design/derive.ts';
import type { ShelfDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { PinRowsDesign } from '../design/shelf-design.ts';
import type { Rectangle } from '../evaluation.ts';
import type { LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { type HolesUp, holesUp, holeUnder, undersideOn } from './pin-rows.ts';

/**
 * How high shelves lie in their opening: as it is written, on the holes of their rows, or evenly spread. All heights
 * are of the underside, from the lower edge of the opening, the lowest shelf first.
 */

/** More than this in one opening is a slip of the pen, and drawing them would only take time. */
const MOST_SHELVES = 200;
const half = Rational.of(1, 2);

/** Heights that are written count before the number of shelves. */
export function shelfCount(shelves: ShelfDesign): number {
  if (shelves.heights !== undefined) return shelves.heights.length;
  return Number.isSafeInteger(shelves.count) ? Math.min(Math.max(shelves.count, 0), MOST_SHELVES) : 0;
}

/** The free height between one shelf and the next where they are spread evenly. */
export function shelfSpacing(shelves: ShelfDesign, opening: Rectangle): Figure {
  const count = shelfCount(shelves);
  const spaces = Rational.of(1, count + 1);
  return derive('free height between shelves', [
    plus('height of the opening', opening.y.size, spaces),
    less('thickness of the shelves', shelves.material.thickness, Rational.of(count).times(spaces)),
  ]);
}

export function undersides(shelves: ShelfDesign, opening: Rectangle, unit: LengthUnit): readonly Figure[] {
  const { heights, material, pins } = shelves;
  if (heights !== undefined) {
    return heights
      .map(({ up, to }) =>
        to === 'underside'
          ? up
          : derive('underside of the shelf', [
              plus('its upper face', up),
              less('thickness of the shelf', material.thickness),
            ]),
      )
      .sort((a, b) => a.length.compare(b.length));
  }
  const even = evenly(shelves, opening);
  return pins === undefined ? even : (onHoles(pins, holesUp(pins, opening.y.size, unit), even) ?? even);
}

function evenly(shelves: ShelfDesign, opening: Rectangle): readonly Figure[] {
  const spacing = shelfSpacing(shelves, opening);
  return Array.from({ length: shelfCount(shelves) }, (_, at) =>
    derive('underside of the shelf', [
      plus('free height between shelves', spacing, at + 1),
      ...(at === 0 ? [] : [plus('thickness of the shelves below', shelves.material.thickness, at)]),
    ]),
  );
}

/** Each on the hole nearest to its even place, none on that of another; undefined where the row has too few. */
function onHoles(pins: PinRowsDesign, holes: HolesUp, even: readonly Figure[]): readonly Figure[] | undefined {
  if (holes.count < even.length) return undefined;
  let below = -1;
  return even.map((place, at) => {
    const nearest = holeUnder(pins, holes, place.length).plus(half).floor().toNumber();
    below = Math.min(Math.max(nearest, below + 1), holes.count - even.length + at);
    return undersideOn(pins, holes, below);
  });
}

/** The free heights under the lowest shelf, between each and the next, and over the topmost, from below. */
export function clearHeights(shelves: ShelfDesign, opening: Rectangle, unit: LengthUnit): readonly Figure[] {
  const places = undersides(shelves, opening, unit);
  const [first] = places;
  if (first === undefined) return [opening.y.size];
  const { thickness } = shelves.material;
  return [
    derive('free height under the lowest shelf', [plus('underside of the lowest shelf', first)]),
    ...places.map((place, at) => {
      const above = places[at + 1];
      return derive(above === undefined ? 'free height over the topmost shelf' : 'free height between shelves', [
        plus(above === undefined ? 'height of the opening' : 'underside of the next shelf', above ?? opening.y.size),
        less('underside of this shelf', place),
        less('thickness of the shelf', thickness),
      ]);
    }),
  ];
}
