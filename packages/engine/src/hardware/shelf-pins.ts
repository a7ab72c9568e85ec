import { derive, less, plus } from '../design/derive.ts';
import type { FrontCell, OpenCell, ShelfDesign } from '../design/design.ts';
import type { PinRowsDesign } from '../design/shelf-design.ts';
import type { CarcaseLayout, LaidCell } from '../evaluation.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import { reachBefore } from '../layout/front-thickness.ts';
import { toInterior } from '../layout/spans.ts';
import type { Length } from '../length/length.ts';
import { holesUp, holeUnder, holeUp, type RowPlace, rowPlaces } from '../parts/pin-rows.ts';
import { clearHeights, undersides } from '../parts/shelf-places.ts';
import { reachInto } from '../parts/shelves.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { boreAlong, intervalOf } from '../solids/index.ts';
import type { HardwareCase } from './fit-hardware.ts';
import type { FittedHardware, PlacedHardware } from './placed-hardware.ts';

/**
 * Rows of holes for shelf pins, and the pins. A hole is bored into whatever stands at the end of the shelves with its
 * face there; where nothing does, there is no hole, and the checks say so.
 */

export interface PinnedShelves {
  readonly cell: OpenCell | FrontCell;
  readonly laid: LaidCell;
  readonly shelves: ShelfDesign;
  readonly pins: PinRowsDesign;
  readonly rows: readonly [RowPlace, RowPlace];
  readonly ends: readonly [ShelfEnd, ShelfEnd];
}

export interface ShelfEnd {
  readonly side: 'left' | 'right';
  /** Where the face that takes the pins lies, and the way the drill goes. */
  readonly plane: Length;
  readonly entry: FaceOfPart;
}

/** All openings whose shelves lie on pins, of which rows are said. */
export function pinnedShelves({ design, layout, face }: Omit<HardwareCase, 'parts'>): readonly PinnedShelves[] {
  const found: PinnedShelves[] = [];
  const waiting: LaidCell[] = [face];
  for (let laid = waiting.pop(); laid !== undefined; laid = waiting.pop()) {
    waiting.push(...laid.cells);
    const { cell } = laid;
    if ((cell.kind !== 'open' && cell.kind !== 'front') || design.face === undefined) continue;
    const { shelves } = cell;
    if (shelves?.pins === undefined) continue;
    const into = reachInto(reachBefore(cell, design.face, layout));
    found.push({
      cell,
      laid,
      shelves,
      pins: shelves.pins,
      rows: rowPlaces(shelves.pins, into, layout.inside.z),
      ends: shelfEnds(laid, layout),
    });
  }
  return found.reverse();
}

function shelfEnds(laid: LaidCell, layout: CarcaseLayout): readonly [ShelfEnd, ShelfEnd] {
  const { start, end } = toInterior(laid.opening.x, 'x', layout);
  return [
    { side: 'left', plane: start.length, entry: '+x' },
    { side: 'right', plane: end.length, entry: '-x' },
  ];
}

/** What has its face at that end. */
export function woodsAt(end: ShelfEnd, parts: readonly UnmarkedPart[]): readonly UnmarkedPart[] {
  return parts.filter(({ box }) => (end.side === 'left' ? box.x.end : box.x.start).length.equals(end.plane));
}

/**
 * For each of these heights, from below, the part whose face covers a round hole there with all of its rim. What covers
 * the lowest and the highest covers all between them.
 */
export function woodsBehind(
  woods: readonly UnmarkedPart[],
  ups: readonly Length[],
  deep: Length,
  radius: Length,
): readonly (UnmarkedPart | undefined)[] {
  const covers = ({ start, end }: UnmarkedPart['box']['y'], middle: Length): boolean =>
    start.length.compare(middle.minus(radius)) <= 0 && end.length.compare(middle.plus(radius)) >= 0;
  const [lowest, highest] = [ups[0], ups.at(-1)];
  if (lowest === undefined || highest === undefined) return [];
  const standing = woods.filter(({ box }) => covers(box.z, deep));
  const whole = standing.find(({ box }) => covers(box.y, lowest) && covers(box.y, highest));
  return ups.map((up) => whole ?? standing.find(({ box }) => covers(box.y, up)));
}

