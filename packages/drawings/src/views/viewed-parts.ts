import type { Part } from '@fettle/engine';
import { edgesOfCells } from '../shapes/cell-edges.ts';
import type { ConvexCell, Plane } from '../shapes/convex-cell.ts';
import { coveringShadows } from '../shapes/covering-shadows.ts';
import { behind, type CutFace, cutFace } from '../shapes/cut-face.ts';
import { DrawnLines } from '../shapes/drawn-lines.ts';
import { type PartCells, partCells } from '../shapes/part-cells.ts';
import { type Shadow, type Stretch, seenStretches, shadowOf } from '../shapes/seen-edges.ts';
import { dot } from '../shapes/vectors.ts';
import type { Flat, ViewDirection } from '../shapes/view-direction.ts';
import { withBores } from './cut-bores.ts';
import { isDrawnPlain, plainCells } from './plain-parts.ts';

/**
 * What of a piece is seen from a side, or laid open by a plane through it: in real millimetres, v upwards. Knows nothing
 * of scale, paper or lettering.
 */

export interface ViewedPart {
  readonly part: Part;
  /** Absent where the plane passes it, or there is none. */
  readonly cut?: CutFace;
  readonly seen: readonly Stretch[];
  /** Empty unless hidden edges of such parts are asked for. */
  readonly hidden: readonly Stretch[];
  /** Its outlines in the picture, nearest last; some of them may be covered by other parts. */
  readonly areas: readonly Shadow[];
  readonly nearest: number;
}

export interface WhatToView {
  readonly parts: readonly Part[];
  readonly from: ViewDirection;
  /** The viewer stands before it, and what lies on the viewer's side is taken away. */
  readonly plane?: Plane;
  /** Whether hidden edges of a part are wanted; of one that is not seen at all perhaps rather than of others. */
  readonly showsHidden: (part: Part, isUnseen: boolean) => boolean;
  /** Where the parts stand apart from their places. */
  readonly moved?: (part: Part, cells: PartCells) => PartCells;
}

/** Farthest first, as one paints. */
export function viewedParts({
  parts,
  from,
  plane,
  showsHidden,
  moved = (_, cells) => cells,
}: WhatToView): readonly ViewedPart[] {
  const isPlain = isDrawnPlain(parts);
  const standing = parts.map((part) => {
    const plain = isPlain ? plainCells(part) : undefined;
    const isCut = plane !== undefined && plain !== undefined && cutFace(plain.cells, plane, from) !== undefined;
    const whole = moved(part, plain === undefined || isCut ? partCells(part) : plain);
    const cells = plane === undefined ? whole.cells : behind(whole.cells, plane);
    const cut = plane === undefined ? undefined : cutFace(withBores(whole, plane), plane, from);
    return { part, cells, cut, areas: cells.map((cell) => shadowOf(cell, from)) };
  });
  const shadows = coveringShadows(
    standing.flatMap(({ areas }) => areas).sort((a, b) => b.nearest - a.nearest),
    from,
  );
  const lines = new DrawnLines();
  for (const { cut } of standing) for (const stretch of cut?.outline ?? []) lines.take(stretch);
  const nearestFirst = standing
    .filter(({ cells }) => cells.length > 0)
    .map((each) => ({ ...each, nearest: Math.max(...each.areas.map((area) => area.nearest)) }))
    .sort((a, b) => b.nearest - a.nearest);
  const edges = nearestFirst.map(({ part, cells, areas }) =>
    stretchesOf(part, cells, areas, shadows, from, showsHidden),
  );
  const seen = edges.map((each) => each.seen.flatMap((stretch) => lines.take(stretch)));
  const hidden = edges.map((each) => each.hidden.flatMap((stretch) => lines.take(stretch)));
  return nearestFirst
    .map(
      ({ part, cut, areas, nearest }, at): ViewedPart => ({
        part,
        ...(cut === undefined ? {} : { cut }),
        seen: seen[at] ?? [],
        hidden: hidden[at] ?? [],
        areas: [...areas].sort((a, b) => a.nearest - b.nearest),
        nearest,
      }),
    )
    .reverse();
}

