import type { Figure } from '../design/figure.ts';
import type { Evaluation } from '../evaluation.ts';
import { type VentLayerInPlace, ventsInPlace } from '../hardware/vent-layers.ts';

/** One layer of a vent: what it is cut through, how large it is, and what of it is free. */
export interface ScheduledVentLayer {
  /** The id of the vent among the hardware. */
  readonly vent: string;
  readonly cell: string;
  readonly name?: string;
  readonly what: VentLayerInPlace['what'];
  /** The id of the part that it goes through. */
  readonly part: string;
  /** What is cut, and what the lining leaves. */
  readonly hole: { readonly width: Figure; readonly height: Figure };
  readonly clear: { readonly width: Figure; readonly height: Figure };
  readonly corners?: Figure;
  /**
   * In square inches, less what round corners take: (4 - π) r². Not exact for that reason. How much is needed for what is
   * kept behind it no published figure says, and none is claimed.
   */
  readonly freeSquareInches: number;
}

export function ventSchedule({ layout, parts }: Evaluation): readonly ScheduledVentLayer[] {
  if (layout.face === undefined) return [];
  return ventsInPlace({ face: layout.face, parts }).flatMap(({ id, cell, layers }) =>
    layers.map(({ what, part, hole, clear, corners }) => ({
      vent: id,
      cell: cell.id,
      ...(cell.name === undefined ? {} : { name: cell.name }),
      what,
      part: part.id,
      hole: { width: hole.x.size, height: hole.y.size },
      clear: { width: clear.x.size, height: clear.y.size },
      ...(corners === undefined ? {} : { corners }),
      freeSquareInches: freeArea(clear.x.size, clear.y.size, corners),
    })),
  );
}

function freeArea(width: Figure, height: Figure, corners: Figure | undefined): number {
  const radius = corners?.length.approximateInches ?? 0;
  const whole = width.length.in('in').times(height.length.in('in')).toNumber();
  return Math.max(whole - (4 - Math.PI) * radius ** 2, 0);
}
