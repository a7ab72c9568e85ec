import { describe, expect, it } from 'vitest';
import {
  longestShelf,
  longestShelfIn,
  type ShelfMaterial,
  sheetRange,
  surfacedBoard,
} from '../../../packages/engine/src/tables/trade-limits.ts';
import { inches } from '../design-builder.ts';

/** The tables against what was printed, and against their own formulas in floating point. */

// Source: Architectural Woodwork Standards, 1st ed. 2009, 10-4.4.14.10, at 50 psf.
const printed: readonly (readonly [ShelfMaterial, string, number])[] = [
  ['plywood', '3/4', 37],
  ['plywood', '1', 49],
  ['solid wood', '3/4', 46],
  ['solid wood', '1', 61],
];

describe('the longest shelf', () => {
  it.each(printed)('of %s %s thick is %i inches, as printed', (material, thick, long) => {
    expect(longestShelf(material, inches(thick)).exactInches).toBe(String(long));
  });

  it.each([
    ['solid wood', 1_820_000],
    ['plywood', 950_000],
    ['MDF', 520_000],
  ] as const)('of %s follows the formula, in whole inches', (material, stiffness) => {
    for (let eighths = 1; eighths <= 24; eighths++) {
      const thick = eighths / 8;
      const formula = Math.cbrt((384 * stiffness * (thick ** 3 / 12)) / (5 * 50));
      const long = longestShelf(material, inches(`${eighths}/8`)).approximateInches;
      expect(long).toBeLessThanOrEqual(formula + 0.05);
      expect(long).toBeGreaterThan(formula - 1);
    }
  });

  it('is nothing where the thickness is', () => {
    expect(longestShelf('plywood', inches('0')).isZero()).toBe(true);
    expect(longestShelf('plywood', inches('-1')).isZero()).toBe(true);
    expect(longestShelf('MDF', inches('1/1000')).isZero()).toBe(true);
  });

  it('is looked for only as far as shelves go', () => {
    expect(longestShelf('solid wood', inches('1000000')).exactInches).toBe('1000');
  });

  it('is told in whole millimetres to whoever measures in them', () => {
    // 37 inches are 939.8 mm.
    expect(longestShelfIn('plywood', inches('3/4'), 'mm').in('mm').toString()).toBe('939');
  });
});

describe('sheets', () => {
  // Source: PS 1-19, unsanded, as tabulated by APA.
  it.each([
    ['1/4', 0.219, 0.281],
    ['3/8', 0.344, 0.406],
    ['1/2', 0.469, 0.531],
    ['5/8', 0.594, 0.656],
    ['23/32', 0.688, 0.75],
    ['3/4', 0.719, 0.781],
    ['1', 0.95, 1.05],
  ])('sold as %s measure %f to %f', (category, least, most) => {
    const range = sheetRange(inches(category));
    expect(Math.abs(range.least.approximateInches - least)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(range.most.approximateInches - most)).toBeLessThanOrEqual(0.0005);
  });
});

describe('boards surfaced on two sides', () => {
  // Source: hardwood grading minimums, NHLA practice.
  it.each([
    ['3/8', '3/16'],
    ['1/2', '5/16'],
    ['3/4', '9/16'],
    ['1', '13/16'],
    ['5/4', '17/16'],
    ['3/2', '21/16'],
    ['7/4', '3/2'],
    ['2', '7/4'],
    ['3', '11/4'],
    ['4', '15/4'],
  ])('%s rough are %s', (rough, surfaced) => {
    expect(surfacedBoard(inches(rough)).exactInches).toBe(surfaced);
  });
});
