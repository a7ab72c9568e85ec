import { evaluatePiece, explain } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { cellNamed, evaluateSound, say } from '../reading-layouts.ts';
import { sideboard } from '../sideboard-design.ts';

// Expected numbers: the sideboard worked out by hand, common practice, no source. Exact inches in lowest terms.

const evaluation = evaluateSound(sideboard());
const sizes = (id: string) => {
  const { opening, front, leaves } = cellNamed(evaluation, id);
  const pair = (rectangle: typeof opening | undefined) =>
    rectangle === undefined
      ? undefined
      : [rectangle.x.size.length.exactInches, rectangle.y.size.length.exactInches].join(' x ');
  return { opening: pair(opening), front: pair(front), leaves: leaves.map(pair) };
};

describe('the face of the sideboard', () => {
  it('gives both pairs of doors an opening of 18-3/4 and four leaves of 9-15/64 x 28-7/16', () => {
    const pair = { opening: '75/4 x 229/8', front: '297/16 x 455/16', leaves: ['591/64 x 455/16', '591/64 x 455/16'] };
    expect(sizes('left')).toEqual(pair);
    expect(sizes('right')).toEqual(pair);
  });

  it('makes drawer fronts 17-13/16 wide and 5, 6, 7 and 10-5/32 high', () => {
    expect(['cards', 'dice', 'maps', 'blankets'].map((id) => sizes(id).front)).toEqual([
      '285/16 x 5',
      '285/16 x 6',
      '285/16 x 7',
      '285/16 x 325/32',
    ]);
  });

  it('lets five gaps and four fronts fill the height of the face', () => {
    const stack = cellNamed(evaluation, 'row/stack');
    const edges = stack.cells.map(({ front }) => [front?.y.start.length, front?.y.end.length]);
    const gaps: string[] = [];
    let above = stack.opening.y.end.length;
    for (const [start, end] of edges) {
      if (start === undefined || end === undefined) throw new Error('a front is missing');
      gaps.push(above.minus(end).exactInches);
      above = start;
    }
    gaps.push(above.minus(stack.opening.y.start.length).exactInches);
    expect(gaps).toEqual(['3/32', '3/32', '3/32', '3/32', '3/32']);
  });

  it('stands its cells between the partitions, from left to right', () => {
    const row = cellNamed(evaluation, 'row');
    const stretch = (span: { start: { length: { exactInches: string } }; end: { length: { exactInches: string } } }) =>
      `${span.start.length.exactInches} to ${span.end.length.exactInches}`;
    expect(row.cells.map(({ opening }) => stretch(opening.x))).toEqual(['3/2 to 81/4', '21 to 39', '159/4 to 117/2']);
    expect(row.dividers.map(({ at }) => stretch(at.x))).toEqual(['81/4 to 21', '39 to 159/4']);
  });

  it('centres covered dividers on their gaps', () => {
    const { dividers } = cellNamed(evaluation, 'row/stack');
    const middle = dividers.map(({ at }) => at.y.start.length.plus(at.y.end.length).dividedBy(2).exactInches);
    const { cells } = cellNamed(evaluation, 'row/stack');
    const gapMiddle = cells.slice(0, -1).map((laid, at) => {
      const lower = laid.front?.y.start.length;
      const upper = cells[at + 1]?.front?.y.end.length;
      if (lower === undefined || upper === undefined) throw new Error('a front is missing');
      return lower.plus(upper).dividedBy(2).exactInches;
    });
    expect(middle).toEqual(gapMiddle);
  });

  it('explains a leaf of a pair', () => {
    const [leaf] = cellNamed(evaluation, 'left').leaves;
    if (leaf === undefined) throw new Error('no leaf');
    const lines = explain(leaf.x.size, say).split('\n');
    expect(lines.slice(0, 3)).toEqual([
      '591/64" = half of 591/32" (both leaves together)',
      '  591/32" (both leaves together) = 297/16" (width of the pair) − 3/32" (gap between the leaves)',
      '    297/16" (width of the pair) = half of 297/8" (what is left to share)',
    ]);
  });

  it('explains the front that takes the rest by all that stands beside it', () => {
    const { front } = cellNamed(evaluation, 'blankets');
    if (front === undefined) throw new Error('no front');
    const [first] = explain(front.y.size, say).split('\n');
    expect(first).toMatch(/^325\/32" = 229\/8" \(height of the stack\) − /);
  });

  it('says that a written front is written', () => {
    const { front } = cellNamed(evaluation, 'cards');
    if (front === undefined) throw new Error('no front');
    expect(explain(front.y.size, say)).toBe('5": written here');
  });

  it('gives the same answer every time it is asked', () => {
    const design = sideboard();
    expect(evaluatePiece(design)).toEqual(evaluatePiece(design));
  });
});
