import { anchorToWall, type Finding, sizeAbsurd, toeSpaceSmall } from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { PieceDesign } from '../../design/design.ts';
import type { Length, LengthUnit } from '../../length/length.ts';
import {
  HEIGHT_TO_ANCHOR,
  HIGHEST_BY_DEPTH,
  LARGEST_PIECE,
  LEAST_MEANT_FOR_TOES,
  LEAST_TOE_DEPTH,
  LEAST_TOE_HEIGHT,
  limitIn,
  SHALLOW_FOR_TALL,
  SMALLEST_PIECE,
  TALL_PIECE,
} from '../../tables/trade-limits.ts';
import { givenAt } from '../written-sizes.ts';
import { cellsIn } from './alike.ts';
import type { TradeCase } from './case-facts.ts';

/** The piece as a whole: its size, the space for one's toes, and whether it can tip. */

/** A size of nothing or less is another matter and is said elsewhere. */
export function absurdSizes(design: PieceDesign): readonly Finding[] {
  return (['width', 'height', 'depth'] as const).flatMap((axis) => {
    const figure = design.size[axis];
    if (figure === undefined || !figure.length.isPositive()) return [];
    const limit = limitBroken(figure.length, design.units.unit);
    if (limit === undefined) return [];
    return [
      sizeAbsurd.at(rootOrigin(figure) ?? design.size.origin, {
        axis,
        size: figure.length,
        limit,
        tooMuch: figure.length.compare(limit) > 0,
      }),
    ];
  });
}

function limitBroken(size: Length, unit: LengthUnit): Length | undefined {
  const [smallest, largest] = [limitIn(SMALLEST_PIECE, unit), limitIn(LARGEST_PIECE, unit)];
  if (size.compare(largest) > 0) return largest;
  return size.compare(smallest) < 0 ? smallest : undefined;
}

/** A plinth that is hardly set back, or not at all, has no toe space to be small. */
export function toeSpaceFindings(design: PieceDesign): readonly Finding[] {
  const { plinth: standing, toeSpace } = design.carcase;
  const { unit } = design.units;
  const plinth = standing ?? toeSpace;
  if (plinth === undefined) return [];
  const setBack = standing === undefined ? toeSpace?.depth : standing.setBack;
  const { height } = plinth;
  if (setBack === undefined) return [];
  if (standing !== undefined && setBack.length.compare(limitIn(LEAST_MEANT_FOR_TOES, unit)) < 0) return [];
  const [deep, high] = [limitIn(LEAST_TOE_DEPTH, unit), limitIn(LEAST_TOE_HEIGHT, unit)];
  const findings: Finding[] = [];
  if (setBack.length.compare(deep) < 0) {
    const at = givenAt(setBack);
    findings.push(
      toeSpaceSmall.at(
        rootOrigin(setBack) ?? plinth.origin,
        {
          what: 'depth',
          size: setBack.length,
          limit: deep,
          difference: deep.minus(setBack.length),
        },
        {
          mends:
            at === undefined
              ? []
              : [
                  {
                    how: 'deepen',
                    values: { size: deep },
                    changes: [{ kind: 'set-length', at, to: deep }],
                  },
                ],
        },
      ),
    );
  }
  if (height.length.isPositive() && height.length.compare(high) < 0) {
    findings.push(
      toeSpaceSmall.at(rootOrigin(height) ?? plinth.origin, {
        what: 'height',
        size: height.length,
        limit: high,
        difference: high.minus(height.length),
      }),
    );
  }
  return findings;
}

export function anchorFindings({ design, face }: TradeCase): readonly Finding[] {
  const { height, depth } = design.size;
  // What hangs on a wall is held by it.
  if (height === undefined || design.carcase.hung !== undefined) return [];
  const { unit } = design.units;
  const limit = limitIn(HEIGHT_TO_ANCHOR, unit);
  const at = rootOrigin(height) ?? design.size.origin;
  const hasDrawers =
    face !== undefined &&
    cellsIn(face.root).some(({ laid }) => laid.cell.kind === 'front' && laid.cell.what === 'drawer');
  if (hasDrawers && height.length.compare(limit) >= 0) {
    return [anchorToWall.at(at, { height: height.length, limit, why: 'drawers' })];
  }
  if (hasDrawers || depth === undefined || !standsNarrow(height.length, depth.length, unit)) return [];
  return [anchorToWall.at(at, { height: height.length, limit, why: 'narrow', depth: depth.length })];
}

function standsNarrow(height: Length, depth: Length, unit: LengthUnit): boolean {
  if (!depth.isPositive()) return false;
  const isTall = height.compare(limitIn(TALL_PIECE, unit)) > 0 && depth.compare(limitIn(SHALLOW_FOR_TALL, unit)) < 0;
  return isTall || height.compare(depth.times(HIGHEST_BY_DEPTH)) > 0;
}
