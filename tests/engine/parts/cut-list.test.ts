import { cutList, evaluatePiece } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nestedFace } from '../arbitrary-faces.ts';
import { caseWithFace, drawers } from '../design-builder.ts';
import { evaluateSound } from '../reading-layouts.ts';
import { sideboard } from '../sideboard-design.ts';

const rowsOf = (evaluation: ReturnType<typeof evaluateSound>) =>
  cutList(evaluation.parts).map((row) => ({
    what: `${row.quantity} ${row.role}`,
    stock: row.stock,
    size: [row.length, row.width, row.thickness].map((figure) => figure.length.exactInches).join(' x '),
  }));

describe('the cut list', () => {
  it('of the sideboard has one row for the four leaves', () => {
    const rows = rowsOf(evaluateSound(sideboard()));
    expect(rows.filter((row) => row.what === '4 door')).toEqual([
      { what: '4 door', stock: 'ash panel 1/2', size: '455/16 x 591/64 x 1/2' },
    ]);
    expect(rows.some((row) => row.what.endsWith(' door') && row.what !== '4 door')).toBe(false);
  });

  it('keeps ids and marks of merged parts in step', () => {
    const evaluation = evaluateSound(sideboard());
    const marks = new Map(evaluation.parts.map((part) => [part.id, part.mark]));
    for (const row of cutList(evaluation.parts)) {
      expect(row.parts.map((id) => marks.get(id))).toEqual(row.marks);
      expect(row.quantity).toBe(row.parts.length);
    }
  });

  it('goes stock by stock, thick, wide and long before thin, narrow and short', () => {
    const rows = cutList(evaluateSound(sideboard()).parts);
    const stocks = rows.map((row) => row.stock);
    expect([...new Set(stocks)]).toEqual(['ash', 'ash panel', 'ash panel 1/2', 'birch ply 1/4', 'maple', 'poplar']);
    rows.forEach((row, at) => {
      const next = rows[at + 1];
      if (next === undefined || next.stock !== row.stock) return;
      const order =
        row.thickness.length.compare(next.thickness.length) ||
        row.width.length.compare(next.width.length) ||
        row.length.length.compare(next.length.length);
      expect(order).toBeGreaterThanOrEqual(0);
    });
  });

  it('does not merge parts of another stock, role or size', () => {
    const rows = cutList(evaluateSound(sideboard()).parts);
    // Both partitions are alike; the sides are of the same stock and are not.
    expect(rows.find((row) => row.role === 'partition')?.quantity).toBe(2);
    expect(rows.find((row) => row.role === 'side')?.quantity).toBe(2);
  });

  it('counts every part once, whatever the face', () => {
    fc.assert(
      fc.property(nestedFace, (root) => {
        const { parts } = evaluatePiece(caseWithFace('120', '80', root, { drawers: drawers() }));
        const rows = cutList(parts);
        const ids = rows.flatMap((row) => row.parts);
        expect(rows.reduce((sum, row) => sum + row.quantity, 0)).toBe(parts.length);
        expect([...ids].sort()).toEqual(parts.map((part) => part.id).sort());
      }),
      { numRuns: 40 },
    );
  });
});

describe('marks', () => {
  it('are a letter for each kind, with a number where there are several', () => {
    const { parts } = evaluateSound(sideboard());
    const markOf = (id: string) => parts.find((part) => part.id === id)?.mark;
    expect([markOf('case/top'), markOf('case/side-left'), markOf('case/side-right')]).toEqual(['A', 'B1', 'B2']);
    expect(new Set(parts.map((part) => part.mark)).size).toBe(parts.length);
    expect(new Set(parts.map((part) => part.id)).size).toBe(parts.length);
  });
});
