import { assumed, derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { PackersDesign } from '../design/slide-design.ts';
import type { Span } from '../evaluation.ts';
import { spanFrom, spanUpTo } from '../layout/spans.ts';
import { Length } from '../length/length.ts';
import { slab, type UnmarkedPart } from '../parts/slab.ts';
import { backingsOf, moving } from './backing.ts';
import type { SlideInPlace } from './drawer-slides.ts';
import type { Packing, Screw } from './placed-hardware.ts';

/**
 * Packers between a slide and what stands back behind it: a panel between stiles, a side behind a face frame. They lie
 * on the wood, as high as the slide, and reach from what stands flush before them to what stands flush behind them.
 */
export interface Packed {
  readonly parts: readonly UnmarkedPart[];
  /** Absent where nothing is packed. */
  readonly packing?: Packing;
}

const nothing: Packed = { parts: [] };

export function packersBehind(
  slide: SlideInPlace,
  packers: PackersDesign | undefined,
  parts: readonly UnmarkedPart[],
  farthest: Length,
): Packed {
  if (packers === undefined || packers.thickness?.length.isPositive() === false) return nothing;
  const probes = probesOf(slide);
  const gaps = backingsOf(probes, parts, farthest).flatMap((backing, index) => {
    const probe = probes[index];
    return backing.kind === 'behind-gap' && probe !== undefined ? [{ ...backing, at: probe.at.z }] : [];
  });
  const [first] = gaps;
  const { origin, statement } = packers;
  if (first === undefined) {
    const none = assumed(Length.zero, 'nothing stands back');
    return { parts: [], packing: { thickness: packers.thickness ?? none, origin, statement } };
  }
  const flush = flushParts(slide, parts);
  const y = besideRails(slide, parts);
  const stretches = new Map<string, Span>();
  for (const { at } of gaps) {
    const stretch = stretchAround(at, slide.z, flush);
    stretches.set(`${stretch.start.length.exactInches} ${stretch.end.length.exactInches}`, stretch);
  }
  const face = faceOf(first.part, slide.side);
  const [near, far] = slide.side === 'left' ? [face, slide.plane] : [slide.plane, face];
  const thickness =
    packers.thickness ?? derive('as thick as the gap', [plus('the farther face', far), less('the nearer face', near)]);
  const x = slide.side === 'left' ? spanFrom(face, thickness) : spanUpTo(face, thickness);
  return {
    packing: { gap: first.gap, thickness, origin, statement },
    parts: [...stretches.values()].map((z, index) =>
      slab({
        id: `${slide.cell}/packer-${slide.side}${index === 0 ? '' : `-${index + 1}`}`,
        label: `packer behind the ${slide.label}`,
        role: 'packer',
        stock: packers.stock,
        x,
        y,
        z,
        thin: 'x',
        grain: 'z',
        origin: packers.origin,
        cell: slide.cell,
      }),
    ),
  };
}

/** As high as the slide, less what rails over and under it take of that. */
function besideRails({ plane, side, y, z }: SlideInPlace, parts: readonly UnmarkedPart[]): Span {
  const middle = y.start.length.plus(y.size.length.dividedBy(2));
  const rails = parts.filter(
    ({ role, blank }) =>
      role === 'rail' &&
      (side === 'left'
        ? blank.x.end.length.compare(plane.length) >= 0 && blank.x.start.length.compare(plane.length) < 0
        : blank.x.start.length.compare(plane.length) <= 0 && blank.x.end.length.compare(plane.length) > 0) &&
      blank.z.start.length.compare(z.end.length) < 0 &&
      blank.z.end.length.compare(z.start.length) > 0,
  );
  const under = rails
    .map(({ blank }) => blank.y.end)
    .filter(({ length }) => length.compare(y.start.length) > 0 && length.compare(middle) <= 0)
    .reduce((most: Figure | undefined, each) => higher(most, each), undefined);
  const over = rails
    .map(({ blank }) => blank.y.start)
    .filter(({ length }) => length.compare(y.end.length) < 0 && length.compare(middle) >= 0)
    .reduce((least: Figure | undefined, each) => lower(least, each), undefined);
  if (under === undefined && over === undefined) return y;
  const [start, end] = [under ?? y.start, over ?? y.end];
  return {
    start,
    end,
    size: derive('height of the slide, less what the rail takes of it', [
      plus('upper edge', end),
      less('lower edge', start),
    ]),
  };
}

function higher(one: Figure | undefined, other: Figure): Figure {
  return one !== undefined && one.length.compare(other.length) >= 0 ? one : other;
}

function lower(one: Figure | undefined, other: Figure): Figure {
  return one !== undefined && one.length.compare(other.length) <= 0 ? one : other;
}

/** Its screws; where the entry tells none, a quarter of its length from either end. */
function probesOf({ hardware, plane, side, y, z }: SlideInPlace): readonly Screw[] {
  if (hardware.screws.length > 0) return hardware.screws;
  const quarter = z.size.length.dividedBy(4);
  const up = y.start.length.plus(y.size.length.dividedBy(2));
  return [z.start.length.plus(quarter), z.end.length.minus(quarter)].map((at, index) => ({
    id: `${hardware.id}/probe-${index + 1}`,
    at: { x: plane.length, y: up, z: at },
    towards: side === 'left' ? '-x' : '+x',
    diameter: Length.zero,
    length: Length.zero,
  }));
}

function faceOf(part: UnmarkedPart, side: SlideInPlace['side']): Figure {
  return side === 'left' ? part.blank.x.end : part.blank.x.start;
}

/** What reaches the plane of the slide at the height of its middle, and stays where it is. */
function flushParts({ plane, side, y }: SlideInPlace, parts: readonly UnmarkedPart[]): readonly UnmarkedPart[] {
  const up = y.start.length.plus(y.size.length.dividedBy(2));
  const at = plane.length;
  return parts.filter(({ blank, role }) => {
    if (moving.has(role)) return false;
    const [near, far] =
      side === 'left' ? [blank.x.start.length, blank.x.end.length] : [blank.x.end.length, blank.x.start.length];
    const reaches =
      side === 'left' ? near.compare(at) < 0 && far.compare(at) >= 0 : near.compare(at) > 0 && far.compare(at) <= 0;
    return reaches && blank.y.start.length.compare(up) <= 0 && blank.y.end.length.compare(up) >= 0;
  });
}

/** Between the nearest flush parts before and behind `at`; from and to the ends of the slide where there are none. */
function stretchAround(at: Length, whole: Span, flush: readonly UnmarkedPart[]): Span {
  const before = flush
    .map(({ blank }) => blank.z.end)
    .filter(({ length }) => length.compare(at) <= 0)
    .reduce((most: Figure | undefined, each) => higher(most, each), undefined);
  const behind = flush
    .map(({ blank }) => blank.z.start)
    .filter(({ length }) => length.compare(at) >= 0)
    .reduce((least: Figure | undefined, each) => lower(least, each), undefined);
  const [start, end] = [before ?? whole.start, behind ?? whole.end];
  return {
    start,
    end,
    size: derive('from flush wood to flush wood, or as far as the slide reaches', [
      plus('where it ends', end),
      less('where it starts', start),
    ]),
  };
}
