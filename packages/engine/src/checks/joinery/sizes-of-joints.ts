import { type Finding, jointWithoutSize } from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { PieceDesign } from '../../design/design.ts';
import type { Figure } from '../../design/figure.ts';
import type { JoinDesign } from '../../design/join-design.ts';
import { saidJoins } from '../../joinery/said-joins.ts';

/** Sizes of joints that are nothing or less: each is told once, where it is written. */
export function sizeFindings(design: PieceDesign): readonly Finding[] {
  const { join } = design.carcase;
  const all = [...saidJoins(design).values(), ...(join === undefined ? [] : [join])];
  return all.flatMap((each) =>
    sizesOf(each).flatMap(([words, figure]) =>
      figure === undefined || figure.length.isPositive()
        ? []
        : [jointWithoutSize.at(rootOrigin(figure) ?? each.origin, { words, size: figure.length })],
    ),
  );
}

function sizesOf(join: JoinDesign): readonly (readonly [words: string, figure: Figure | undefined])[] {
  switch (join.kind) {
    case 'dado':
      return [
        ['the depth of the dado', join.depth],
        ['the stop of the dado', join.stopped],
        ['the thickness of the tongue', join.tongue],
      ];
    case 'sliding-dovetail':
      return [['the depth of the dovetail', join.depth]];
    case 'mortise-and-tenon':
    case 'stub-tenon':
      return [
        ['the length of the tenon', join.length],
        ['the thickness of the tenon', join.thickness],
      ];
    case 'dowel':
    case 'butt':
    case 'loose-tenon':
      return [
        ['the distance of the first from the edge', join.first],
        ['the distance from one to the next', join.apart],
      ];
    case 'mitre':
      return [];
    default: {
      const unknown: never = join;
      return unknown;
    }
  }
}
