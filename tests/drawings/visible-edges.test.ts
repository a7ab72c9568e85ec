import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgesOf, isSeen, type Slab } from '../../packages/drawings/src/visible-edges.ts';

function slab(x0: number, x1: number, y0: number, y1: number, depth: number, order = 0): Slab {
  return { x0, x1, y0, y1, depth, order };
}

const TOLERANCE = 0.001;

describe('edges', () => {
  it('of a slab behind nothing are all seen', () => {
    const only = slab(0, 10, 0, 5, 1);
    expect(edgesOf(only, [only], TOLERANCE)).toEqual({
      seen: [
        { side: 'left', from: 0, to: 5 },
        { side: 'right', from: 0, to: 5 },
        { side: 'bottom', from: 0, to: 10 },
        { side: 'top', from: 0, to: 10 },
      ],
      hidden: [],
    });
  });

  it('behind a wider slab are all hidden', () => {
    const behind = slab(2, 8, 1, 4, 1);
    const { seen, hidden } = edgesOf(behind, [behind, slab(0, 10, 0, 5, 0)], TOLERANCE);
    expect(seen).toEqual([]);
    expect(hidden).toHaveLength(4);
  });

  it('are seen where they stick out', () => {
    const behind = slab(-5, 5, 1, 4, 1);
    const { seen, hidden } = edgesOf(behind, [behind, slab(0, 10, 0, 5, 0)], TOLERANCE);
    expect(seen.filter((edge) => edge.side === 'top')).toEqual([{ side: 'top', from: -5, to: 0 }]);
    expect(hidden.filter((edge) => edge.side === 'top')).toEqual([{ side: 'top', from: 0, to: 5 }]);
  });

  it('that fall on the edge of something nearer are not drawn twice', () => {
    const side = slab(0, 1, 0, 10, 0, 0);
    const bottom = slab(1, 9, 0, 1, 0, 1);
    const drawn = edgesOf(bottom, [side, bottom], TOLERANCE);
    expect([...drawn.seen, ...drawn.hidden].map((edge) => edge.side)).toEqual(['right', 'bottom', 'top']);
    expect(edgesOf(side, [side, bottom], TOLERANCE).seen).toHaveLength(4);
  });

  it('never overlap, and with the doubled ones make up the whole outline', () => {
    const any = fc
      .tuple(
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 0, max: 3 }),
      )
      .map(([x, w, y, h, depth]) => ({ x, w, y, h, depth }));
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 7 }), (list) => {
        const slabs = list.map(({ x, w, y, h, depth }, order) => slab(x, x + w, y, y + h, depth, order));
        for (const one of slabs) {
          const { seen, hidden } = edgesOf(one, slabs, TOLERANCE);
          for (const side of ['left', 'right', 'bottom', 'top'] as const) {
            const upright = side === 'left' || side === 'right';
            const [start, end] = upright ? [one.y0, one.y1] : [one.x0, one.x1];
            // Naive oracle: ask at the middle of every unit of the edge.
            for (let at = start + 0.5; at < end; at++) {
              const point = upright
                ? { x: side === 'left' ? one.x0 : one.x1, y: at }
                : { x: at, y: side === 'bottom' ? one.y0 : one.y1 };
              const covers = (list: typeof seen) =>
                list.filter((edge) => edge.side === side && edge.from < at && at < edge.to).length;
              const nearer = slabs.filter(
                (other) =>
                  other !== one && (other.depth < one.depth || (other.depth === one.depth && other.order < one.order)),
              );
              const doubled = nearer.some((other) =>
                upright
                  ? (point.x === other.x0 || point.x === other.x1) && other.y0 < at && at < other.y1
                  : (point.y === other.y0 || point.y === other.y1) && other.x0 < at && at < other.x1,
              );
              const behind = nearer.some(
                (other) => other.x0 < point.x && point.x < other.x1 && other.y0 < point.y && point.y < other.y1,
              );
              expect([covers(seen), covers(hidden)]).toEqual(doubled ? [0, 0] : behind ? [0, 1] : [1, 0]);
            }
          }
        }
      }),
    );
  });
});

describe('a face', () => {
  it('is not seen behind two slabs that cover it together', () => {
    const behind = slab(0, 10, 0, 5, 1);
    expect(isSeen(behind, [behind, slab(-1, 5, -1, 6, 0), slab(5, 11, -1, 6, 0)], TOLERANCE)).toBe(false);
  });

  it('is seen through a gap between them', () => {
    const behind = slab(0, 10, 0, 5, 1);
    expect(isSeen(behind, [behind, slab(-1, 5, -1, 6, 0), slab(5.1, 11, -1, 6, 0)], TOLERANCE)).toBe(true);
  });
});
