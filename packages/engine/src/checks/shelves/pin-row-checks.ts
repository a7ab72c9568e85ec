import {
  type Finding,
  type Mend,
  pinHolesTooNear,
  pinRowOffShelf,
  pinRowTooShort,
  pinRowWithoutWood,
  pinsWithoutSize,
  rowsOffPitch,
} from '@fettle/findings';
import { holeHeights, type PinnedShelves, pinnedShelves, woodsAt, woodsBehind } from '../../hardware/shelf-pins.ts';
import { Length } from '../../length/length.ts';
import { holesUp, pitchesBetween, type RowPlace, rowDistances } from '../../parts/pin-rows.ts';
import { shelfCount } from '../../parts/shelf-places.ts';
import { THINNEST_WALL } from '../../tables/joinery-limits.ts';
import { PINS_FROM_EDGE } from '../../tables/shelf-habits.ts';
import { usual } from '../../tables/trade-habits.ts';
import { isMetric, limitIn } from '../../tables/trade-limits.ts';
import { cellsIn, whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt, sizeMend } from '../written-sizes.ts';
import { pinHoleFindings } from './pin-holes-and-cuts.ts';

/**
 * Rows of holes for shelf pins: whether there is a row at all, whether it stands under its shelves and in wood, and
 * whether its holes open into anything. One cause, one finding: a row that is told to stand in the wrong place is not
 * asked what it meets there.
 */
export function pinRowFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const names = new Map(cellsIn(one.face.root).map((named) => [named.laid.cell.id, named]));
  // A distance of less than nothing has a finding of its own.
  const all = pinnedShelves({ design: one.design, layout: one.layout, face: one.face.root }).filter(
    ({ pins }) => !rowDistances(pins).some(({ length }) => length.isNegative()),
  );
  const found = all.map((pinned): readonly Finding[] => {
    const named = names.get(pinned.cell.id);
    if (named === undefined) return [];
    const who = whoIs(named.laid.cell, named.group);
    return firstOf(
      () => withoutSize(pinned, one),
      () => tooNear(pinned, one, who),
      () => tooShort(pinned, one, who),
      () => offShelf(pinned, one, who),
      () => withoutWood(pinned, one, who),
      () => offPitch(pinned),
    );
  });
  const wrong = new Set(all.filter((_, at) => (found[at]?.length ?? 0) > 0).map(({ pins }) => pins));
  return [
    ...found.flat(),
    ...pinHoleFindings(
      one,
      all.filter(({ pins }) => !wrong.has(pins)),
    ),
  ];
}

type Who = ReturnType<typeof whoIs>;

function firstOf(...checks: readonly (() => readonly Finding[])[]): readonly Finding[] {
  for (const check of checks) {
    const found = check();
    if (found.length > 0) return found;
  }
  return [];
}

