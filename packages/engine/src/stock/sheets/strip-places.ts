import { cell } from './cells.ts';
import { placeAtMost } from './cut-positions.ts';
import type { PreparedKind } from './prepare-sheets.ts';

/** In place of a place or a choice. */
export const NOTHING = -1;

/** The places of cuts across and along the strips, in ascending order from 0. */
export interface StripPlaces {
  readonly across: Int32Array;
  readonly along: Int32Array;
}

/** A size as the strips see it: along them, and across. */
export interface Sides {
  readonly across: number;
  readonly along: number;
}

export function sidesOf({ width, length }: Pick<PreparedKind, 'width' | 'length'>, isRip: boolean): Sides {
  return isRip ? { across: width, along: length } : { across: length, along: width };
}

export function evenPlaces(whole: number, most: number): Int32Array {
  const cells = Math.min(most, whole);
  return Int32Array.from({ length: cells + 1 }, (_, k) => Math.floor((whole * k) / cells));
}

export function restsOf(places: Int32Array, sizes: readonly number[]): Int32Array {
  const rests = new Int32Array(sizes.length * places.length).fill(NOTHING);
  sizes.forEach((size, row) => {
    for (let place = 0; place < places.length; place++) {
      const rest = cell(places, place) - size;
      if (rest >= 0) rests[row * places.length + place] = placeAtMost(places, rest);
    }
  });
  return rests;
}
