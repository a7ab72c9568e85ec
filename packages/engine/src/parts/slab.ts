import type { Origin } from '@fettle/findings';
import type { EdgingDesign } from '../design/construction-design.ts';
import type { Figure } from '../design/figure.ts';
import type { Stock } from '../design/shop.ts';
import type { Span } from '../evaluation.ts';
import { edgingStrips } from './edging.ts';
import type { Block, EdgingStrip, Part, PartRole, PlaceInRun } from './part.ts';

/**
 * Makes a part of a rectangular piece of wood that stands in its place. Its finished size is read off the space it
 * fills, so size and place never disagree. Knows nothing of which part it makes.
 */

export type Axis = 'x' | 'y' | 'z';

/** A part before it got its mark: marks are given when all parts are known. */
export type UnmarkedPart = Omit<Part, 'mark'> & { readonly edged?: EdgingDesign };

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
  /** See `Part.frame`. */
  readonly frame?: string;
  readonly edging?: EdgingDesign | undefined;
  readonly run?: PlaceInRun | undefined;
}

/** Sizes may come out zero or negative: the checks say so and such a part is not built. */
export function slab(from: Slab): UnmarkedPart {
  const box = { x: from.x, y: from.y, z: from.z };
  return {
    id: from.id,
    label: from.label,
    role: from.role,
    ...(from.stock === undefined ? {} : { stock: from.stock }),
    ...finishedSizes(from.stock, from.thin, from.grain, box),
    grain: hasGrain(from.stock) && from.role !== 'pane' ? from.grain : 'none',
    thin: from.thin,
    box,
    blank: box,
    edging:
      from.edging === undefined
        ? noStrips
        : edgingStrips(from.edging, from.thin, hasGrain(from.stock) ? from.grain : 'none', box),
    ...(from.edging === undefined ? {} : { edged: from.edging }),
    features: [],
    origin: from.origin,
    ...(from.cell === undefined ? {} : { cell: from.cell }),
    ...(from.frame === undefined ? {} : { frame: from.frame }),
    ...(from.run === undefined ? {} : { run: from.run }),
  };
}

const noStrips: readonly EdgingStrip[] = [];

/** The same part of a blank that reaches beyond what one sees of it. */
export function withBlank(part: UnmarkedPart, blank: Block): UnmarkedPart {
  const runs = part.grain === 'none' ? otherAxis(part.thin, part.thin) : part.grain;
  return {
    ...part,
    blank,
    ...(part.edged === undefined ? {} : { edging: edgingStrips(part.edged, part.thin, part.grain, blank) }),
    ...finishedSizes(part.stock, part.thin, runs, blank),
  };
}

function finishedSizes(
  stock: Stock | undefined,
  thin: Axis,
  runs: Axis,
  blank: Block,
): Pick<Part, 'length' | 'width' | 'thickness'> {
  const [length, width] = faceSizes(stock, thin, runs, blank);
  return { length, width, thickness: blank[thin].size };
}

/** Unknown stock is taken for wood: grain that turns out not to matter does no harm. */
function hasGrain(stock: Stock | undefined): boolean {
  return stock?.grain !== 'none';
}

/** Along the grain first; without grain the longer edge first. */
function faceSizes(stock: Stock | undefined, thin: Axis, runs: Axis, blank: Block): readonly [Figure, Figure] {
  const along = blank[runs].size;
  const crosswise = blank[otherAxis(thin, runs)].size;
  if (hasGrain(stock) || along.length.compare(crosswise.length) >= 0) return [along, crosswise];
  return [crosswise, along];
}

/** The first axis that is neither of these. */
function otherAxis(one: Axis, other: Axis): Axis {
  return axes.find((axis) => axis !== one && axis !== other) ?? 'x';
}

const axes: readonly Axis[] = ['x', 'y', 'z'];

/** All three sizes are more than nothing. */
export function isSound(part: UnmarkedPart): boolean {
  return part.length.length.isPositive() && part.width.length.isPositive() && part.thickness.length.isPositive();
}
