import {
  cleatsTooHigh,
  type Finding,
  type Mend,
  shelfHeightsNotAll,
  shelfLeavesCleat,
  shelfOffItsHoles,
  shelfOutOfPlace,
} from '@fettle/findings';
import type { ShelfDesign } from '../../design/design.ts';
import type { ShelfHeight } from '../../design/shelf-design.ts';
import type { LaidCell } from '../../evaluation.ts';
import { Length } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { holesUp, holeUnder, undersideOn } from '../../parts/pin-rows.ts';
import { clearHeights, shelfCount } from '../../parts/shelf-places.ts';
import { CLEAT_HIGH } from '../../tables/shelf-habits.ts';
import { LEAST_ON_CLEAT } from '../../tables/shelf-limits.ts';
import { usual } from '../../tables/trade-habits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { shortStripScrews } from '../hardware/strip-screws.ts';
import { cellsIn, whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt, sizeMend } from '../written-sizes.ts';

/** Heights that are written for shelves, and whether shelves stay on their cleats. */
export function shelfPlaceFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  return cellsIn(one.face.root).flatMap(({ laid, group }) => {
    const { cell } = laid;
    if ((cell.kind !== 'open' && cell.kind !== 'front') || cell.shelves === undefined) return [];
    const who = whoIs(cell, group);
    return [
      ...heightFindings(cell.shelves, laid, who, one),
      ...cleatFindings(cell.shelves, who, one),
      ...cleatsOverRoom(cell.shelves, laid, who, one),
    ];
  });
}

type Who = ReturnType<typeof whoIs>;

function heightFindings(shelves: ShelfDesign, laid: LaidCell, who: Who, one: TradeCase): readonly Finding[] {
  const { heights, count, countOrigin } = shelves;
  if (heights === undefined) return [];
  if (heights.length !== count) {
    const mends: readonly Mend[] =
      countOrigin === undefined
        ? []
        : [
            {
              how: 'count',
              values: { count: heights.length },
              changes: [{ kind: 'set-words', at: countOrigin, words: String(heights.length) }],
            },
          ];
    return [
      shelfHeightsNotAll.at(countOrigin ?? shelves.origin, { ...who, count, heights: heights.length }, { mends }),
    ];
  }
  const lying = heights
    .map((height) => ({ height, underside: undersideOf(height, shelves) }))
    .sort((a, b) => a.underside.compare(b.underside));
  const away = lying.flatMap(({ height, underside }, at) =>
    outOfPlace(height, underside, at, lying, shelves, laid, who),
  );
  return away.length > 0
    ? away
    : lying.flatMap(({ height, underside }) => offHoles(height, underside, shelves, laid, who, one));
}

function undersideOf({ up, to }: ShelfHeight, { material }: ShelfDesign): Length {
  return to === 'underside' ? up.length : up.length.minus(material.thickness.length);
}

interface Lying {
  readonly height: ShelfHeight;
  readonly underside: Length;
}

function outOfPlace(
  height: ShelfHeight,
  underside: Length,
  at: number,
  lying: readonly Lying[],
  { material }: ShelfDesign,
  laid: LaidCell,
  who: Who,
): readonly Finding[] {
  const thickness = material.thickness.length;
  const below = lying[at - 1];
  const least = below === undefined ? Length.zero : below.underside.plus(thickness);
  const most = laid.opening.y.size.length.minus(thickness);
  const tell = (
    what: 'the lower edge of the opening' | 'the upper edge of the opening' | 'the shelf below it',
    by: Length,
    place?: Length,
  ) => {
    const where = givenAt(height.up);
    const size = height.to === 'underside' ? place : place?.plus(thickness);
    return [
      shelfOutOfPlace.at(
        where ?? height.origin,
        { ...who, up: height.up.length, to: height.to, what, by },
        {
          mends:
            where === undefined || size === undefined
              ? []
              : [{ how: 'move', values: { size }, changes: [{ kind: 'set-length', at: where, to: size }] }],
        },
      ),
    ];
  };
  if (below === undefined && underside.isNegative())
    return tell('the lower edge of the opening', underside.negated(), evenPlace(lying.length, laid, thickness));
  if (underside.compare(most) > 0)
    return tell(
      'the upper edge of the opening',
      underside.minus(most),
      lying.length === 1 ? evenPlace(1, laid, thickness) : undefined,
    );
  if (below !== undefined && underside.compare(least) < 0) return tell('the shelf below it', least.minus(underside));
  return [];
}

