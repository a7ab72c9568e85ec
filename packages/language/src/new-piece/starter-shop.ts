import { Length } from '@fettle/engine';
import type { System } from './answers.ts';

/**
 * A first shop file, for whoever has none: the stock and slides a first design is made of. The real thicknesses are what
 * such plywood usually measures (common practice, no source); one's own caliper knows better.
 */

export interface StockNames {
  readonly panel: string;
  readonly panelThickness: Length;
  readonly box: string;
  readonly thin: string;
  /** For a back that a wall fastening holds. */
  readonly backing: string;
}

export function stockNames(system: System): StockNames {
  return system.unit === 'in'
    ? {
        panel: 'birch ply 3/4',
        panelThickness: Length.inches(23, 32),
        box: 'birch ply 1/2',
        thin: 'birch ply 1/4',
        backing: 'backing ply 3/4',
      }
    : {
        panel: 'birch ply 18',
        panelThickness: Length.millimetres(35, 2),
        box: 'birch ply 12',
        thin: 'birch ply 9',
        backing: 'backing ply 18',
      };
}

const slidesInInches = [10, 12, 14, 16] as const;
const slidesInMillimetres = [250, 300, 350, 400] as const;

/** The longest slides that a case of this depth takes, behind a front and before a back. */
export function slideFor(system: System, depth: Length): { readonly name: string; readonly length: Length } {
  const lengths: readonly number[] = system.unit === 'in' ? slidesInInches : slidesInMillimetres;
  const room = depth.minus(system.of(Length.inches(2), 50));
  const lengthOf = (each: number) => system.of(Length.inches(each), each);
  const longest = lengths.filter((each) => lengthOf(each).compare(room) <= 0).at(-1) ?? Math.min(...lengths);
  return { name: `side mount ${longest}`, length: lengthOf(longest) };
}

/** Every size says its unit, so that the entries mean the same wherever they are copied to. */
export function writeShop(system: System): string {
  return system.unit === 'in' ? inInches : inMillimetres;
}

const remark = `// Stock and hardware of the shop. Put in what your caliper reads and what your slides' sheet says: fits use it.
`;
const inInches = `${remark}units inches to 1/32

sheet "birch ply 3/4" nominal 3/4", actual 23/32", 96" long, 48" wide
sheet "birch ply 1/2" nominal 1/2", actual 15/32", 96" long, 48" wide
sheet "birch ply 1/4" nominal 1/4", actual 1/4", 96" long, 48" wide, no grain
sheet "backing ply 3/4" nominal 3/4", actual 23/32", 96" long, 48" wide, no grain

${slidesInInches.map((each) => `slide "side mount ${each}" side mount, ${each}" long, 1-3/4" high, takes 1/2" each side`).join('\n')}
`;
const inMillimetres = `${remark}units mm to 0.5

sheet "birch ply 18" nominal 18mm, actual 17.5mm, 2440mm long, 1220mm wide
sheet "birch ply 12" nominal 12mm, actual 11.7mm, 2440mm long, 1220mm wide
sheet "birch ply 9"  nominal 9mm, actual 8.8mm, 2440mm long, 1220mm wide, no grain
sheet "backing ply 18" nominal 18mm, actual 17.5mm, 2440mm long, 1220mm wide, no grain

${slidesInMillimetres.map((each) => `slide "side mount ${each}" side mount, ${each}mm long, 45mm high, takes 12.7mm each side`).join('\n')}
`;
