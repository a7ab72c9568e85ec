/** How machines are set for the joints of a piece. */
export { type BevelSetup, bevelDegrees } from './bevels.ts';
export { type Diagonal, diagonalOf } from './diagonals.ts';
export * from './setups.ts';
export * from './spacer-boards.ts';
