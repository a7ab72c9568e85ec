import { describe, expect, test } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import {
  densityAt12,
  densityOfPanel,
  densityOfWood,
  gravityAt12,
  inPounds,
  massOf,
} from '../../../packages/engine/src/stock/weights.ts';
import { IMPORTED_WOODS, SOLID_WOODS } from '../../../packages/engine/src/tables/densities.ts';

/** Weights against worked examples from the Wood Handbook's figures (FPL-GTR-190, 2010). */

const CUBIC_FEET_IN_CUBIC_METRE = 1 / 0.3048 ** 3;

describe('density at 12 % moisture content', () => {
  test('of sugar maple is 705.6 kg/m³ or 44.05 lb/ft³', () => {
    const density = densityOfWood('sugar maple') ?? Rational.zero;
    expect(density.toNumber()).toBeCloseTo(705.6, 6);
    expect(inPounds(density).toNumber() / CUBIC_FEET_IN_CUBIC_METRE).toBeCloseTo(44.05, 1);
  });

  test('of white oak is 761.6 kg/m³', () => {
    expect(densityOfWood('white oak')?.toNumber()).toBeCloseTo(761.6, 6);
  });

  test('of teak follows from the green figure: 0.6027, 675 kg/m³', () => {
    const gravity = gravityAt12(Rational.of(55, 100));
    expect(gravity.toNumber()).toBeCloseTo(0.6027, 4);
    expect(Math.abs(densityAt12(gravity).toNumber() - 675)).toBeLessThan(1);
    expect(densityOfWood('teak')?.toString()).toBe(densityAt12(gravity).toString());
  });

  // Printed beside the gravities, derived from them.
  test.each([
    ['Spanish-cedar', 491],
    ['mahogany', 543],
    ['African mahogany', 504],
    ['black cherry', 560],
    ['shagbark hickory', 806],
    ['western redcedar', 358],
  ])('of %s is %i kg/m³', (species, density) => {
    expect(Math.abs((densityOfWood(species)?.toNumber() ?? 0) - density)).toBeLessThan(0.6);
  });

  test('every wood of the tables is found, none twice, and an unknown one is unknown', () => {
    const names = [...SOLID_WOODS, ...IMPORTED_WOODS].map(({ species }) => species);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(densityOfWood(name)?.sign()).toBe(1);
    expect(densityOfWood('bogwood')).toBeUndefined();
  });
});

describe('weight', () => {
  test('of an MDF sheet of 2440 × 1220 × 18 mm at 750 kg/m³ is 40.19 kg or 88.6 lb', () => {
    const [length, width, thickness] = [2440, 1220, 18].map((size) => Length.millimetres(size).in('in'));
    const cubicInches = (length ?? Rational.zero).times(width ?? 0).times(thickness ?? 0);
    const mass = massOf(cubicInches, Rational.of(750));
    expect(mass.toString()).toBe(Rational.of(401_868, 10_000).toString());
    expect(inPounds(mass).toNumber()).toBeCloseTo(88.6, 1);
  });

  test('of a panel is taken from the middle of what was measured', () => {
    expect(densityOfPanel('MDF').toNumber()).toBe(800);
    expect(densityOfPanel('plywood').toNumber()).toBe(500);
  });
});
