/** Exact volumes: what joinery and hardware remove, whether two of them meet, and what is left between them. */

export { type Bounds, boundsOf } from './bounds.ts';
export { convexAround } from './convex-around.ts';
export * from './faults.ts';
export * from './makers.ts';
export { meets } from './meets.ts';
export * from './solid.ts';
