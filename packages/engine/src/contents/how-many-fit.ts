import type { ThingDesign } from '../design/contents-design.ts';
import type { Length } from '../length/length.ts';

/**
 * How many things go into a space, in plain rows: side by side, one behind the other and one on top of the other, all
 * the same way round. What is found can be put in just so; that no cleverer way of mixing them holds more is not claimed.
 */

/** Clear inside, exact. */
export interface Space {
  readonly width: Length;
  readonly depth: Length;
  readonly height: Length;
}

export type WayUp = 'as it stands' | 'turned a quarter' | 'on its side' | 'on its back';

export interface Rows {
  readonly way: WayUp;
  readonly across: number;
  readonly behind: number;
  readonly above: number;
  /** What one takes of the width. */
  readonly each: Length;
}

/** The way round that holds most; of two that hold as many the plainer one. `across` may be zero. */
export function bestRows(thing: ThingDesign, space: Space): Rows {
  const ways = waysRound(thing).map(
    ({ way, size }): Rows => ({
      way,
      across: timesInto(size.width, space.width),
      behind: timesInto(size.depth, space.depth),
      above: timesInto(size.height, space.height),
      each: size.width,
    }),
  );
  return ways.reduce((best, rows) => (inAll(rows) > inAll(best) ? rows : best));
}

export function inAll({ across, behind, above }: Rows): number {
  return across * behind * above;
}

function waysRound(thing: ThingDesign): readonly { readonly way: WayUp; readonly size: Space }[] {
  const [w, d, h] = [thing.width.length, thing.depth.length, thing.height.length];
  const standing = [
    { way: 'as it stands', size: { width: w, depth: d, height: h } },
    { way: 'turned a quarter', size: { width: d, depth: w, height: h } },
  ] as const;
  if (thing.keepsUpright) return standing;
  return [
    ...standing,
    { way: 'on its side', size: { width: h, depth: d, height: w } },
    { way: 'on its side', size: { width: d, depth: h, height: w } },
    { way: 'on its back', size: { width: w, depth: h, height: d } },
    { way: 'on its back', size: { width: h, depth: w, height: d } },
  ];
}

/** More than this in a row are as good as any number. */
const MANY = 10_000;

function timesInto(size: Length, room: Length): number {
  if (!size.isPositive() || !room.isPositive()) return 0;
  return Math.min(room.ratioTo(size).floor().toNumber(), MANY);
}
