import type { Cell, FrontFit, GroupCell } from '@fettle/engine';
import fc from 'fast-check';
import { written } from './design-builder.ts';

/** Random ways for fronts to sit, alike over a face or mixed in one. Amounts are small beside every divider. */

const gap = fc.constantFrom('1/16', '3/32', '1/8');

export const anyFit: fc.Arbitrary<FrontFit> = fc
  .tuple(fc.constantFrom('inset', 'full', 'half', 'by', 'lipped'), gap, fc.constantFrom('1/8', '5/32'))
  .map(([kind, between, amount]): FrontFit => {
    const common = { kind: 'overlay', reveal: written('1/16'), gap: written(between) } as const;
    switch (kind) {
      case 'inset':
        return { kind: 'inset', gap: written(between) };
      case 'lipped':
        return { kind: 'lipped', lip: written(amount), gap: written(between) };
      case 'by':
        return { ...common, how: 'by', by: written(amount) };
      default:
        return { ...common, how: kind };
    }
  });

/** Gives the fronts of a face, in order, these fits; `undefined` leaves a front to what the face says. */
export function withFits(root: GroupCell, fits: readonly (FrontFit | undefined)[]): GroupCell {
  let at = 0;
  const fitted = (cell: Cell): Cell => {
    if (cell.kind === 'row' || cell.kind === 'stack') return { ...cell, cells: cell.cells.map(fitted) };
    if (cell.kind !== 'front') return cell;
    const fit = fits[at % fits.length];
    at += 1;
    return fit === undefined ? cell : { ...cell, fit };
  };
  return { ...root, cells: root.cells.map(fitted) };
}

export const mixedFits: fc.Arbitrary<readonly (FrontFit | undefined)[]> = fc.array(
  fc.option(anyFit, { nil: undefined, freq: 2 }),
  { minLength: 1, maxLength: 7 },
);
