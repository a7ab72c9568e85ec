import { type Evaluation, evaluatePiece, type GroupCell, type Part } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nestedFace } from '../arbitrary-faces.ts';
import { caseWithFace, drawers } from '../design-builder.ts';
import { errorsIn, evaluateSound } from '../reading-layouts.ts';
import { sideboard } from '../sideboard-design.ts';

// Properties of the parts of every piece that comes out. No published values.

const axes = ['x', 'y', 'z'] as const;

function evaluationOf(root: GroupCell): Evaluation {
  // Butted corners: joints that interlock overlap on purpose.
  const evaluation = evaluatePiece(caseWithFace('120', '80', root, { drawers: drawers({ corners: 'butt' }) }));
  fc.pre(errorsIn(evaluation).length === 0);
  return evaluation;
}

/** They share more than a face, an edge or a corner. */
function meet(a: Part, b: Part): boolean {
  return axes.every(
    (axis) =>
      a.box[axis].start.length.compare(b.box[axis].end.length) < 0 &&
      b.box[axis].start.length.compare(a.box[axis].end.length) < 0,
  );
}

/** Backs and box bottoms lie in grooves of their neighbours: they are no slabs beside the others. */
function standing(evaluation: Evaluation): readonly Part[] {
  return evaluation.parts.filter(({ role }) => role !== 'back' && role !== 'drawer-bottom');
}

function clashes(parts: readonly Part[]): readonly string[] {
  return parts.flatMap((a, at) => parts.slice(at + 1).flatMap((b) => (meet(a, b) ? [`${a.id} meets ${b.id}`] : [])));
}

function outside(evaluation: Evaluation): readonly string[] {
  const space = evaluation.layout.carcase?.outside;
  if (space === undefined) throw new Error('no carcase');
  return evaluation.parts
    .filter((part) =>
      axes.some(
        (axis) =>
          part.box[axis].start.length.compare(space[axis].start.length) < 0 ||
          part.box[axis].end.length.compare(space[axis].end.length) > 0,
      ),
    )
    .map((part) => part.id);
}

describe('the parts of the sideboard', () => {
  // Its dovetailed box ends overlap the sides on purpose.
  const evaluation = evaluateSound(sideboard());
  it('do not meet', () => {
    expect(clashes(standing(evaluation).filter(({ role }) => role !== 'drawer-end'))).toEqual([]);
  });
  it('all stand inside the piece', () => {
    expect(outside(evaluation)).toEqual([]);
  });
});

describe('the parts of every piece', () => {
  it('do not meet', () => {
    fc.assert(
      fc.property(nestedFace, (root) => {
        expect(clashes(standing(evaluationOf(root)))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('all stand inside it', () => {
    fc.assert(
      fc.property(nestedFace, (root) => {
        expect(outside(evaluationOf(root))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('are as large as the space they fill with what goes into their joints', () => {
    fc.assert(
      fc.property(nestedFace, (root) => {
        for (const part of evaluationOf(root).parts) {
          const sizes = [part.length, part.width, part.thickness].map((figure) => figure.length.exactInches).sort();
          expect(sizes).toEqual(axes.map((axis) => part.blank[axis].size.length.exactInches).sort());
          for (const axis of axes) {
            const { start, size, end } = part.blank[axis];
            expect(start.length.plus(size.length).exactInches).toBe(end.length.exactInches);
          }
        }
      }),
      { numRuns: 40 },
    );
  });
});
