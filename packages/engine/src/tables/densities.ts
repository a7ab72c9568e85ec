import { Rational } from '../length/rational.ts';

/**
 * How heavy wood is. Averages of small clear specimens: single boards vary widely. Source: Wood Handbook (FPL-GTR-190,
 * 2010). `seen` says how far a figure was confirmed: read in the handbook itself, quoted by another publication, or from
 * memory.
 */

export type Seen = 'read' | 'second-hand' | 'from memory';

export interface SolidWood {
  readonly species: string;
  /** Oven-dry mass over volume at 12 % moisture content, table 5-3. */
  readonly gravity: Rational;
  readonly seen: Seen;
}

function wood(species: string, hundredths: number, seen: Seen): SolidWood {
  return { species, gravity: Rational.of(hundredths, 100), seen };
}

export const SOLID_WOODS: readonly SolidWood[] = [
  wood('red alder', 41, 'second-hand'),
  wood('white ash', 60, 'second-hand'),
  wood('American basswood', 37, 'second-hand'),
  wood('American beech', 64, 'second-hand'),
  wood('paper birch', 55, 'second-hand'),
  wood('yellow birch', 62, 'second-hand'),
  wood('black cherry', 50, 'second-hand'),
  wood('shagbark hickory', 72, 'second-hand'),
  wood('red maple', 54, 'read'),
  wood('silver maple', 47, 'second-hand'),
  wood('sugar maple', 63, 'second-hand'),
  wood('northern red oak', 63, 'second-hand'),
  wood('white oak', 68, 'read'),
  wood('black walnut', 55, 'from memory'),
  wood('yellow-poplar', 42, 'from memory'),
  wood('Douglas-fir', 48, 'read'),
  wood('eastern white pine', 35, 'from memory'),
  wood('ponderosa pine', 40, 'read'),
  wood('sugar pine', 36, 'read'),
  // Table 5-3a prints 0.35, table 12-1 and older editions 0.38.
  wood('western white pine', 38, 'read'),
  wood('eastern redcedar', 47, 'from memory'),
  wood('western redcedar', 32, 'from memory'),
  wood('redwood', 40, 'read'),
];

export interface ImportedWood {
  readonly species: string;
  /** Oven-dry mass over green volume, table 5-5: the only one that is given for imported woods. */
  readonly greenGravity: Rational;
  readonly seen: Seen;
}

export const IMPORTED_WOODS: readonly ImportedWood[] = [
  { species: 'teak', greenGravity: Rational.of(55, 100), seen: 'read' },
  { species: 'Spanish-cedar', greenGravity: Rational.of(41, 100), seen: 'read' },
  { species: 'mahogany', greenGravity: Rational.of(45, 100), seen: 'second-hand' },
  { species: 'African mahogany', greenGravity: Rational.of(42, 100), seen: 'second-hand' },
];

export interface PanelDensity {
  readonly panel: 'hardboard' | 'MDF' | 'particleboard' | 'OSB' | 'plywood';
  /** Ranges over published tests, in kg/m³. Source: Wood Handbook (2010) table 12-1, read. */
  readonly least: number;
  readonly most: number;
}

export const PANEL_DENSITIES: readonly PanelDensity[] = [
  { panel: 'hardboard', least: 900, most: 1000 },
  { panel: 'MDF', least: 700, most: 900 },
  { panel: 'particleboard', least: 600, most: 800 },
  { panel: 'OSB', least: 500, most: 800 },
  { panel: 'plywood', least: 400, most: 600 },
];

/** Common float glass, in kg/m³. Source: EN 572-1, which gives 2500 kg/m³ for soda-lime silicate glass; from memory. */
export const GLASS_DENSITY = Rational.of(2500);
