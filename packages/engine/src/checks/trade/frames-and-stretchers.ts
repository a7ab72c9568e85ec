import { type Finding, slidesNeedPacking, stileNarrowerThanSide, stretchersTooWide } from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { PieceDesign } from '../../design/design.ts';
import type { SlideEntry } from '../../design/slide-design.ts';
import { groupAlike } from '../../grouping.ts';
import { Length } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { laidDrawers } from '../../parts/laid-drawers.ts';
import { STRETCHER_WIDTH, usual } from '../../tables/trade-habits.ts';
import { givenAt } from '../written-sizes.ts';
import type { TradeCase } from './case-facts.ts';

/** Whether a face frame covers the sides, what slides behind it need, and whether stretchers lie in the body. */

export function stileFindings({ carcase }: PieceDesign): readonly Finding[] {
  const { frame, sides } = carcase;
  if (frame === undefined || sides === undefined) return [];
  // A frame that stands out beyond the case covers so much less of its side.
  const [stile, side] = [frame.stiles.length, sides.thickness.length.plus(frame.proud?.length ?? Length.zero)];
  if (!stile.isPositive() || stile.compare(side) >= 0) return [];
  const at = givenAt(frame.stiles);
  return [
    stileNarrowerThanSide.at(
      rootOrigin(frame.stiles) ?? frame.origin,
      { stile, side, difference: side.minus(stile) },
      {
        related: [{ role: 'sides', values: { side }, origin: sides.origin }],
        mends:
          at === undefined
            ? []
            : [{ how: 'widen', values: { size: side }, changes: [{ kind: 'set-length', at, to: side }] }],
      },
    ),
  ];
}

/** One note for all drawers on the same slides beside the same stiles. Between two drawers the partition fills the frame. */
export function packingFindings({ face, layout }: TradeCase): readonly Finding[] {
  const { frame } = layout;
  if (face === undefined || frame === undefined) return [];
  const [outer, inner] = [layout.interior.x, layout.face.x];
  const packing = inner.start.length.minus(outer.start.length);
  if (!packing.isPositive()) return [];
  const beside = laidDrawers(face.design, layout, face.root).flatMap(({ drawer, laid }) => {
    const { slides } = drawer;
    const left = laid.opening.x.start.length.equals(inner.start.length);
    const right = laid.opening.x.end.length.equals(inner.end.length);
    // Packers that are asked for, and screws whose places are known, are judged by what they find.
    if (slides === undefined || drawer.packers !== undefined || tellsScrews(slides) || !(left || right)) return [];
    return [{ slides, left, right, origin: drawer.slidesOrigin ?? drawer.origin }];
  });
  return groupAlike(beside, ({ slides, origin }) => [slides.name, origin]).map((alike) => {
    const [left, right] = [alike.some((one) => one.left), alike.some((one) => one.right)];
    const [first] = alike;
    return slidesNeedPacking.at(
      first.origin,
      { slides: first.slides.name, packing, sides: left && right ? 'both' : left ? 'left' : 'right' },
      {
        related: [
          {
            role: 'stiles',
            values: { stile: frame.stiles.length },
            origin: rootOrigin(frame.stiles) ?? frame.origin,
          },
        ],
      },
    );
  });
}

function tellsScrews({ holes, screws }: SlideEntry): boolean {
  return screws !== undefined && holes !== undefined && holes.length > 0;
}

export function stretcherFindings({ design, layout }: TradeCase): readonly Finding[] {
  const { stretchers } = design.carcase;
  if (stretchers === undefined) return [];
  const width = stretchers.width.length;
  const depth = layout.body.z.size.length;
  const limit = depth.times(Rational.of(1, 2));
  if (width.compare(limit) <= 0) return [];
  const at = givenAt(stretchers.width);
  const size = usual(STRETCHER_WIDTH, design.units.unit).length.min(limit);
  return [
    stretchersTooWide.at(
      rootOrigin(stretchers.width) ?? stretchers.origin,
      { width, limit, depth, difference: width.minus(limit) },
      {
        mends:
          at === undefined
            ? []
            : [{ how: 'narrower', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    ),
  ];
}
