import { assumed, derive, less, plus } from '../design/derive.ts';
import type { Span } from '../evaluation.ts';
import type { Feature } from '../joinery/feature.ts';
import { spanFrom, spanUpTo } from '../layout/spans.ts';
import { Length } from '../length/length.ts';
import { slab, type UnmarkedPart } from '../parts/slab.ts';
import { boxOf, type Interval } from '../solids/index.ts';
import type { HardwareCase } from './fit-hardware.ts';
import type { FittedHardware, PlacedHardware } from './placed-hardware.ts';
import { around, type VentInPlace, type VentLayerInPlace, ventsInPlace } from './vent-layers.ts';

/**
 * Cuts vents through their layers, the ledge for a screen, and makes the strips that line the opening in the front. A
 * hole with round corners is cut as the rectangle around it: what a check asks of its corners is told by their radius.
 */
export function fitVents(one: HardwareCase): FittedHardware {
  const vents = ventsInPlace(one);
  return {
    placed: vents.map(placedVent),
    features: vents.flatMap(holesOf),
    parts: vents.flatMap(liningOf),
  };
}

function intervalIn({ start, end }: Span): Interval {
  return { from: start.length, to: end.length };
}

function isSound({ hole: { x, y } }: VentLayerInPlace): boolean {
  return x.size.length.isPositive() && y.size.length.isPositive();
}

function holesOf({ id, vent, layers }: VentInPlace): readonly Feature[] {
  return layers.filter(isSound).flatMap((layer): readonly Feature[] => {
    const { part, hole, what } = layer;
    const common = { part: part.id, stage: 'on the loose part', origin: vent.origin } as const;
    const z = part.box.z;
    const cut: Feature = {
      ...common,
      id: `${part.id}/vent ${id}`,
      kind: 'vent',
      solid: boxOf(intervalIn(hole.x), intervalIn(hole.y), intervalIn(z)),
      entry: '-z',
      measures: { width: hole.x.size, depth: z.size, corner: vent.corners ?? squareCorners },
      through: true,
    };
    const { ledge } = vent;
    if (what !== 'front' || ledge === undefined) return [cut];
    if (!ledge.width.length.isPositive() || !ledge.depth.length.isPositive()) return [cut];
    const wide = around(hole, 'width of the ledge', ledge.width);
    const from = z.end.length.minus(ledge.depth.length);
    return [
      cut,
      {
        ...common,
        id: `${part.id}/ledge ${id}`,
        kind: 'notch',
        solid: boxOf(intervalIn(wide.x), intervalIn(wide.y), { from, to: z.end.length }),
        entry: '+z',
        measures: { width: ledge.width, depth: ledge.depth },
        origin: ledge.origin,
      },
    ];
  });
}

const squareCorners = assumed(Length.zero, 'corners are cut square unless something is said');

function placedVent({ id, cell, vent, layers }: VentInPlace): PlacedHardware {
  return {
    id,
    kind: 'vent',
    label: `vent${cell.name === undefined ? '' : ` of "${cell.name}"`}`,
    cell: cell.id,
    on: layers.map(({ part }) => part.id),
    set: [
      { words: 'lower edge above that of the front', figure: vent.up },
      { words: 'width of the opening', figure: vent.width },
      { words: 'height of the opening', figure: vent.height },
    ],
    screws: [],
    ...outlineOf(layers),
    origin: vent.origin,
  };
}

/** What one sees of it from the front. */
function outlineOf([first]: readonly VentLayerInPlace[]): Pick<PlacedHardware, 'outline'> {
  if (first === undefined || first.what !== 'front') return {};
  const { x, y } = first.clear;
  return { outline: { x: intervalIn(x), y: intervalIn(y), isRound: false } };
}

/** Two strips over the whole width of the hole, two between them; as deep as the front is thick. */
function liningOf({ id, cell, vent, layers }: VentInPlace): readonly UnmarkedPart[] {
  const layer = layers.find(({ what }) => what === 'front');
  const { lining } = vent;
  if (lining === undefined || layer === undefined || !isSound(layer)) return [];
  const { hole, clear, part } = layer;
  const { thickness } = lining;
  const strip = (name: string, x: Span, y: Span, thin: 'x' | 'y') =>
    slab({
      id: `${id}/lining-${name}`,
      label: `${name} lining of the vent${cell.name === undefined ? '' : ` in "${cell.name}"`}`,
      role: 'lining',
      stock: lining.stock,
      x,
      y,
      z: part.box.z,
      thin,
      grain: thin === 'y' ? 'x' : 'y',
      origin: lining.origin,
      cell: cell.id,
    });
  return [
    strip('upper', hole.x, spanUpTo(hole.y.end, thickness), 'y'),
    strip('lower', hole.x, spanFrom(hole.y.start, thickness), 'y'),
    strip('left', spanFrom(hole.x.start, thickness), between(clear.y), 'x'),
    strip('right', spanUpTo(hole.x.end, thickness), between(clear.y), 'x'),
  ];
}

function between({ start, end }: Span): Span {
  return spanFrom(
    start,
    derive('between the upper and the lower strip', [
      plus('where the opening ends', end),
      less('where it begins', start),
    ]),
  );
}
