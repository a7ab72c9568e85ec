import type { Filling } from '../lengths/effective-lengths.ts';
import type { FillingSearch } from '../lengths/filling-search.ts';
import type { Band, BlankInBand, BoardBlank } from './board-problem.ts';
import { type BoardSpace, clearStretches } from './board-space.ts';

/** One board filled band after band, each the one that brings most value for the room it takes. */

export interface FilledBoard {
  readonly space: BoardSpace;
  readonly bands: readonly Band[];
  readonly value: number;
  /** Area of the blanks, kerfs with them. */
  readonly used: number;
  /** How many of each blank, by its index. */
  readonly counts: Int32Array;
}

/** The blanks as one order of cutting sees them, kerf added. Indexes are those of the problem's blanks. */
export interface BlankSizes {
  readonly blanks: readonly BoardBlank[];
  /** Across the band. */
  readonly band: Float64Array;
  /** Along the band. */
  readonly inside: Float64Array;
  /** The blanks to choose from, by falling size along the band, as the search along it wants them. */
  readonly order: Int32Array;
}

/** How a stretch of a band is filled, with indexes into `BlankSizes.order`. */
export type FillStretch = (values: Float64Array, limits: Int32Array, room: number) => Filling;

/** The longest of what fits, then the next. */
export function longestFirst(sizes: BlankSizes): FillStretch {
  return (values, limits, room) => {
    const filling: number[] = [];
    let rest = room;
    for (let place = 0; place < sizes.order.length; place += 1) {
      const length = sizes.inside[sizes.order[place] as number] as number;
      const count = Math.min(limits[place] as number, Math.floor(rest / length));
      if (count <= 0 || (values[place] as number) <= 0) continue;
      filling.push(place, count);
      rest -= count * length;
    }
    return filling;
  };
}

/** The most valuable of all fillings. */
export function mostValuable(search: FillingSearch): FillStretch {
  return (values, limits, room) => {
    search.prepare(values, limits);
    return search.best(room, 2_000).filling;
  };
}

/** How many band sizes are tried at each place. */
const MOST_SIZES_TRIED = 6;

/** Room for bands that is free, from one place to another. */
interface Room {
  readonly from: number;
  readonly to: number;
}

interface TriedBand {
  readonly band: Band;
  /** Where it begins, and where the next one may, in the room of the board. */
  readonly start: number;
  readonly next: number;
  readonly value: number;
  readonly rate: number;
  /** Blank, count, blank, count, … */
  readonly taken: readonly number[];
}

/**
 * Fills a board with some of what waits. `first`, if given, is a blank the first band has to hold; undefined if it does not
 * fit. `values` are by blank.
 */
export function fillBoard(
  space: BoardSpace,
  sizes: BlankSizes,
  waiting: Int32Array,
  values: Float64Array,
  fill: FillStretch,
  first?: number,
): FilledBoard | undefined {
  const rest = waiting.slice();
  const counts = new Int32Array(rest.length);
  const bands: Band[] = [];
  let value = 0;
  let needed = first;
  const rooms: Room[] = [{ from: 0, to: space.bands }];
  for (let room = rooms.pop(); room !== undefined; room = rooms.pop()) {
    const best = bestBand(space, sizes, rest, values, fill, room, needed);
    if (best === undefined) continue;
    bands.push(best.band);
    value += best.value;
    for (let at = 0; at < best.taken.length; at += 2) {
      const blank = best.taken[at] as number;
      rest[blank] = (rest[blank] as number) - (best.taken[at + 1] as number);
      counts[blank] = (counts[blank] as number) + (best.taken[at + 1] as number);
    }
    if (room.from < best.start) rooms.push({ from: room.from, to: best.start });
    rooms.push({ from: best.next, to: room.to });
    needed = undefined;
  }
  bands.sort((a, b) => a.at - b.at);
  if (bands.length === 0) return undefined;
  let used = 0;
  for (const blank of sizes.order) {
    used += (counts[blank] as number) * (sizes.band[blank] as number) * (sizes.inside[blank] as number);
  }
  return { space, bands, value, used, counts };
}