function stretchesOf(
  part: Part,
  cells: readonly ConvexCell[],
  areas: readonly Shadow[],
  shadows: readonly Shadow[],
  from: ViewDirection,
  showsHidden: WhatToView['showsHidden'],
) {
  const around = {
    low: { u: Math.min(...areas.map(({ low }) => low.u)), v: Math.min(...areas.map(({ low }) => low.v)) },
    high: { u: Math.max(...areas.map(({ high }) => high.u)), v: Math.max(...areas.map(({ high }) => high.v)) },
  };
  const near = shadows.filter((shadow) => overlaps(around, shadow));
  const seen: Stretch[] = [];
  const hidden: Stretch[] = [];
  for (const edge of edgesOfCells(cells)) {
    const stretches = seenStretches(edge, near, from);
    seen.push(...stretches.seen);
    hidden.push(...stretches.hidden);
  }
  return { seen, hidden: showsHidden(part, seen.length === 0) ? hidden : [] };
}

function overlaps(a: Pick<Shadow, 'low' | 'high'>, b: Pick<Shadow, 'low' | 'high'>): boolean {
  return a.low.u <= b.high.u && b.low.u <= a.high.u && a.low.v <= b.high.v && b.low.v <= a.high.v;
}

interface OwnedArea extends Shadow {
  readonly owner: ViewedPart;
}

/** The areas over each of so many equal bands across the longer side of the picture, nearest first. */
interface Bands {
  readonly along: 'u' | 'v';
  readonly low: number;
  readonly width: number;
  readonly areas: readonly (readonly OwnedArea[])[];
}

const BANDS = 64;

/** Asked at thousands of points of one picture. */
const knownBands = new WeakMap<readonly ViewedPart[], Bands>();

function bandsOf(viewed: readonly ViewedPart[], from: ViewDirection): Bands {
  const known = knownBands.get(viewed);
  if (known !== undefined) return known;
  const all = coveringShadows(
    viewed
      .flatMap((owner) => owner.areas.map((area): OwnedArea => ({ ...area, owner })))
      .sort((a, b) => b.nearest - a.nearest),
    from,
  );
  const reach = (along: 'u' | 'v'): readonly [number, number] => [
    all.reduce((least, area) => Math.min(least, area.low[along]), Number.POSITIVE_INFINITY),
    all.reduce((most, area) => Math.max(most, area.high[along]), Number.NEGATIVE_INFINITY),
  ];
  const [across, upright] = [reach('u'), reach('v')];
  const along = across[1] - across[0] >= upright[1] - upright[0] ? 'u' : 'v';
  const [low, high] = along === 'u' ? across : upright;
  const width = (high - low) / BANDS;
  const areas = Array.from({ length: BANDS }, (_, at) =>
    all.filter((area) => area.low[along] <= low + (at + 1) * width && area.high[along] >= low + at * width),
  );
  const bands = { along, low, width, areas } as const;
  knownBands.set(viewed, bands);
  return bands;
}

/** Which part one sees at a point of the picture; undefined where one sees none. */
export function partSeenAt(viewed: readonly ViewedPart[], point: Flat, from: ViewDirection): ViewedPart | undefined {
  let nearest: ViewedPart | undefined;
  let depth = Number.NEGATIVE_INFINITY;
  const { along, low: start, width, areas } = bandsOf(viewed, from);
  for (const area of areas[Math.min(BANDS - 1, Math.floor((point[along] - start) / width))] ?? []) {
    // What lies wholly behind what was found is not seen.
    if (area.nearest <= depth) break;
    const { low, high } = area;
    if (point.u < low.u || point.u > high.u || point.v < low.v || point.v > high.v) continue;
    const here = depthAt(area, point, from);
    if (here !== undefined && here > depth) {
      depth = here;
      nearest = area.owner;
    }
  }
  return nearest;
}

/** How near the surface is under a point of the picture; undefined beside the outline. */
function depthAt({ outline, facing }: Shadow, point: Flat, { right, up, towards }: ViewDirection): number | undefined {
  let before = outline[outline.length - 1];
  for (const corner of outline) {
    if (before === undefined) return undefined;
    if ((corner.u - before.u) * (point.v - before.v) - (corner.v - before.v) * (point.u - before.u) < 0)
      return undefined;
    before = corner;
  }
  let depth = Number.POSITIVE_INFINITY;
  for (const { normal, offset } of facing) {
    const across = point.u * dot(normal, right) + point.v * dot(normal, up);
    depth = Math.min(depth, (offset - across) / dot(normal, towards));
  }
  return depth;
}
