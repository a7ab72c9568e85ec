import type { Part } from '@fettle/engine';
import type { Bore } from '../shapes/part-cells.ts';
import { boreOutline, extentOf } from '../shapes/part-cells.ts';
import { dot } from '../shapes/vectors.ts';
import { type Flat, flat, type ViewDirection } from '../shapes/view-direction.ts';

/** Round holes of a part from one side, in real millimetres: circles where one looks into or through them, else dashes. */

export type BoreLine =
  | { readonly kind: 'circle'; readonly role: 'edge' | 'hidden'; readonly centre: Flat; readonly radius: number }
  | { readonly kind: 'line'; readonly role: 'edge' | 'hidden'; readonly from: Flat; readonly to: Flat };

/** From the mouth of a hole to the face, in real millimetres. */
const AT_FACE_MM = 0.01;

export function boreLines(bores: readonly Bore[], part: Part, from: ViewDirection): readonly BoreLine[] {
  const extent = extentOf(part.blank);
  if (extent === undefined) return [];
  return bores.flatMap((bore): readonly BoreLine[] => {
    const { axis, along, centres, radius } = bore;
    const towards = from.towards[axis];
    if (Math.abs(towards) > 0.5) {
      const isOpen = towards > 0 ? along[1] >= extent[axis][1] - AT_FACE_MM : along[0] <= extent[axis][0] + AT_FACE_MM;
      const role = isOpen ? 'edge' : 'hidden';
      const [one, other] = centres.map((centre) => flat(centre, from));
      if (one === undefined || other === undefined) return [];
      if (one.u === other.u && one.v === other.v) return [{ kind: 'circle', role, centre: one, radius }];
      return around(boreOutline(bore, along[0]).map((point) => flat(point, from))).map((side) => ({
        kind: 'line',
        role,
        ...side,
      }));
    }
    const reach: readonly [number, number] = [Math.max(along[0], extent[axis][0]), Math.min(along[1], extent[axis][1])];
    const corners = reach.flatMap((at) => boreOutline(bore, at).map((point) => flat(point, from)));
    const [us, vs] = [corners.map(({ u }) => u), corners.map(({ v }) => v)];
    const [left, right] = [Math.min(...us), Math.max(...us)];
    const [low, high] = [Math.min(...vs), Math.max(...vs)];
    const outline = [
      { u: left, v: low },
      { u: right, v: low },
      { u: right, v: high },
      { u: left, v: high },
    ];
    // Where it comes out of the wood the edge of the part is its end.
    const isUpright = Math.abs(dot(from.up, { x: 0, y: 0, z: 0, [axis]: 1 })) > 0.5;
    return around(outline)
      .filter(
        ({ from: a, to: b }) =>
          (isUpright ? a.u === b.u : a.v === b.v) || !isAtFace(bore, extent[axis], a, b, isUpright, from),
      )
      .map((side) => ({ kind: 'line', role: 'hidden', ...side }));
  });
}

function isAtFace(
  { axis }: Bore,
  [low, high]: readonly [number, number],
  a: Flat,
  b: Flat,
  isUpright: boolean,
  from: ViewDirection,
): boolean {
  const sign = (isUpright ? from.up : from.right)[axis];
  const place = (isUpright ? (a.v + b.v) / 2 : (a.u + b.u) / 2) * sign;
  return Math.abs(place - low) < AT_FACE_MM || Math.abs(place - high) < AT_FACE_MM;
}

function around(outline: readonly Flat[]): readonly { readonly from: Flat; readonly to: Flat }[] {
  return outline.map((from, at) => ({ from, to: outline[(at + 1) % outline.length] ?? from }));
}