function bestBand(
  space: BoardSpace,
  sizes: BlankSizes,
  rest: Int32Array,
  values: Float64Array,
  fill: FillStretch,
  room: Room,
  needed: number | undefined,
): TriedBand | undefined {
  let best: TriedBand | undefined;
  // A band begins where the last one ended, or beyond a defect; what is passed over may still serve for another.
  const starts = [room.from, ...space.defects.map(({ bandTo }) => bandTo)];
  for (const start of new Set(starts)) {
    if (start < room.from || start >= room.to) continue;
    for (const size of sizesToTry(sizes, rest, values, room.to - start, needed)) {
      const tried = fillBand(space, sizes, rest, values, fill, start, size, needed);
      if (tried === undefined) continue;
      const rate = tried.value / (size + (start - room.from) / 2);
      if (best === undefined || rate > best.rate) best = { ...tried, rate };
    }
  }
  return best;
}

/** Band sizes at which some blank fills the band exactly: those of the most valuable blanks. */
function sizesToTry(
  sizes: BlankSizes,
  rest: Int32Array,
  values: Float64Array,
  room: number,
  needed: number | undefined,
): readonly number[] {
  const least = needed === undefined ? 0 : (sizes.band[needed] as number);
  const worth = new Map<number, number>();
  for (const blank of sizes.order) {
    const size = sizes.band[blank] as number;
    if ((rest[blank] as number) === 0 || size > room || size < least) continue;
    worth.set(size, (worth.get(size) ?? 0) + (values[blank] as number) * (rest[blank] as number));
  }
  const byWorth = [...worth].sort((a, b) => b[1] - a[1]).map(([size]) => size);
  const few = byWorth.slice(0, MOST_SIZES_TRIED);
  if (needed !== undefined && least <= room && !few.includes(least)) few.push(least);
  return few;
}

function fillBand(
  space: BoardSpace,
  sizes: BlankSizes,
  rest: Int32Array,
  values: Float64Array,
  fill: FillStretch,
  start: number,
  size: number,
  needed: number | undefined,
): Omit<TriedBand, 'rate'> | undefined {
  const { order } = sizes;
  const limits = new Int32Array(order.length);
  const worth = new Float64Array(order.length);
  for (let place = 0; place < order.length; place += 1) {
    const blank = order[place] as number;
    if ((sizes.band[blank] as number) > size) continue;
    limits[place] = rest[blank] as number;
    worth[place] = values[blank] as number;
  }
  const taken: number[] = [];
  const blanks: BlankInBand[] = [];
  let value = 0;
  let missing = needed;
  for (const [from, to] of clearStretches(space, start, size - space.bandKerf)) {
    let place = from;
    const put = (blank: number, count: number) => {
      for (let time = 0; time < count; time += 1) {
        blanks.push({ blank: sizes.blanks[blank]?.id ?? '', at: place + space.insideFrom });
        place += sizes.inside[blank] as number;
      }
      taken.push(blank, count);
      value += count * (values[blank] as number);
    };
    if (missing !== undefined && (sizes.inside[missing] as number) <= to - from) {
      const at = order.indexOf(missing);
      limits[at] = (limits[at] as number) - 1;
      put(missing, 1);
      missing = undefined;
    }
    const filling = fill(worth, limits, to - place);
    for (let at = 0; at < filling.length; at += 2) {
      const index = filling[at] as number;
      const count = filling[at + 1] as number;
      limits[index] = (limits[index] as number) - count;
      put(order[index] as number, count);
    }
  }
  if (missing !== undefined || blanks.length === 0) return undefined;
  const band: Band = { at: start + space.bandsFrom, size: size - space.bandKerf, blanks };
  return { band, start, next: start + size, value, taken };
}
