import type { Origin } from '@fettle/findings';
import type { Figure } from '../design/figure.ts';
import type { Stock } from '../design/shop.ts';
import type { Span } from '../evaluation.ts';
import type { Part, PartRole } from './part.ts';

/**
 * Makes a part of a rectangular piece of wood that stands in its place. Its finished size is read off the space it
 * fills, so size and place never disagree. Knows nothing of which part it makes.
 */

export type Axis = 'x' | 'y' | 'z';

/** A part before it got its mark: marks are given when all parts are known. */
export type UnmarkedPart = Omit<Part, 'mark'>;

export interface Slab {
  readonly id: string;
  readonly label: string;
  readonly role: PartRole;
  readonly stock?: Stock | undefined;
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
  /** The axis its thickness lies along. */
  readonly thin: Axis;
  /** The axis its grain runs along, where its stock has grain. */
  readonly grain: Axis;
  readonly origin: Origin;
  readonly cell?: string | undefined;
}

/** Sizes may come out zero or negative: the checks say so and such a part is not built. */
export function slab(from: Slab): UnmarkedPart {
  const box = { x: from.x, y: from.y, z: from.z };
  const [long, wide] = faceSizes(from, box);
  return {
    id: from.id,
    label: from.label,
    role: from.role,
    ...(from.stock === undefined ? {} : { stock: from.stock }),
    length: long,
    width: wide,
    thickness: box[from.thin].size,
    grain: hasGrain(from.stock) ? from.grain : 'none',
    box,
    origin: from.origin,
    ...(from.cell === undefined ? {} : { cell: from.cell }),
  };
}

/** Unknown stock is taken for wood: grain that turns out not to matter does no harm. */
function hasGrain(stock: Stock | undefined): boolean {
  return stock?.grain !== 'none';
}

/** Along the grain first; without grain the longer edge first. */
function faceSizes(from: Slab, box: Readonly<Record<Axis, Span>>): readonly [Figure, Figure] {
  const across: Axis = (['x', 'y', 'z'] as const).find((axis) => axis !== from.thin && axis !== from.grain) ?? 'x';
  const along = box[from.grain].size;
  const crosswise = box[across].size;
  if (hasGrain(from.stock) || along.length.compare(crosswise.length) >= 0) return [along, crosswise];
  return [crosswise, along];
}

/** All three sizes are more than nothing. */
export function isSound(part: UnmarkedPart): boolean {
  return part.length.length.isPositive() && part.width.length.isPositive() && part.thickness.length.isPositive();
}
