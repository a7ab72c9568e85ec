import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import { axisOf } from '../joinery/feature.ts';
import type { LengthUnit } from '../length/length.ts';
import { type Axis, axesAcross } from '../solids/solid.ts';
import { roughThicknessFor } from '../stock/rough-thickness.ts';
import { ROUGH_LENGTH, ROUGH_WIDTH, usual } from '../tables/trade-habits.ts';
import type { Part } from './part.ts';

/** What is cut first: the core that strips are put on, and the rough piece that is planed and trimmed to size. */

export interface CoreSize {
  readonly length: Figure;
  readonly width: Figure;
}

/** The finished part less the strips on its edges; undefined where it has none. */
export function coreOf(part: Part): CoreSize | undefined {
  if (part.edging.length === 0) return undefined;
  const along = axisOfLength(part);
  const across = axesAcross(part.thin).find((axis) => axis !== along) ?? along;
  return { length: lessStrips(part, along, part.length), width: lessStrips(part, across, part.width) };
}

function axisOfLength(part: Part): Axis {
  const [one, other] = axesAcross(part.thin);
  return part.blank[one].size === part.length || part.grain === one ? one : other;
}

function lessStrips(part: Part, axis: Axis, size: Figure): Figure {
  const strips = part.edging.filter(({ at }) => axisOf(at) === axis);
  const [first] = strips;
  if (first === undefined) return size;
  return derive('size of the core', [
    plus('finished size', size),
    less('thickness of the strips', first.thickness, strips.length),
  ]);
}

export interface RoughSize {
  readonly length: Figure;
  readonly width: Figure;
  /** As a yard calls it: '5/4'. Absent where it is unknown, and for sheets, which are used as they are. */
  readonly nominal?: string;
}

/**
 * Solid wood is cut longer and wider and planed down; a sheet is cut to the size of the core at once. Undefined while no
 * stock is chosen.
 */
export function roughOf(part: Part, unit: LengthUnit): RoughSize | undefined {
  if (part.stock === undefined) return undefined;
  const { length, width } = coreOf(part) ?? part;
  if (part.stock.form === 'sheet') return { length, width };
  const nominal = roughThicknessFor(part.thickness.length, 'hardwood')?.name;
  return {
    length: derive('rough length', [plus('finished length', length), plus('to trim', usual(ROUGH_LENGTH, unit))]),
    width: derive('rough width', [plus('finished width', width), plus('to joint and rip', usual(ROUGH_WIDTH, unit))]),
    ...(nominal === undefined ? {} : { nominal }),
  };
}
