import type { CompartmentsDesign } from '../design/compartments-design.ts';
import { derive, less, plus } from '../design/derive.ts';
import type { DrawerDesign, FrontCell } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { CarcaseLayout, Rectangle, Span } from '../evaluation.ts';
import { spanFrom } from '../layout/spans.ts';
import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { BOX_SIDES, usual } from '../tables/trade-habits.ts';
import { bottomUp, type DrawerBox, drawerBox } from './drawer-box.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/**
 * The partitions of a drawer box and what is clear between them. Their ends lie in dadoes of the walls that they meet,
 * which are open at the top, so that they are slid in from above; they stand on the bottom.
 */

/** What is clear in each compartment, from the left or from the front. */
export function compartmentSizes(compartments: CompartmentsDesign, box: DrawerBox, wall: Figure): readonly Figure[] {
  const { each, material, way } = compartments;
  const free = each.filter(({ size }) => size === undefined).length;
  const inside = insideOf(box, wall, way);
  const share = Rational.of(1, Math.max(free, 1));
  const rest = derive('a share of what is left inside the box', [
    plus(way === 'across' ? 'width inside' : 'depth inside', inside, share),
    less('partitions', material.thickness, Rational.of(each.length - 1).times(share)),
    ...each.flatMap(({ size }) => (size === undefined ? [] : [less('a compartment', size, share)])),
  ]);
  return each.map(({ size }) => size ?? rest);
}

/** What is left over when all sizes are written, and what is missing, which is negative. */
export function leftOfCompartments(compartments: CompartmentsDesign, box: DrawerBox, wall: Figure): Length {
  const { each, material, way } = compartments;
  const written = Length.sum(each.flatMap(({ size }) => (size === undefined ? [] : [size.length])));
  return insideOf(box, wall, way)
    .length.minus(material.thickness.length.times(each.length - 1))
    .minus(written);
}

export function insideOf(box: DrawerBox, wall: Figure, way: CompartmentsDesign['way']): Figure {
  return way === 'across'
    ? derive('width inside the box', [plus('width of the box', box.x.size), less('thickness of its sides', wall, 2)])
    : derive('depth inside the box', [
        plus('depth of the box', box.z.size),
        less('thickness of its front and back', wall, 2),
      ]);
}

export function compartmentParts(
  cell: FrontCell,
  drawer: DrawerDesign,
  reach: readonly Operand[],
  layout: CarcaseLayout,
  opening: Rectangle,
): readonly UnmarkedPart[] {
  const { compartments } = drawer;
  if (compartments === undefined) return [];
  const { unit } = layout;
  const box = drawerBox(drawer, reach, layout, opening);
  const wall = drawer.sides?.thickness ?? usual(BOX_SIDES, unit);
  const { material, way, dado, height, origin } = compartments;
  const sizes = compartmentSizes(compartments, box, wall);
  const [along, across] = way === 'across' ? (['x', 'z'] as const) : (['z', 'x'] as const);
  const length: Span = spanFrom(
    derive('in the dado', [
      plus('where the box begins', box[across].start),
      plus('thickness of its wall', wall),
      less('depth of the dado', dado),
    ]),
    derive('from dado to dado', [
      plus('inside the box', insideOf(box, wall, way === 'across' ? 'behind' : 'across')),
      plus('depth of the dadoes', dado, 2),
    ]),
  );
  const foot = derive('on the bottom of the box', [
    plus('the foot of the box', box.y.start),
    ...bottomUp(drawer, unit),
  ]);
  const upright = spanFrom(
    foot,
    height ??
      derive('up to the upper edge of the sides', [plus('upper edge of the box', box.y.end), less('its bottom', foot)]),
  );
  const of = cell.name === undefined ? '' : ` of "${cell.name}"`;
  let start = derive('inside the box', [
    plus('where the box begins', box[along].start),
    plus('thickness of its wall', wall),
  ]);
  return sizes.slice(0, -1).map((size, at) => {
    const place = spanFrom(
      derive('behind the compartment', [plus('where the compartment begins', start), plus('its size', size)]),
      material.thickness,
    );
    start = place.end;
    return slab({
      id: `${cell.id}/box-partition-${at + 1}`,
      label: `box partition${of}`,
      role: 'drawer-partition',
      stock: material.stock,
      thin: along,
      grain: across,
      origin,
      cell: cell.id,
      y: upright,
      ...(way === 'across' ? { x: place, z: length } : { x: length, z: place }),
    });
  });
}
