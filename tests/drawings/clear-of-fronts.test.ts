import { describe, expect, it } from 'vitest';
import { clearOfFronts, isCoveredByFronts } from '../../packages/drawings/src/clear-of-fronts.ts';

/** Where the mark of a stile or a rail may stand that doors lap. */

const stile = { x0: 0, x1: 40, y0: 0, y1: 700 };
const door = { x0: 30, x1: 500, y0: 300, y1: 690 };

describe('what fronts leave of a part', () => {
  it('is the strip beside a door that laps a stile', () => {
    expect(clearOfFronts(stile, [door], 1)).toEqual({ ...stile, x1: 30 });
    expect(clearOfFronts(stile, [door, { ...door, x0: -400, x1: 8 }], 1)).toEqual({ ...stile, x0: 8, x1: 30 });
  });

  it('is the strip under a door that laps a rail', () => {
    const rail = { x0: 40, x1: 800, y0: 290, y1: 308 };
    expect(clearOfFronts(rail, [door], 1)).toEqual({ ...rail, y1: 300 });
  });

  it('is all of it where too little is left, or where nothing laps it', () => {
    expect(clearOfFronts(stile, [{ ...door, x0: 0.5 }], 1)).toEqual(stile);
    expect(clearOfFronts(stile, [{ ...door, x0: 41 }], 1)).toEqual(stile);
  });

  it('is all of it where a front lies across it', () => {
    expect(clearOfFronts(stile, [{ ...door, x0: -10 }], 1)).toEqual(stile);
  });
});

describe('what fronts cover', () => {
  const side = { x0: 0, x1: 18, y0: 0, y1: 700 };

  it('is a side of which two overlay doors leave a thin edge and the gap between them', () => {
    const doors = [
      { x0: 1.5, x1: 400, y0: 1.5, y1: 349 },
      { x0: 1.5, x1: 400, y0: 351, y1: 698.5 },
    ];
    expect(isCoveredByFronts(side, doors)).toBe(true);
  });

  it('is no side that stands free above a door, or that a door laps by half', () => {
    expect(isCoveredByFronts(side, [{ x0: 1.5, x1: 400, y0: 1.5, y1: 600 }])).toBe(false);
    expect(isCoveredByFronts(side, [{ x0: 10, x1: 400, y0: 1.5, y1: 698.5 }])).toBe(false);
  });
});
