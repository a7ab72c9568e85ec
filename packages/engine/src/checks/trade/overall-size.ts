import { anchorToWall, type Finding, sizeAbsurd, toeSpaceSmall } from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { PieceDesign } from '../../design/design.ts';
import type { Length } from '../../length/length.ts';
import {
  HEIGHT_TO_ANCHOR,
  LARGEST_PIECE,
  LEAST_TOE_DEPTH,
  LEAST_TOE_HEIGHT,
  SMALLEST_PIECE,
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
    const limit = limitBroken(figure.length);
    if (limit === undefined) return [];
    return [
      sizeAbsurd.at(rootOrigin(figure) ?? design.size.origin, {
        axis,
        size: figure.length,
        limit,
        tooMuch: limit === LARGEST_PIECE,
      }),
    ];
  });
}

function limitBroken(size: Length): Length | undefined {
  if (size.compare(LARGEST_PIECE) > 0) return LARGEST_PIECE;
  return size.compare(SMALLEST_PIECE) < 0 ? SMALLEST_PIECE : undefined;
}

/** A plinth that is not set back is meant to stand flush: it has no toe space to be small. */
export function toeSpaceFindings(design: PieceDesign): readonly Finding[] {
  const { plinth } = design.carcase;
  if (plinth === undefined || !plinth.setBack.length.isPositive()) return [];
  const { setBack, height } = plinth;
  const findings: Finding[] = [];
  if (setBack.length.compare(LEAST_TOE_DEPTH) < 0) {
    const at = givenAt(setBack);
    findings.push(
      toeSpaceSmall.at(
        rootOrigin(setBack) ?? plinth.origin,
        {
          what: 'depth',
          size: setBack.length,
          limit: LEAST_TOE_DEPTH,
          difference: LEAST_TOE_DEPTH.minus(setBack.length),
        },
        {
          mends:
            at === undefined
              ? []
              : [
                  {
                    how: 'deepen',
                    values: { size: LEAST_TOE_DEPTH },
                    changes: [{ kind: 'set-length', at, to: LEAST_TOE_DEPTH }],
                  },
                ],
        },
      ),
    );
  }
  if (height.length.isPositive() && height.length.compare(LEAST_TOE_HEIGHT) < 0) {
    findings.push(
      toeSpaceSmall.at(rootOrigin(height) ?? plinth.origin, {
        what: 'height',
        size: height.length,
        limit: LEAST_TOE_HEIGHT,
        difference: LEAST_TOE_HEIGHT.minus(height.length),
      }),
    );
  }
  return findings;
}

export function anchorFindings({ design, face }: TradeCase): readonly Finding[] {
  const { height } = design.size;
  if (face === undefined || height === undefined || height.length.compare(HEIGHT_TO_ANCHOR) < 0) return [];
  const hasDrawers = cellsIn(face.root).some(({ laid }) => laid.cell.kind === 'front' && laid.cell.what === 'drawer');
  if (!hasDrawers) return [];
  return [
    anchorToWall.at(rootOrigin(height) ?? design.size.origin, { height: height.length, limit: HEIGHT_TO_ANCHOR }),
  ];
}
