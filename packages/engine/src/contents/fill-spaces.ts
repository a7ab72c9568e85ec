import type { HeldDesign } from '../design/contents-design.ts';
import { bestRows, inAll, type Rows, type Space } from './how-many-fit.ts';

/**
 * Puts several kinds of things into the spaces of one opening, one kind after the other as they are written: each kind
 * fills whole columns, from the left, and goes on in the next space.
 */

export interface Filled {
  readonly held: HeldDesign;
  /** How many of those asked for found a place. */
  readonly placed: number;
  /** How many one empty space of this opening takes. */
  readonly perSpace: number;
  readonly rows: Rows;
}

/** All spaces of one opening are alike; `spaces` tells how many there are. */
export function fillSpaces(held: readonly HeldDesign[], space: Space, spaces: number): readonly Filled[] {
  const free = Array.from({ length: spaces }, () => space.width);
  return held.map((each) => {
    let left = each.count;
    const whole = bestRows(each.thing, space);
    for (let at = 0; at < free.length && left > 0; at++) {
      const width = free[at];
      if (width === undefined) continue;
      const rows = bestRows(each.thing, { ...space, width });
      const column = rows.behind * rows.above;
      if (column === 0 || rows.across === 0) continue;
      const columns = Math.min(rows.across, Math.ceil(left / column));
      left -= Math.min(left, columns * column);
      free[at] = width.minus(rows.each.times(columns));
    }
    return { held: each, placed: each.count - left, perSpace: inAll(whole), rows: whole };
  });
}
