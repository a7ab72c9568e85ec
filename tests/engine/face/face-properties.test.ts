import { type Evaluation, evaluatePiece, type GroupCell, type LaidCell, Length, type Rectangle } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatFace, nestedFace } from '../arbitrary-faces.ts';
import { caseWithFace, inches } from '../design-builder.ts';
import { allCells, errorsIn } from '../reading-layouts.ts';

// Properties of every face that comes out: sums close exactly and gaps are what was asked. No published values.

const gap = inches('3/32');

function faceOf(root: GroupCell, width: string, height: string): Evaluation {
  const evaluation = evaluatePiece(caseWithFace(width, height, root));
  fc.pre(errorsIn(evaluation).length === 0);
  return evaluation;
}

/** Where the fronts within a cell begin and end along an axis; undefined when a space in it has no front. */
function fronts(laid: LaidCell, axis: 'x' | 'y'): { readonly start: Length; readonly end: Length } | undefined {
  if (laid.cell.kind === 'open') return undefined;
  const own = laid.front?.[axis];
  if (own !== undefined) return { start: own.start.length, end: own.end.length };
  let start: Length | undefined;
  let end: Length | undefined;
  for (const inner of laid.cells) {
    const within = fronts(inner, axis);
    if (within === undefined) return undefined;
    start = start === undefined ? within.start : start.min(within.start);
    end = end === undefined ? within.end : end.max(within.end);
  }
  return start === undefined || end === undefined ? undefined : { start, end };
}

describe('every row and every stack of fronts', () => {
  it('fills its face exactly: fronts, gaps and shown dividers add up to it', () => {
    fc.assert(
      fc.property(flatFace, (root) => {
        const evaluation = faceOf(root, '60', '60');
        const face = evaluation.layout.face;
        if (face === undefined) throw new Error('no face');
        const axis = root.kind === 'row' ? 'x' : 'y';
        const sizes = face.cells.map((laid) => laid.front?.[axis].size.length ?? Length.zero);
        let total = Length.sum(sizes).plus(gap.times(2));
        for (const divider of root.dividers) {
          const isShown = divider.form !== 'none' && divider.mode === 'shown';
          total = total.plus(isShown ? gap.times(2).plus(divider.material.thickness.length) : gap);
        }
        expect(total.exactInches).toBe('60');
      }),
      { numRuns: 150 },
    );
  });

  it('has openings and dividers that fill it exactly', () => {
    fc.assert(
      fc.property(flatFace, (root) => {
        const evaluation = faceOf(root, '60', '60');
        const axis = root.kind === 'row' ? 'x' : 'y';
        const face = evaluation.layout.face;
        const openings = face?.cells.map((laid) => laid.opening[axis].size.length) ?? [];
        const dividers = face?.dividers.map(({ at }) => at[axis].size.length) ?? [];
        expect(Length.sum([...openings, ...dividers]).exactInches).toBe('60');
      }),
      { numRuns: 100 },
    );
  });
});

describe('every face of rows and stacks', () => {
  it('keeps one gap over a covered divider and two beside a shown one', () => {
    fc.assert(
      fc.property(nestedFace, (root) => {
        const evaluation = faceOf(root, '120', '80');
        for (const laid of allCells(evaluation)) {
          const group = laid.cell;
          if (group.kind !== 'row' && group.kind !== 'stack') continue;
          group.dividers.forEach((divider, at) => {
            const [first, second] = [laid.cells[at], laid.cells[at + 1]];
            if (first === undefined || second === undefined) throw new Error('a cell is missing');
            const axis = group.kind === 'row' ? 'x' : 'y';
            // The first of a stack is its topmost.
            const before = fronts(group.kind === 'row' ? first : second, axis);
            const after = fronts(group.kind === 'row' ? second : first, axis);
            if (before === undefined || after === undefined) return;
            const between = after.start.minus(before.end);
            const isShown = divider.form !== 'none' && divider.mode === 'shown';
            const asked = isShown ? gap.times(2).plus(divider.material.thickness.length) : gap;
            expect(between.exactInches).toBe(asked.exactInches);
          });
        }
      }),
      { numRuns: 100 },
    );
  });

  it('has spans whose start and size make their end', () => {
    fc.assert(
      fc.property(nestedFace, (root) => {
        const evaluation = faceOf(root, '120', '80');
        for (const laid of allCells(evaluation)) {
          const rectangles: readonly (Rectangle | undefined)[] = [laid.opening, laid.front, ...laid.leaves];
          for (const rectangle of rectangles) {
            if (rectangle === undefined) continue;
            for (const span of [rectangle.x, rectangle.y]) {
              expect(span.start.length.plus(span.size.length).exactInches).toBe(span.end.length.exactInches);
            }
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it('stands all fronts inside the face, at least one gap from its edge', () => {
    fc.assert(
      fc.property(nestedFace, (root) => {
        const evaluation = faceOf(root, '120', '80');
        const face = evaluation.layout.carcase?.face;
        if (face === undefined) throw new Error('no carcase');
        for (const { leaves } of allCells(evaluation)) {
          for (const leaf of leaves) {
            for (const axis of ['x', 'y'] as const) {
              expect(leaf[axis].start.length.minus(face[axis].start.length).compare(gap)).toBeGreaterThanOrEqual(0);
              expect(face[axis].end.length.minus(leaf[axis].end.length).compare(gap)).toBeGreaterThanOrEqual(0);
            }
          }
        }
      }),
      { numRuns: 50 },
    );
  });
});
