import { Length } from '@fettle/engine';
import type { System } from './answers.ts';

/**
 * A first shop file, for whoever has none: the stock and the hardware a first design is made of. The real thicknesses are what
 * such plywood usually measures (common practice, no source); one's own caliper knows better.
 */

export interface StockNames {
  readonly panel: string;
  readonly panelThickness: Length;
  readonly box: string;
  readonly thin: string;
  /** For a back that a wall fastening holds. */
  readonly backing: string;
  readonly pull: string;
}

/** By what a hinge is fixed to: a side that its door lies on, a partition that two doors share, or wood beside an inset door. */
export const hingeNames = { side: 'full cup', partition: 'half cup', inset: 'inset cup' } as const;

export function stockNames(system: System): StockNames {
  return system.unit === 'in'
    ? {
        panel: 'birch ply 3/4',
        panelThickness: Length.inches(23, 32),
        box: 'birch ply 1/2',
        thin: 'birch ply 1/4',
        backing: 'backing ply 3/4',
        pull: 'knob 1-1/4',
      }
    : {
        panel: 'birch ply 18',
        panelThickness: Length.millimetres(35, 2),
        box: 'birch ply 12',
        thin: 'birch ply 9',
        backing: 'backing ply 18',
        pull: 'knob 30',
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

const remark = `// Stock and hardware of the shop. Put in what your caliper reads and what the sheets of your slides, hinges and pulls
// say: fits use it. Screws of hinges on both faces of a partition are so short that they do not meet in it.
`;
/** Figures that such hinges and knobs usually have (common practice, no source): the data sheet of one's own knows better. */
const hardwareInInches = `
hinge "full cup" concealed, cup 35mm wide, cup 12mm deep, cup 1/8" to 1/4" from edge, overlay 7/16" more than cup distance,
    plate 37mm from front, screws 1/2" long, for overlay doors
hinge "half cup" concealed, cup 35mm wide, cup 12mm deep, cup 1/8" to 1/4" from edge, overlay 1/8" more than cup distance,
    plate 37mm from front, screws 5/16" long, for overlay doors
hinge "inset cup" concealed, cup 35mm wide, cup 12mm deep, cup 1/8" to 1/4" from edge, gap and cup distance 9/32" together,
    plate 37mm from front, screws 5/16" long, for inset doors
pull "knob 1-1/4" 1-1/4" wide, round, stands out 1-1/8", thread 3/8" deep
`;
const hardwareInMillimetres = `
hinge "full cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance,
    plate 37mm from front, screws 13mm long, for overlay doors
hinge "half cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 3mm more than cup distance,
    plate 37mm from front, screws 8mm long, for overlay doors
hinge "inset cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, gap and cup distance 6.5mm together,
    plate 37mm from front, screws 8mm long, for inset doors
pull "knob 30" 30mm wide, round, stands out 28mm, thread 10mm deep
`;

const inInches = `${remark}units inches to 1/32

sheet "birch ply 3/4" nominal 3/4", actual 23/32", 96" long, 48" wide
sheet "birch ply 1/2" nominal 1/2", actual 15/32", 96" long, 48" wide
sheet "birch ply 1/4" nominal 1/4", actual 1/4", 96" long, 48" wide, no grain
sheet "backing ply 3/4" nominal 3/4", actual 23/32", 96" long, 48" wide, no grain

${slidesInInches.map((each) => `slide "side mount ${each}" side mount, ${each}" long, 1-3/4" high, takes 1/2" each side`).join('\n')}
${hardwareInInches}`;
const inMillimetres = `${remark}units mm to 0.5

sheet "birch ply 18" nominal 18mm, actual 17.5mm, 2440mm long, 1220mm wide
sheet "birch ply 12" nominal 12mm, actual 11.7mm, 2440mm long, 1220mm wide
sheet "birch ply 9"  nominal 9mm, actual 8.8mm, 2440mm long, 1220mm wide, no grain
sheet "backing ply 18" nominal 18mm, actual 17.5mm, 2440mm long, 1220mm wide, no grain

${slidesInMillimetres.map((each) => `slide "side mount ${each}" side mount, ${each}mm long, 45mm high, takes 12.7mm each side`).join('\n')}
${hardwareInMillimetres}`;
