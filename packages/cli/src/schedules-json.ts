import {
  doorSchedule,
  drawerSchedule,
  type Evaluation,
  hardwareSchedule,
  type PlacedHardware,
  type Units,
  ventSchedule,
} from '@fettle/engine';
import { type LengthJson, lengthJson } from './length-json.ts';

/**
 * What `fettle make` writes as `NAME-schedules.json`: drawers, doors and hardware as they are made and set. A field that
 * is not known is absent, never zero. Lengths are exact.
 */
export interface SchedulesJson {
  readonly format: 'fettle-schedules';
  /** Rises when a field changes its meaning or goes away; not when one is added. */
  readonly version: 1;
  readonly piece: string;
  readonly drawers: readonly ScheduledDrawerJson[];
  /** Leaves of doors, and lids. */
  readonly doors: readonly ScheduledDoorJson[];
  readonly hardware: readonly ScheduledHardwareJson[];
  /** Each layer of each vent, from the front to the back. */
  readonly vents: readonly ScheduledVentJson[];
}

interface SizesJson {
  readonly width: LengthJson;
  readonly height: LengthJson;
}

export interface ScheduledDrawerJson {
  /** The `id` of its cell in the evaluation. */
  readonly cell: string;
  readonly name?: string;
  /** The `id`s of its parts, its front first. */
  readonly parts: readonly string[];
  readonly opening: SizesJson;
  readonly front?: SizesJson & { readonly thickness: LengthJson };
  /** Outside. */
  readonly box?: SizesJson & { readonly depth: LengthJson };
  /** The `id`s of its slides in `hardware`. */
  readonly slides: readonly string[];
  readonly holds: readonly { readonly count: number; readonly thing: string }[];
}

export interface ScheduledDoorJson extends SizesJson {
  /** The `id` of the leaf: of its part, or of the frame that its parts name. */
  readonly part: string;
  readonly cell: string;
  readonly name?: string;
  readonly thickness: LengthJson;
  readonly hangs?: 'left' | 'right' | 'top';
  /** About, without hardware. */
  readonly kilograms?: number;
  readonly hingeEntry?: string;
  readonly hinges: readonly string[];
  readonly pulls: readonly string[];
}

export interface ScheduledHardwareJson {
  readonly kind: string;
  readonly entry?: string;
  readonly count: number;
  readonly settings: readonly {
    /** In the order in which one measures, each with its datum. */
    readonly set: readonly { readonly words: string; readonly length: LengthJson }[];
    readonly all: readonly { readonly id: string; readonly label: string; readonly on: readonly string[] }[];
  }[];
}

export interface ScheduledVentJson {
  readonly vent: string;
  readonly cell: string;
  readonly through: string;
  readonly part: string;
  readonly hole: SizesJson;
  /** Absent where they are square. */
  readonly corners?: LengthJson;
  /** Less the lining and round corners; not exact. No figure is claimed for what is needed. */
  readonly freeSquareInches: number;
}

export function schedulesJson(evaluation: Evaluation): SchedulesJson {
  const { design } = evaluation;
  const { units } = design;
  return {
    format: 'fettle-schedules',
    version: 1,
    piece: design.name,
    drawers: drawersJson(evaluation),
    doors: doorsJson(evaluation),
    hardware: hardwareSchedule(evaluation).map(({ kind, entry, count, settings }) => ({
      kind,
      ...(entry === undefined ? {} : { entry }),
      count,
      settings: settings.map(({ set, all }) => ({
        set: set.map(({ words, figure }) => ({ words, length: lengthJson(figure.length, units) })),
        all: all.map(({ id, label, on }) => ({ id, label, on })),
      })),
    })),
    vents: ventSchedule(evaluation).map(({ vent, cell, what, part, hole, corners, freeSquareInches }) => ({
      vent,
      cell,
      through: what,
      part,
      hole: sizes(hole, units),
      ...(corners === undefined ? {} : { corners: lengthJson(corners.length, units) }),
      freeSquareInches: Number(freeSquareInches.toFixed(4)),
    })),
  };
}

function drawersJson(evaluation: Evaluation): readonly ScheduledDrawerJson[] {
  const { units } = evaluation.design;
  return drawerSchedule(evaluation).map(({ cell, name, parts, opening, front, box, slides, holds }) => ({
    cell,
    ...(name === undefined ? {} : { name }),
    parts: parts.map(({ id }) => id),
    opening: sizes(opening, units),
    ...(front === undefined
      ? {}
      : {
          front: {
            ...sizes({ width: front.box.x.size, height: front.box.y.size }, units),
            thickness: lengthJson(front.thickness.length, units),
          },
        }),
    ...(box === undefined ? {} : { box: { ...sizes(box, units), depth: lengthJson(box.depth.length, units) } }),
    slides: idsOf(slides),
    holds,
  }));
}

function doorsJson(evaluation: Evaluation): readonly ScheduledDoorJson[] {
  const { units } = evaluation.design;
  return doorSchedule(evaluation).map(({ leaf, cell, name, hangs, kilograms, hingeEntry, hinges, pulls }) => ({
    part: leaf.id,
    cell,
    ...(name === undefined ? {} : { name }),
    ...sizes(leaf, units),
    thickness: lengthJson(leaf.thickness.length, units),
    ...(hangs === undefined ? {} : { hangs }),
    ...(kilograms === undefined ? {} : { kilograms: Number(kilograms.toNumber().toFixed(2)) }),
    ...(hingeEntry === undefined ? {} : { hingeEntry }),
    hinges: idsOf(hinges),
    pulls: idsOf(pulls),
  }));
}

type Sizes = Pick<ReturnType<typeof drawerSchedule>[number]['opening'], 'width' | 'height'>;

function sizes({ width, height }: Sizes, units: Units): SizesJson {
  return { width: lengthJson(width.length, units), height: lengthJson(height.length, units) };
}

function idsOf(placed: readonly PlacedHardware[]): readonly string[] {
  return placed.map(({ id }) => id);
}
