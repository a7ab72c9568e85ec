/** How machines are set for the joints of a piece. */
export { type BevelSetup, bevelDegrees } from './bevels.ts';
export { type Diagonal, diagonalOf } from './diagonals.ts';
export type { HoleRow } from './hole-rows.ts';
export * from './setups.ts';
export * from './spacer-boards.ts';
