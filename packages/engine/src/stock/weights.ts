import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { IMPORTED_WOODS, PANEL_DENSITIES, type PanelDensity, SOLID_WOODS } from '../tables/densities.ts';

/** What parts weigh, from their exact volume and a density that is an average. */

/** Density in kg/m³ at 12 % moisture content: 1000 · G · 1.12, G being oven-dry mass over volume at 12 %. */
export function densityAt12(gravity: Rational): Rational {
  return gravity.times(1120);
}

/**
 * G at 12 % from G over green volume: Gb / (1 - 0.265 · Gb · (30 - 12) / 30). Source: Wood Handbook (2010), the equation
 * from memory.
 */
export function gravityAt12(greenGravity: Rational): Rational {
  const shrunk = greenGravity.times(Rational.of(265, 1000)).times(Rational.of(18, 30));
  return greenGravity.dividedBy(Rational.one.minus(shrunk));
}

/** Density of a solid wood at 12 % in kg/m³; undefined for a species that is in no table. */
export function densityOfWood(species: string): Rational | undefined {
  const solid = SOLID_WOODS.find((wood) => wood.species === species);
  if (solid !== undefined) return densityAt12(solid.gravity);
  const imported = IMPORTED_WOODS.find((wood) => wood.species === species);
  return imported === undefined ? undefined : densityAt12(gravityAt12(imported.greenGravity));
}

/** The middle of the published range, in kg/m³. */
export function densityOfPanel(panel: PanelDensity['panel']): Rational {
  const found = PANEL_DENSITIES.find((entry) => entry.panel === panel);
  return found === undefined ? Rational.zero : Rational.of(found.least + found.most, 2);
}

const CUBIC_METRES_IN_CUBIC_INCH = Length.inches(1).in('mm').dividedBy(1000).power(3);

/** Kilograms of a volume in cubic inches. */
export function massOf(cubicInches: Rational, density: Rational): Rational {
  return cubicInches.times(CUBIC_METRES_IN_CUBIC_INCH).times(density);
}

/** The international pound is 0.45359237 kg exactly. */
const KILOGRAMS_IN_POUND = Rational.of(45_359_237, 100_000_000);

export function inPounds(kilograms: Rational): Rational {
  return kilograms.dividedBy(KILOGRAMS_IN_POUND);
}

export function inKilograms(weight: Rational, unit: 'lb' | 'kg'): Rational {
  return unit === 'kg' ? weight : weight.times(KILOGRAMS_IN_POUND);
}
