import {
  type Finding,
  type Mend,
  screwBehindGap,
  screwBreaksThrough,
  screwInAir,
  screwMeetsJoint,
  screwNearEdge,
} from '@fettle/findings';
import { type Group, groupAlike, groupedBy } from '../../grouping.ts';
import { type Backing, backingsOf, holeOf } from '../../hardware/backing.ts';
import type { PlacedHardware, Screw } from '../../hardware/placed-hardware.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { upToMark } from '../../length/ruler-marks.ts';
import { exactSource } from '../../length/trade-formats.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { meets, overlapOf, type Solid } from '../../solids/index.ts';
import { THINNEST_FACE_FRAME } from '../../tables/construction-limits.ts';
import { THICKEST_PACKER } from '../../tables/joinery-limits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { featureWords, type JoinedCase } from '../joinery/joined-case.ts';
import { isSameOrigin } from '../written-sizes.ts';

/**
 * Whether every screw of every piece of hardware lies in solid wood. One statement that is wrong in one way is one
 * finding, however many of its screws show it. What a packer of the wrong size leads to is told of the packer.
 */
export function screwFindings(one: JoinedCase, hardware: readonly PlacedHardware[], mark: Length): readonly Finding[] {
  const farthest = limitIn(THICKEST_PACKER, one.unit);
  const judged = hardware.flatMap((piece): readonly JudgedScrew[] => {
    if (isMispacked(piece)) return [];
    const backings = backingsOf(piece.screws, one.parts, farthest);
    return piece.screws.flatMap((screw, index) => {
      const backing = backings[index];
      return backing === undefined ? [] : [{ piece, screw, backing }];
    });
  });
  const bad = judged.flatMap(({ backing, ...each }): readonly BadScrew[] =>
    backing.kind === 'solid' || isInThinFrame(backing, one.unit) ? [] : [{ ...each, backing }],
  );
  return [...badFindings(bad, { ...one, mark }, farthest), ...screwsThatMeet(judged, mark)];
}

function badFindings(bad: readonly BadScrew[], one: MarkedCase, farthest: Length): readonly Finding[] {
  return groupAlike(bad, ({ piece, backing }) => [
    piece.origin,
    backing.kind,
    backing.kind === 'behind-gap' ? backing.gap.exactInches : '',
  ]).map((group) => findingOf(group, one, farthest));
}

interface JudgedScrew {
  readonly piece: PlacedHardware;
  readonly screw: Screw;
  readonly backing: Backing;
}

interface BadScrew extends JudgedScrew {
  readonly backing: Exclude<Backing, { readonly kind: 'solid' }>;
}

type MarkedCase = JoinedCase & { readonly mark: Length };

/** How far one has to move to be clear of the other, up to the next mark: what the ruler shows is never too little. */
function partingOf(one: Solid, other: Solid, mark: Length): Length {
  return upToMark(overlapOf(one, other)?.leastParting.by ?? Length.zero, mark);
}

function isMispacked({ packing }: PlacedHardware): boolean {
  return packing?.gap !== undefined && !packing.gap.equals(packing.thickness.length);
}

function findingOf(group: Group<BadScrew>, one: MarkedCase, farthest: Length): Finding {
  const [{ piece, screw, backing }, ...others] = group;
  const who = { hardware: piece.label, screw: screw.words ?? 'screw', others: others.length };
  switch (backing.kind) {
    case 'air':
      return screwInAir.at(piece.origin, { ...who, limit: farthest });
    case 'behind-gap':
      return screwBehindGap.at(
        piece.origin,
        { ...who, part: backing.part.label, gap: backing.gap },
        { mends: packersFor(piece, backing.gap, one) },
      );
    case 'breaks-through':
      return screwBreaksThrough.at(piece.origin, {
        ...who,
        part: backing.part.label,
        length: screw.length,
        wood: backing.wood,
        by: backing.by,
      });
    case 'meets-joint': {
      const what = featureWords(backing.feature, one);
      const by = partingOf(holeOf(screw), backing.feature.solid, one.mark);
      return screwMeetsJoint.at(
        piece.origin,
        { ...who, part: backing.part.label, what, by },
        { related: [{ role: 'other', values: { what }, origin: backing.feature.origin }] },
      );
    }
    case 'near-edge':
      return screwNearEdge.at(piece.origin, {
        ...who,
        part: backing.part.label,
        left: backing.left,
        limit: backing.limit,
      });
    default: {
      const unknown: never = backing;
      return unknown;
    }
  }
}

/** A face frame that is too thin for anything is told of the frame. */
function isInThinFrame(backing: Backing, unit: LengthUnit): boolean {
  if (backing.kind !== 'near-edge') return false;
  const { role, thickness } = backing.part;
  const isOfFrame = role === 'frame-stile' || role === 'frame-rail';
  return isOfFrame && thickness.length.compare(limitIn(THINNEST_FACE_FRAME, unit)) < 0;
}

/** Two that are driven into one part from its two sides, each sound for itself. */
function screwsThatMeet(judged: readonly JudgedScrew[], mark: Length): readonly Finding[] {
  const held = judged.flatMap(({ piece, screw, backing }) =>
    backing.kind === 'solid' ? backing.parts.map((part) => ({ piece, screw, part })) : [],
  );
  const pairs = [...groupedBy(held, ({ part }) => part.id).values()].flatMap((within) => {
    const up = within.filter(({ screw }) => screw.towards.startsWith('+'));
    const down = within.filter(({ screw }) => screw.towards.startsWith('-'));
    return up.flatMap((a) =>
      down.flatMap((b) => {
        const [one, other] = [holeOf(a.screw), holeOf(b.screw)];
        return meets(one, other) ? [{ a, b, by: partingOf(one, other, mark) }] : [];
      }),
    );
  });
  return groupAlike(pairs, ({ a, b }) => [a.piece.origin, b.piece.origin]).map(([{ a, b, by }, ...others]) =>
    screwMeetsJoint.at(
      a.piece.origin,
      {
        hardware: a.piece.label,
        screw: a.screw.words ?? 'screw',
        others: others.length,
        part: a.part.label,
        what: `${b.screw.words ?? 'screw'} of the ${b.piece.label}`,
        by,
      },
      isSameOrigin(a.piece.origin, b.piece.origin)
        ? {}
        : { related: [{ role: 'other', values: { what: b.piece.label }, origin: b.piece.origin }] },
    ),
  );
}

/** Of a board that may have any thickness: that of the box where it is one, else any that the shop has. */
function packersFor({ packersAfter, cell, packing }: PlacedHardware, gap: Length, one: JoinedCase): readonly Mend[] {
  if (packersAfter === undefined || packing !== undefined) return [];
  const stock = packingStock(cell, one);
  const of = stock === undefined ? '' : ` of "${stock}"`;
  return [
    {
      how: 'packers',
      values: stock === undefined ? { gap } : { gap, stock },
      changes: [{ kind: 'insert-words', after: packersAfter, words: `   packers ${exactSource(gap, one.unit)}${of}` }],
    },
  ];
}

function packingStock(cell: string | undefined, { parts, shop }: JoinedCase): string | undefined {
  const isBoard = ({ stock }: Pick<UnmarkedPart, 'stock'>) => stock?.form === 'board' && stock.actual === undefined;
  const side = parts.find((part) => part.role === 'drawer-side' && part.cell === cell && isBoard(part));
  return (side?.stock ?? shop.stocks?.find((stock) => isBoard({ stock })))?.name;
}
