import { type DrawerCorner, type Evaluation, evaluatePiece, type JoinDesign, type PieceDesign } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nestedFace } from '../arbitrary-faces.ts';
import { caseWithFace, drawers, place, written } from '../design-builder.ts';
import { sharedWood } from './shared-wood.ts';

/** Whatever the piece: a part is its blank less its cuts, and the parts go together into the piece. */

const origin = place();
const joins: readonly JoinDesign[] = [
  { kind: 'dado', origin, depth: written('1/4') },
  { kind: 'dado', origin },
  { kind: 'dado', origin, depth: written('1/4'), stopped: written('3/8') },
  { kind: 'dado', origin, depth: written('1/4'), tongue: written('1/4') },
  { kind: 'sliding-dovetail', origin, depth: written('1/4') },
  { kind: 'dowel', origin },
  { kind: 'butt', origin },
  { kind: 'loose-tenon', origin },
  { kind: 'mortise-and-tenon', origin, length: written('3/8') },
];
const anyJoin = fc.constantFrom(...joins);
const anyCorner = fc.constantFrom<DrawerCorner>('dovetail', 'box-joint', 'rabbet', 'lock-rabbet', 'butt');

const anyPiece: fc.Arbitrary<PieceDesign> = fc
  .record({ root: nestedFace, join: anyJoin, corners: anyCorner, plinth: fc.boolean() })
  .map(({ root, join, corners, plinth }) => {
    const design = caseWithFace('50', '40', root, { drawers: drawers({ corners }) });
    const base = { origin, thickness: written('3/4'), height: written('3'), setBack: written('2') };
    return {
      ...design,
      carcase: {
        ...design.carcase,
        join,
        ...(plinth ? { plinth: { ...base, join: { kind: 'mitre' as const, origin } } } : {}),
      },
    };
  });

const runs = { numRuns: 60 };

function fixedParts({ parts }: Evaluation) {
  const loose = new Set(['door', 'drawer-front', 'lid', 'false-front', 'drawer-side', 'drawer-end', 'drawer-bottom']);
  return parts.filter(({ role }) => !loose.has(role));
}

describe('the parts of every piece, joined in any way', () => {
  it('never fill the same room twice', () => {
    fc.assert(
      fc.property(anyPiece, (design) => {
        const { parts } = evaluatePiece(design);
        expect(sharedWood(parts)).toEqual([]);
      }),
      runs,
    );
  });

  it('are their blanks less their cuts: every cut takes wood from its own part', () => {
    fc.assert(
      fc.property(anyPiece, (design) => {
        for (const part of evaluatePiece(design).parts) {
          for (const { part: of, solid, id } of part.features) {
            expect(of, id).toBe(part.id);
            if (solid.kind !== 'box') continue;
            for (const axis of ['x', 'y', 'z'] as const) {
              const overlaps =
                solid[axis].from.compare(part.blank[axis].end.length) < 0 &&
                part.blank[axis].start.length.compare(solid[axis].to) < 0;
              expect(overlaps, `${id} along ${axis}`).toBe(true);
            }
          }
        }
      }),
      runs,
    );
  });

  it('touch what they are joined to', () => {
    fc.assert(
      fc.property(anyPiece, (design) => {
        const { parts, joints } = evaluatePiece(design);
        const byId = new Map(parts.map((part) => [part.id, part]));
        for (const { held, holding, id } of joints) {
          const [one, other] = [byId.get(held), byId.get(holding)];
          if (one === undefined || other === undefined) throw new Error(`${id} joins what is not there`);
          for (const axis of ['x', 'y', 'z'] as const) {
            const meets =
              one.blank[axis].start.length.compare(other.blank[axis].end.length) <= 0 &&
              other.blank[axis].start.length.compare(one.blank[axis].end.length) <= 0;
            expect(meets, `${id} along ${axis}`).toBe(true);
          }
        }
      }),
      runs,
    );
  });

  it('do not float: joints lead from the left side to every part that is fixed', () => {
    fc.assert(
      fc.property(anyPiece, (design) => {
        const evaluation = evaluatePiece(design);
        const reached = new Set(['case/side-left']);
        for (let before = 0; before !== reached.size; ) {
          before = reached.size;
          for (const { held, holding } of evaluation.joints) {
            if (reached.has(held)) reached.add(holding);
            if (reached.has(holding)) reached.add(held);
          }
        }
        const floating = fixedParts(evaluation).filter(({ id, role }) => !reached.has(id) && role !== 'shelf');
        expect(floating.map(({ id }) => id)).toEqual([]);
      }),
      runs,
    );
  });
});