/** Where a single shelf halves its opening; with several there is no place that is surely meant. */
function evenPlace(count: number, laid: LaidCell, thickness: Length): Length | undefined {
  return count === 1 ? laid.opening.y.size.length.minus(thickness).dividedBy(2) : undefined;
}

function offHoles(
  height: ShelfHeight,
  underside: Length,
  shelves: ShelfDesign,
  laid: LaidCell,
  who: Who,
  { layout }: TradeCase,
): readonly Finding[] {
  const { pins, material } = shelves;
  if (pins === undefined) return [];
  const holes = holesUp(pins, laid.opening.y.size, layout.unit);
  if (holes.count === 0) return [];
  const place = holeUnder(pins, holes, underside);
  const nearest = Math.min(Math.max(place.plus(Rational.of(1, 2)).floor().toNumber(), 0), holes.count - 1);
  const lies = undersideOn(pins, holes, nearest).length;
  if (lies.equals(underside)) return [];
  const size = height.to === 'underside' ? lies : lies.plus(material.thickness.length);
  const at = givenAt(height.up);
  return [
    shelfOffItsHoles.at(
      at ?? height.origin,
      { ...who, up: height.up.length, to: height.to, nearest: size, difference: lies.minus(underside).abs() },
      {
        related: [{ role: 'rows', values: {}, origin: pins.origin }],
        mends:
          at === undefined
            ? []
            : [{ how: 'nearest', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    ),
  ];
}

/** Under each shelf, where shelves lie one above the other at all. */
function cleatsOverRoom(shelves: ShelfDesign, laid: LaidCell, who: Who, { layout }: TradeCase): readonly Finding[] {
  const { cleats } = shelves;
  if (cleats === undefined || shelfCount(shelves) === 0) return [];
  const under = clearHeights(shelves, laid.opening, layout.unit).slice(0, -1);
  const room = under.reduce<Length | undefined>((least, { length }) => least?.min(length) ?? length, undefined);
  const height = cleats.height.length;
  if (room === undefined || !room.isPositive() || height.compare(room) <= 0) return [];
  const at = givenAt(cleats.height);
  const size = usual(CLEAT_HIGH, layout.unit).length;
  return [
    cleatsTooHigh.at(
      at ?? cleats.origin,
      { ...who, height, room, difference: height.minus(room) },
      { mends: size.compare(room) > 0 ? [] : sizeMend('height', at, size) },
    ),
  ];
}

function cleatFindings(shelves: ShelfDesign, who: Who, { layout }: TradeCase): readonly Finding[] {
  const { cleats, shyEachEnd } = shelves;
  if (cleats === undefined) return [];
  const limit = limitIn(LEAST_ON_CLEAT, layout.unit);
  const { thickness } = cleats;
  const left = thickness.length.minus(shyEachEnd.length.times(2));
  const screws = shortStripScrews('cleat', cleats, thickness, layout.unit);
  if (left.compare(limit) >= 0) return screws;
  const size = thickness.length.minus(limit).dividedBy(2);
  const at = givenAt(shyEachEnd);
  return [
    ...screws,
    shelfLeavesCleat.at(
      at ?? cleats.origin,
      {
        ...who,
        shy: shyEachEnd.length,
        thickness: thickness.length,
        left: left.max(Length.zero),
        limit,
        how: left.isPositive() ? 'keeps too little' : 'falls',
      },
      {
        severity: left.isPositive() ? 'warning' : 'error',
        related: at === undefined ? [] : [{ role: 'cleats', values: {}, origin: cleats.origin }],
        mends:
          at === undefined || size.isNegative()
            ? []
            : [{ how: 'shy', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    ),
  ];
}
