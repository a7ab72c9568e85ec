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
  /** How many of them stand in each space. */
  readonly bySpace: readonly number[];
  /** How many one empty space of this opening takes, the one that takes most. */
  readonly perSpace: number;
  readonly rows: Rows;
}

/** The spaces of one opening, in the order in which they are filled; they differ in height at most. */
export function fillSpaces(held: readonly HeldDesign[], spaces: readonly Space[]): readonly Filled[] {
  const free = spaces.map(({ width }) => width);
  return held.map((each) => {
    let left = each.count;
    const bySpace = spaces.map(() => 0);
    const whole = spaces
      .map((space) => bestRows(each.thing, space))
      .reduce((best, rows) => (inAll(rows) > inAll(best) ? rows : best));
    for (let at = 0; at < spaces.length && left > 0; at++) {
      const [space, width] = [spaces[at], free[at]];
      if (space === undefined || width === undefined) continue;
      const rows = bestRows(each.thing, { ...space, width });
      const column = rows.behind * rows.above;
      if (column === 0 || rows.across === 0) continue;
      const columns = Math.min(rows.across, Math.ceil(left / column));
      const here = Math.min(left, columns * column);
      bySpace[at] = here;
      left -= here;
      free[at] = width.minus(rows.each.times(columns));
    }
    return { held: each, placed: each.count - left, bySpace, perSpace: inAll(whole), rows: whole };
  });
}
