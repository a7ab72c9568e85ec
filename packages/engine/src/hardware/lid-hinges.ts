import { derive, less, plus } from '../design/derive.ts';
import type { PieceDesign, TopDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { LidDesign } from '../design/lid-design.ts';
import type { CarcaseLayout } from '../evaluation.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { boxOf, intervalOf } from '../solids/index.ts';
import { HINGE_SCREW } from '../tables/hanging-habits.ts';
import { limitIn } from '../tables/trade-limits.ts';
import { fitSupports } from './lid-supports.ts';
import type { FittedHardware, PlacedHardware, Screw } from './placed-hardware.ts';

/**
 * Butt hinges along the back edge of a lid: one leaf in its underside, the other in the wood that it lies on, and what
 * holds it up. The lid lies without a gap: each gain is half of the closed hinge deep.
 */
export function fitLid({
  design,
  layout,
  parts,
}: {
  readonly design: PieceDesign;
  readonly layout: CarcaseLayout;
  readonly parts: readonly UnmarkedPart[];
}): FittedHardware {
  const { top } = design.carcase;
  const part = parts.find(({ id }) => id === 'case/top');
  if (top?.lid === undefined || part === undefined) return { placed: [], features: [] };
  const hung = hingesOf(top, top.lid, part, layout, parts);
  const held =
    top.lid.support === undefined
      ? { placed: [], features: [] }
      : fitSupports(top.lid.support, part, { layout, parts, turns: rearOfCase(top, part) });
  return { placed: [...hung.placed, ...held.placed], features: [...hung.features, ...held.features] };
}

const half = Rational.of(1, 2);
/** Common practice, no source. */
const WIDEST_ON_TWO = { inches: Length.inches(36), metric: Length.millimetres(900) };

const HINGE_ID = 'case/lid/hinge-';

export function isHingeOfLid(id: string): boolean {
  return id.startsWith(HINGE_ID);
}

/** How many hinges carry a lid of this width. */
export function hingesOnLid(lid: LidDesign, width: Length, unit: CarcaseLayout['unit']): number {
  return lid.count ?? (width.compare(limitIn(WIDEST_ON_TWO, unit)) > 0 ? 3 : 2);
}

function hingesOf(
  top: TopDesign,
  lid: LidDesign,
  part: UnmarkedPart,
  layout: CarcaseLayout,
  parts: readonly UnmarkedPart[],
): FittedHardware {
  const { hinges } = lid;
  const { length, leafWidth, closed } = hinges ?? {};
  if (hinges?.form !== 'butt' || length === undefined || leafWidth === undefined || closed === undefined)
    return { placed: [], features: [] };
  const { x } = layout.body;
  const depth = derive('half of the closed hinge, for the lid lies without a gap', [
    plus('thickness of the hinge, closed', closed, half),
  ]);
  const plane = part.box.y.start.length;
  const rear = rearOfCase(top, part);
  const deep = intervalOf(rear.length.minus(leafWidth.length), rear.length);
  const count = hingesOnLid(lid, x.size.length, layout.unit);
  const origin = lid.hingesOrigin ?? lid.origin;
  const placed: PlacedHardware[] = [];
  const features: Feature[] = [];
  for (let at = 0; at < Math.min(count, 50); at++) {
    const middle = middleOf(at, count, x.size, length);
    const across = x.start.length.plus(middle.length);
    const wide = intervalOf(across.minus(length.length.times(half)), across.plus(length.length.times(half)));
    const under = parts.find(
      ({ id, box }) =>
        id !== part.id &&
        box.y.end.length.equals(plane) &&
        box.x.start.length.compare(across) <= 0 &&
        box.x.end.length.compare(across) >= 0 &&
        box.z.start.length.compare(deep.from) <= 0 &&
        box.z.end.length.compare(deep.from) > 0,
    );
    const id = `${HINGE_ID}${at + 1}`;
    const gain = (on: UnmarkedPart, entry: FaceOfPart): Feature => ({
      id: `${id} gain in ${on.id}`,
      kind: 'gain',
      part: on.id,
      solid: boxOf(
        wide,
        intervalOf(plane, entry === '+y' ? plane.minus(depth.length) : plane.plus(depth.length)),
        deep,
      ),
      entry,
      runs: 'x',
      measures: { width: leafWidth, depth },
      stage: 'on the loose part',
      origin,
    });
    const screws = (towards: FaceOfPart): readonly Screw[] =>
      hinges.screwLength === undefined
        ? []
        : Array.from({ length: Math.min(hinges.screwsEachLeaf ?? 0, 20) }, (_, nth) => ({
            id: `${id} ${towards} screw ${nth + 1}`,
            at: {
              x: wide.from.plus(length.length.times(Rational.of(2 * nth + 1, 2 * (hinges.screwsEachLeaf ?? 1)))),
              y: towards === '+y' ? plane.plus(depth.length) : plane.minus(depth.length),
              z: deep.from.plus(leafWidth.length.times(half)),
            },
            towards,
            diameter: limitIn(HINGE_SCREW, layout.unit),
            length: hinges.screwLength?.length ?? Length.zero,
          }));
    features.push(gain(part, '-y'), ...(under === undefined ? [] : [gain(under, '+y')]));
    placed.push({
      id,
      kind: 'hinge',
      entry: hinges.name,
      label: `${at === 0 ? 'left' : at === count - 1 ? 'right' : 'middle'} hinge of the lid`,
      on: [part.id, ...(under === undefined ? [] : [under.id])],
      set: [
        { words: 'from the left end of the case to the middle of the hinge', figure: middle },
        { words: 'depth of the gains in the lid and in the case', figure: depth },
        { words: 'width of both gains, from the back', figure: leafWidth },
      ],
      screws: [...screws('+y'), ...screws('-y')],
      origin,
    });
  }
  return { placed, features };
}

/** The back of what the lid lies on, where it turns. */
function rearOfCase(top: TopDesign, part: UnmarkedPart): Figure {
  return derive('the back of the case', [
    plus('the back edge of the lid', part.box.z.end),
    less('overhang of the lid behind', top.overhangBack),
  ]);
}

/** The outermost their own length from the ends of the case (common practice), others evenly between. */
function middleOf(at: number, count: number, width: Figure, length: Figure): Figure {
  if (count === 1) return derive('in the middle of the case', [plus('width of the case', width, half)]);
  const share = Rational.of(at, count - 1);
  return derive('its own length from the end of the case, common practice', [
    plus('width of the case', width, share),
    plus('length of the hinge', length, Rational.of(3, 2).times(Rational.one.minus(share.times(2)))),
  ]);
}
