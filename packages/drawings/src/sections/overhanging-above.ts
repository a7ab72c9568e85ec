import type { Length, Part } from '@fettle/engine';
import { extentOf } from '../shapes/part-cells.ts';
import type { Stretch } from '../shapes/seen-edges.ts';
import { realMm } from '../shown-lengths.ts';
import type { ViewedPart } from '../views/viewed-parts.ts';

/**
 * What a level section takes away although the sizes over all end at it: a top or a lid that reaches beyond all that is
 * drawn below. Its outline, as far as it lies outside of that, in real millimetres.
 */

const BEYOND_MM = 0.05;

export interface Overhanging {
  readonly parts: readonly Part[];
  readonly stretches: readonly Stretch[];
}

/** `place`: how high the section cuts. Seen from above: u to the right, v to the back. */
export function overhangingAbove(parts: readonly Part[], viewed: readonly ViewedPart[], place: Length): Overhanging {
  const areas = viewed.flatMap((each) => each.areas);
  const drawn = {
    u: [Math.min(...areas.map(({ low }) => low.u)), Math.max(...areas.map(({ high }) => high.u))],
    v: [Math.min(...areas.map(({ low }) => low.v)), Math.max(...areas.map(({ high }) => high.v))],
  } as const;
  const found: Part[] = [];
  const stretches: Stretch[] = [];
  for (const part of parts) {
    const extent = extentOf(part.box);
    if (extent === undefined || extent.y[0] < realMm(place)) continue;
    if (reachesBeyond(extent.x, drawn.u).length + reachesBeyond(extent.z, drawn.v).length === 0) continue;
    found.push(part);
    for (const u of extent.x) {
      const isOutside = reachesBeyond([u, u], drawn.u).length > 0;
      for (const [from, to] of isOutside ? [extent.z] : reachesBeyond(extent.z, drawn.v)) {
        stretches.push({ from: { u, v: from }, to: { u, v: to } });
      }
    }
    for (const v of extent.z) {
      const isOutside = reachesBeyond([v, v], drawn.v).length > 0;
      for (const [from, to] of isOutside ? [extent.x] : reachesBeyond(extent.x, drawn.u)) {
        stretches.push({ from: { u: from, v }, to: { u: to, v } });
      }
    }
  }
  return { parts: found, stretches };
}

type Reach = readonly [number, number];

/** What of `reach` lies before the first and after the last place of `other`. */
function reachesBeyond([from, to]: Reach, [low, high]: Reach): readonly Reach[] {
  const before: readonly Reach[] = from < low - BEYOND_MM ? [[from, Math.min(to, low)]] : [];
  const after: readonly Reach[] = to > high + BEYOND_MM ? [[Math.max(from, high), to]] : [];
  return [...before, ...after];
}