/** The middles of all holes of one opening, from its lower edge up; none where shelves would leave no height. */
export function holeHeights({ shelves, pins, laid }: PinnedShelves, { unit }: CarcaseLayout): readonly Length[] {
  if (clearHeights(shelves, laid.opening, unit).some(({ length }) => !length.isPositive())) return [];
  const { lowest, count } = holesUp(pins, laid.opening.y.size, unit);
  const heights: Length[] = [];
  for (let up = lowest.length; heights.length < count; up = up.plus(pins.apart.length)) heights.push(up);
  return heights;
}

export function fitShelfPins(one: HardwareCase): FittedHardware {
  const fitted = pinnedShelves(one).map((pinned) => ({
    features: holesOf(pinned, one),
    placed: pinsOf(pinned, one),
  }));
  return {
    placed: fitted.flatMap(({ placed }) => placed),
    features: fitted.flatMap(({ features }) => features),
  };
}

function holesOf(pinned: PinnedShelves, { layout, parts }: HardwareCase): readonly Feature[] {
  const { cell, laid, pins, rows, ends } = pinned;
  if (!pins.diameter.length.isPositive() || !pins.depth.length.isPositive()) return [];
  const radius = pins.diameter.length.dividedBy(2);
  const measures = { width: pins.diameter, depth: pins.depth };
  const floor = laid.opening.y.start.length;
  const middles = holeHeights(pinned, layout).map((up) => floor.plus(up));
  return ends.flatMap((end) => {
    const woods = woodsAt(end, parts);
    const { plane, entry } = end;
    const along = intervalOf(plane, entry === '+x' ? plane.minus(pins.depth.length) : plane.plus(pins.depth.length));
    return rows.flatMap((row) => {
      const deep = row.middle.length;
      const behind = woodsBehind(woods, middles, deep, radius);
      return middles.flatMap((up, index): readonly Feature[] => {
        const part = behind[index];
        if (part === undefined) return [];
        return [
          {
            id: `${part.id}/pin-hole ${cell.id} ${row.at} ${index + 1}`,
            kind: 'pin-hole',
            part: part.id,
            solid: boreAlong('x', along, [up, deep], radius),
            entry,
            measures,
            stage: 'on the loose part',
            origin: pins.origin,
          },
        ];
      });
    });
  });
}

/**
 * The same place from the edge of the wood itself, where the maker's datum is another: by it the fence of the drill is set,
 * and set-ups and sheets of parts tell it.
 */
function fromEdge({ at, middle, set }: RowPlace, { box }: UnmarkedPart): PlacedHardware['set'] {
  const isFront = at === 'front';
  const words = `from the ${at} edge of the wood`;
  const figure = isFront
    ? derive(words, [plus('middle of the row', middle), less('its front edge', box.z.start)])
    : derive(words, [plus('its back edge', box.z.end), less('middle of the row', middle)]);
  return figure.length.equals(set.figure.length) ? [] : [{ words, figure }];
}

/** Four to a shelf, each in the hole that the shelf lies on. */
function pinsOf(pinned: PinnedShelves, { layout, parts }: HardwareCase): readonly PlacedHardware[] {
  const { cell, laid, shelves, pins, rows, ends } = pinned;
  const holes = holesUp(pins, laid.opening.y.size, layout.unit);
  const of = cell.name === undefined ? '' : ` in "${cell.name}"`;
  return undersides(shelves, laid.opening, layout.unit).flatMap((underside, at) => {
    if (holes.count === 0) return [];
    const hole = holeUnder(pins, holes, underside.length);
    if (!hole.isWhole() || hole.sign() < 0 || hole.toNumber() >= holes.count) return [];
    const up = holeUp(pins, holes, hole.toNumber());
    const middle = derive('middle of the hole', [plus('where the opening begins', laid.opening.y.start), plus('', up)]);
    return ends.flatMap((end) => {
      const woods = woodsAt(end, parts);
      return rows.flatMap((row): readonly PlacedHardware[] => {
        const [part] = woodsBehind(woods, [middle.length], row.middle.length, pins.diameter.length.dividedBy(2));
        if (part === undefined) return [];
        return [
          {
            id: `${cell.id}/shelf-${at + 1}/pin-${end.side}-${row.at}`,
            kind: 'shelf-pin',
            label: `${end.side} ${row.at} pin of shelf ${at + 1}${of}`,
            cell: cell.id,
            on: [part.id],
            set: [{ words: 'from the lower edge of the opening', figure: up }, row.set, ...fromEdge(row, part)],
            screws: [],
            ...(pins.price === undefined ? {} : { price: pins.price }),
            origin: pins.origin,
          },
        ];
      });
    });
  });
}