function withoutSize({ pins }: PinnedShelves, { layout }: TradeCase): readonly Finding[] {
  const measures = [
    { what: 'width', figure: pins.diameter, inches: Length.inches(1, 4), metric: Length.millimetres(5) },
    { what: 'depth', figure: pins.depth, inches: Length.inches(3, 8), metric: Length.millimetres(10) },
    { what: 'pitch', figure: pins.apart, inches: Length.inches(1), metric: Length.millimetres(32) },
  ] as const;
  return measures
    .filter(({ figure }) => !figure.length.isPositive())
    .slice(0, 1)
    .map(({ what, figure, inches, metric }) => {
      const at = givenAt(figure);
      const size = isMetric(layout.unit) ? metric : inches;
      const mends: readonly Mend[] =
        at === undefined ? [] : [{ how: 'usual', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
      return pinsWithoutSize.at(at ?? pins.origin, { what, size: figure.length }, { mends });
    });
}

/** Where there is one hole alone it has no other beside it. */
function tooNear({ pins, laid }: PinnedShelves, { layout }: TradeCase, who: Who): readonly Finding[] {
  const left = pins.apart.length.minus(pins.diameter.length);
  const limit = limitIn(THINNEST_WALL, layout.unit);
  if (left.compare(limit) >= 0 || holesUp(pins, laid.opening.y.size, layout.unit).count < 2) return [];
  const at = givenAt(pins.apart);
  const usually = isMetric(layout.unit) ? Length.millimetres(32) : Length.inches(1);
  const size = usually.max(pins.diameter.length.times(2));
  return [
    pinHolesTooNear.at(
      at ?? givenAt(pins.diameter) ?? pins.origin,
      { ...who, apart: pins.apart.length, left: left.max(Length.zero), limit },
      {
        mends:
          at === undefined ? [] : [{ how: 'usual', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    ),
  ];
}

function tooShort({ pins, laid, shelves }: PinnedShelves, { layout }: TradeCase, who: Who): readonly Finding[] {
  const { count } = holesUp(pins, laid.opening.y.size, layout.unit);
  const wanted = shelfCount(shelves);
  if (count >= wanted) return [];
  return [
    pinRowTooShort.at(
      pins.origin,
      { ...who, holes: count, shelves: wanted },
      { related: [{ role: 'shelves', values: {}, origin: shelves.origin }] },
    ),
  ];
}

function offShelf(pinned: PinnedShelves, { parts, layout }: TradeCase, who: Who): readonly Finding[] {
  const { cell, pins, rows } = pinned;
  const shelf = parts.find(({ id }) => id === `${cell.id}/shelf-1`);
  if (shelf === undefined) return [];
  const radius = pins.diameter.length.dividedBy(2);
  const { start, end } = shelf.box.z;
  const [front, back] = rows;
  const usually = usual(PINS_FROM_EDGE, layout.unit).length;
  /** Where rows usually stand, if the row is on the shelf there. */
  const mends = (row: RowPlace): readonly Mend[] => {
    const inward = usually.minus(row.set.figure.length);
    const middle = row.at === 'front' ? row.middle.length.plus(inward) : row.middle.length.minus(inward);
    const isOn =
      middle.minus(radius).compare(start.length) >= 0 &&
      middle.plus(radius).compare(end.length) <= 0 &&
      isApart(row, middle);
    return isOn ? sizeMend('usual', givenAt(row.set.figure), usually) : [];
  };
  const isApart = (row: RowPlace, middle: Length) =>
    row.at === 'front'
      ? middle.plus(pins.diameter.length).compare(back.middle.length) <= 0
      : front.middle.length.plus(pins.diameter.length).compare(middle) <= 0;
  const tell = (row: RowPlace, where: Parameters<typeof pinRowOffShelf.at>[1]['where'], by: Length) =>
    by.isPositive()
      ? [
          pinRowOffShelf.at(
            givenAt(row.set.figure) ?? pins.origin,
            { ...who, row: row.at, where, by },
            { mends: mends(row) },
          ),
        ]
      : [];
  const beyond = rows.flatMap((row) => {
    const middle = row.middle.length;
    return [
      ...tell(row, 'before the front of the shelf', start.length.minus(middle.minus(radius))),
      ...tell(row, 'behind the back of the shelf', middle.plus(radius).minus(end.length)),
    ];
  });
  if (beyond.length > 0) return beyond;
  return tell(back, 'before the front row', front.middle.length.plus(pins.diameter.length).minus(back.middle.length));
}

function withoutWood(pinned: PinnedShelves, one: TradeCase, who: Who): readonly Finding[] {
  const { pins, rows, ends, laid } = pinned;
  const floor = laid.opening.y.start.length;
  const ups = holeHeights(pinned, one.layout).map((up) => floor.plus(up));
  const radius = pins.diameter.length.dividedBy(2);
  const bare = ends.flatMap((end) => {
    const woods = woodsAt(end, one.parts);
    return rows.flatMap((row) => {
      const behind = woodsBehind(woods, ups, row.middle.length, radius);
      const holes = behind.filter((wood) => wood === undefined).length;
      return holes === 0 ? [] : [{ side: end.side, row, holes }];
    });
  });
  // The same row at both ends, or both rows, have one cause.
  return bare.slice(0, 1).map(({ side, row, holes }) =>
    pinRowWithoutWood.at(givenAt(row.set.figure) ?? pins.origin, {
      ...who,
      row: row.at,
      side,
      holes,
      count: ups.length,
      place: row.set.figure.length,
    }),
  );
}

function offPitch({ pins, rows }: PinnedShelves): readonly Finding[] {
  const pitches = pitchesBetween(pins, rows);
  if (!pins.isSystem || pins.fromBack === undefined || pitches === undefined || pitches.isWhole()) return [];
  const at = givenAt(pins.fromBack);
  const size = pins.fromBack.length.plus(pins.apart.length.times(pitches.minus(pitches.floor())));
  const mends: readonly Mend[] =
    at === undefined || pitches.floor().isZero()
      ? []
      : [{ how: 'move', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  return [
    rowsOffPitch.at(
      at ?? pins.origin,
      {
        apart: pins.apart.length.times(pitches),
        pitch: pins.apart.length,
        pitches: pitches.toNumber().toFixed(2),
      },
      { mends },
    ),
  ];
}
