import type { Part } from '../parts/part.ts';
import { AXES, type Axis } from '../solids/index.ts';

/** An end or edge that a distance is taken from. */
export type ReferenceEdge =
  | 'lower end'
  | 'left end'
  | 'left edge'
  | 'lower edge'
  | 'nearer end'
  | 'nearer edge'
  | 'front end'
  | 'front edge'
  | 'back end'
  | 'back edge'
  | 'face';

/** A part ends along its length, and has its edges across it. */
export function endOrEdge(part: Part, axis: Axis): 'end' | 'edge' {
  if (part.grain !== 'none') return part.grain === axis ? 'end' : 'edge';
  const other = AXES.find((each) => each !== axis && each !== part.thin) ?? axis;
  return part.blank[axis].size.length.compare(part.blank[other].size.length) >= 0 ? 'end' : 'edge';
}
