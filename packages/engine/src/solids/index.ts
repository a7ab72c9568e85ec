/** Exact volumes: what joinery and hardware remove, whether two of them meet, and what is left between them. */

export { type Bounds, boundsOf } from './bounds.ts';
export { convexAround } from './convex-around.ts';
export * from './faults.ts';
export { insideOf } from './inside.ts';
export * from './makers.ts';
export { meets } from './meets.ts';
export * from './near-pairs.ts';
export { type Overlap, overlapOf, type Parting, type SharedStretch } from './overlap.ts';
export type { Between } from './roots.ts';
export * from './solid.ts';
export * from './volume.ts';
export { type Wall, wallBetween } from './wall-between.ts';
export * from './walls.ts';
